/**
 * The quantities that tables and sentences show: each a pure function of a state and of the
 * parameters it is asked at. One entry per quantity; `<Value of="…">` and table columns use the same.
 */
import {
  cloudBase, cloudOnset, expandWithCondensation, expandWithoutCondensation, heightOfEqualPressure, heightOfEqualTemperature,
  moistAir, noParticleLimit, pressureAltitude, risingParcel, stationPressure, type MoistAir,
} from '../physics/index.ts';
import type { State } from './conditions.ts';
import type { DimensionName } from './display.ts';
import type { Cell } from './spread.ts';

/** What a quantity may be asked at; SI. */
export interface Parameters {
  /** Fall of pressure below the start, Pa. */
  readonly drop?: number;
  /** Height above the room, m. */
  readonly height?: number;
  /** A gauge's reading against the room, Pa. */
  readonly reading?: number;
  /** Relative humidity in the vessel in place of the kit's, fraction. */
  readonly humidity?: number;
  /** Temperature of room and vessel in place of the kit's, K. */
  readonly temperature?: number;
  /** Elevation of a room in the standard atmosphere in place of the kit's, m. */
  readonly elevation?: number;
  /** Which air rises: that of the vessel or that of the room. */
  readonly air?: 'vessel' | 'room';
}

export type ParameterName = keyof Parameters;

/** What each parameter is: its dimension for reading and printing, its range in SI. */
export const PARAMETERS: Record<Exclude<ParameterName, 'air'>, { dimension: DimensionName; low: number; high: number; meaning: string }> = {
  drop: { dimension: 'pressure', low: 0, high: 4e5, meaning: 'fall of pressure below the start' },
  height: { dimension: 'height', low: 0, high: 8000, meaning: 'height above the room' },
  reading: { dimension: 'pressure', low: -1e5, high: 4e5, meaning: 'gauge reading against the room' },
  humidity: { dimension: 'fraction', low: 0.01, high: 1, meaning: 'relative humidity in the vessel' },
  temperature: { dimension: 'temperature', low: 243.15, high: 328.15, meaning: 'temperature of room and vessel' },
  elevation: { dimension: 'height', low: -430, high: 5000, meaning: 'elevation of the room' },
};

export interface QuantityKind {
  readonly label: string;
  readonly dimension: DimensionName;
  /** Parameters without which it has no meaning; the planned drop stands in for a missing `drop`. */
  readonly needs: readonly ParameterName[];
  /** Parameters that may replace the kit's own conditions. */
  readonly takes: readonly ParameterName[];
  readonly compute: (state: State, at: Parameters & { readonly drop: number }) => number;
}

const ROOM = ['temperature', 'elevation'] as const;
const VESSEL = ['humidity', 'temperature', 'elevation'] as const;

/** The air in the vessel before it expands. */
export const vesselAir = (state: State): MoistAir =>
  moistAir({ temperature: state.startTemperature, pressure: state.startPressure, relativeHumidity: trueHumidity(state.startHumidity, state) });
/** The air of the room. */
export const roomAir = (state: State): MoistAir =>
  moistAir({ temperature: state.roomTemperature, pressure: state.roomPressure, relativeHumidity: trueHumidity(state.roomHumidity, state) });
const trueHumidity = (humidity: number, { formulaError }: State): number => Math.min(1, humidity * (1 + formulaError));
const risingAir = (state: State, air: 'vessel' | 'room' = 'room'): MoistAir => (air === 'vessel' ? vesselAir(state) : roomAir(state));
const pressureAfter = (state: State, drop: number): number => state.startPressure - drop - state.gaugeError;
const clear = remembered((state, drop) => expandWithoutCondensation(vesselAir(state), pressureAfter(state, drop)));
const cloudy = remembered((state, drop) => expandWithCondensation(vesselAir(state), pressureAfter(state, drop)));
const roomParcelAt = remembered((state, height) => risingParcel(roomAir(state), { heights: [height] })[0]!);
const vesselParcelAt = remembered((state, height) => risingParcel(vesselAir(state), { heights: [height] })[0]!);
const parcelAt = (state: State, height: number, air?: 'vessel' | 'room'): ReturnType<typeof roomParcelAt> =>
  (air === 'vessel' ? vesselParcelAt : roomParcelAt)(state, height);

/** Columns of one row ask for the same end state: it is computed once for each state and argument. */
function remembered<T>(compute: (state: State, at: number) => T): (state: State, at: number) => T {
  const known = new WeakMap<State, Map<number, T>>();
  return (state, at) => {
    const ofState = known.get(state) ?? new Map<number, T>();
    known.set(state, ofState);
    const result = ofState.has(at) ? ofState.get(at)! : compute(state, at);
    ofState.set(at, result);
    return result;
  };
}

const onDrop = (label: string, dimension: DimensionName, of: (state: State, drop: number) => number): QuantityKind =>
  ({ label, dimension, needs: ['drop'], takes: VESSEL, compute: (state, { drop }) => of(state, drop) });
