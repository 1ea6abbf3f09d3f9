/** A misconception to start from. */
import { quoted, titleOf, type NewFile } from './new-file.ts';

export const misconceptionFile = (name: string): NewFile => ({
  path: `misconceptions/${name}.mdx`,
  text: `---
# The idea as students say it, in a whole sentence.
title: ${quoted(`${titleOf(name)}.`)}
# Where it was found among students, or where it is set right: ids of sources.yaml.
# source: [petters-kreidenweis-2007]
---

Say here what is so, in two or three plain sentences. Begin with what can be seen in the lesson.

**To bring it out.** Write a question that a student with this idea answers differently from one without it. Then name the moment of the lesson that decides between the two.
`,
});
