/** The set-up drawing: vessel, thermometer, gauge, valve and source of pressure from the side; light, backing and class from above; the parts by number. */
import { SETUP_TEXTS, type Language } from '../texts/index.ts';
import { drawPlan } from './setup-plan.ts';
import { drawSide } from './setup-side.ts';
import { drawing, escape } from './svg.ts';

/** What the drawing needs of an apparatus; every text is printed as it stands. */
export interface Setup {
  readonly id?: string;
  /** Of what the drawing itself says. */
  readonly language: Language;
  readonly title: string;
  readonly shape: 'cylinder' | 'sphere';
  /** For example "Clear vessel, 5.0 L, rated to −85 kPa". */
  readonly vessel: string;
  readonly source: 'stroke-pump' | 'steady-pump' | 'squeeze' | 'pressurise';
  readonly sourceLabel: string;
  readonly gauge: 'dial' | 'digital';
  readonly gaugeLabel: string;
  readonly thermometer: 'stem' | 'thermocouple' | 'digital';
  /** Kind and position: "Stem thermometer, bulb at mid-height". */
  readonly thermometerLabel: string;
  readonly valveLabel: string;
  readonly light: string;
  readonly lightFrom: 'side' | 'back' | 'front';
  readonly backing: string;
}

const SIDE_WIDTH = 390;
const PLAN_WIDTH = 200;
const HEIGHT = 346;

/**
 * The set-up as HTML text: two drawings with title and description, and the list of their parts.
 */
export const renderSetup = (setup: Setup): string => {
  const id = setup.id ?? 'setup';
  const said = SETUP_TEXTS[setup.language];
  const { shape, thermometer, gauge, source } = setup;
  const from = said.lightFrom[setup.lightFrom];
  const side = {
    id: `${id}-side`,
    width: SIDE_WIDTH,
    height: HEIGHT,
    title: said.titleFromSide(setup.title),
    description: said.describeSide(said.shapes[shape], said.thermometers[thermometer], said.gauges[gauge], said.sources[source]),
    className: 'setup-side',
  };
  const plan = {
    id: `${id}-plan`,
    width: PLAN_WIDTH,
    height: HEIGHT,
    title: said.titleFromAbove(setup.title),
    description: said.describeAbove(from),
    className: 'setup-plan',
  };
  const parts = [setup.vessel, setup.thermometerLabel, setup.gaugeLabel, setup.valveLabel, setup.sourceLabel, `${setup.light}, ${from}`, setup.backing];
  return `<div class="setup">${drawing(side, drawSide(setup))}${drawing(plan, drawPlan(setup))}<ol class="parts">${parts.map((part) => `<li>${escape(part)}</li>`).join('')}</ol></div>`;
};
