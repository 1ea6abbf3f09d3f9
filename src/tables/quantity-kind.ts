/** What a quantity is, and short ways to write one down. */
import type { InputName, State } from './conditions.ts';
import type { DimensionName } from './display.ts';
import { cloudAt, type Cloud } from './cloud.ts';
import type { ParameterName, Parameters } from './parameters.ts';
import { startsAbove } from './release.ts';

export interface QuantityKind {
  readonly dimension: DimensionName;
  /** Parameters without which it has no meaning; for a missing `drop` stands `unasked`. */
  readonly needs: readonly ParameterName[];
  /** The drop where none is asked for; the planned one where absent. */
  readonly unasked?: (state: State) => number;
  /** Parameters that may replace the kit's own conditions. */
  readonly takes: readonly ParameterName[];
  readonly compute: (state: State, at: Parameters & { readonly drop: number }) => number;
  /** Inputs whose uncertainty it is worth to follow through a simulation; all where absent. */
  readonly varies?: readonly InputName[];
  /** What the model itself may be wrong by beside the inputs: standard uncertainty, SI. */
  readonly model?: (value: number) => number;
}

export const ROOM = ['temperature', 'elevation'] as const;
export const VESSEL = ['humidity', 'temperature', 'elevation'] as const;

/** A share of the value, of its distance from `origin` where that is what the model computes. */
export const share = (part: number, origin = 0): ((value: number) => number) => (value) => part * Math.abs(value - origin);

export const onDrop = (dimension: DimensionName, of: (state: State, drop: number) => number, model?: QuantityKind['model']): QuantityKind =>
  ({ dimension, needs: ['drop'], takes: VESSEL, compute: (state, { drop }) => of(state, drop), model });
/** On the wall, which bears most at the planned drop, or before the vessel is let go. */
export const onWall = (dimension: DimensionName, of: (state: State, drop: number) => number, model?: QuantityKind['model']): QuantityKind =>
  ({ ...onDrop(dimension, of, model), unasked: ({ apparatus, plannedDrop }) => (startsAbove(apparatus) ? 0 : plannedDrop) });
export const ofVessel = (dimension: DimensionName, of: (state: State) => number): QuantityKind =>
  ({ dimension, needs: [], takes: VESSEL, compute: of });
export const ofRoom = (dimension: DimensionName, of: (state: State) => number): QuantityKind =>
  ({ dimension, needs: [], takes: ROOM, compute: of });
export const onHeight = (dimension: DimensionName, of: (state: State, height: number, air?: 'vessel' | 'room') => number): QuantityKind =>
  ({ dimension, needs: ['height'], takes: [...VESSEL, 'air'], compute: (state, { height, air }) => of(state, height ?? 0, air) });

/** From a simulated run: its walls' time constant is known within a third, which outweighs all but what it starts with. */
export const ofRun = (dimension: DimensionName, of: (state: State, drop: number) => number, model?: QuantityKind['model']): QuantityKind =>
  ({ ...onDrop(dimension, of, model), varies: ['startHumidity', 'roomTemperature'] });
/** From a simulated cloud: number and size of the particles are estimates, which outweighs the room's uncertainty. */
export const ofCloud = (dimension: DimensionName, model: QuantityKind['model'], of: (cloud: Cloud, state: State) => number): QuantityKind => ({
  dimension, needs: ['drop'], takes: [...VESSEL, 'number', 'particles'], varies: [], model,
  compute: (state, { drop, number, particles }) => of(cloudAt(state, drop, number, particles), state),
});
