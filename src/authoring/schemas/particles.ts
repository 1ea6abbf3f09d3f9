/** `particles/<particles>.yaml`: what droplets condense on. */
import { z } from 'zod';
import { number, quantity, reference, text } from '../fields.ts';
import { tags } from './tags.ts';

export const particlesSchema = z
  .strictObject({
    title: text(200).meta({ description: 'What the particles are.', examples: ['Dried salt mist'] }),
    dryDiameter: quantity('length', ['5 nm', '20 µm']).meta({ description: 'Median diameter when dry.', examples: ['0.1 µm'] }),
    spread: number(1, 4).meta({
      description: 'Geometric standard deviation of the diameters; 1 where all are alike.',
      examples: [1.8],
    }),
    /** Petters & Kreidenweis 2007 */
    kappa: number(0, 1.5).meta({
      description: 'Hygroscopicity parameter: how readily the particles take up water.',
      examples: [0.1, 1.2],
    }),
    number: quantity('numberDensity', ['0.01 /cm³', '10000000 /cm³']).meta({
      description: 'How many there are in the air of the vessel after letting them in.',
      examples: ['5000 /cm³'],
    }),
    how: text().describe('How to make them and let them in.'),
    uses: tags().describe('What can hurt in making them: each tag needs a hazard sheet in the kit. [none] if nothing can.'),
    source: z
      .array(reference('source').describe('A source.'))
      .min(1)
      .describe('Where size, spread and kappa were published.')
      .optional(),
  })
  .meta({ title: 'Particles', description: 'What droplets condense on.' });

export type Particles = z.infer<typeof particlesSchema>;
