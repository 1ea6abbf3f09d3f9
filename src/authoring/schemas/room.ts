/** `rooms/<room>.yaml`: the air in which a lesson is held. */
import { z } from 'zod';
import { absolutePressure, quantity, report, text } from '../fields.ts';

export const roomSchema = z
  .strictObject({
    title: text(200).meta({ description: 'The room, as readers know it.', examples: ['Room 14, Marrow Bay School'] }),
    elevation: quantity('length', ['-430 m', '5000 m'])
      .meta({ description: 'Height of the room above the sea. Give this or stationPressure, not both.', examples: ['120 m'] })
      .optional(),
    stationPressure: absolutePressure(['50 kPa', '110 kPa'])
      .meta({
        description: 'Pressure in the room by its own barometer, not reduced to sea level. Give this or elevation, not both.',
        examples: ['985 hPa'],
      })
      .optional(),
    temperature: quantity('temperature', ['-30 °C', '55 °C']).meta({
      description: 'Temperature of the air in the room.',
      examples: ['21 °C', '21.0 °C ± 0.3 K'],
    }),
    humidity: quantity('fraction', ['0 %', '100 %']).meta({
      description: 'Relative humidity of the air in the room.',
      examples: ['45 %', '45 % ± 3 %'],
    }),
    note: text().describe('What else a teacher should know of the room.').optional(),
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
  })
  .meta({
    title: 'A room',
    description: 'The air in which a lesson is held.',
    oneOf: [{ required: ['elevation'] }, { required: ['stationPressure'] }],
  });

export type Room = z.infer<typeof roomSchema>;
