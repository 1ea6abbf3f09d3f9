/**
 * The quantities that tables and sentences show: each a pure function of a state and of the
 * parameters it is asked at. One entry per quantity; `<Value of="…">` and table columns use the same. Their names stand in the texts.
 */
import {
  cloudBase, discArea, expandWithoutCondensation, heightOfEqualPressure, heightOfEqualTemperature, pressureAltitude, pressureForce, storedEnergy,
} from '../physics/index.ts';
import type { LabelName } from '../texts/index.ts';
import { answered } from './answered.ts';
import { clear, cloudy, limitWithoutParticles, onset, parcelAt, pressureAfter, risingAir, roomAir, stateAt, vesselAir } from './air.ts';
import { depthAcross, fallSpeed, particlesOf, ringRadius } from './cloud.ts';
import { stateWith, type State } from './conditions.ts';
import type { Parameters } from './parameters.ts';
import { startsAbove } from './release.ts';
import { remembered } from './remembered.ts';
import { ofCloud, ofRoom, ofRun, ofVessel, onDrop, onHeight, onWall, ROOM, share, VESSEL, type QuantityKind } from './quantity-kind.ts';
import { acrossWall, marginLeft, ratingToward, stressAround } from './rating.ts';
import { pumpedAndWatched, strokesToDrop, timeToDrop, wallTimeConstant } from './vessel-run.ts';

/** At the pressure of the kit's own room again, where a parameter has moved the state to another elevation. */
const inKitRoom = remembered((state): State => stateWith(state, { startPressure: state.kitStartPressure }));

