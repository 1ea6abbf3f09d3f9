/** The drawings of a kit, from its conditions: run chart, path, set-up. */
import { renderPath, renderSetup } from '../figures/index.ts';
import { toCelsius, toHectopascal } from '../physics/index.ts';
import { computeValue, formatWithUnit, lessonRun, printValue, stateOf, valueIn, type Cell, type Conditions, type NumberStyle, type QuantityName } from '../tables/index.ts';
import type { SheetHtml, StepView } from './book.ts';
import { renderLiveRun } from './html/live.ts';
import type { StepAttributes } from './components/index.ts';

/** The simulated lesson over its steps: for everybody gauge and thermometer, for teachers the gas as well. */
export function runChartsOf(id: string, conditions: Conditions, steps: readonly StepAttributes[], views: readonly StepView[], minutes: number): SheetHtml {
  const merged = steps.map((step, i) => ({ ...views[i]!, drop: step.drop, particles: step.particles }));
  const simulated = lessonRun(conditions, merged);
  const chart = (teachers: boolean): string => renderLiveRun({ id: `${id}-run`, minutes, teachers, steps: merged }, conditions, simulated);
  return { everybody: chart(false), teachers: chart(true) };
}

const POINTS_OF_PATH = 12;

/** The kit's own way through pressure and temperature. */
export function kitPicture(id: string, title: string, conditions: Conditions): string {
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
  });
}

/** The labelled drawing of the apparatus. */
export function setupOf(id: string, { apparatus, ...conditions }: Conditions, style?: NumberStyle): string {
  const { vessel, source, gauge, thermometer, light } = apparatus;
  const text = (of: QuantityName): string => printValue(of, computeValue({ ...conditions, apparatus }, of, {}), undefined, style).text;
  return renderSetup({
    id: `${id}-setup`,
    title: apparatus.title,
    shape: vessel.shape,
    vessel: `${vessel.material} ${vessel.shape}, ${text('vesselVolume')}, rated from ${text('ratedLowestGauge')} to ${text('ratedHighestGauge')}`,
    source: source.kind,
    sourceLabel: sourceLabel(source, style),
    gauge: gauge.kind === 'digital' ? 'digital' : 'dial',
    gaugeLabel: `${gauge.kind} gauge in ${gauge.unit}, read to ${text('gaugeResolution')}`,
    thermometer: thermometer.kind,
    thermometerLabel: `${thermometer.kind} thermometer, ${thermometer.position}`,
    valveLabel: apparatus.valve,
    light: light.kind,
    lightFrom: light.from,
    backing: apparatus.backing,
  });
}

function sourceLabel(source: Conditions['apparatus']['source'], style?: NumberStyle): string {
  switch (source.kind) {
    case 'stroke-pump':
      return `hand pump, ${formatWithUnit('mL', source.strokeVolume, 0, style)} a stroke`;
    case 'steady-pump':
      return `pump, ${formatWithUnit('L', source.speed * 60, 0, style)} a minute`;
    case 'squeeze':
      return `squeezed by ${formatWithUnit('mL', source.volumeChange, 0, style)}`;
    case 'pressurise':
      return `pumped up to ${formatWithUnit('kPa', source.startGauge, 0, style)}, then released`;
  }
}
