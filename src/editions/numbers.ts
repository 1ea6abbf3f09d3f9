/** Every number that a kit computes, each under a key that stays the same as long as the lesson asks for it. */
import { componentOf, isParent, type Content, type Kit, type Lesson, type LessonNode } from '../authoring/index.ts';
import { itemOf, type Answer, type Item } from '../questions/index.ts';
import { conditionsOf, languageOf, rowsAskedBy, stepsOf } from '../sheets/index.ts';
import {
  computeTable, computeValue, DISPLAY_UNITS, formatIn, formatWithUnit, inOrder, lessonRun, PARAMETERS, printTable, printValue, stateOf, STYLES, tableKind, tableRequestOf, UNITS_OF, valueQuestionOf,
  type Cell, type Column, type Conditions, type DimensionName, type NumberParameter, type Style,
} from '../tables/index.ts';
import { CELLS, KIND_TITLES, LABELS, RUN_TEXTS, SHEET_TEXTS } from '../texts/index.ts';

/** One computed number. */
export interface ComputedNumber {
  /** `run/pressure-steps/pressureDrop=20000/temperatureClear` */
  readonly key: string;
  /** SI */
  readonly value: Cell;
  /** What it is, in the kit's language. */
  readonly label: string;
  /** Any number in its place as the kit prints it, with its unit. */
  readonly print: (value: Cell) => string;
  /** Whether it tells an answer, or stands where only teachers read. */
  readonly forTeachers: boolean;
}

/** The numbers of a kit, in the order of its sheets. */
export function numbersOf(content: Content, kit: Kit): ComputedNumber[] {
  const conditions = conditionsOf(content, kit);
  const style = STYLES[languageOf(content, kit)];
  const sheets = ([['run', kit.run], ['student', kit.student], ['background', kit.background]] as const).map(([sheet, lesson]) => ({ sheet, lesson }));
  const others = [...kit.questions.values(), ...content.hazards.values(), ...content.misconceptions.values()].map(({ lesson }) => lesson);
  const all = [
    ...sheets.flatMap(({ sheet, lesson }) => tablesIn(lesson, sheet, conditions, style)),
    ...[...sheets.map(({ lesson }) => lesson), ...others].flatMap((lesson) => valuesIn(lesson, conditions, style)),
    ...runNumbers(kit.run, conditions, style),
    ...[...kit.questions].flatMap(([id, { meta }]) => answersIn(id, itemOf(id, meta, conditions, style), style)),
  ];
  return onceEach(all);
}

/** A number that stands in several places is everybody's if everybody reads it in one of them. */
function onceEach(all: readonly ComputedNumber[]): ComputedNumber[] {
  const byKey = new Map<string, ComputedNumber>();
  for (const number of all) if (byKey.get(number.key)?.forTeachers !== false) byKey.set(number.key, number);
  return [...byKey.values()];
}

function tablesIn(lesson: Lesson, sheet: 'run' | 'student' | 'background', conditions: Conditions, style: Style): ComputedNumber[] {
  const ids = new Map<string, number>();
  const hidden = forTeachersIn(lesson);
  return computedIn(lesson, hidden).flatMap(({ name, attributes }) => {
    const kind = tableKind(attributes['kind'] as string)!;
    const id = numbered((attributes['id'] as string | undefined) ?? (name === 'Curve' ? `${kind.kind}-figure` : kind.kind), ids);
    const table = computeTable(kind, conditions, { ...tableRequestOf(kind, attributes), columns: undefined });
    const printed = printTable(table, style);
    const rows = new Map<string, number>();
    const first = table.columns[0]!;
    return table.rows.flatMap((row, r) => {
      const place = numbered(table.rowsAt[r]!.mark ?? `${first.key}=${shortest(row[0] ?? null)}`, rows);
      const [at] = printed.rows[r]!.cells;
      return row.map((value, c): ComputedNumber => {
        const column = table.columns[c]!;
        const shown = printedColumnOf(table.columns, c);
        const { label, unit } = printed.columns[shown]!;
        const decimals = decimalsOf(printed.rows[r]!.cells[shown]!.text, style);
        return {
          key: `${sheet}/${id}/${place}/${column.key}`,
          value,
          label: `${SHEET_TEXTS[style.language][sheet].name}, ${KIND_TITLES[style.language][kind.kind]}, ${withUnit(at!.text, printed.columns[0]!.unit)}: ${label}`,
          print: printing(style, (other) => withUnit(formatIn(column.units[0], other, decimals, style), unit), column.words),
          forTeachers: hidden.has(attributes),
        };
      });
    });
  });
}

/** The tables of a lesson, and those of its figures that have rows of their own. */
function computedIn({ components }: Lesson, hidden: ReadonlySet<unknown>): Lesson['components'] {
  const tables = components.filter(({ name }) => name === 'WorkedTable');
  const asked = ({ attributes }: Lesson['components'][number]): string => `${hidden.has(attributes)} ${rowsAskedBy(attributes)}`;
  const inTables = new Set(tables.map(asked));
  return components.filter((component) => tables.includes(component) || (component.name === 'Curve' && !inTables.has(asked(component))));
}

