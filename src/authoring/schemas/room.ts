/** `rooms/<room>.yaml`: the air in which a lesson is held. */
import { z } from 'zod';
import { absolutePressure, quantity, report, text } from '../fields.ts';

export const roomSchema = z
  .strictObject({
    title: text(200),
    elevation: quantity('length', ['-430 m', '5000 m']).optional(),
    /** absolute, at the elevation of the room, not reduced to sea level */
    stationPressure: absolutePressure(['50 kPa', '110 kPa']).optional(),
    temperature: quantity('temperature', ['-30 °C', '55 °C']),
    humidity: quantity('fraction', ['0 %', '100 %']),
    note: text().optional(),
  })
  .check((context) => {
    const { elevation, stationPressure } = context.value;
    if ((elevation === undefined) !== (stationPressure === undefined)) return;
    const both = elevation !== undefined;
    const problem = both
      ? ({
          code: 'contradiction',
          what: 'elevation and stationPressure are both given',
          instead: 'keep the stationPressure if a barometer of the room showed it, else the elevation',
        } as const)
      : ({
          code: 'missing-key',
          what: 'neither elevation nor stationPressure is given',
          instead: 'add one: `elevation: 1600 m` or `stationPressure: 835 hPa`',
        } as const);
    report(context, context.value, problem, both ? ['stationPressure'] : []);
  });

export type Room = z.infer<typeof roomSchema>;