export const QUANTITIES = {
  roomTemperature: ofRoom('temperature', (s) => s.roomTemperature),
  roomPressure: ofRoom('pressure', (s) => s.roomPressure),
  roomHumidity: ofRoom('fraction', (s) => s.roomHumidity),
  roomDewPoint: ofRoom('temperature', (s) => roomAir(s).dewPoint ?? Number.NaN),
  startTemperature: ofVessel('temperature', (s) => s.startTemperature),
  startPressure: ofVessel('pressure', (s) => s.startPressure),
  startHumidity: ofVessel('fraction', (s) => s.startHumidity),
  startDewPoint: ofVessel('temperature', (s) => vesselAir(s).dewPoint ?? Number.NaN),
  startVaporPressure: ofVessel('pressure', (s) => vesselAir(s).vaporPressure),
  plannedDrop: ofVessel('pressure', (s) => s.plannedDrop),
  vesselVolume: ofVessel('volume', (s) => s.apparatus.vessel.volume),
  vesselDiameter: ofVessel('length', (s) => s.apparatus.vessel.diameter),
  ratedLowestGauge: ofVessel('pressure', (s) => s.apparatus.vessel.lowestGauge),
  ratedHighestGauge: ofVessel('pressure', (s) => s.apparatus.vessel.highestGauge),
  gaugeResolution: ofVessel('pressure', (s) => s.apparatus.gauge.resolution),
  thermometerResolution: ofVessel('temperatureDifference', (s) => s.apparatus.thermometer.resolution),
  thermometerTimeConstant: ofVessel('clock', (s) => s.apparatus.thermometer.timeConstant),

  pressureDrop: onDrop('pressure', (_, drop) => drop),
  gaugeAtDrop: onDrop('pressure', (s, drop) => s.startPressure - drop - s.roomPressure),
  absolutePressure: onDrop('pressure', pressureAfter),
  pressureRatio: onDrop('ratio', (s, drop) => pressureAfter(s, drop) / s.startPressure),
  temperatureClear: onDrop('temperature', (s, drop) => clear(s, drop).temperature),
  coolingClear: onDrop('temperatureDifference', (s, drop) => s.startTemperature - clear(s, drop).temperature),
  saturationRatioClear: onDrop('ratio', (s, drop) => clear(s, drop).saturationRatio),
  vaporPressureClear: onDrop('pressure', (s, drop) => clear(s, drop).vaporPressure),
  /** What a reader gets who forgets that expansion lowers the vapor pressure too. */
  saturationRatioUnexpanded: onDrop('ratio', (s, drop) => {
    const after = clear(s, drop);
    return (after.saturationRatio * vesselAir(s).vaporPressure) / after.vaporPressure;
  }),
  /** What a reader gets who takes the gas law at constant volume for the cooling. */
  coolingAtConstantVolume: onDrop('temperatureDifference', (s, drop) =>
    s.startTemperature * (1 - pressureAfter(s, drop) / s.startPressure)),
  temperatureCloudy: onDrop('temperature', (s, drop) => cloudy(s, drop).temperature),
  coolingCloudy: onDrop('temperatureDifference', (s, drop) => s.startTemperature - cloudy(s, drop).temperature),
  cloudWater: onDrop('waterContent', (s, drop) => cloudy(s, drop).liquidWaterContent),
  altitudeSamePressure: onDrop('height', (s, drop) => pressureAltitude(pressureAfter(s, drop)) - pressureAltitude(s.roomPressure)),
  parcelHeightSamePressure: onDrop('height', (s, drop) => heightOfEqualPressure(vesselAir(s), pressureAfter(s, drop))),
  parcelRiseSameCooling: onDrop('height', (s, drop) => heightOfEqualTemperature(vesselAir(s), clear(s, drop).temperature)),

  onsetPressureDrop: ofVessel('pressure', (s) => s.startPressure - onset(s).pressure),
  onsetGauge: ofVessel('pressure', (s) => onset(s).pressure - s.roomPressure),
  onsetTemperature: ofVessel('temperature', (s) => onset(s).temperature),
  onsetCooling: ofVessel('temperatureDifference', (s) => s.startTemperature - onset(s).temperature),
  noParticleLimitDrop: ofVessel('pressure', (s) => s.startPressure - (limitWithoutParticles(s)?.pressure ?? Number.NaN)),
  noParticleLimitSaturation: ofVessel('ratio', (s) => limitWithoutParticles(s)?.saturationRatio ?? Number.NaN),
  cloudBaseHeight: { ...ofVessel('height', () => 0), takes: [...VESSEL, 'air'],
    compute: (s, { air }) => cloudBase(risingAir(s, air ?? 'vessel')).height },

  strokesToDrop: { ...ofRun('count', strokesToDrop), varies: [] },
  pumpingTime: { ...ofRun('clock', timeToDrop, share(0.1)), varies: [] },
  wallTimeConstant: { ...ofVessel('clock', wallTimeConstant), model: share(0.2) },
  gasFallAtDrop: ofRun('temperatureDifference', (s, drop) => s.startTemperature - pumpedAndWatched(s, drop).end.gasTemperature, share(0.1)),
  thermometerFallAtDrop: ofRun('temperatureDifference', (s, drop) => s.startTemperature - pumpedAndWatched(s, drop).end.thermometerReading, share(0.2)),
  thermometerLargestFall: ofRun('temperatureDifference', (s, drop) => s.startTemperature - pumpedAndWatched(s, drop).lowest.thermometerReading, share(0.2)),

  particleNumber: { dimension: 'numberDensity', needs: [], takes: ['number', 'particles'], compute: (s, { number, particles }) => number ?? particlesOf(s, particles).number },
  peakSaturationRatio: ofCloud('ratio', share(0.1, 1), (cloud) => cloud.peakSaturationRatio),
  peakSupersaturation: ofCloud('fraction', share(0.1), (cloud) => cloud.peakSaturationRatio - 1),
  dropletDiameter: ofCloud('diameter', share(0.1), (cloud) => cloud.diameter ?? Number.NaN),
  dropletWater: ofCloud('waterContent', share(0.05), (cloud) => (cloud.diameter === undefined ? 0 : cloud.waterContent)),
  cloudOpticalDepth: ofCloud('ratio', share(0.2), (cloud, s) => depthAcross(s, cloud.waterContent, cloud.diameter)),
  dropletFallSpeed: ofCloud('speed', share(0.2), fallSpeed),
  coronaRadius: ofCloud('angle', share(0.1), ringRadius),

  lidForce: onWall('force', (s, drop) => pressureForce({ pressureDifference: acrossWall(s, drop), area: discArea(s.apparatus.vessel.diameter) }), share(0.02)),
  wallStress: onWall('stress', (s, drop) => stressAround(s, acrossWall(s, drop)), share(0.1)),
  storedEnergy: onWall('energy', (s, drop) => storedEnergy({ volume: s.apparatus.vessel.volume, pressure: s.roomPressure + acrossWall(s, drop), surroundings: s.roomPressure }), share(0.05)),
  ratingMargin: onWall('pressure', (s, drop) => marginLeft(s, acrossWall(s, drop))),
  ratingUsed: onWall('fraction', (s, drop) => acrossWall(s, drop) / ratingToward(s, acrossWall(s, drop))),

  stationPressure: { dimension: 'pressure', needs: ['elevation'], takes: [], compute: (s) => s.roomPressure },
  elevation: { dimension: 'height', needs: ['elevation'], takes: [], compute: (_, { elevation }) => elevation ?? 0 },
  /** Gauge that cools the air of this elevation as much as the drop cools that of the kit's own room: at the end of pumping, or before a vessel is let go. */
  gaugeSameCooling: { dimension: 'pressure', needs: ['elevation', 'drop'], takes: ['humidity', 'temperature'],
    compute: (s, { drop }) => {
      const cooled = expandWithoutCondensation(vesselAir(inKitRoom(s)), s.kitStartPressure - drop).temperature;
      const here = vesselAir(s);
      const ratio = (cooled / s.startTemperature) ** (here.heatCapacity / here.gasConstant);
      const pressure = startsAbove(s.apparatus) ? s.roomPressure / ratio : s.startPressure * ratio;
      return pressure - s.roomPressure - s.gaugeError;
    } },

  startingHumidity: { dimension: 'fraction', needs: ['humidity'], takes: [...ROOM], compute: (s) => s.startHumidity },

  parcelHeight: onHeight('height', (_, height) => height),
  parcelPressure: onHeight('pressure', (s, height, air) => parcelAt(s, height, air).pressure),
  parcelTemperature: onHeight('temperature', (s, height, air) => parcelAt(s, height, air).temperature),
  parcelHumidity: onHeight('fraction', (s, height, air) => parcelAt(s, height, air).relativeHumidity),
  parcelCloudWater: onHeight('waterContent', (s, height, air) => parcelAt(s, height, air).liquidWaterContent),

  gaugeReading: { dimension: 'pressure', needs: ['reading'], takes: [], compute: (_, { reading }) => reading ?? 0 },
  absoluteAtReading: { dimension: 'pressure', needs: ['reading'], takes: ['elevation'], compute: (s, { reading }) => s.roomPressure + (reading ?? 0) + s.gaugeError },
} as const satisfies Partial<Record<LabelName, QuantityKind>>;

export type QuantityName = keyof typeof QUANTITIES;

/** The value of a quantity in one state; null outside the range in which the physics has an answer. */
export function valueIn(state: State, name: QuantityName, at: Parameters): number | null {
  return answered(() => {
    const kind: QuantityKind = QUANTITIES[name];
    return kind.compute(stateAt(state, at), { ...at, drop: at.drop ?? kind.unasked?.(state) ?? state.plannedDrop });
  });
}
