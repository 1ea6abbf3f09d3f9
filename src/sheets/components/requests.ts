/** Attributes of the components that compute: which parameters each table kind and each quantity takes, as schemas. */
import { z } from 'zod';
import { count, level, list, name, quantity, reference, text, type RawAttributes, type UnknownChoice } from '../../authoring/index.ts';
import {
  DISPLAY_UNITS, QUANTITIES, TABLE_KINDS, UNIT_CHOICES, type ParameterName, type QuantityKind, type TableKind,
} from '../../tables/index.ts';

/** How each parameter is written. Ranges are those of what the physics answers for a school. */
const PARAMETER_SCHEMAS: Record<ParameterName, z.ZodType> = {
  drop: quantity('pressure', ['0 kPa', '400 kPa']),
  height: quantity('length', ['0 m', '8 km']),
  reading: level('gauge'),
  humidity: quantity('fraction', ['1 %', '100 %']),
  temperature: quantity('temperature', ['-30 °C', '55 °C']),
  elevation: quantity('length', ['-430 m', '5000 m']),
  stroke: count(0, 200),
  number: quantity('numberDensity', ['1 /cm³', '10000000 /cm³']),
  diameter: quantity('length', ['0.01 µm', '10 µm']),
  wait: quantity('time', ['0 s', '7 d']),
  cloudEvery: quantity('time', ['1 min', '8 h']),
  air: z.enum(['vessel', 'room']),
  particles: reference('particles'),
};

const optional = (names: readonly ParameterName[]): Record<string, z.ZodType> =>
  Object.fromEntries(names.map((name) => [name, PARAMETER_SCHEMAS[name].optional()]));

/** Attributes of `<WorkedTable>` (and `<Curve>`, of the kinds that have one), chosen by `kind`. */
export function tableAttributes(kinds: readonly TableKind[]): (raw: RawAttributes) => z.ZodObject | UnknownChoice {
  const schemas = new Map<string, z.ZodObject>(kinds.map((kind) => [kind.kind, tableSchema(kind)]));
  return (raw) => schemas.get(raw['kind'] ?? '') ?? { attribute: 'kind', unknown: raw['kind'], choices: [...schemas.keys()] };
}

function tableSchema(kind: TableKind): z.ZodObject {
  return z.strictObject({
    kind: z.literal(kind.kind),
    id: name().optional(),
    caption: text(200).optional(),
    columns: list(z.enum(kind.columns.map(({ key }) => key))).optional(),
    [kind.listAttribute]: list(PARAMETER_SCHEMAS[kind.over]).optional(),
    ...optional(kind.takes),
  });
}

/** Attributes of `<Value>`, chosen by `of`. */
export function valueAttributes(raw: RawAttributes): z.ZodObject | UnknownChoice {
  return VALUE_SCHEMAS.get(raw['of'] ?? '') ?? { attribute: 'of', unknown: raw['of'], choices: [...VALUE_SCHEMAS.keys()] };
}

function valueSchema(of: string, { needs, takes, dimension }: QuantityKind): z.ZodObject {
  const needed = needs.map((parameter) => [parameter, parameter === 'drop' ? PARAMETER_SCHEMAS[parameter].optional() : PARAMETER_SCHEMAS[parameter]]);
  const units = UNIT_CHOICES[dimension].map((unit) => DISPLAY_UNITS[unit].symbol).filter((symbol) => symbol !== '');
  return z.strictObject({
    of: z.literal(of),
    ...(units.length > 0 ? { unit: z.enum(units).optional() } : {}),
    ...(Object.fromEntries(needed) as Record<string, z.ZodType>),
    ...optional(takes.filter((parameter) => !needs.includes(parameter))),
  });
}

const VALUE_SCHEMAS = new Map(Object.entries<QuantityKind>(QUANTITIES).map(([of, kind]) => [of, valueSchema(of, kind)]));

export const TABLES_WITH_CURVE = TABLE_KINDS.filter(({ curve }) => curve !== undefined);
