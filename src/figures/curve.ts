/** What a figure draws: curves over one axis, in the units printed on it. */

export interface Axis {
  readonly label: string;
  readonly unit: string;
  /** Printed range; from the data where absent. */
  readonly range?: readonly [number, number];
}

export interface Series {
  /** Printed at the curve itself; there are no legends. */
  readonly label: string;
  readonly points: readonly (readonly [number, number])[];
  /** Told by line and marker as well as by color. */
  readonly stroke: 'solid' | 'dashed' | 'dotted';
  readonly accent?: boolean;
}

export interface Curve {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly series: readonly Series[];
  /** Marked positions on the x axis, with a word: cloud base, onset. */
  readonly marks?: readonly { readonly x: number; readonly label: string }[];
}
