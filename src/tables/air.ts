/** The air that a state speaks of: in the room, in the vessel at its start and at its two ends, in a rising parcel. */
import {
  cloudOnset, expandWithCondensation, expandWithoutCondensation, moistAir, noParticleLimit, risingParcel, stationPressure, type MoistAir, type NucleationLimit,
  type ParcelState,
} from '../physics/index.ts';
import { stateWith, type State } from './conditions.ts';
import type { Parameters } from './parameters.ts';
import { remembered } from './remembered.ts';

/** The air in the vessel before it expands. */
export const vesselAir = /* @__PURE__ */ remembered((state): MoistAir =>
  moistAir({ temperature: state.startTemperature, pressure: state.startPressure, relativeHumidity: trueHumidity(state.startHumidity, state) }));
/** The air of the room. */
export const roomAir = /* @__PURE__ */ remembered((state): MoistAir =>
  moistAir({ temperature: state.roomTemperature, pressure: state.roomPressure, relativeHumidity: trueHumidity(state.roomHumidity, state) }));
const trueHumidity = (humidity: number, { formulaError }: State): number => Math.min(1, humidity * (1 + formulaError));
/** The air that rises. */
export const risingAir = (state: State, air: 'vessel' | 'room' = 'room'): MoistAir => (air === 'vessel' ? vesselAir(state) : roomAir(state));

/** Absolute pressure in the vessel after a fall of pressure as read off the gauge. */
export const pressureAfter = (state: State, drop: number): number => state.startPressure - drop - state.gaugeError;
/** Without droplets. */
export const clear = /* @__PURE__ */ remembered((state, drop: number) => expandWithoutCondensation(vesselAir(state), pressureAfter(state, drop)));
/** With droplets. */
export const cloudy = /* @__PURE__ */ remembered((state, drop: number) => expandWithCondensation(vesselAir(state), pressureAfter(state, drop)));
/** Where the air in the vessel becomes saturated. */
export const onset = /* @__PURE__ */ remembered((state) => cloudOnset(vesselAir(state)));
/** Where cloud forms in the vessel without particles, on ions or on nothing, whichever comes first; undefined where neither does. */
export const limitWithoutParticles = /* @__PURE__ */ remembered((state): NucleationLimit | undefined => {
  const { ion, homogeneous } = noParticleLimit(vesselAir(state));
  const reached = [ion, homogeneous].filter((limit) => limit !== undefined);
  return reached.sort((a, b) => b.pressure - a.pressure)[0];
});

const parcels = new WeakMap<MoistAir, Map<number, ParcelState>>();

/** A rising parcel at one height. Heights that {@link parcelsAt} was asked for beforehand cost nothing. */
export const parcelAt = (state: State, height: number, air?: 'vessel' | 'room'): ParcelState =>
  parcels.get(risingAir(state, air))?.get(height) ?? parcelsAt(state, [height], air)[0]!;

/** A rising parcel at several heights, in one ascent. */
export function parcelsAt(state: State, heights: readonly number[], air?: 'vessel' | 'room'): readonly ParcelState[] {
  const rising = risingAir(state, air);
  const ofAir = parcels.get(rising) ?? new Map<number, ParcelState>();
  parcels.set(rising, ofAir);
  const found = risingParcel(rising, { heights });
  found.forEach((parcel, i) => ofAir.set(heights[i]!, parcel));
  return found;
}

/** The state in which something is computed: the kit's, with what the parameters replace. */
export function stateAt(state: State, at: Parameters): State {
  const { humidity, temperature, elevation } = at;
  return humidity === undefined && temperature === undefined && elevation === undefined ? state : replaced(state, humidity, temperature, elevation);
}

const replaced = /* @__PURE__ */ remembered(
  (state, humidity: number | undefined, temperature: number | undefined, elevation: number | undefined): State => {
    const roomPressure = elevation === undefined ? undefined : stationPressure(elevation) + state.weather;
    return stateWith(state, {
      ...(roomPressure === undefined ? {} : { roomPressure, startPressure: state.startPressure - state.roomPressure + roomPressure }),
      ...(temperature === undefined ? {} : { roomTemperature: temperature, startTemperature: temperature }),
      ...(humidity === undefined ? {} : { startHumidity: humidity }),
    });
  },
);
