/** Lists that are drawn from the tables of the code: units, quantities, kinds of tables, findings. */
import { CELLS, LABELS, type LabelName } from '../../texts/index.ts';
import { dimensionInWords, DIMENSIONS, exampleOf, FINDINGS, MISSPELLINGS, SPELLINGS, UNITS, type Explanation, type FindingCode } from '../../authoring/index.ts';
import { COMPONENTS } from '../../sheets/index.ts';
import { TABLES_WITH_CURVE } from '../../sheets/components/requests.ts';
import { DISPLAY_UNITS, QUANTITIES, TABLE_KINDS, UNIT_CHOICES, UNITS_OF, type NumberParameter, type QuantityKind, type TableKind } from '../../tables/index.ts';
import { fieldsOf, type Field } from './fields.ts';

/** The units of one dimension, with an example. */
export interface UnitRow {
  readonly dimension: string;
  readonly units: readonly string[];
  readonly example: string;
}

export const unitRows = (): UnitRow[] =>
  DIMENSIONS.map((dimension) => ({
    dimension: dimensionInWords(dimension),
    units: UNITS.filter((unit) => unit.dimension === dimension).map(({ symbol }) => symbol),
    example: exampleOf(dimension),
  }));

/** Unit to what else is read as that unit, and what is refused with a hint. */
export const spellingRows = (): { readonly unit: string; readonly read: readonly string[]; readonly refused: readonly string[] }[] => {
  const of = (spellings: Readonly<Record<string, string>>, symbol: string): string[] => Object.keys(spellings).filter((written) => spellings[written] === symbol);
  return [...new Set(UNITS.map(({ symbol }) => symbol))]
    .map((unit) => ({ unit, read: of(SPELLINGS, unit), refused: of(MISSPELLINGS, unit) }))
    .filter(({ read, refused }) => read.length + refused.length > 0);
};

/** A quantity that a sentence, a question or a table can show. */
export interface ValueRow {
  readonly name: string;
  readonly label: string;
  /** As printed; empty for a pure number. */
  readonly printed: string;
  readonly others: readonly string[];
  readonly needs: readonly string[];
  readonly takes: readonly string[];
}

export const valueRows = (): ValueRow[] =>
  Object.entries<QuantityKind>(QUANTITIES).map(([name, { dimension, needs, takes }]) => {
    const symbols = (units: readonly (keyof typeof DISPLAY_UNITS | undefined)[]): string[] => units.flatMap((unit) => (unit === undefined ? [] : DISPLAY_UNITS[unit].symbol)).filter((symbol) => symbol !== '');
    const printed = symbols(UNITS_OF[dimension]);
    return {
      name, label: LABELS.en[name as LabelName], printed: printed.join(', '), needs,
      others: symbols(UNIT_CHOICES[dimension]).filter((symbol) => !printed.includes(symbol)),
      takes: takes.filter((parameter) => !needs.includes(parameter)),
    };
  });

/** What a quantity or a table may be asked at. */
export const PARAMETERS_IN_WORDS: Readonly<Record<NumberParameter, string>> = {
  drop: 'fall of pressure below the start',
  height: 'height above the room',
  reading: 'gauge reading against the room',
  humidity: 'relative humidity in the vessel',
  temperature: 'temperature of room and vessel',
  elevation: 'elevation of the room',
  stroke: 'strokes of the pump',
  number: 'particles in the vessel',
  diameter: 'dry diameter of a particle',
  wait: 'time since the particles were let in',
  cloudEvery: 'time from one cloud to the next',
};

/** Columns of a table kind: key, heading, unit. */
export const columnRows = ({ columns }: TableKind): { readonly key: string; readonly label: string; readonly unit: string }[] =>
  columns.map(({ key, label, units, words }) => ({ key, label: LABELS.en[label], unit: words === undefined ? DISPLAY_UNITS[units[0]].symbol : words.map((word) => CELLS.en[word]).join(' or ') }));

export const hasCurve = (kind: string): boolean => TABLES_WITH_CURVE.some((one) => one.kind === kind);

/** The attributes of a component, or of a table of one kind. */
export function attributesOf(name: string): Field[] {
  const table = TABLE_KINDS.find(({ kind }) => kind === name);
  const attributes = COMPONENTS.get(table === undefined ? name : 'WorkedTable')?.spec.attributes;
  if (attributes === undefined) return [];
  if (typeof attributes !== 'function') return fieldsOf(attributes);
  const schema = table === undefined ? undefined : attributes({ kind: table.kind });
  return schema === undefined || 'choices' in schema ? [] : fieldsOf(schema).filter(({ path }) => path !== 'kind');
}

export interface FindingGroup {
  readonly id: string;
  readonly title: string;
  readonly findings: readonly { readonly code: FindingCode; readonly explanation: Explanation }[];
}

/** The catalogue's groups, each by the finding that it begins with. */
const FINDING_GROUPS: readonly (readonly [first: FindingCode, title: string])[] = [
  ['quantity-without-unit', 'Quantities'],
  ['missing-key', 'Fields'],
  ['yaml-syntax', 'YAML files'],
  ['missing-file', 'Files and folders'],
  ['readings-header', 'Recorded readings'],
  ['unknown-reference', 'Names'],
  ['lesson-syntax', 'Lesson text'],
  ['question-without-answer', 'Questions'],
  ['hazard-missing', 'Safety and physics'],
];

/** Every finding of the catalogue, in its order. */
export function findingGroups(): FindingGroup[] {
  const codes = Object.keys(FINDINGS) as FindingCode[];
  return FINDING_GROUPS.map(([first, title], i) => {
    const next = FINDING_GROUPS[i + 1]?.[0];
    const own = codes.slice(codes.indexOf(first), next === undefined ? undefined : codes.indexOf(next));
    return { id: `about-${first}`, title, findings: own.map((code) => ({ code, explanation: FINDINGS[code] })) };
  });
}
