/** Relative links of lesson text: each leads to something, from every page on which its text stands. */
import { posix } from 'node:path';
import { findingAt, type Finding, type Problem } from './findings.ts';
import { ownPage, SHEETS, siteOf, THIS, type Page, type SiteOfLinks, type Target } from './link-targets.ts';
import type { PlacedLink } from './lesson.ts';
import type { LoadedFile } from './load.ts';
import { listNames, nearestName, proposeName } from './names.ts';
import type { Vocabulary } from './vocabulary.ts';

/** As deep as any server's folder: what leaves the site does not come out at its top. */
const ABOVE = 'https://site.example/a/a/a/a/a/a/a/a/';

/** Every relative link that leads nowhere. */
export function deadLinks(files: readonly LoadedFile[], vocabulary: Vocabulary): Finding[] {
  if (files.every(({ lesson }) => (lesson?.links ?? []).length === 0)) return [];
  const site = siteOf(files, vocabulary);
  return files.flatMap((file) =>
    (file.lesson?.links ?? []).flatMap((link) => {
      const problem = site.pagesWith(file, link).map((page) => problemOn(page, link, file, site)).find((one) => one !== undefined);
      return problem === undefined ? [] : [findingAt(file.file, link.position, problem)];
    }),
  );
}

function problemOn(page: Page, link: PlacedLink, file: LoadedFile, site: SiteOfLinks): Problem | undefined {
  const { path, fragment } = resolved(link.address, page);
  const teachers = link.inside.includes('TeacherOnly');
  const target = link.address === '' || path === undefined ? undefined : site.targetAt(path, page.kit, teachers);
  if (target !== undefined && (['', 'top'].includes(fragment) || target.anchors?.has(fragment) !== false)) return undefined;
  const elsewhere = page.path === ownPage(file).path ? '' : ` from the page \`${shown(page.path)}\`, where this text stands as well`;
  const what =
    link.address === ''
      ? 'the link has no address'
      : target === undefined
        ? `\`${link.address}\` leads to no page${elsewhere}`
        : `\`${link.address}\` leads to a page without a place \`${fragment}\`${elsewhere}`;
  return { code: 'dead-link', what, instead: proposal(link.address, page, file, site, { path, fragment, teachers, target }) };
}

interface Missed {
  readonly path: string | undefined;
  readonly fragment: string;
  readonly teachers: boolean;
  readonly target: Target | undefined;
}

function proposal(address: string, page: Page, file: LoadedFile, site: SiteOfLinks, { path, fragment, teachers, target }: Missed): string {
  const write = (found: string): string => `write \`${found}\``;
  if (target !== undefined) {
    const there = site.sheetWith(fragment, page.kit, teachers);
    if (there !== undefined) return write(`${addressFrom(page, there)}#${fragment}`);
    const names = target.anchors ?? new Set<string>();
    const nearest = nearestName(fragment, names);
    if (nearest !== undefined) return write(address.replace(/#.*$/, `#${nearest}`));
    return names.size === 0 ? 'leave out what follows `#`' : proposeName(fragment, names);
  }
  const withPlace = (to: string): string => (fragment !== '' && site.targetAt(to, page.kit, teachers)?.anchors?.has(fragment) === true ? `#${fragment}` : '');
  // The page is meant: pages are files here, so that the site works from a disk as well.
  const meant = path === undefined || address === '' ? undefined : posix.join(path, 'index.html');
  if (meant !== undefined && site.targetAt(meant, page.kit, teachers) !== undefined) return write(`${addressFrom(page, meant)}${withPlace(meant)}`);
  const parts = address.replace(/[?#].*$/, '').split('/').filter((part) => !['', '.', '..', 'index.html', 'kits'].includes(part));
  const name = (parts.at(-1) ?? '').replace(/\.\w+$/, '');
  const named = site.namesFrom(page, file);
  const otherKit = parts.find((part) => site.kits.has(part) && part !== page.kit);
  const nearest = otherKit ?? nearestName(name, [...named.keys()]);
  const to = nearest === undefined ? undefined : named.get(nearest);
  if (to !== undefined) return write(`${addressFrom(page, to)}${to.includes('#') ? '' : withPlace(to)}`);
  return file.kind === 'hazard'
    ? 'say it in words, or name another hazard sheet, as in `../safety/index.html#hazard-…`: hazard sheets stand on pages of several folders'
    : `name a sheet, as in \`../student/index.html\`, another kit, as in \`../../../other-kit/index.html\`, or an address with \`https:\`; the sheets are ${listNames(SHEETS)}`;
}

/** Where an address leads from a page: the path within the site, undefined outside it, and the place on it. */
function resolved(address: string, page: Page): { readonly path: string | undefined; readonly fragment: string } {
  const { href, hash, pathname } = new URL(address, `${ABOVE}${page.path}/index.html`);
  return { path: href.startsWith(ABOVE) ? decoded(pathname.slice(new URL(ABOVE).pathname.length)) : undefined, fragment: decoded(hash.slice(1)) };
}

/** With percent signs resolved; as it is where they stand for nothing. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch (error) {
    if (error instanceof URIError) return part;
    throw error;
  }
}

const addressFrom = (page: Page, to: string): string => posix.relative(`/${page.path}`, `/${to}`);
const shown = (path: string): string => `${path.replace(`/${THIS}/`, '/…/')}/index.html`;
