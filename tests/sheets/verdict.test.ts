/** The answer to “will it work here?”: what stands in the way is told, and what does not is not. */
import { describe, expect, it } from 'vitest';
import { renderVerdict } from '../../src/sheets/html/verdict.ts';
import { STYLES, verdictOn, type Conditions, type Obstacle } from '../../src/tables/index.ts';
import { conditions, withSource } from '../tables/conditions.ts';

const damp = (humidity: number, plannedDrop = 20_000): Conditions => ({ ...conditions, plannedDrop, inputs: { ...conditions.inputs, startHumidity: { value: humidity, uncertainty: 0.01 } } });

describe('a verdict', () => {
  const cases: readonly (readonly [what: string, given: Conditions, obstacles: readonly Obstacle[]])[] = [
    ['moist air, a fifth of the pressure', conditions, []],
    ['dry air, the same drop', damp(0.2), ['shallow']],
    ['beyond the rating', damp(0.97, 92_000), ['rating', 'pump']],
    ['a pump that ends high', withSource({ kind: 'stroke-pump', strokeVolume: 2e-4, deadVolume: 0, strokeTime: 1.5, ultimatePressure: 85_000 }), ['pump']],
    ['next to nothing', damp(0.97, 300), ['shallow']],
  ];
  it.each(cases)('%s', (_, given, obstacles) => {
    const verdict = verdictOn(given);
    expect(verdict.obstacles).toEqual(obstacles);
    expect(verdict.works).toBe(obstacles.length === 0);
    const { html } = renderVerdict(given, STYLES.en);
    const spanish = renderVerdict(given, STYLES.es).html;
    expect(spanish).toContain(obstacles.length === 0 ? 'Sí.' : 'No.');
    expect(spanish).not.toMatch(/NaN|undefined|null|Infinity|\d\.\d/);
    expect(html).toContain(obstacles.length === 0 ? 'Yes.' : 'No.');
    // A number, its unit and the second unit are held together, as in the lessons.
    expect(html.replaceAll(/<span class="value">.*?<\/span>(?:\)<\/span>)?/g, '')).not.toMatch(/\d kPa/);
    expect(html.includes('What to change')).toBe(obstacles.length > 0);
    expect(html).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it('counts the strokes as Boyle’s law does: p·V/(V + v) a stroke', () => {
    const { strokes } = verdictOn(conditions);
    // 100 kPa to 80 kPa by factors of 5/5.2: ln 0.8 / ln(5/5.2) = 5.69. The gas is cold as pumping ends, which saves a stroke at most.
    expect(strokes).toBeGreaterThanOrEqual(5);
    expect(strokes).toBeLessThanOrEqual(6);
  });

  it('finds a humidity with which the planned drop does', () => {
    const { neededHumidity } = verdictOn(damp(0.2));
    expect(verdictOn(damp(neededHumidity!)).works).toBe(true);
  });
});
