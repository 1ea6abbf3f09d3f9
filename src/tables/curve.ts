/** The figure that a table's rows make: curves over one axis, in the units printed on it. */

export interface Axis {
  readonly label: string;
  readonly unit: string;
  /** Printed range; from the data where absent. */
  readonly range?: readonly [number, number];
  /** Of the y axis: values fall upward, as pressure does in the sky. */
  readonly falls?: boolean;
}

export interface Series {
  /** Printed at the curve itself; there are no legends. */
  readonly label: string;
  readonly points: readonly (readonly [number, number])[];
  /** Told by line and marker as well as by color. */
  readonly stroke: 'solid' | 'dashed' | 'dotted' | 'beads';
  readonly accent?: boolean;
  /** Where its label stands at its last point; at its right end, beyond the plot, where absent. */
  readonly named?: 'left' | 'right' | 'above' | 'over';
}

export interface Curve {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly series: readonly Series[];
  /** Marked positions, with a word: cloud base, onset. A point of a curve where y is given, else all along the y axis. */
  readonly marks?: readonly { readonly x: number; readonly y?: number; readonly label: string; /** Of a point: its word stands above it, not below. */ readonly above?: boolean }[];
}
