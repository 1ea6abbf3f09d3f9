/** The drawings of a kit, from its conditions: run chart and path. */
import { renderPath } from '../figures/index.ts';
import { toCelsius, toHectopascal } from '../physics/index.ts';
import { lessonRun, stateOf, valueIn, type Cell, type Conditions, type Style, type QuantityName } from '../tables/index.ts';
import type { SheetHtml, StepView } from './book.ts';
import { renderLiveRun } from './html/live.ts';
import type { StepAttributes } from './components/index.ts';

/** The simulated lesson over its steps: for everybody gauge and thermometer, for teachers the gas as well. */
export function runChartsOf(id: string, conditions: Conditions, steps: readonly StepAttributes[], views: readonly StepView[], minutes: number, style: Style): SheetHtml {
  const merged = steps.map((step, i) => ({ ...views[i]!, drop: step.drop, particles: step.particles }));
  const simulated = lessonRun(conditions, merged);
  const chart = (teachers: boolean): string => renderLiveRun({ id: `${id}-run`, minutes, teachers, steps: merged }, conditions, style, simulated);
  return { everybody: chart(false), teachers: chart(true) };
}

const POINTS_OF_PATH = 12;

/** The kit's own way through pressure and temperature. */
export function kitPicture(id: string, title: string, conditions: Conditions, style: Style): string {
  const drops = Array.from({ length: POINTS_OF_PATH + 1 }, (_, i) => (i / POINTS_OF_PATH) * conditions.plannedDrop);
  const state = stateOf(conditions);
  const column = (of: QuantityName): Cell[] => drops.map((drop) => valueIn(state, of, { drop }));
  const [pressure, clear, cloudy] = [column('absolutePressure'), column('temperatureClear'), column('temperatureCloudy')];
  const whole = drops.flatMap((_, i) => {
    const [p, dry, wet] = [pressure[i], clear[i], cloudy[i]];
    return typeof p === 'number' && typeof dry === 'number' && typeof wet === 'number' ? [{ p, dry, wet }] : [];
  });
  return renderPath({
    id: `${id}-path`,
    title,
    pressure: whole.map(({ p }) => toHectopascal(p)),
    temperatureClear: whole.map(({ dry }) => toCelsius(dry)),
    temperatureCloudy: whole.map(({ wet }) => toCelsius(wet)),
  }, style);
}
