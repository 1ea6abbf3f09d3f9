/** All examples of the guide, group by group, in the order of the page. */
import { BROUGHT_IN } from './brought-in.ts';
import { COMPUTED } from './computed.ts';
import type { ExampleGroup } from './example.ts';
import { MARKDOWN } from './markdown.ts';
import { PARTS } from './parts.ts';
import { TABLES } from './tables.ts';

export type { Example, ExampleGroup } from './example.ts';

export const EXAMPLE_GROUPS: readonly ExampleGroup[] = [MARKDOWN, COMPUTED, PARTS, BROUGHT_IN, TABLES];

/** Throws RangeError for a group that is not there. */
export function exampleGroup(id: string): ExampleGroup {
  const group = EXAMPLE_GROUPS.find((one) => one.id === id);
  if (group === undefined) throw new RangeError(`no group of examples is named ${id}; there are ${EXAMPLE_GROUPS.map((one) => one.id).join(', ')}`);
  return group;
}
