/** Pens of the set-up drawing: outlines, thin lines, tubes, arrows, and the numbered balloons that lead to its parts. */
import { lineAt, round, textAt } from './svg.ts';

/** An outline of 1.75 units, filled with paper so that what stands behind is hidden. */
export const outline = (d: string): string => `<path class="outline" d="${d}" fill="#fff" stroke="currentColor" stroke-width="1.75" stroke-linejoin="round"/>`;
/** A thin line of the drawing. */
export const thin = (d: string): string => `<path d="${d}" fill="none" stroke="currentColor" stroke-width="1.1" stroke-linejoin="round" stroke-linecap="round"/>`;
/** A tube: two walls with air between them. */
export const tube = (d: string): string =>
  `<path d="${d}" fill="none" stroke="currentColor" stroke-width="7" stroke-linejoin="round"/><path class="tube-inside" d="${d}" fill="none" stroke="#fff" stroke-width="4" stroke-linejoin="round"/>`;
/** A filled shape. */
export const solid = (d: string): string => `<path d="${d}" fill="currentColor"/>`;
/** An arrow's head whose point is at x, y. */
export const arrowHead = (x: number, y: number, direction: 'left' | 'right' | 'up' | 'down'): string => {
  const d = { left: `M${x} ${y}l8-4.5v9z`, right: `M${x} ${y}l-8-4.5v9z`, up: `M${x} ${y}l-4.5 8h9z`, down: `M${x} ${y}l-4.5-8h9z` }[direction];
  return `<path class="accent-fill" d="${d}" fill="#5b2188"/>`;
};
/** A line of movement: the way of air or of light. */
export const way = (d: string): string => `<path class="accent" d="${d}" fill="none" stroke="#5b2188" stroke-width="1.5"/>`;

/** Shapes moved to the left by a distance. */
export const moved = (distance: number, shapes: string): string => `<g transform="translate(${-distance} 0)">${shapes}</g>`;

/** Where a balloon stands, and the point of the part it leads to. */
export type Place = readonly [x: number, y: number, toX: number, toY: number];

const RADIUS = 10;

/** A part's number in a circle with a leader to the part. */
export const balloon = (number: number, [x, y, toX, toY]: Place): string => {
  const distance = Math.hypot(toX - x, toY - y);
  const edge = RADIUS / distance;
  return (
    lineAt('lead', x + (toX - x) * edge, y + (toY - y) * edge, toX, toY) +
    `<circle class="outline" cx="${round(x)}" cy="${round(y)}" r="${RADIUS}" fill="#fff" stroke="currentColor"/>` +
    textAt(x, y + 4.5, String(number), { anchor: 'middle', bold: true })
  );
};
