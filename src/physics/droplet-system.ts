/**
 * The equations of a cloud in air whose pressure follows a straight line in time: droplets of many sizes that
 * share one gas. Unknowns: a measure of the radius of each class; enthalpy of air, vapor and liquid; total water.
 * Vapor is total water less liquid, so that no step can gain or lose any; the temperature follows from the
 * enthalpy, so that latent heat is neither gained nor lost. Both per kg of dry air.
 *
 * The measure y of a radius r is y = ln(exp(r²/s²) − 1), with s the droplet's critical radius: for haze twice the
 * logarithm of r/s, for a cloud droplet r²/s². The first keeps haze from evaporating past its particle; the second
 * rises and falls nearly evenly in time, where a logarithm would take many steps to the end of each droplet.
 *
 * Enthalpy: dH = v dp + heat from the walls, H = (c_pd + w·c_pv) T − l·L(T), for dry air, total water w and
 * liquid l. With this the droplets at equilibrium follow the reversible saturated adiabat.
 * Source: Bohren & Albrecht 1998, ch. 6.
 */
import {
  DENSITY_LIQUID_WATER,
  HEAT_CAPACITY_DRY_AIR,
  HEAT_CAPACITY_VAPOR,
  MOLAR_MASS_RATIO,
} from './constants.ts';
import {
  changeTo,
  describeGas,
  growDroplets,
  GROWTH_HIGH,
  GROWTH_LOW,
} from './droplet-growth.ts';
import { gasRates, type Wall } from './droplet-wall.ts';
import { cbrt, exp, expm1, log, log1p } from './elementary.ts';
import { enhancementFactor, latentHeatOfVaporization } from './saturation.ts';
import type { BorderedJacobian } from './rosenbrock.ts';
import type { Kelvin, Ratio, Second } from './units.ts';

/** Errors of radii that a step may make: relative, and as a share of the change of those that grow and that shrink. */
export interface RadiusTolerance {
  readonly radius: number;
  readonly growth: number;
  readonly shrinkage: number;
}

/** Droplets of one size, with the particle they formed on. */
export interface Classes {
  /** m³ */
  readonly dryRadiusCubed: Float64Array;
  readonly kappa: Float64Array;
  /** Particles per kg of dry air */
  readonly number: Float64Array;
  /** Radius about which a droplet turns from haze to cloud, m */
  readonly scale: Float64Array;
}

/** Differences that stand for the gas's derivatives: relative of pressure, K, and kg per kg. */
const PRESSURE_NUDGE = 1e-6;
const TEMPERATURE_NUDGE = 1e-3;
const VAPOR_NUDGE = 1e-7;
/** Share of the dry radius. */
const SMALLEST_TRIAL = 0.5;
const DROP_MASS = (4 / 3) * Math.PI * DENSITY_LIQUID_WATER;

/** See the head of the file. The own unknowns are measures of radii, the common ones enthalpy and total water. */
export class DropletSystem {
  readonly own: number;
  readonly classes: Classes;
  readonly wall: Wall | undefined;
  /** Condensation coefficient and thermal accommodation */
  private readonly coefficients: readonly [Ratio, Ratio];
  /** Of temperature, K; without droplets as far as the formulas of saturation go */
  readonly range: readonly [Kelvin, Kelvin];
  /** Of the state last evaluated */
  temperature = 0;
  mixingRatio = 0;
  liquid = 0;
  pressure = 0;
  /** Of the state last opened: radii in m, their squares in units of the scale's, derivatives of the measure to ln(radius) */
  readonly radius: Float64Array;
  private readonly square: Float64Array;
  private readonly stretch: Float64Array;
  /** The latter where the equations were last linearised */
  private readonly baseStretch: Float64Array;
  /** Measures of the dry radii, and the smallest radii of a trial state */
  private readonly least: Float64Array;
  private readonly smallest: Float64Array;
  private pressureStart = 0;
  private timeStart = 0;
  private pressureRate = 0;
  private heatCapacity = 0;
  /** How much warmer than the gas droplets are, of the state last evaluated, K */
  readonly warmth: Float64Array;

  constructor(classes: Classes, wall: Wall | undefined, coefficients: readonly [Ratio, Ratio]) {
    this.own = classes.number.length;
    this.range = this.own > 0 ? [GROWTH_LOW, GROWTH_HIGH] : [123, 332];
    this.classes = classes;
    this.radius = new Float64Array(this.own);
    this.square = new Float64Array(this.own);
    this.stretch = new Float64Array(this.own);
    this.baseStretch = new Float64Array(this.own);
    this.smallest = classes.dryRadiusCubed.map((cube) => SMALLEST_TRIAL * cbrt(cube));
    this.least = classes.scale.map((scale, i) => measureOf((cbrt(classes.dryRadiusCubed[i]!) / scale) ** 2));
    this.warmth = new Float64Array(this.own);
    this.wall = wall;
    this.coefficients = coefficients;
  }

