/** Addresses inside the site: always relative, always with the file's name, so that the site works in any folder and from a disk. */

/** The folders of a site path: "/kits/a/run/" is kits, a, run. */
const folders = (path: string): string[] => path.split('/').filter(Boolean);

/**
 * The relative address of one page seen from another.
 * @param from - site path of the page that holds the link, ending in `/`: "/kits/cloud/draft/run/"
 * @param to - site path of a page, ending in `/`, or of a file; may carry a `#fragment`
 * @returns for example "../student/index.html#predict"
 */
export const href = (from: string, to: string): string => {
  const [path = '', fragment] = to.split('#');
  const file = path.endsWith('/') ? `${path}index.html` : path;
  const source = folders(from);
  const target = folders(file);
  let shared = 0;
  while (shared < source.length && shared < target.length - 1 && source[shared] === target[shared]) shared += 1;
  const up = '../'.repeat(source.length - shared);
  return `${up}${target.slice(shared).join('/')}${fragment === undefined ? '' : `#${fragment}`}`;
};

/** A drawing whose links point at the steps of the run sheet, seen from another page. */
export const chartSeenFrom = (chart: string, address: string): string => chart.replaceAll('href="#', `href="${address}#`);
