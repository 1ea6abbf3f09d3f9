/** The schema of every kind of file with fields. */
import type { Vocabulary } from '../vocabulary.ts';
import { apparatusSchema } from './apparatus.ts';
import { hazardSchema } from './hazard.ts';
import { kitSchema } from './kit.ts';
import { misconceptionSchema } from './misconception.ts';
import { noticeSchema } from './notice.ts';
import { particlesSchema } from './particles.ts';
import { questionSchema } from './question.ts';
import { roomSchema } from './room.ts';
import { siteSchema } from './site.ts';
import { sourcesSchema } from './sources.ts';
import { standardsSchema } from './standards.ts';

/** The schemas by kind, one a line, those of questions in this vocabulary; in the last three kinds, the fields stand above a text. */
export const schemasOf = (vocabulary: Vocabulary) => ({
  site: siteSchema,
  sources: sourcesSchema,
  room: roomSchema,
  apparatus: apparatusSchema,
  particles: particlesSchema,
  standards: standardsSchema,
  kit: kitSchema,
  notice: noticeSchema,
  hazard: hazardSchema,
  misconception: misconceptionSchema,
  question: questionSchema(vocabulary),
});

export type KindWithFields = keyof ReturnType<typeof schemasOf>;
