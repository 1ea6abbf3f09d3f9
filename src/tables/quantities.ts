/**
 * The quantities that tables and sentences show: each a pure function of a state and of the
 * parameters it is asked at. One entry per quantity; `<Value of="…">` and table columns use the same.
 */
import {
  cloudBase, discArea, expandWithoutCondensation, heightOfEqualPressure, heightOfEqualTemperature, pressureAltitude, pressureForce, storedEnergy,
} from '../physics/index.ts';
import { answered } from './answered.ts';
import { clear, cloudy, limitWithoutParticles, onset, parcelAt, pressureAfter, risingAir, roomAir, stateAt, vesselAir } from './air.ts';
import { depthAcross, fallSpeed, particlesOf, ringRadius } from './cloud.ts';
import type { State } from './conditions.ts';
import type { Parameters } from './parameters.ts';
import { ofCloud, ofRoom, ofRun, ofVessel, onDrop, onHeight, ROOM, share, VESSEL, type QuantityKind } from './quantity-kind.ts';
import { acrossWall, marginLeft, ratingToward, stressAround } from './rating.ts';
import { pumpedAndWatched, strokesToDrop, timeToDrop, wallTimeConstant } from './vessel-run.ts';

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

  onsetPressureDrop: ofVessel('drop at which cloud can begin', 'pressure', (s) => s.startPressure - onset(s).pressure),
  onsetGauge: ofVessel('gauge when cloud can begin', 'pressure', (s) => onset(s).pressure - s.roomPressure),
  onsetTemperature: ofVessel('temperature when cloud can begin', 'temperature', (s) => onset(s).temperature),
  onsetCooling: ofVessel('cooling until cloud can begin', 'temperatureDifference', (s) => s.startTemperature - onset(s).temperature),
  noParticleLimitDrop: ofVessel('drop at which cloud forms without particles', 'pressure', (s) => s.startPressure - (limitWithoutParticles(s)?.pressure ?? Number.NaN)),
  noParticleLimitSaturation: ofVessel('saturation ratio at which cloud forms without particles', 'ratio', (s) => limitWithoutParticles(s)?.saturationRatio ?? Number.NaN),
  cloudBaseHeight: { ...ofVessel('cloud base of a parcel with the same start', 'height', () => 0), takes: [...VESSEL, 'air'],
    compute: (s, { air }) => cloudBase(risingAir(s, air ?? 'vessel')).height },

  strokesToDrop: { ...ofRun('strokes of the pump', 'count', strokesToDrop), varies: [] },
  pumpingTime: { ...ofRun('time of pumping', 'clock', timeToDrop, share(0.1)), varies: [] },
  wallTimeConstant: { ...ofVessel('time constant of the walls', 'clock', wallTimeConstant), model: share(0.2) },
  gasFallAtDrop: ofRun('fall of the air as pumping ends', 'temperatureDifference', (s, drop) => s.startTemperature - pumpedAndWatched(s, drop).end.gasTemperature, share(0.1)),
  thermometerFallAtDrop: ofRun('fall of the thermometer as pumping ends', 'temperatureDifference', (s, drop) => s.startTemperature - pumpedAndWatched(s, drop).end.thermometerReading, share(0.2)),
  thermometerLargestFall: ofRun('largest fall of the thermometer', 'temperatureDifference', (s, drop) => s.startTemperature - pumpedAndWatched(s, drop).lowest.thermometerReading, share(0.2)),

  particleNumber: { label: 'particles', dimension: 'numberDensity', needs: [], takes: ['number', 'particles'], compute: (s, { number, particles }) => number ?? particlesOf(s, particles).number },
  peakSaturationRatio: ofCloud('highest saturation ratio', 'ratio', share(0.1, 1), (cloud) => cloud.peakSaturationRatio),
  peakSupersaturation: ofCloud('highest supersaturation', 'fraction', share(0.1), (cloud) => cloud.peakSaturationRatio - 1),
  dropletDiameter: ofCloud('droplet diameter', 'diameter', share(0.1), (cloud) => cloud.diameter ?? Number.NaN),
  dropletWater: ofCloud('water in droplets', 'waterContent', share(0.05), (cloud) => (cloud.diameter === undefined ? 0 : cloud.waterContent)),
  cloudOpticalDepth: ofCloud('optical depth across the vessel', 'ratio', share(0.2), (cloud, s) => depthAcross(s, cloud.waterContent, cloud.diameter)),
  dropletFallSpeed: ofCloud('fall speed', 'speed', share(0.2), fallSpeed),
  coronaRadius: ofCloud('first dark ring around a lamp, radius', 'angle', share(0.1), ringRadius),

  lidForce: onDrop('force on the lid', 'force', (s, drop) => pressureForce({ pressureDifference: acrossWall(s, drop), area: discArea(s.apparatus.vessel.diameter) }), share(0.02)),
  wallStress: onDrop('stress in the wall', 'stress', (s, drop) => stressAround(s, acrossWall(s, drop)), share(0.1)),
  storedEnergy: onDrop('energy stored', 'energy', (s, drop) => storedEnergy({ volume: s.apparatus.vessel.volume, pressure: s.roomPressure + acrossWall(s, drop), surroundings: s.roomPressure }), share(0.05)),
  ratingMargin: onDrop('left before the rating', 'pressure', (s, drop) => marginLeft(s, acrossWall(s, drop))),
  ratingUsed: onDrop('share of the rating', 'fraction', (s, drop) => acrossWall(s, drop) / ratingToward(s, acrossWall(s, drop))),

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

/** The value of a quantity in one state; null outside the range in which the physics has an answer. */
export function valueIn(state: State, name: QuantityName, at: Parameters): number | null {
  return answered(() => {
    const kind: QuantityKind = QUANTITIES[name];
    return kind.compute(stateAt(state, at), { ...at, drop: at.drop ?? state.plannedDrop });
  });
}
