/** From what a contributor wrote to the conditions that the numbers follow from. */
import { apparatusOf, particlesOf, roomOf, type Content, type Kit, type PressureLevel, type WrittenQuantity } from '../authoring/index.ts';
import { pressureAtElevation, uncertaintyOfSteps, WEATHER_SPREAD_OF_PRESSURE, type Apparatus, type Conditions, type Level, type Measured } from '../tables/index.ts';

/** How far published formulas of saturation pressure, with the presence of air, differ between 0 and 30 °C: Murphy & Koop 2005, figs. 1–3. */
const SPREAD_OF_SATURATION_FORMULAS = 0.003;

const EXACT_ZERO: Measured = { value: 0, uncertainty: 0 };
const measured = ({ value, uncertainty }: WrittenQuantity): Measured => ({ value, uncertainty });
const difference = (from: WrittenQuantity, to: WrittenQuantity): Measured => ({ value: to.value - from.value, uncertainty: Math.hypot(from.uncertainty, to.uncertainty) });

const known = new WeakMap<Kit, Conditions>();

/** The conditions of a kit in its own room: the same object each time, by which what was computed for them is found again. */
export function conditionsOf(content: Content, kit: Kit): Conditions {
  const conditions = known.get(kit) ?? conditionsFrom(content, kit);
  known.set(kit, conditions);
  return conditions;
}

function conditionsFrom(content: Content, kit: Kit): Conditions {
  const room = roomOf(content, kit);
  const roomPressure = pressureOf(room);
  const apparatus = apparatusFrom(apparatusOf(content, kit), roomPressure.value);
  const { start, drop } = kit.meta;
  return {
    roomTitle: room.title,
    elevation: room.elevation?.value,
    inputs: {
      roomTemperature: measured(room.temperature),
      roomPressure,
      roomHumidity: measured(room.humidity),
      startTemperatureDifference: start.temperature === undefined ? EXACT_ZERO : difference(room.temperature, start.temperature),
      startHumidity: measured(start.humidity),
      gaugeError: { value: 0, uncertainty: uncertaintyOfSteps(apparatus.gauge.resolution) },
      formulaError: { value: 0, uncertainty: SPREAD_OF_SATURATION_FORMULAS },
      weather: { value: 0, uncertainty: WEATHER_SPREAD_OF_PRESSURE },
    },
    plannedDrop: drop.value,
    apparatus,
    particles: particlesOf(content, kit).map((one, i) => ({
      id: kit.meta.particles[i]!,
      title: one.title,
      dryDiameter: one.dryDiameter.value,
      spread: one.spread,
      kappa: one.kappa,
      number: one.number.value,
    })),
  };
}

type WrittenRoom = ReturnType<typeof roomOf>;
type WrittenApparatus = ReturnType<typeof apparatusOf>;

function pressureOf({ elevation, stationPressure: measuredPressure }: WrittenRoom): Measured {
  if (measuredPressure !== undefined) return measured(measuredPressure);
  if (elevation === undefined) throw new Error('a room has neither elevation nor stationPressure: rooms are checked when content is loaded');
  return pressureAtElevation(elevation);
}

/** The levels that are written the other way than the conditions keep them, and so move when the room's pressure does. */
export function movingLevels(written: WrittenApparatus): Level[] {
  const { vessel, gauge, source } = written;
  const levels: readonly (readonly [Level, PressureLevel | undefined, PressureLevel['reference']])[] = [
    ['lowest', vessel.lowest, 'gauge'],
    ['highest', vessel.highest, 'gauge'],
    ['gaugeLowest', gauge.lowest, 'gauge'],
    ['gaugeHighest', gauge.highest, 'gauge'],
    ['pumpHighest', source.kind === 'pressurise' ? source.highest : undefined, 'gauge'],
    ['ultimatePressure', 'ultimatePressure' in source ? source.ultimatePressure : undefined, 'absolute'],
  ];
  return levels.flatMap(([level, value, kept]) => (value === undefined || value.reference === kept ? [] : [level]));
}

function apparatusFrom(written: WrittenApparatus, roomPressure: number): Apparatus {
  const { vessel, source, gauge, thermometer } = written;
  const againstRoom = ({ value, reference }: PressureLevel): number => (reference === 'gauge' ? value : value - roomPressure);
  const absolute = ({ value, reference }: PressureLevel): number => (reference === 'absolute' ? value : value + roomPressure);
  return {
    title: written.title,
    vessel: {
      shape: vessel.shape,
      volume: vessel.volume.value,
      diameter: vessel.diameter.value,
      wallThickness: vessel.wallThickness.value,
      material: vessel.material,
      lowestGauge: againstRoom(vessel.lowest),
      highestGauge: againstRoom(vessel.highest),
      wallTimeConstant: vessel.wallTimeConstant?.value,
    },
    source: sourceFrom(source, againstRoom, absolute),
    gauge: {
      kind: gauge.kind,
      lowestGauge: againstRoom(gauge.lowest),
      highestGauge: againstRoom(gauge.highest),
      resolution: gauge.resolution.value,
      unit: gauge.unit,
    },
    thermometer: {
      kind: thermometer.kind,
      resolution: thermometer.resolution.value,
      timeConstant: thermometer.timeConstant.value,
      wallShare: thermometer.wallShare,
      position: thermometer.position,
    },
    light: written.light,
    backing: written.backing,
    valve: written.valve,
  };
}

function sourceFrom(
  source: WrittenApparatus['source'],
  againstRoom: (level: PressureLevel) => number,
  absolute: (level: PressureLevel) => number,
): Apparatus['source'] {
  switch (source.kind) {
    case 'stroke-pump':
      return {
        kind: source.kind,
        strokeVolume: source.strokeVolume.value,
        deadVolume: source.deadVolume.value,
        strokeTime: source.strokeTime.value,
        ultimatePressure: absolute(source.ultimatePressure),
      };
    case 'steady-pump':
      return { kind: source.kind, speed: source.speed.value, ultimatePressure: absolute(source.ultimatePressure) };
    case 'squeeze':
      return { kind: source.kind, volumeChange: source.volumeChange.value };
    case 'pressurise':
      return { kind: source.kind, highestGauge: againstRoom(source.highest), releaseTime: source.releaseTime.value };
  }
}
