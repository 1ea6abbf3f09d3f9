/** A reader's settings put into the conditions of a page. */
import type { Live } from '../sheets/html/live.ts';
import { uncertaintyOfSteps, type Apparatus, type Conditions, type Measured } from '../tables/conditions.ts';
import { startsAbove } from '../tables/release.ts';
import { inRoom, pressureAtElevation } from '../tables/room.ts';
import { ROOM_TEXTS } from '../texts/index.ts';
import { isOwnRoom, type RoomSettings } from './room-settings.ts';

/** An elevation typed to a whole meter. */
const WHOLE_METER = uncertaintyOfSteps(1);
/** A barometer read to 0.1 kPa. */
const BAROMETER = uncertaintyOfSteps(100);

/** The conditions that a page is computed for; the page's own, and the same object, where nothing is set. */
export function conditionsFor({ conditions, moving, language }: Live, settings: RoomSettings): Conditions {
  if (isOwnRoom(settings)) return conditions;
  const { values } = settings;
  const { inputs, elevation } = conditions;
  const pressure = pressureOf(conditions, values.elevation, values.pressure);
  const room = inRoom(
    conditions,
    {
      title: ROOM_TEXTS[language].yours,
      elevation: values.pressure === undefined ? (values.elevation ?? elevation) : undefined,
      temperature: put(inputs.roomTemperature, values.temperature),
      pressure,
      humidity: put(inputs.roomHumidity, values.humidity),
    },
    moving,
  );
  return {
    ...room,
    inputs: { ...room.inputs, startHumidity: put(inputs.startHumidity, values.moisture) },
    plannedDrop: values.drop ?? conditions.plannedDrop,
    apparatus: apparatusFor(room.apparatus, settings),
  };
}

/** The reader reads as well as the kit's own instruments do. */
const put = (own: Measured, value: number | undefined): Measured => (value === undefined ? own : { ...own, value });

function pressureOf({ inputs }: Conditions, elevation: number | undefined, pressure: number | undefined): Measured {
  if (pressure !== undefined) return { value: pressure, uncertainty: BAROMETER };
  return elevation === undefined ? inputs.roomPressure : pressureAtElevation({ value: elevation, uncertainty: WHOLE_METER });
}

function apparatusFor(own: Apparatus, { values, shape = own.vessel.shape }: RoomSettings): Apparatus {
  const { vessel, source, thermometer } = own;
  const volume = values.volume ?? vessel.volume;
  const diameter = shape === 'sphere' && shape !== vessel.shape && values.diameter === undefined ? Math.cbrt((6 * volume) / Math.PI) : (values.diameter ?? vessel.diameter);
  const rated = startsAbove(own) ? 'highestGauge' : 'lowestGauge';
  const isOwnVessel = volume === vessel.volume && diameter === vessel.diameter && shape === vessel.shape;
  return {
    ...own,
    vessel: {
      ...vessel, shape, volume, diameter,
      [rated]: values.rating ?? vessel[rated],
      // Measured on the kit's own vessel: another one's is estimated.
      wallTimeConstant: isOwnVessel ? vessel.wallTimeConstant : undefined,
    },
    source: source.kind === 'stroke-pump' ? { ...source, strokeVolume: values.stroke ?? source.strokeVolume }
      : source.kind === 'steady-pump' ? { ...source, speed: values.pumping ?? source.speed } : source,
    thermometer: { ...thermometer, timeConstant: values.thermometer ?? thermometer.timeConstant },
  };
}
