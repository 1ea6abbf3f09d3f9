/** Evaluators of droplets.json: diffusion in air, growth of single droplets, rising parcels of air. */
import { GAS_CONSTANT_DRY_AIR, STANDARD_GRAVITY } from '../../src/physics/constants.ts';
import {
  meanFreePathOfAir,
  thermalConductivityOfAir,
  vaporDiffusivity,
  viscosityOfAir,
} from '../../src/physics/diffusion.ts';
import { condense, growthRate, type CondensationRun, type PressurePoint } from '../../src/physics/droplets.ts';
import { moistAir, moistAirOfMixingRatio, type MoistAir } from '../../src/physics/moist-air.ts';
import { input as given, temperatureInput, type Evaluator, type Inputs } from './row.ts';

/**
 * Pressure in a parcel that rises at a constant speed, in 50 straight pieces: dp/dt = −ρgw. The parcel
 * cools by 8 K/km, between the dry and the saturated rate; 2 K/km more or less change dp/dt by 0.1 % in 300 m.
 */
function rise(start: MoistAir, speed: number, height: number): PressurePoint[] {
  const steps = 50;
  const lapse = 0.008;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const z = (height * i) / steps;
    const exponent = STANDARD_GRAVITY / (GAS_CONSTANT_DRY_AIR * lapse);
    return { time: z / speed, pressure: start.pressure * (1 - (lapse * z) / start.virtualTemperature) ** exponent };
  });
}

/** Inputs mode1_…, mode2_… (and so on) describe the aerosol, radii as the sources give them. */
function risenParcel(inputs: Inputs): CondensationRun {
  const start = moistAir({
    temperature: given(inputs, 'temperature_K'),
    pressure: given(inputs, 'pressure_Pa'),
    relativeHumidity: given(inputs, 'relativeHumidity'),
  });
  const modes = [1, 2, 3]
    .filter((i) => inputs[`mode${i}_number_per_cm3`] !== undefined)
    .map((i) => ({
      medianDryDiameter: 2e-6 * given(inputs, `mode${i}_radius_um`),
      geometricStandardDeviation: given(inputs, `mode${i}_spread`),
      kappa: given(inputs, `mode${i}_kappa`),
      number: 1e6 * given(inputs, `mode${i}_number_per_cm3`),
    }));
  return condense({
    start,
    modes,
    pressureHistory: rise(start, given(inputs, 'updraft_m_per_s'), given(inputs, 'height_m')),
    condensationCoefficient: given(inputs, 'condensationCoefficient'),
    thermalAccommodation: inputs['thermalAccommodation'] ?? 1,
  });
}

/** Air of 0.05 % supersaturation, say. */
function supersaturated(inputs: Inputs, percent: number): MoistAir {
  const saturated = moistAir({ temperature: temperatureInput(inputs), pressure: given(inputs, 'pressure_Pa'), relativeHumidity: 1 });
  const vaporPressure = saturated.vaporPressure * (1 + percent / 100);
  const mixingRatio = (saturated.mixingRatio * vaporPressure * (saturated.pressure - saturated.vaporPressure)) /
    (saturated.vaporPressure * (saturated.pressure - vaporPressure));
  return moistAirOfMixingRatio(saturated.temperature, saturated.pressure, mixingRatio);
}

/** Time in which a droplet on a grain of salt grows from one radius to another: Simpson's rule for dr over dr/dt. */
function growthTime(inputs: Inputs): number {
  const air = supersaturated(inputs, given(inputs, 'supersaturation_percent'));
  const saltDensity = 2165;
  const dryDiameter = Math.cbrt((6e-3 * given(inputs, 'saltMass_g')) / (Math.PI * saltDensity));
  const from = 1e-6 * given(inputs, 'from_um');
  const to = 1e-6 * given(inputs, 'to_um');
  const steps = 200;
  const width = (to - from) / steps;
  const slowness = (i: number): number => 1 / growthRate({ diameter: 2 * (from + width * i), dryDiameter, kappa: 1.28, air });
  let sum = slowness(0) + slowness(steps);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * slowness(i);
  return (sum * width) / 3;
}

/** r dr/dt over the supersaturation, µm²/s, of a drop so large that neither its curvature nor gas kinetics matter. */
function growthCoefficient(inputs: Inputs): number {
  const percent = 0.1;
  const radius = 4e-4;
  return ((growthRate({ diameter: 2 * radius, air: supersaturated(inputs, percent) }) * radius) / (percent / 100)) * 1e12;
}

export const evaluators: Record<string, Evaluator> = {
  vaporDiffusivity: (i) => vaporDiffusivity(temperatureInput(i), given(i, 'pressure_Pa')),
  thermalConductivityOfAir: (i) => thermalConductivityOfAir(temperatureInput(i)),
  viscosityOfAir: (i) => viscosityOfAir(temperatureInput(i)),
  meanFreePathOfAir: (i) => meanFreePathOfAir(temperatureInput(i), given(i, 'pressure_Pa')),
  growthTime,
  growthCoefficient,
  peakSupersaturation: (i) => 100 * (risenParcel(i).peakSaturationRatio - 1),
  activatedFraction: (i) => risenParcel(i).activatedFraction,
  liquidAfterRise: (i) => 1000 * risenParcel(i).final.air.liquidWater,
};
