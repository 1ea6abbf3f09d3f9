/** Air through a small opening: how much flows, and how long a vessel takes to come to the room's pressure. */
import { GAS_CONSTANT_DRY_AIR, HEAT_CAPACITY_DRY_AIR } from './constants.ts';
import { inRange } from './range.ts';
import type { CubicMeter, Kelvin, Pascal, Quantity, Ratio, Second } from './units.ts';

/** kg/s */
export type KilogramPerSecond = Quantity<'kg/s'>;

/** Ratio of the heat capacities of dry air. */
const GAMMA: Ratio = HEAT_CAPACITY_DRY_AIR / (HEAT_CAPACITY_DRY_AIR - GAS_CONSTANT_DRY_AIR);

/** Pressure behind an opening over that before it at which the flow reaches the speed of sound: 0.528 for air. */
export const CRITICAL_PRESSURE_RATIO: Ratio = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1));

/**
 * Flow of air through a small opening.
 * @param flow.area m², above 0 to 1
 * @param flow.dischargeCoefficient share of the ideal flow, above 0 to 1; 0.6, that of a sharp edge, unless given
 * @param flow.upstreamPressure absolute, Pa, 10² to 10⁶
 * @param flow.downstreamPressure absolute, Pa, 0 to the upstream pressure
 * @param flow.temperature upstream, K, 200 to 400
 * @returns kg/s
 * @throws RangeError outside a range
 * Source: isentropic flow of an ideal gas, choked below the critical ratio; NACA Report 1135 (1953), eq. 99.
 */
export function openingMassFlow(flow: {
  readonly area: number;
  readonly dischargeCoefficient?: Ratio;
  readonly upstreamPressure: Pascal;
  readonly downstreamPressure: Pascal;
  readonly temperature: Kelvin;
}): KilogramPerSecond {
  const area = inRange('area', flow.area, 1e-12, 1, 'm²');
  const coefficient = inRange('dischargeCoefficient', flow.dischargeCoefficient ?? 0.6, 1e-3, 1);
  const upstream = inRange('upstreamPressure', flow.upstreamPressure, 100, 1e6, 'Pa');
  const downstream = inRange('downstreamPressure', flow.downstreamPressure, 0, upstream, 'Pa');
  const temperature = inRange('temperature', flow.temperature, 200, 400, 'K');
  return (coefficient * area * upstream * flowFunction(downstream / upstream)) / Math.sqrt(GAS_CONSTANT_DRY_AIR * temperature);
}

/** Mass flow times √(RT) over area and upstream pressure. */
function flowFunction(ratio: Ratio): number {
  const r = Math.max(ratio, CRITICAL_PRESSURE_RATIO);
  return Math.sqrt(Math.max(0, ((2 * GAMMA) / (GAMMA - 1)) * (r ** (2 / GAMMA) - r ** ((GAMMA + 1) / GAMMA))));
}

const INTERVALS = 400;

/**
 * Time in which a vessel comes to the room's pressure through an opening, so fast that no heat passes the walls.
 * @param vessel.volume of the gas, m³, 10⁻⁹ to 10
 * @param vessel.area of the opening, m², above 0 to 1
 * @param vessel.dischargeCoefficient as in {@link openingMassFlow}
 * @param vessel.pressure in the vessel at first, absolute, Pa, 10² to 10⁶, above or below the room's
 * @param vessel.roomPressure absolute, Pa, 10² to 10⁶
 * @param vessel.temperature of the gas in the vessel at first and of the room, K, 200 to 400
 * @returns s
 * @throws RangeError outside a range
 * Source: energy of the gas in the vessel: V dp/dt = γRT × mass flow, T that of the gas that flows; outflow cools what stays
 *   along the adiabat.
 */
export function equalizingTime(vessel: {
  readonly volume: CubicMeter;
  readonly area: number;
  readonly dischargeCoefficient?: Ratio;
  readonly pressure: Pascal;
  readonly roomPressure: Pascal;
  readonly temperature: Kelvin;
}): Second {
  const volume = inRange('volume', vessel.volume, 1e-9, 10, 'm³');
  const first = inRange('pressure', vessel.pressure, 100, 1e6, 'Pa');
  const room = inRange('roomPressure', vessel.roomPressure, 100, 1e6, 'Pa');
  const pressureRate = (pressure: Pascal): number => {
    const isOut = pressure > room;
    const temperature = isOut ? vessel.temperature * (pressure / first) ** (1 - 1 / GAMMA) : vessel.temperature;
    const flow = openingMassFlow({
      ...vessel,
      upstreamPressure: Math.max(pressure, room),
      downstreamPressure: Math.min(pressure, room),
      temperature: Math.max(200, temperature),
    });
    return (GAMMA * GAS_CONSTANT_DRY_AIR * temperature * flow) / volume;
  };
  const difference = Math.abs(first - room);
  if (difference === 0) return 0;
  // In the root of the difference the integrand stays finite to the end, where the flow vanishes.
  const top = Math.sqrt(difference);
  const integrand = (u: number): number => (2 * u) / pressureRate(room + Math.sign(first - room) * u * u);
  // The midpoint rule never asks for the end itself.
  let sum = 0;
  for (let i = 0; i < INTERVALS; i++) sum += integrand((top * (i + 0.5)) / INTERVALS);
  return (sum * top) / INTERVALS;
}
