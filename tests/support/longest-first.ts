/** The order of test files: those that take longest first, so that both cores have work to the end, in a first run as well. */
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** From the longest on, part of their paths. */
const LONGEST = ['site/access', 'site/loading', 'site/room', 'site/offline', 'site/readings', 'site/booklet', 'site/editions', 'site/pdf', 'commands/start', 'physics/fit', 'contribute/', 'physics/droplets', 'authoring/'];

const rank = ({ moduleId }: TestSpecification): number => {
  const at = LONGEST.findIndex((part) => moduleId.includes(`/tests/${part}`));
  return at < 0 ? LONGEST.length : at;
};

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).toSorted((a, b) => rank(a) - rank(b));
  }
}
