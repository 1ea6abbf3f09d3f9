/** An apparatus to start from: a clear vessel that is pumped down by hand. */
import { schemaLine } from '../../authoring/index.ts';
import { quoted, titleOf, type NewFile } from './new-file.ts';

/** Tags of what can hurt about it. */
export const APPARATUS_USES = ['plastic', 'evacuated', 'lamp'] as const;

export function apparatusFile(name: string): NewFile {
  const path = `apparatus/${name}.yaml`;
  return {
    path,
    text: `${schemaLine('apparatus', path)}
# The vessel, its pump and its instruments. Measure your own, and read the ratings on their plates.

# What it is, as the sheets name it.
title: ${quoted(titleOf(name))}
vessel:
  # cylinder or sphere; volume and diameter are those of the air inside.
  shape: cylinder
  volume: 4 L
  diameter: 15 cm
  wallThickness: 5 mm
  # polycarbonate, acrylic, PET, glass or steel.
  material: polycarbonate
  # The maker's rating. gauge counts from the pressure of the room: negative below it.
  # No lesson that goes beyond it is built.
  lowest: -80 kPa gauge
  highest: 10 kPa gauge
  # Where the rating is written. A vessel without one is not used.
  ratingSource: Plate on the lid
source:
  # A hand pump that works in strokes. The others: steady-pump, squeeze, pressurise.
  kind: stroke-pump
  strokeVolume: 150 mL
  # Air that stays in the pump at the end of a stroke.
  deadVolume: 6 mL
  strokeTime: 1.5 s
  # The lowest pressure that the pump reaches.
  ultimatePressure: 20 kPa absolute
gauge:
  # dial or digital.
  kind: dial
  # What it shows, from the lowest to the highest.
  lowest: -100 kPa gauge
  highest: 0 kPa gauge
  # The smallest step that can be read.
  resolution: 1 kPa
  # The unit on the dial: Pa, hPa, kPa, mbar, bar, inHg, mmHg or psi.
  unit: kPa
thermometer:
  # stem, thermocouple or digital.
  kind: digital
  # The smallest step that can be read.
  resolution: 0.1 K
  # How slow it is: after this time it shows 63 % of a sudden change.
  timeConstant: 15 s
  # How much of its reading follows the wall instead of the air: 0 none, 1 all.
  wallShare: 0.1
  position: In the middle of the vessel, touching nothing
# What gives the light, and from where: side, back or front.
light: { kind: LED lamp that stays cool, from: side }
# What the cloud is seen against.
backing: Matt black card
# How the vessel is closed, and how air is let in.
valve: Two valves in the lid, one to the pump and one to let air in
# What can hurt: each of these needs a hazard sheet in the kit. none if nothing can.
uses: [${APPARATUS_USES.join(', ')}]
`,
  };
}
