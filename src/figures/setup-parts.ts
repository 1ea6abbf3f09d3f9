/** An apparatus as the set-up drawing shows it: each part named, with what it is worth. */
import type { Apparatus } from '../tables/conditions.ts';
import { SETUP_TEXTS, type Language } from '../texts/index.ts';
import { renderSetup } from './setup.ts';

/** Its figures as they are printed. */
export interface ApparatusFigures {
  readonly volume: string;
  readonly ratedLowest: string;
  readonly ratedHighest: string;
  readonly gaugeResolution: string;
  /** Of the source: a stroke, a minute, a squeeze, what it is pumped up to. */
  readonly amount: string;
}

/** A number and its unit stay on one line. */
const held = (figure: string): string => figure.replaceAll(' ', '\u00a0');

/** The drawing of an apparatus as HTML text. */
export function renderApparatus(id: string, language: Language, { title, vessel, source, gauge, thermometer, light, backing, valve }: Apparatus, figures: ApparatusFigures): string {
  const said = SETUP_TEXTS[language];
  const sources = { 'stroke-pump': said.handPump, 'steady-pump': said.pump, squeeze: said.squeezed, pressurise: said.pumpedUp };
  return renderSetup({
    id,
    language,
    title,
    shape: vessel.shape,
    vessel: said.vessel(said.materials[vessel.material], said.shapes[vessel.shape], held(figures.volume), held(figures.ratedLowest), held(figures.ratedHighest)),
    source: source.kind,
    sourceLabel: sources[source.kind](held(figures.amount)),
    gauge: gauge.kind,
    gaugeLabel: said.gaugeLabel(said.gauge[gauge.kind], gauge.unit, held(figures.gaugeResolution)),
    thermometer: thermometer.kind,
    thermometerLabel: `${said.thermometer[thermometer.kind]}: ${thermometer.position}`,
    valveLabel: valve,
    light: light.kind,
    lightFrom: light.from,
    backing,
  });
}