  /** From `time` on the pressure goes from `pressure` at the given rate, Pa/s. */
  follow(time: Second, pressure: number, rate: number): void {
    this.timeStart = time;
    this.pressureStart = pressure;
    this.pressureRate = rate;
  }

  /** State for droplets of these radii (m) in air of this temperature and mixing ratio. */
  initialState(radii: Float64Array, temperature: Kelvin, mixingRatio: Ratio): Float64Array {
    const state = new Float64Array(this.own + 2);
    for (let i = 0; i < this.own; i++) state[i] = measureOf((radii[i]! / this.classes.scale[i]!) ** 2);
    const liquid = this.measure(state);
    const water = mixingRatio + liquid;
    state[this.own] = (HEAT_CAPACITY_DRY_AIR + water * HEAT_CAPACITY_VAPOR) * temperature - liquid * this.latentHeat(temperature);
    state[this.own + 1] = water;
    this.temperature = temperature;
    return state;
  }

  /** Works out temperature, vapor and liquid of a state; false outside the domain. */
  open(time: Second, state: Float64Array): boolean {
    const liquid = this.measure(state);
    const enthalpy = state[this.own]!;
    const water = state[this.own + 1]!;
    this.pressure = this.pressureStart + this.pressureRate * (time - this.timeStart);
    this.liquid = liquid;
    this.mixingRatio = water - liquid;
    // Of quite dry air, rounding may leave less than nothing.
    if (!(this.mixingRatio >= -1e-12 && this.mixingRatio < 0.6)) return false;
    const capacity = HEAT_CAPACITY_DRY_AIR + water * HEAT_CAPACITY_VAPOR;
    const [low, high] = this.range;
    let T = this.temperature;
    let correction = Infinity;
    for (let turn = 0; turn < 50 && Math.abs(correction) > 1e-11 * T; turn++) {
      this.heatCapacity = capacity - liquid * (this.latentHeat(T + 0.5) - this.latentHeat(T - 0.5));
      correction = (enthalpy + liquid * this.latentHeat(T) - capacity * T) / this.heatCapacity;
      T += correction;
      if (!(T >= low && T <= high)) return false;
    }
    this.temperature = T;
    return true;
  }

  /** Of vaporization, J/kg; without droplets none is asked for, and temperatures may be beyond its formula. */
  private latentHeat(T: Kelvin): number {
    return this.own > 0 ? latentHeatOfVaporization(T) : 0;
  }

  evaluate(time: Second, state: Float64Array, rate: Float64Array): boolean {
    if (!this.open(time, state)) return false;
    if (this.own > 0) this.grow(rate);
    for (let i = 0; i < this.own; i++) rate[i]! *= this.stretch[i]!;
    rate.set(gasRates(this.temperature, this.pressure, this.mixingRatio, this.pressureRate, this.wall), this.own);
    return true;
  }

  /** Rates of the logarithms of the radii, and {@link warmth}, of the state last opened. */
  grow(rate: Float64Array): void {
    const { dryRadiusCubed, kappa } = this.classes;
    const gas = describeGas(this.temperature, this.pressure, this.mixingRatio, ...this.coefficients);
    growDroplets(gas, this.radius, dryRadiusCubed, kappa, rate, this.warmth);
  }

