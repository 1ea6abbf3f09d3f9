/** `kits/<kit>/kit.yaml`: for whom, where, with what, how long. */
import { z } from 'zod';
import { LANGUAGES } from '../../texts/index.ts';
import { name, quantity, reference, text } from '../fields.ts';

export const kitSchema = z
  .strictObject({
    title: text(200).meta({ description: 'The title of the kit.', examples: ['Cloud by pumping down'] }),
    summary: text(1000).describe('What happens in the lesson, in two or three sentences.'),
    audience: z
      .strictObject({
        ages: z
          .string()
          .regex(/^\d{1,2}[-–]\d{1,2}$/)
          .meta({ description: 'From which age to which.', examples: ['11-14'] }),
        level: text(200).meta({ description: 'The level, in words.', examples: ['Lower secondary'] }),
      })
      .describe('For whom the lesson is.'),
    minutes: quantity('time', ['5 min', '8 h']).meta({ description: 'How long the lesson is.', examples: ['50 min'] }),
    room: reference('room').describe('The room of the lesson; the site has a default.').optional(),
    apparatus: reference('apparatus').describe('The vessel with its pump and instruments.'),
    particles: z.array(reference('particles')).describe('The particles that the lesson may use; [] for none.'),
    start: z
      .strictObject({
        humidity: quantity('fraction', ['0 %', '100 %']).meta({
          description: 'Relative humidity in the vessel.',
          examples: ['97 %'],
        }),
        temperature: quantity('temperature', ['-30 °C', '55 °C'])
          .meta({ description: 'Temperature in the vessel; that of the room where none is given.', examples: ['21 °C'] })
          .optional(),
      })
      .describe('The air in the vessel before the expansion.'),
    drop: quantity('pressure', ['0 kPa', '400 kPa']).meta({
      description: 'The planned largest fall of pressure: below the room by pumping, or down to the room by release.',
      examples: ['20 kPa'],
    }),
    hazards: z
      .array(reference('hazard'))
      .describe('The hazard sheets of the kit: every tag of apparatus and particles must be covered.'),
    standards: z.array(reference('standard')).describe('The curriculum statements that the kit serves; [] for none.'),
    objectives: z
      .array(
        z.strictObject({
          id: name().meta({ description: 'A short name, for questions and standards to point at.', examples: ['name-the-cloud'] }),
          text: text(500).describe('What students can do afterwards.'),
        }),
      )
      .min(1)
      .describe('What students learn.'),
    materials: z
      .array(
        z.strictObject({
          item: text(200).meta({ description: 'The thing.', examples: ['Hand pump'] }),
          specification: text(500).describe('What to look for when buying it: size, rating, kind.'),
          quantity: z
            .union([text(60), z.number()])
            .transform(String)
            .meta({ description: 'How many or how much.', examples: ['1', '100 mL'] }),
          note: text(500).describe('What else to know of it.').optional(),
        }),
      )
      .describe('What to buy or borrow.'),
    preparation: z
      .array(
        z.strictObject({
          before: quantity('time', ['0 min', '60 d']).meta({
            description: 'How long before the lesson.',
            examples: ['1 d', '2 h', '5 min'],
          }),
          task: text(1000).describe('What to do then.'),
        }),
      )
      .describe('What to do how long before the lesson.'),
    changes: z
      .array(
        z.strictObject({
          version: z
            .string()
            .regex(/^\d+\.\d+(?:\.\d+)?$/)
            .meta({ description: 'Numbers with points; with one point only, in quotes.', examples: ['0.1.0'] }),
          date: z.iso.date().meta({ description: 'Year, month and day.', examples: ['2026-09-01'] }),
          text: text(1000).describe('What was changed, for those who use an older print.'),
        }),
      )
      .describe('What was changed, version by version.'),
    language: z.enum(LANGUAGES).describe('The language of the kit; that of the site where none is given.').optional(),
    translationOf: reference('kit').describe('The kit that this one says in another language: each of the two leads to the other.').optional(),
  })
  .meta({ title: 'A kit', description: 'For whom the lesson is, where, with what, how long.' });

export type KitMeta = z.infer<typeof kitSchema>;
