/** `apparatus/<apparatus>.yaml`: vessel, source of the pressure change, gauge, thermometer, light. */
import { z } from 'zod';
import { level, number, quantity, report, text } from '../fields.ts';
import { tags } from './tags.ts';

const vessel = z.strictObject({
  shape: z.enum(['cylinder', 'sphere']),
  volume: quantity('volume', ['0.05 L', '100 L']),
  diameter: quantity('length', ['2 cm', '1 m']),
  wallThickness: quantity('length', ['0.1 mm', '30 mm']),
  material: z.enum(['polycarbonate', 'acrylic', 'PET', 'glass', 'steel']),
  /** the maker's rating */
  lowest: level(),
  /** the maker's rating */
  highest: level(),
  ratingSource: text(),
  /** time in which the gas comes 63 % closer to the wall's temperature, if measured */
  wallTimeConstant: quantity('time', ['0.1 s', '1 h']).optional(),
});

const source = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('stroke-pump'),
    strokeVolume: quantity('volume', ['1 mL', '5 L']),
    deadVolume: quantity('volume', ['0 mL', '1 L']),
    strokeTime: quantity('time', ['0.2 s', '60 s']),
    ultimatePressure: level('absolute'),
  }),
  z.strictObject({
    kind: z.literal('steady-pump'),
    speed: quantity('flow', ['0.01 L/min', '1000 L/min']),
    ultimatePressure: level('absolute'),
  }),
  z.strictObject({
    kind: z.literal('squeeze'),
    /** volume taken by a full squeeze */
    volumeChange: quantity('volume', ['1 mL', '50 L']),
  }),
  z.strictObject({
    kind: z.literal('pressurise'),
    highest: level('gauge'),
    releaseTime: quantity('time', ['0.01 s', '60 s']),
  }),
]);

const gauge = z.strictObject({
  kind: z.enum(['dial', 'digital']),
  lowest: level(),
  highest: level(),
  resolution: quantity('pressure', ['0.1 Pa', '50 kPa']),
  unit: z.enum(['Pa', 'hPa', 'kPa', 'mbar', 'bar', 'inHg', 'mmHg', 'psi']),
});

const thermometer = z.strictObject({
  kind: z.enum(['stem', 'thermocouple', 'digital']),
  resolution: quantity('temperatureDifference', ['0.001 K', '10 K']),
  timeConstant: quantity('time', ['0.01 s', '1 h']),
  /** share of its reading that follows the wall instead of the gas */
  wallShare: number(0, 1),
  position: text(),
  lowest: quantity('temperature', ['-200 °C', '100 °C']).optional(),
  highest: quantity('temperature', ['-50 °C', '1000 °C']).optional(),
});

export const apparatusSchema = z
  .strictObject({
    title: text(200),
    vessel,
    source,
    gauge,
    thermometer,
    light: z.strictObject({ kind: text(200), from: z.enum(['side', 'back', 'front']) }),
    backing: text(200),
    valve: text(200),
    leak: quantity('pressureRate', ['0 Pa/s', '10 kPa/min']).optional(),
    uses: tags(),
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
  });

export type Apparatus = z.infer<typeof apparatusSchema>;
