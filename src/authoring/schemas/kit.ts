/** `kits/<kit>/kit.yaml`: for whom, where, with what, how long. */
import { z } from 'zod';
import { name, quantity, reference, text } from '../fields.ts';

export const kitSchema = z.strictObject({
  title: text(200),
  summary: text(1000),
  audience: z.strictObject({ ages: z.string().regex(/^\d{1,2}[-–]\d{1,2}$/), level: text(200) }),
  /** how long the lesson is */
  minutes: quantity('time', ['5 min', '8 h']),
  /** the site's default where none is given */
  room: reference('room').optional(),
  apparatus: reference('apparatus'),
  particles: z.array(reference('particles')),
  /** the air in the vessel before the expansion */
  start: z.strictObject({
    humidity: quantity('fraction', ['0 %', '100 %']),
    /** the room's where none is given */
    temperature: quantity('temperature', ['-30 °C', '55 °C']).optional(),
  }),
  /** the planned largest drop below the room; of a pressurised vessel, the release down to it */
  drop: quantity('pressure', ['0 kPa', '400 kPa']),
  hazards: z.array(reference('hazard')),
  standards: z.array(reference('standard')),
  objectives: z.array(z.strictObject({ id: name(), text: text(500) })).min(1),
  materials: z.array(
    z.strictObject({
      item: text(200),
      specification: text(500),
      quantity: z.union([text(60), z.number()]).transform(String),
      note: text(500).optional(),
    }),
  ),
  /** what to do how long before the lesson */
  preparation: z.array(z.strictObject({ before: quantity('time', ['0 min', '60 d']), task: text(1000) })),
  changes: z.array(
    z.strictObject({
      version: z.string().regex(/^\d+\.\d+(?:\.\d+)?$/),
      date: z.iso.date(),
      text: text(1000),
    }),
  ),
  /** the site's where none is given */
  language: z.enum(['en', 'es']).optional(),
});

export type KitMeta = z.infer<typeof kitSchema>;
