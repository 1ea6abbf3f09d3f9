/** `particles/<particles>.yaml`: what droplets condense on. */
import { z } from 'zod';
import { number, quantity, reference, text } from '../fields.ts';
import { tags } from './tags.ts';

export const particlesSchema = z.strictObject({
  title: text(200),
  /** median, dry */
  dryDiameter: quantity('length', ['5 nm', '20 µm']),
  /** geometric standard deviation of the diameters */
  spread: number(1, 4),
  /** hygroscopicity parameter: Petters & Kreidenweis 2007 */
  kappa: number(0, 1.5),
  /** in the vessel after letting in */
  number: quantity('numberDensity', ['0.01 /cm³', '10000000 /cm³']),
  how: text(),
  uses: tags(),
  source: z.array(reference('source')).min(1).optional(),
});

export type Particles = z.infer<typeof particlesSchema>;