const ofVessel = (label: string, dimension: DimensionName, of: (state: State) => number): QuantityKind =>
  ({ label, dimension, needs: [], takes: VESSEL, compute: of });
const ofRoom = (label: string, dimension: DimensionName, of: (state: State) => number): QuantityKind =>
  ({ label, dimension, needs: [], takes: ROOM, compute: of });
const onHeight = (label: string, dimension: DimensionName, of: (state: State, height: number, air?: 'vessel' | 'room') => number): QuantityKind =>
  ({ label, dimension, needs: ['height'], takes: [...VESSEL, 'air'], compute: (state, { height, air }) => of(state, height ?? 0, air) });

export const QUANTITIES = {
  roomTemperature: ofRoom('room temperature', 'temperature', (s) => s.roomTemperature),
  roomPressure: ofRoom('room pressure, absolute', 'pressure', (s) => s.roomPressure),
  roomHumidity: ofRoom('relative humidity of the room', 'fraction', (s) => s.roomHumidity),
  roomDewPoint: ofRoom('dew point of the room', 'temperature', (s) => roomAir(s).dewPoint ?? Number.NaN),
  startTemperature: ofVessel('temperature in the vessel', 'temperature', (s) => s.startTemperature),
  startPressure: ofVessel('pressure in the vessel, absolute', 'pressure', (s) => s.startPressure),
  startHumidity: ofVessel('relative humidity in the vessel', 'fraction', (s) => s.startHumidity),
  startDewPoint: ofVessel('dew point in the vessel', 'temperature', (s) => vesselAir(s).dewPoint ?? Number.NaN),
  startVaporPressure: ofVessel('vapor pressure in the vessel', 'pressure', (s) => vesselAir(s).vaporPressure),
  plannedDrop: ofVessel('planned pressure drop', 'pressure', (s) => s.plannedDrop),
  vesselVolume: ofVessel('volume of the vessel', 'volume', (s) => s.apparatus.vessel.volume),
  vesselDiameter: ofVessel('diameter of the vessel', 'length', (s) => s.apparatus.vessel.diameter),
  ratedLowestGauge: ofVessel('lowest pressure the vessel is rated for', 'pressure', (s) => s.apparatus.vessel.lowestGauge),
  ratedHighestGauge: ofVessel('highest pressure the vessel is rated for', 'pressure', (s) => s.apparatus.vessel.highestGauge),
  gaugeResolution: ofVessel('resolution of the gauge', 'pressure', (s) => s.apparatus.gauge.resolution),
  thermometerResolution: ofVessel('resolution of the thermometer', 'temperatureDifference', (s) => s.apparatus.thermometer.resolution),
  thermometerTimeConstant: ofVessel('time constant of the thermometer', 'clock', (s) => s.apparatus.thermometer.timeConstant),

  pressureDrop: onDrop('pressure drop', 'pressure', (_, drop) => drop),
  gaugeAtDrop: onDrop('gauge', 'pressure', (s, drop) => s.startPressure - drop - s.roomPressure),
  absolutePressure: onDrop('absolute pressure', 'pressure', pressureAfter),
  pressureRatio: onDrop('pressure over starting pressure', 'ratio', (s, drop) => pressureAfter(s, drop) / s.startPressure),
  temperatureClear: onDrop('air, no droplets', 'temperature', (s, drop) => clear(s, drop).temperature),
  coolingClear: onDrop('cooling, no droplets', 'temperatureDifference', (s, drop) => s.startTemperature - clear(s, drop).temperature),
  saturationRatioClear: onDrop('saturation ratio, no droplets', 'ratio', (s, drop) => clear(s, drop).saturationRatio),
  vaporPressureClear: onDrop('vapor pressure, no droplets', 'pressure', (s, drop) => clear(s, drop).vaporPressure),
  /** What a reader gets who forgets that expansion lowers the vapor pressure too. */
  saturationRatioUnexpanded: onDrop('saturation ratio if the vapor pressure stayed', 'ratio', (s, drop) => {
    const after = clear(s, drop);
    return (after.saturationRatio * vesselAir(s).vaporPressure) / after.vaporPressure;
  }),
  /** What a reader gets who takes the gas law at constant volume for the cooling. */
  coolingAtConstantVolume: onDrop('cooling if the temperature fell with the pressure', 'temperatureDifference', (s, drop) =>
    s.startTemperature * (1 - pressureAfter(s, drop) / s.startPressure)),
  temperatureCloudy: onDrop('air, with droplets', 'temperature', (s, drop) => cloudy(s, drop).temperature),
  coolingCloudy: onDrop('cooling, with droplets', 'temperatureDifference', (s, drop) => s.startTemperature - cloudy(s, drop).temperature),
  cloudWater: onDrop('cloud water', 'waterContent', (s, drop) => cloudy(s, drop).liquidWaterContent),
  altitudeSamePressure: onDrop('standard atmosphere, same pressure', 'height', (s, drop) => pressureAltitude(pressureAfter(s, drop)) - pressureAltitude(s.roomPressure)),
  parcelHeightSamePressure: onDrop('rising parcel, same pressure', 'height', (s, drop) => heightOfEqualPressure(vesselAir(s), pressureAfter(s, drop))),
  parcelRiseSameCooling: onDrop('clear parcel, same cooling', 'height', (s, drop) => heightOfEqualTemperature(vesselAir(s), clear(s, drop).temperature)),

  onsetPressureDrop: ofVessel('drop at which cloud can begin', 'pressure', (s) => s.startPressure - cloudOnset(vesselAir(s)).pressure),
  onsetGauge: ofVessel('gauge when cloud can begin', 'pressure', (s) => cloudOnset(vesselAir(s)).pressure - s.roomPressure),
  onsetTemperature: ofVessel('temperature when cloud can begin', 'temperature', (s) => cloudOnset(vesselAir(s)).temperature),
  onsetCooling: ofVessel('cooling until cloud can begin', 'temperatureDifference', (s) => s.startTemperature - cloudOnset(vesselAir(s)).temperature),
  noParticleLimitDrop: ofVessel('drop at which cloud forms without particles', 'pressure', (s) => s.startPressure - (noParticleLimit(vesselAir(s)).ion?.pressure ?? Number.NaN)),
  noParticleLimitSaturation: ofVessel('saturation ratio at which cloud forms without particles', 'ratio', (s) => noParticleLimit(vesselAir(s)).ion?.saturationRatio ?? Number.NaN),
  cloudBaseHeight: { ...ofVessel('cloud base of a parcel with the same start', 'height', () => 0), takes: [...VESSEL, 'air'],
    compute: (s, { air }) => cloudBase(risingAir(s, air ?? 'vessel')).height },

  stationPressure: { label: 'station pressure', dimension: 'pressure', needs: ['elevation'], takes: [], compute: (s) => s.roomPressure },
  elevation: { label: 'elevation', dimension: 'height', needs: ['elevation'], takes: [], compute: (_, { elevation }) => elevation ?? 0 },
  /** Gauge that cools the air of this elevation as much as the drop cools that of the kit's own room. */
  gaugeSameCooling: { label: 'gauge for the same cooling', dimension: 'pressure', needs: ['elevation', 'drop'], takes: ['humidity', 'temperature'],
    compute: (s, { drop }) => {
      const cooled = expandWithoutCondensation(vesselAir({ ...s, startPressure: s.kitStartPressure }), s.kitStartPressure - drop).temperature;
      const here = vesselAir(s);
      const pressure = s.startPressure * (cooled / s.startTemperature) ** (here.heatCapacity / here.gasConstant);
      return pressure - s.roomPressure - s.gaugeError;
    } },

  startingHumidity: { label: 'humidity in the vessel', dimension: 'fraction', needs: ['humidity'], takes: [...ROOM], compute: (s) => s.startHumidity },

  parcelHeight: onHeight('height above the room', 'height', (_, height) => height),
  parcelPressure: onHeight('pressure', 'pressure', (s, height, air) => parcelAt(s, height, air).pressure),
  parcelTemperature: onHeight('temperature', 'temperature', (s, height, air) => parcelAt(s, height, air).temperature),
  parcelHumidity: onHeight('relative humidity', 'fraction', (s, height, air) => parcelAt(s, height, air).relativeHumidity),
  parcelCloudWater: onHeight('cloud water', 'waterContent', (s, height, air) => parcelAt(s, height, air).liquidWaterContent),

  gaugeReading: { label: 'gauge', dimension: 'pressure', needs: ['reading'], takes: [], compute: (_, { reading }) => reading ?? 0 },
  absoluteAtReading: { label: 'absolute pressure', dimension: 'pressure', needs: ['reading'], takes: ['elevation'], compute: (s, { reading }) => s.roomPressure + (reading ?? 0) + s.gaugeError },
} as const satisfies Record<string, QuantityKind>;

export type QuantityName = keyof typeof QUANTITIES;

/** The state a quantity is computed in: the kit's, with what the parameters replace. */
export function stateAt(state: State, at: Parameters): State {
  const { humidity, temperature, elevation } = at;
  if (humidity === undefined && temperature === undefined && elevation === undefined) return state;
  const roomPressure = elevation === undefined ? state.roomPressure : stationPressure(elevation) + state.weather;
  return {
    ...state,
    roomPressure,
    startPressure: state.startPressure - state.roomPressure + roomPressure,
    ...(temperature === undefined ? {} : { roomTemperature: temperature, startTemperature: temperature }),
    ...(humidity === undefined ? {} : { startHumidity: humidity }),
  };
}

/** The value of a quantity in one state; null outside the range in which the physics has an answer. */
export function valueIn(state: State, name: QuantityName, at: Parameters): Cell {
  try {
    const kind: QuantityKind = QUANTITIES[name];
    const value = kind.compute(stateAt(state, at), { ...at, drop: at.drop ?? state.plannedDrop });
    return Number.isFinite(value) ? value : null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
