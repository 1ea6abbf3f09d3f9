/** A room to start from. */
import { schemaLine } from '../../authoring/index.ts';
import { quoted, titleOf, type NewFile } from './new-file.ts';

export function roomFile(name: string): NewFile {
  const path = `rooms/${name}.yaml`;
  return {
    path,
    text: `${schemaLine('room', path)}
# The air in which a lesson is held. Every number on the sheets follows from it, so measure your own.

# The room, as readers know it.
title: ${quoted(titleOf(name))}
# Height above the sea; the pressure then follows from the standard atmosphere. If a barometer hangs in
# the room, write what it shows instead: stationPressure: 985 hPa
elevation: 100 m
# Temperature and relative humidity of the air. After ± comes how sure you are; it may be left out.
temperature: 21.0 °C ± 0.5 K
humidity: 45 % ± 5 %
# What else a teacher should know of the room.
note: Say here which way the bench faces, and whether the blinds close.
`,
  };
}
