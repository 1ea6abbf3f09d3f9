/** How long checking and building take: of one kit, of a thousand sheets, beside Astro alone, and as content grows. */
import { readdir, rm } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { exclusively } from '../support/exclusive.ts';
import { newFolder, removeFolder } from '../support/folders.ts';
import { ROOT } from '../support/root.ts';
import { buildBareProject, LEFT_BY_A_BUILD, writeBareProject } from './bare-astro.ts';
import { generateContent, SHEETS_PER_KIT } from './generate-content.ts';
import { costOf, leastCost, type Cost } from './measured-command.ts';
import type { BenchRow, BenchSection } from './section.ts';

const MANY = 1000;
/** Sizes of the builds; a school with more sheets than the last is asked for by name, since it takes minutes. */
const SIZES = process.env['LAPSEBOOK_BENCH_LARGE'] === undefined ? [100, 300, MANY] : [100, 300, MANY, 3000];
/** Sheets whose kits have about as many pages as bare Astro is given. */
const SHEETS_OF_MANY_PAGES = 135;
const RUNS_OF_ONE = 5;
const RUNS_OF_MANY = 2;

export const authoring: BenchSection = {
  name: 'authoring',
  title: `Checking and building generated lessons: the least of ${RUNS_OF_ONE} runs of one kit and of ${RUNS_OF_MANY} of more. A kit is ${SHEETS_PER_KIT} sheets of text, and its pages are many more: in the public site and the teachers’ folder its own, each sheet, numbers, questions, safety, board, readings and booklet; so that as many pages are compared, and as many sheets beside. LAPSEBOOK_BENCH_LARGE=1 adds 3,000 sheets.`,
  head: ['whole command', 'time', 'processor', 'memory', 'target'],
  measure: async (progress) => {
    const place = newFolder();
    try {
      return [...(await checks(place, progress)), ...(await builds(place, progress))];
    } finally {
      await removeFolder(place);
    }
  },
};

type Progress = (what: string) => void;

const LAUNCHER = join(ROOT, 'src', 'commands', 'launch.mjs');
const command = (name: string, content: string, site: string): Promise<Cost> => costOf(LAUNCHER, [name], { LAPSEBOOK_CONTENT: content, LAPSEBOOK_OUT: site }, ROOT);

async function content(place: string, sheets: number): Promise<string> {
  const folder = join(place, `content-${sheets}`);
  await generateContent(folder, sheets);
  return folder;
}

async function checks(place: string, progress: Progress): Promise<BenchRow[]> {
  const one = await content(place, SHEETS_PER_KIT);
  const many = await content(place, MANY);
  progress('checking one kit');
  const ofOne = await leastCost(RUNS_OF_ONE, () => command('check', one, place));
  progress(`checking ${MANY} sheets`);
  const ofMany = await leastCost(RUNS_OF_MANY, () => command('check', many, place));
  return [row('check of one kit', ofOne, 'under 1 s'), row(`check of ${counted(MANY)} sheets`, ofMany, 'under 4 s')];
}

async function builds(place: string, progress: Progress): Promise<BenchRow[]> {
  const { cost: one } = await buildOf(place, SHEETS_PER_KIT, progress);
  const costs: Built[] = [];
  for (const sheets of SIZES) costs.push(await buildOf(place, sheets, progress));
  const { cost: many, pages } = costs.find(({ sheets }) => sheets === MANY)!;
  const asMany = await buildOf(place, SHEETS_OF_MANY_PAGES, progress);
  const bare = await bareBuild(place, MANY, progress);
  const asBare = await bareBuild(place, asMany.pages, progress);
  const first = costs[0]!;
  return [
    row('build of one kit', one, ''),
    ...costs.map(({ sheets, cost }) => row(`build of ${counted(sheets)} sheets`, cost, sheets === MANY ? 'memory under 1 GB' : '')),
    row(`Astro alone, ${counted(MANY)} plain pages`, bare, ''),
    against(`${counted(MANY)} sheets, ${counted(pages)} pages, against ${counted(MANY)} plain ones`, many, bare, 'time at most 2.5 times'),
    row(`build of ${counted(asMany.pages)} pages, ${counted(SHEETS_OF_MANY_PAGES)} sheets`, asMany.cost, ''),
    row(`Astro alone, ${counted(asMany.pages)} plain pages`, asBare, ''),
    against('as many pages against plain ones', asMany.cost, asBare, ''),
    perPage(`each of the ${counted(pages)} pages of ${counted(MANY)} sheets`, many, pages),
    perPage(`each of the ${counted(MANY)} pages of Astro alone`, bare, MANY),
    ...costs.map(({ sheets, cost }) => perSheet(sheets, cost, one, sheets === first.sheets ? '' : `not above that of ${first.sheets}`)),
  ];
}

interface Built {
  readonly sheets: number;
  /** Written into both folders. */
  readonly pages: number;
  readonly cost: Cost;
}

async function buildOf(place: string, sheets: number, progress: Progress): Promise<Built> {
  progress(`building ${sheets} sheets`);
  const folder = await content(place, sheets);
  const site = join(place, `site-${sheets}`);
  const cost = await leastCost(sheets > MANY ? 1 : RUNS_OF_MANY, () => exclusively(() => command('build', folder, site)));
  let pages = 0;
  for (const made of [site, `${site}-teachers`]) {
    pages += (await readdir(made, { recursive: true })).filter((path) => basename(path) === 'index.html').length;
    await rm(made, { recursive: true });
  }
  return { sheets, pages, cost };
}

async function bareBuild(place: string, pages: number, progress: Progress): Promise<Cost> {
  progress(`building ${pages} plain pages with Astro alone`);
  const folder = join(place, `bare-${pages}`);
  await writeBareProject(folder, pages);
  return leastCost(RUNS_OF_MANY, async () => {
    for (const kept of LEFT_BY_A_BUILD) await rm(join(folder, kept), { recursive: true, force: true });
    return buildBareProject(folder);
  });
}

/** What a sheet costs beyond starting and the first kit. */
const perSheet = (sheets: number, cost: Cost, one: Cost, target: string): BenchRow => {
  const each = (of: keyof Cost): number => (cost[of] - one[of]) / (sheets - SHEETS_PER_KIT);
  return [`each sheet of ${counted(sheets)}, beyond the first kit`, `${(1000 * each('time')).toFixed(1)} ms`, `${(1000 * each('processor')).toFixed(1)} ms`, `${(each('memory') / 1e6).toFixed(2)} MB`, target];
};

/** What a page costs, of all that the command takes. */
const perPage = (what: string, { time, processor }: Cost, pages: number): BenchRow =>
  [what, `${((1000 * time) / pages).toFixed(1)} ms`, `${((1000 * processor) / pages).toFixed(1)} ms`, '', ''];

const row = (what: string, { time, processor, memory }: Cost, target: string): BenchRow =>
  [what, `${time.toFixed(2)} s`, `${processor.toFixed(2)} s`, `${Math.round(memory / 1e6)} MB`, target];
const against = (what: string, own: Cost, other: Cost, target: string): BenchRow =>
  [what, ratio(own.time, other.time), ratio(own.processor, other.processor), ratio(own.memory, other.memory), target];
const ratio = (own: number, other: number): string => `${(own / other).toFixed(1)} ×`;
const counted = (count: number): string => count.toLocaleString('en-US');
