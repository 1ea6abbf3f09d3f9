/** The kinds of content files with fields, in the order in which a kit needs them. */
import type { z } from 'zod';
import {
  apparatusSchema, hazardSchema, kitSchema, misconceptionSchema, particlesSchema, questionSchema, roomSchema, siteSchema, sourceSchema, standardsSchema,
} from '../../authoring/index.ts';
import { VOCABULARY } from '../../sheets/index.ts';

export interface KindOfFile {
  readonly id: string;
  readonly path: string;
  readonly about: string;
  readonly schema: z.ZodType;
}

export const KINDS_OF_FILE: readonly KindOfFile[] = [
  { id: 'kit', path: 'kits/<kit>/kit.yaml', about: 'For whom the lesson is, with what, how long, in what order things are made ready.', schema: kitSchema },
  { id: 'question', path: 'kits/<kit>/questions/<question>.mdx', about: 'One question. The fields stand at the top between two lines of `---`; the stem stands below, and after it, in `<TeacherOnly>`, the worked solution.', schema: questionSchema(VOCABULARY) },
  { id: 'room', path: 'rooms/<room>.yaml', about: 'The air of a room: either its elevation or the pressure that its barometer shows.', schema: roomSchema },
  { id: 'apparatus', path: 'apparatus/<apparatus>.yaml', about: 'The vessel with its maker’s rating, the pump or pressure source, the gauge, the thermometer, the light.', schema: apparatusSchema },
  { id: 'particles', path: 'particles/<particles>.yaml', about: 'What droplets condense on.', schema: particlesSchema },
  { id: 'hazard', path: 'hazards/<hazard>.mdx', about: 'A hazard sheet: fields at the top; below them what can happen, what prevents it, what to do if it happens.', schema: hazardSchema },
  { id: 'misconception', path: 'misconceptions/<name>.mdx', about: 'An idea as students say it; below the fields, what is so and how to bring it out.', schema: misconceptionSchema },
  { id: 'sources', path: 'sources.yaml', about: 'References: a list, each item with these fields. Their names are those of CSL-JSON, which reference managers write.', schema: sourceSchema },
  { id: 'standards', path: 'standards/<framework>.yaml', about: 'Curriculum statements that a kit may point at.', schema: standardsSchema },
  { id: 'site', path: 'site.yaml', about: 'Who publishes the lessons, and where.', schema: siteSchema },
];
