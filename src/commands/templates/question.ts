/** A question to start from, with a computed answer. */
import { quoted, type NewFile } from './new-file.ts';

export interface QuestionOf {
  readonly kit: string;
  /** the planned fall of pressure, as the kit writes it */
  readonly drop: string;
  /** an objective of the kit */
  readonly objective: string;
}

/** @param name of the question */
export const questionFile = (name: string, { kit, drop, objective }: QuestionOf): NewFile => ({
  path: `kits/${kit}/questions/${name}.mdx`,
  text: `---
# numeric, choice, ordering or text.
kind: numeric
# 1 for all, 2 for most, 3 for the quickest.
level: 1
# The objective of kit.yaml that it tests.
objective: ${objective}
# The answer is computed for the room and the apparatus: a name of what <Value> knows, its parameters,
# and the unit to answer in.
answer:
  of: absolutePressure
  drop: ${quoted(drop)}
  unit: kPa
# How far an answer may be off. Without this line it follows from the rounding on the sheet.
# tolerance: 1 kPa
---

The pressure of the room is <Value of="roomPressure"/>. The gauge on the vessel reads <Value of="gaugeAtDrop" drop="${drop}"/>. What is the absolute pressure in the vessel, in kilopascals?

<TeacherOnly>

Add the reading, with its sign, to the pressure of the room: <Value of="absolutePressure" drop="${drop}"/>. A student who gives the reading itself has forgotten that the gauge starts from the room.

</TeacherOnly>
`,
});
