/** From checked attributes, whose quantities carry their unit, to what tables and values are asked: SI. */
import { unitFor, type UnitName } from './display.ts';
import { PARAMETERS, type ParameterName, type Parameters } from './parameters.ts';
import { QUANTITIES, type QuantityName } from './quantities.ts';
import type { TableKind } from './table-kind.ts';
import type { TableRequest } from './table.ts';

/** Attributes of a component as the vocabulary reads them: quantities as `{ value }` in SI, names as text. */
export type Attributes = Readonly<Record<string, unknown>>;

const PARAMETER_NAMES = [...Object.keys(PARAMETERS), 'air', 'particles'] as ParameterName[];

const valueOf = (attribute: unknown): unknown =>
  typeof attribute === 'object' && attribute !== null && 'value' in attribute ? attribute.value : attribute;

/** The parameters among the attributes. */
function parametersOf(attributes: Attributes): Parameters {
  return Object.fromEntries(PARAMETER_NAMES.flatMap((name) => (attributes[name] === undefined ? [] : [[name, valueOf(attributes[name])]])));
}

/** What a `<WorkedTable>` asks of its kind. */
export function tableRequestOf(kind: TableKind, attributes: Attributes): TableRequest {
  const list = attributes[kind.listAttribute] as readonly unknown[] | undefined;
  return {
    at: parametersOf(attributes),
    list: list?.map((item) => valueOf(item) as number),
    columns: attributes['columns'] as readonly string[] | undefined,
  };
}

/** What a `<Value>`, an option or an answer asks. */
export interface ValueQuestion {
  readonly of: QuantityName;
  readonly at: Parameters;
  readonly unit?: UnitName;
}

/** The value asked for by attributes that the vocabulary has checked. */
export function valueQuestionOf(attributes: Attributes): ValueQuestion {
  const of = attributes['of'] as QuantityName;
  const unit = attributes['unit'] as string | undefined;
  return { of, at: parametersOf(attributes), unit: unit === undefined ? undefined : unitFor(QUANTITIES[of].dimension, unit) };
}
