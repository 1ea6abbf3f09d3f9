/** A rising parcel of air: clear up to its cloud base, with droplets above, in a column of its own density. */
import { STANDARD_GRAVITY } from './constants.ts';
import { exp, log } from './elementary.ts';
import { cloudOnset, expandWithCondensation, expandWithoutCondensation, type CloudyAir } from './expansion.ts';
import type { LiftingLevel } from './lifting-levels.ts';
import type { MoistAir } from './moist-air.ts';
import { inRange } from './range.ts';
import type { Kelvin, KilogramPerCubicMeter, Meter, Pascal, Ratio } from './units.ts';

export {
  boltonCondensationTemperature,
  liftingCondensationLevel,
  liftingDepositionLevel,
  type LiftingLevel,
} from './lifting-levels.ts';

/** A rising parcel at one height. */
export interface ParcelState {
  /** Above the start, m */
  readonly height: Meter;
  /** Absolute, Pa */
  readonly pressure: Pascal;
  /** K */
  readonly temperature: Kelvin;
  /** Saturation ratio over liquid water; 1 within the cloud */
  readonly relativeHumidity: Ratio;
  /** kg per kg of dry air; exactly 0 below the cloud base */
  readonly liquidWater: Ratio;
  /** kg per m³ of the parcel */
  readonly liquidWaterContent: KilogramPerCubicMeter;
}

const LOWEST_PRESSURE: Pascal = 5e3;
const GREATEST_HEIGHT: Meter = 2e4;
/** Of ln p: short enough that the quadrature's error stays below a micrometer, see the tests. */
const LONGEST_PANEL = 0.15;
/** Of ln p: after it the next step would be below its square, 10⁻¹⁴. */
const LAST_STEP = 1e-7;
/** Gauss–Legendre nodes and weights of five points on (−1, 1): Abramowitz & Stegun 1964, eq. 25.4.29; in closed form. */
const GAUSS: readonly (readonly [node: number, weight: number])[] = /* @__PURE__ */ [-1, 0, 1].flatMap((root) => {
  const node = Math.sqrt(5 + 2 * root * Math.sqrt(10 / 7)) / 3;
  const weight = (322 - 13 * root * Math.sqrt(70)) / 900;
  return root === 0 ? [[0, 128 / 225] as const] : ([[node, weight], [-node, weight]] as const);
});

/**
 * The parcel at the given heights: it cools as it expands, without exchange of heat; above its cloud base
 * droplets keep the vapor at saturation and are carried along. Pressure falls by the weight of the
 * parcel's own air and droplets.
 * @param air the parcel at its start, not supersaturated
 * @param path.heights above the start, m, each 0 to 20 000
 * @returns one state for each height, in the given order
 * @throws RangeError outside a range, if the pressure would fall below 5·10³ Pa, or if droplets would be
 *   colder than −38 °C
 * Source: hydrostatic equation; {@link expandWithCondensation}.
 */
export function risingParcel(air: MoistAir | CloudyAir, path: { heights: readonly Meter[] }): ParcelState[] {
  const column = columnOf(air);
  return path.heights.map((height) => {
    const z = inRange('height', height, 0, GREATEST_HEIGHT, 'm');
    const pressure = pressureAt(column, z);
    const { temperature, saturationRatio, liquidWater, liquidWaterContent } = expandWithCondensation(air, pressure);
    return { height: z, pressure, temperature, relativeHumidity: saturationRatio, liquidWater, liquidWaterContent };
  });
}

/**
 * Height to which the parcel must rise to have the given pressure.
 * @param air the parcel at its start, not supersaturated
 * @param pressure absolute, Pa, 5·10³ to that of `air`
 * @returns m above the start
 * @throws RangeError outside the range, or if droplets would be colder than −38 °C
 * Source: as {@link risingParcel}.
 */
export function heightOfEqualPressure(air: MoistAir | CloudyAir, pressure: Pascal): Meter {
  const p = inRange('pressure', pressure, LOWEST_PRESSURE, air.pressure, 'Pa');
  expandWithCondensation(air, p); // refuses what has no answer before it is integrated over
  const column = columnOf(air);
  if (p <= column.base.pressure) return column.base.height + cloudDepth(column, p);
  return clearHeight(air, expandWithoutCondensation(air, p).temperature);
}

/**
 * Height of a rise without condensation that cools the parcel to the given temperature.
 * @param air the parcel at its start, without liquid water
 * @param temperature K, 123 to that of `air`
 * @returns m above the start
 * @throws RangeError outside the range, or if the pressure would fall below 5·10³ Pa
 * Source: adiabatic rise of a mixture of ideal gases, dT/dz = −g/c_p; e.g. Wallace & Hobbs 2006, eq. 3.53.
 */
