/** The set-up drawing: vessel, thermometer, gauge, valve and source of pressure from the side; light, backing and class from above; the parts by number. */
import { drawPlan } from './setup-plan.ts';
import { drawSide } from './setup-side.ts';
import { drawing, escape } from './svg.ts';

/** What the drawing needs of an apparatus; every text is printed as it stands. */
export interface Setup {
  readonly id?: string;
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

const SOURCE_WORDS: Record<Setup['source'], string> = {
  'stroke-pump': 'A pump worked by hand (5) draws air out through the valve (4)',
  'steady-pump': 'A running pump (5) draws air out through the valve (4)',
  squeeze: 'Hands press the sides of the vessel and let go (5); the valve (4) is closed',
  pressurise: 'A pump (5) presses air in through the valve (4), which then lets it out',
};

const THERMOMETER_WORDS: Record<Setup['thermometer'], string> = {
  stem: 'a stem thermometer (2) through the stopper',
  thermocouple: 'a thermocouple (2) on a thin wire through the stopper',
  digital: 'the probe of a digital thermometer (2) through the stopper',
};

const SIDE_WIDTH = 390;
const PLAN_WIDTH = 200;
const HEIGHT = 346;

/**
 * The set-up as HTML text: two drawings with title and description, and the list of their parts.
 */
export const renderSetup = (setup: Setup): string => {
  const id = setup.id ?? 'setup';
  const side = {
    id: `${id}-side`,
    width: SIDE_WIDTH,
    height: HEIGHT,
    title: `${setup.title}, from the side`,
    description: `A closed ${setup.shape} (1) with ${THERMOMETER_WORDS[setup.thermometer]}. A ${setup.gauge} gauge (3) sits between vessel and valve. ${SOURCE_WORDS[setup.source]}. The numbers are those of the list of parts.`,
    className: 'setup-side',
  };
  const plan = {
    id: `${id}-plan`,
    width: PLAN_WIDTH,
    height: HEIGHT,
    title: `${setup.title}, from above`,
    description: `The light (6) comes from the ${setup.lightFrom}; the backing (7) stands behind the vessel (1); the class looks from the front.`,
    className: 'setup-plan',
  };
  const parts = [setup.vessel, setup.thermometerLabel, setup.gaugeLabel, setup.valveLabel, setup.sourceLabel, `${setup.light}, from the ${setup.lightFrom}`, setup.backing];
  return `<div class="setup">${drawing(side, drawSide(setup))}${drawing(plan, drawPlan(setup))}<ol class="parts">${parts.map((part) => `<li>${escape(part)}</li>`).join('')}</ol></div>`;
};