/** The attributes of all components inside `<TeacherOnly>`: they are the same objects in a lesson's tree as in its list. */
function forTeachersIn({ tree }: Lesson): ReadonlySet<unknown> {
  const found = new Set<unknown>();
  const look = (node: LessonNode, isHidden: boolean): void => {
    const component = componentOf(node);
    if (isHidden) found.add(component?.attributes);
    if (isParent(node)) for (const child of node.children) look(child, isHidden || component?.component === 'TeacherOnly');
  };
  look(tree, false);
  return found;
}

/** Columns that are shown in several units side by side take several printed ones. */
const printedColumnOf = (columns: readonly { readonly beside?: readonly unknown[] }[], column: number): number =>
  columns.slice(0, column).reduce((shown, { beside = [] }) => shown + 1 + beside.length, 0);

/** Decimals of a number as printed. */
const decimalsOf = (text: string, { decimal }: Style): number => text.split(decimal)[1]?.length ?? 0;

const printing = (style: Style, printNumber: (value: number) => string, words?: Column['words']) => (value: Cell): string => {
  if (value === null) return '–';
  return typeof value === 'number' ? printNumber(value) : CELLS[style.language][words![value ? 0 : 1]];
};

const withUnit = (text: string, unit: string): string => (unit === '' ? text : `${text}\u00a0${unit}`);

/** A row's own number as written in a key: what was chosen, without the rounding error of its unit. */
const DIGITS_IN_KEYS = 9;
const shortest = (value: Cell): string => (typeof value === 'number' ? String(Number(value.toPrecision(DIGITS_IN_KEYS))) : String(value));

/** The first of a name as it is, the second as `name-2`. */
function numbered(name: string, counts: Map<string, number>): string {
  const count = (counts.get(name) ?? 0) + 1;
  counts.set(name, count);
  return count === 1 ? name : `${name}-${count}`;
}

function valuesIn(lesson: Lesson, conditions: Conditions, style: Style): ComputedNumber[] {
  const hidden = forTeachersIn(lesson);
  return lesson.components.filter(({ name }) => name === 'Value').map(({ attributes }) => {
    const { of, at, unit } = valueQuestionOf(attributes);
    const computed = computeValue(conditions, of, at);
    const asked = Object.entries(at).filter(([, parameter]) => parameter !== undefined);
    return {
      key: ['value', of, ...asked.map(([name, parameter]) => `${name}=${parameter}`)].join('/'),
      value: computed.value,
      label: [LABELS[style.language][of], ...asked.map(([name, parameter]) => printParameter(name, parameter, style))].join(', '),
      print: printing(style, (other) => printValue(of, { ...computed, value: other }, unit, style).text),
      // Where a misconception stands is not known here.
      forTeachers: hidden.has(attributes) || lesson.kind === 'misconception',
    };
  });
}

const printParameter = (name: string, value: number | string, style: Style): string =>
  typeof value === 'string' ? value : formatWithUnit(UNITS_OF[PARAMETERS[name as NumberParameter]][0], value, 0, style);

/** Where the instruments stand as each step ends: the pressure as absolute, since the gauge of an open vessel shows nothing but rounding errors. */
function runNumbers(lesson: Lesson, conditions: Conditions, style: Style): ComputedNumber[] {
  const steps = stepsOf(lesson);
  if (steps.length === 0) return [];
  const { series } = lessonRun(conditions, steps);
  const { roomPressure } = stateOf(conditions);
  const { heads } = RUN_TEXTS[style.language];
  const inUnits = (dimension: DimensionName, zero = 0) => {
    const [unit] = inOrder(UNITS_OF[dimension], style);
    return printing(style, (value) => withUnit(formatIn(unit, value - zero, 1, style), DISPLAY_UNITS[unit].symbol));
  };
  const [asGauge, asTemperature] = [inUnits('pressure', roomPressure), inUnits('temperature')];
  return steps.flatMap(({ at, duration, title }, i): ComputedNumber[] => {
    const { pressure, thermometerReading, gasTemperature } = series.findLast(({ time }) => time <= at + duration + END_OF_STEP) ?? series[0]!;
    const step = `run/step-${i + 1}`;
    return [
      { key: `${step}/pressure`, value: pressure, label: `${title}: ${heads.gauge}`, print: asGauge, forTeachers: false },
      { key: `${step}/thermometer`, value: thermometerReading, label: `${title}: ${heads.thermometer}`, print: asTemperature, forTeachers: false },
      { key: `${step}/air`, value: gasTemperature, label: `${title}: ${heads.air}`, print: asTemperature, forTeachers: true },
    ];
  });
}

/** Times of a run are sums of durations, s. */
const END_OF_STEP = 1e-6;

function answersIn(id: string, item: Item, style: Style): ComputedNumber[] {
  const answers: (readonly [string, Answer | undefined])[] =
    item.kind === 'numeric' ? [['answer', item.answer]] : item.kind === 'choice' ? item.options.map(({ answer }, i) => [`option-${i + 1}`, answer]) : [];
  return answers.flatMap(([name, answer]) => {
    if (answer === undefined) return [];
    const { question: { of }, value, unit, tolerance } = answer;
    const print = printing(style, (other) => printValue(of, { value: other, uncertainty: tolerance }, unit, style).text);
    return [{ key: `question/${id}/${name}`, value, label: `${id}: ${LABELS[style.language][of]}`, print, forTeachers: true }];
  });
}
