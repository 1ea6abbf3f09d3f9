/** Tables and values: a room, an apparatus, a kind -> rows in SI -> digits. */
export { stateOf, uncertaintyOfSteps, type Apparatus, type Conditions, type Measured, type State } from './conditions.ts';
export { startsAbove } from './release.ts';
export { axisUnit, decimalsIn, DISPLAY_UNITS, formatIn, formatNumber, formatWithUnit, inOrder, STYLES, UNIT_CHOICES, UNITS_OF, unitFor, type DimensionName, type Style, type UnitName } from './display.ts';
export { TABLE_KIND_NAMES, TABLE_KINDS, tableKind } from './kinds/index.ts';
export { PARAMETERS, type NumberParameter, type ParameterName, type Parameters } from './parameters.ts';
export { QUANTITIES, valueIn, type QuantityName } from './quantities.ts';
export type { QuantityKind } from './quantity-kind.ts';
export { lessonRun, type PlannedStep } from './lesson-run.ts';
export { tableRequestOf, valueQuestionOf, type Attributes, type ValueQuestion } from './request.ts';
export { pressureAtElevation, WEATHER_SPREAD_OF_PRESSURE, type Level, type Room } from './room.ts';
export type { Curve, Series } from './curve.ts';
export type { Cell } from './spread.ts';
export type { Column, TableKind } from './table-kind.ts';
export { recordsOf, type Records } from './records.ts';
export { computeTable, printTable, type Table, type TableRequest } from './table.ts';
export { computeValue, printValue, type PrintedValue } from './value.ts';
export { verdictOn, type Obstacle, type Verdict } from './verdict.ts';