  /** Rates and derivatives of the state last opened. */
  linearize(rate: Float64Array, jacobian: BorderedJacobian): void {
    const { own, temperature: T, pressure: p, mixingRatio: q, radius, square, stretch, coefficients, heatCapacity, pressureRate, wall } = this;
    const { dryRadiusCubed, kappa, number } = this.classes;
    const { diagonal, sumGradient, bySum, byFirst, bySecond, byTime } = jacobian;
    // Toward the middle of the range of pressures.
    const nudge = p < 5e4 ? PRESSURE_NUDGE : -PRESSURE_NUDGE;
    const denser = p * (1 + nudge);
    if (own > 0) {
      const gas = describeGas(T, p, q, ...coefficients);
      const warmer = changeTo(describeGas(T + TEMPERATURE_NUDGE, p, q, ...coefficients), gas, TEMPERATURE_NUDGE);
      const enhancement = (enhancementFactor(T, denser) / enhancementFactor(T, p) - 1) / nudge;
      growDroplets(gas, radius, dryRadiusCubed, kappa, rate, this.warmth, [diagonal, byTime, byFirst, bySecond], warmer, enhancement);
    }
    const vaporByRatio = ((p / T) * MOLAR_MASS_RATIO) / (MOLAR_MASS_RATIO + q) ** 2;
    for (let i = 0; i < own; i++) {
      const r = radius[i]!;
      const widening = stretch[i]!;
      this.baseStretch[i] = widening;
      diagonal[i]! += rate[i]! * (2 - widening + 2 * square[i]!);
      sumGradient[i] = (3 * DROP_MASS * number[i]! * r * r * r) / widening;
      rate[i]! *= widening;
      byFirst[i]! *= widening;
      byTime[i]! *= widening;
      bySecond[i]! *= widening * vaporByRatio;
    }
    const common = gasRates(T, p, q, pressureRate, wall);
    const hot = gasRates(T + TEMPERATURE_NUDGE, p, q, pressureRate, wall);
    const dense = gasRates(T, denser, q, pressureRate, wall);
    const moist = gasRates(T, p, q + VAPOR_NUDGE, pressureRate, wall);
    rate.set(common, own);
    common.forEach((base, i) => {
      byFirst[own + i] = (hot[i]! - base) / TEMPERATURE_NUDGE;
      byTime[own + i] = (dense[i]! - base) / nudge;
      bySecond[own + i] = (moist[i]! - base) / VAPOR_NUDGE;
    });
    // From temperature, logarithm of pressure, and vapor to the sum and the common unknowns that they follow from, and to time.
    const byLiquid = this.latentHeat(T);
    const byWater = -HEAT_CAPACITY_VAPOR * T;
    for (let i = 0; i < own + 2; i++) {
      const byVapor = bySecond[i]!;
      const byEnthalpy = byFirst[i]! / heatCapacity;
      bySum[i] = byEnthalpy * byLiquid - byVapor;
      byFirst[i] = byEnthalpy;
      bySecond[i] = byEnthalpy * byWater + byVapor;
      byTime[i]! *= pressureRate / p;
    }
  }

  /** Works out radii; returns the liquid water, kg per kg of dry air. */
  private measure(state: Float64Array): Ratio {
    const { radius, square, stretch, smallest } = this;
    const { dryRadiusCubed, number, scale } = this.classes;
    let sum = 0;
    for (let i = 0; i < this.own; i++) {
      const y = state[i]!;
      if (y > 36) {
        square[i] = y;
        stretch[i] = 2 * y;
      } else {
        const exponential = exp(Math.max(y, -300));
        square[i] = log1p(exponential);
        stretch[i] = 2 * square[i]! * (1 + 1 / exponential);
      }
      const r = scale[i]! * Math.sqrt(square[i]!);
      // A stage of a step may fall far below the dry particle, where Kelvin's factor would overflow.
      radius[i] = Math.max(r, smallest[i]!);
      sum += number[i]! * (r * r * r - dryRadiusCubed[i]!);
    }
    return DROP_MASS * sum;
  }

  /** Brings droplets that a step has left smaller than their dry particles back to these. */
  confine(state: Float64Array): void {
    for (let i = 0; i < this.own; i++) if (state[i]! < this.least[i]!) state[i] = this.least[i]!;
  }

  /** Error of a step of the radii over what is tolerated, root mean square. */
  radiusError(state: Float64Array, next: Float64Array, error: Float64Array, tolerance: RadiusTolerance): number {
    if (this.own === 0) return 0;
    let squares = 0;
    for (let i = 0; i < this.own; i++) {
      const stretch = this.baseStretch[i]!;
      const change = next[i]! - state[i]!;
      // Changes beyond a factor of e say nothing more.
      const swift = change > 0 ? tolerance.growth * Math.min(change, stretch) : tolerance.shrinkage * Math.min(-change, stretch);
      const share = error[i]! / (tolerance.radius * stretch + swift);
      squares += share * share;
    }
    return Math.sqrt(squares / this.own);
  }

  /** Small change of the temperature that goes with small changes of liquid, enthalpy and total water. */
  temperatureError(liquid: number, enthalpy: number, water: number): number {
    return (this.latentHeat(this.temperature) * liquid + enthalpy - HEAT_CAPACITY_VAPOR * this.temperature * water) / this.heatCapacity;
  }
}

function measureOf(square: number): number {
  return square > 36 ? square : log(expm1(square));
}