export function heightOfEqualTemperature(air: MoistAir | CloudyAir, temperature: Kelvin): Meter {
  const T = inRange('temperature', temperature, 123, air.temperature, 'K');
  expandWithoutCondensation(air, air.pressure * (T / air.temperature) ** (air.heatCapacity / air.gasConstant)); // refuses liquid water and too low a pressure
  return clearHeight(air, T);
}

/**
 * Cloud base of the rising parcel.
 * @param air with some vapor; if it is saturated, the base is at its start
 * @returns pressure in Pa, absolute, temperature in K, and height above the start in m
 * @throws RangeError if saturation is not reached above 5·10³ Pa, or only below −38 °C
 * Source: {@link cloudOnset}, in the column of {@link risingParcel}.
 */
export function cloudBase(air: MoistAir | CloudyAir): LiftingLevel {
  const { pressure, temperature } = cloudOnset(air);
  return { height: clearHeight(air, temperature), pressure, temperature };
}

interface Column {
  readonly air: MoistAir | CloudyAir;
  /** Where the clear part ends; far above everything if no cloud forms */
  readonly base: { readonly height: Meter; readonly pressure: Pascal };
}

function columnOf(air: MoistAir | CloudyAir): Column {
  return { air, base: baseOrNone(air) ?? { height: Infinity, pressure: 0 } };
}

function baseOrNone(air: MoistAir | CloudyAir): LiftingLevel | undefined {
  try {
    return cloudBase(air);
  } catch (error) {
    // Too dry for a cloud: the clear formulas hold throughout, and expandWithCondensation still refuses ice.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Without condensation the hydrostatic equation integrates to this exactly: g·dz = −c_p·dT. */
function clearHeight(air: MoistAir, temperature: Kelvin): Meter {
  return ((air.temperature - temperature) * air.heatCapacity) / STANDARD_GRAVITY;
}

function pressureAt(column: Column, height: Meter): Pascal {
  const { air, base } = column;
  if (height <= base.height) {
    const temperature = air.temperature - (height * STANDARD_GRAVITY) / air.heatCapacity;
    const pressure = air.pressure * Math.max(0, temperature / air.temperature) ** (air.heatCapacity / air.gasConstant);
    return inRange(`pressure at a height of ${height} m`, pressure, LOWEST_PRESSURE, air.pressure, 'Pa');
  }
  return cloudPressure(column, height - base.height);
}

/**
 * Newton's steps upward, each no longer than a panel. The scale height shrinks upward, so that no step
 * passes the goal and no state beyond it, which may have no answer, is asked for.
 */
function cloudPressure(column: Column, depth: Meter): Pascal {
  let lnP = log(column.base.pressure);
  let left = depth;
  for (;;) {
    const step = Math.min(LONGEST_PANEL, left / scaleHeight(column, lnP));
    if (step < LAST_STEP) return pressureOf(column, lnP - step);
    left -= panelDepth(column, lnP, lnP - step);
    lnP -= step;
  }
}

function cloudDepth(column: Column, pressure: Pascal): Meter {
  const lnBottom = log(column.base.pressure);
  const lnTop = log(pressure);
  const panels = Math.max(1, Math.ceil((lnBottom - lnTop) / LONGEST_PANEL));
  const edge = (i: number): number => lnBottom + ((lnTop - lnBottom) * i) / panels;
  let depth = 0;
  for (let i = 0; i < panels; i++) depth += panelDepth(column, edge(i), edge(i + 1));
  return depth;
}

function panelDepth(column: Column, lnBottom: number, lnTop: number): Meter {
  const half = (lnBottom - lnTop) / 2;
  const sum = GAUSS.reduce((total, [node, weight]) => total + weight * scaleHeight(column, lnTop + half * (1 + node)), 0);
  return half * sum;
}

/** p/(ρ·g), the density ρ being that of air, vapor and droplets together. */
function scaleHeight(column: Column, lnP: number): Meter {
  const p = pressureOf(column, lnP);
  const { density, liquidWaterContent } = expandWithCondensation(column.air, p);
  return p / ((density + liquidWaterContent) * STANDARD_GRAVITY);
}

/** The exponential of a logarithm may miss by a rounding, and the base may be the end of the range. */
function pressureOf({ base }: Column, lnP: number): Pascal {
  return Math.min(base.pressure, exp(lnP));
}
