/** `apparatus/<apparatus>.yaml`: vessel, source of the pressure change, gauge, thermometer, light. */
import { z } from 'zod';
import { level, number, quantity, report, text } from '../fields.ts';
import { tags } from './tags.ts';

const vessel = z.strictObject({
  shape: z.enum(['cylinder', 'sphere']).describe('The shape of the vessel.'),
  volume: quantity('volume', ['0.05 L', '100 L']).meta({ description: 'Inner volume.', examples: ['5 L'] }),
  diameter: quantity('length', ['2 cm', '1 m']).meta({ description: 'Inner diameter.', examples: ['160 mm'] }),
  wallThickness: quantity('length', ['0.1 mm', '30 mm']).meta({ description: 'Thickness of the wall.', examples: ['5 mm'] }),
  material: z.enum(['polycarbonate', 'acrylic', 'PET', 'glass', 'steel']).describe('What the wall is made of.'),
  lowest: level().meta({ description: 'The lowest pressure for which the maker rates it.', examples: ['-90 kPa gauge'] }),
  highest: level().meta({ description: 'The highest pressure for which the maker rates it.', examples: ['10 kPa gauge'] }),
  ratingSource: text().meta({ description: 'Where the rating is written.', examples: ['Plate on the lid'] }),
  wallTimeConstant: quantity('time', ['0.1 s', '1 h'])
    .meta({
      description: 'Time in which the gas comes 63 % closer to the temperature of the wall, if you have measured it.',
      examples: ['7 s'],
    })
    .optional(),
});

const source = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('stroke-pump').describe('A pump that works in strokes.'),
    strokeVolume: quantity('volume', ['1 mL', '5 L']).meta({ description: 'Volume that a stroke takes in.', examples: ['200 mL'] }),
    deadVolume: quantity('volume', ['0 mL', '1 L']).meta({
      description: 'Volume left in the pump at the end of a stroke.',
      examples: ['8 mL'],
    }),
    strokeTime: quantity('time', ['0.2 s', '60 s']).meta({ description: 'Time of a stroke.', examples: ['1.5 s'] }),
    ultimatePressure: level('absolute').meta({
      description: 'The lowest pressure that the pump reaches.',
      examples: ['150 hPa absolute'],
    }),
  }),
  z.strictObject({
    kind: z.literal('steady-pump').describe('A pump that runs evenly.'),
    speed: quantity('flow', ['0.01 L/min', '1000 L/min']).meta({
      description: 'Volume of air that it draws in a time.',
      examples: ['6 L/min'],
    }),
    ultimatePressure: level('absolute').meta({
      description: 'The lowest pressure that the pump reaches.',
      examples: ['50 hPa absolute'],
    }),
  }),
  z.strictObject({
    kind: z.literal('squeeze').describe('A soft vessel that is squeezed and let go.'),
    volumeChange: quantity('volume', ['1 mL', '50 L']).meta({
      description: 'Volume that a full squeeze takes away.',
      examples: ['300 mL'],
    }),
  }),
  z.strictObject({
    kind: z.literal('pressurise').describe('Air is pumped in and then let out at once.'),
    highest: level('gauge').meta({ description: 'The highest pressure that the pump reaches.', examples: ['40 kPa gauge'] }),
    releaseTime: quantity('time', ['0.01 s', '60 s']).meta({
      description: 'Time in which the air is let out.',
      examples: ['0.2 s'],
    }),
  }),
]);

const gauge = z.strictObject({
  kind: z.enum(['dial', 'digital']).describe('The kind of gauge.'),
  lowest: level().meta({ description: 'The lowest pressure that it shows.', examples: ['-100 kPa gauge'] }),
  highest: level().meta({ description: 'The highest pressure that it shows.', examples: ['0 kPa gauge'] }),
  resolution: quantity('pressure', ['0.1 Pa', '50 kPa']).meta({
    description: 'The smallest step that can be read.',
    examples: ['1 kPa'],
  }),
  unit: z.enum(['Pa', 'hPa', 'kPa', 'mbar', 'bar', 'inHg', 'mmHg', 'psi']).describe('The unit on its dial.'),
});

const thermometer = z.strictObject({
  kind: z.enum(['stem', 'thermocouple', 'digital']).describe('The kind of thermometer.'),
  resolution: quantity('temperatureDifference', ['0.001 K', '10 K']).meta({
    description: 'The smallest step that can be read.',
    examples: ['0.5 K'],
  }),
  timeConstant: quantity('time', ['0.01 s', '1 h']).meta({
    description: 'Time in which its reading comes 63 % closer to what surrounds it.',
    examples: ['45 s'],
  }),
  wallShare: number(0, 1).meta({ description: 'Share of its reading that follows the wall instead of the gas.', examples: [0.15] }),
  position: text().meta({ description: 'Where in the vessel it is.', examples: ['On the axis, touching neither wall nor water'] }),
  lowest: quantity('temperature', ['-200 °C', '100 °C'])
    .meta({ description: 'The lowest temperature that it shows.', examples: ['-10 °C'] })
    .optional(),
  highest: quantity('temperature', ['-50 °C', '1000 °C'])
    .meta({ description: 'The highest temperature that it shows.', examples: ['60 °C'] })
    .optional(),
});

export const apparatusSchema = z
  .strictObject({
    title: text(200).meta({ description: 'What the apparatus is.', examples: ['Clear cylinder with hand pump'] }),
    vessel: vessel.describe('The vessel in which the cloud is made.'),
    source: source.describe('What changes the pressure.'),
    gauge: gauge.describe('What shows the pressure.'),
    thermometer: thermometer.describe('What shows the temperature.'),
    light: z
      .strictObject({
        kind: text(200).meta({ description: 'What gives the light.', examples: ['LED lamp that stays cool'] }),
        from: z.enum(['side', 'back', 'front']).describe('From where it shines, as the class sees it.'),
      })
      .describe('The light in which the cloud is seen.'),
    backing: text(200).meta({ description: 'What the cloud is seen against.', examples: ['Matt black card'] }),
    valve: text(200).describe('How the vessel is closed, and how air is let in.'),
    leak: quantity('pressureRate', ['0 Pa/s', '10 kPa/min'])
      .meta({ description: 'How fast the pressure creeps back, if you have measured it.', examples: ['0.3 kPa/min'] })
      .optional(),
    uses: tags().describe('What can hurt about it: each tag needs a hazard sheet in the kit. [none] if nothing can.'),
  })
  .check((context) => {
    for (const part of ['vessel', 'gauge'] as const) {
      const { lowest, highest } = context.value[part];
      if (lowest.reference !== highest.reference || lowest.value < highest.value) continue;
      report(
        context,
        highest,
        {
          code: 'contradiction',
          what: `lowest is ${lowest.text} and highest is ${highest.text}`,
          instead: 'write the lower one as lowest; below the room, gauge readings are negative',
        },
        [part, 'highest'],
      );
    }
    const { volume, diameter } = context.value.vessel;
    const sphere = (Math.PI / 6) * diameter.value ** 3;
    if (context.value.vessel.shape === 'sphere' && Math.abs(volume.value / sphere - 1) > 0.3) {
      report(
        context,
        volume,
        {
          code: 'contradiction',
          what: `a sphere ${diameter.text} across holds ${(sphere * 1000).toPrecision(2)} L, and volume is ${volume.text}`,
          instead: 'correct the volume or the diameter',
        },
        ['vessel', 'volume'],
      );
    }
  })
  .meta({ title: 'An apparatus', description: 'Vessel, source of the pressure change, gauge, thermometer and light.' });

export type Apparatus = z.infer<typeof apparatusSchema>;
