/** What runs on the reader's device: each program one plain file at the site's root, which every page can load from a server or a disk. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build, type BuildOptions, type Plugin } from 'esbuild';
import { NOT_THERE } from '../browser/simulations.ts';
import type { Edition } from '../exports/index.ts';
import type { Book } from '../sheets/index.ts';
import { scriptName, type Language } from '../texts/index.ts';

/** Entry files in src/browser. Classic scripts, since a browser loads no module from a disk. */
const SCRIPTS = ['board', 'search', 'reader', 'reader-more', 'readings'];
/** Without a word of their own: the page holds what they say. */
const SILENT_SCRIPTS = ['paper', 'shelf'];
/** Those that leave the simulations to a script that is fetched when they are needed. */
const LEAN_SCRIPTS = ['reader-room', 'will-it-work'];

/** Modules that reader-more.js holds: the simulations, and all drawings. */
const SIMULATIONS = /[\\/]src[\\/](physics[\\/](droplets|particle-history|run)|figures[\\/](draw-curve|run-chart|setup-parts|printed-code))\.ts$/;
const EXPORTED_FUNCTION = /^export (?:function|const) (\w+)/gm;
const EXPORTED_NAMES = /^export \{([^}]*)\}/gm;

/** Puts in place of each simulation a stand-in that asks the other script, and says so where that is not there. */
const simulationsElsewhere: Plugin = {
  name: 'simulations-elsewhere',
  setup: ({ onLoad }) => {
    onLoad({ filter: SIMULATIONS }, async ({ path }) => {
      const text = await readFile(path, 'utf8');
      const listed = [...text.matchAll(EXPORTED_NAMES)].flatMap(([, names = '']) => names.split(',').map((name) => name.trim()).filter((name) => name !== '' && !name.startsWith('type ')));
      const names = [...text.matchAll(EXPORTED_FUNCTION)].map(([, name]) => name!).concat(listed);
      const standIns = names.map((name) => `export const ${name} = (...given) => ask('${name}', given);`);
      return {
        contents: [
          'const ask = (name, given) => {',
          '  const there = globalThis.lapsebookSimulations;',
          `  if (!there) throw new Error('${NOT_THERE}');`,
          '  return there[name](...given);',
          '};',
          ...standIns,
        ].join('\n'),
        loader: 'js',
      };
    });
  },
};

/** Modules of the table kinds, and in them the formula by which each is computed: the pages show it, and it is the same in every room. */
const TABLE_KINDS = /[\\/]src[\\/]tables[\\/]kinds[\\/][\w-]+\.ts$/;
const FORMULA = /^  formula: .*$/m;

/** Leaves the formulas out. */
const withoutFormulas: Plugin = {
  name: 'without-formulas',
  setup: ({ onLoad }) => {
    onLoad({ filter: TABLE_KINDS }, async ({ path }) => ({ contents: (await readFile(path, 'utf8')).replace(FORMULA, "  formula: () => '',"), loader: 'ts' }));
  },
};

/** Puts the texts of one language in the place of all: a page is in one. */
const textsOf = (language: Language): Plugin => ({
  name: 'texts-of-one-language',
  setup: ({ onResolve }) => {
    onResolve({ filter: /^\.\/[a-z]{2}\.ts$/ }, ({ resolveDir }) => (/[\\/]src[\\/]texts$/.test(resolveDir) ? { path: join(resolveDir, `${language}.ts`) } : undefined));
  },
});

/** The languages that a book's pages are in, the site's own first. */
export const languagesOf = ({ language, kits }: Book): readonly Language[] => [...new Set([language, ...kits.map((kit) => kit.language)])];

/** Writes each script into the public folder, once for each language: reader.js, reader-es.js. */
export async function bundleScripts(root: string, folder: string, languages: readonly Language[]): Promise<void> {
  await build(options(root, folder, 'en', SILENT_SCRIPTS));
  for (const language of languages) {
    await build({ ...options(root, folder, language, SCRIPTS), plugins: [textsOf(language)] });
    await build({ ...options(root, folder, language, LEAN_SCRIPTS), plugins: leanIn(language) });
  }
}

/** Puts the teachers' reader-room.js in place of the public one. */
export async function bundleTeachersScripts(root: string, folder: string, languages: readonly Language[]): Promise<void> {
  for (const language of languages) await build({ ...options(root, folder, language, ['reader-room-teachers'], 'reader-room'), plugins: leanIn(language) });
}

/** Writes the script by which pages of the public site ask to be kept on a device. */
export async function bundleOfflineScripts(root: string, folder: string, languages: readonly Language[]): Promise<void> {
  for (const language of languages) await build({ ...options(root, folder, language, ['offline']), plugins: [textsOf(language)] });
}

/** Writes the worker that keeps them, which carries the list of what it keeps; one, in the language of the site. */
export async function bundleServiceWorker(root: string, folder: string, language: Language, edition: Edition): Promise<void> {
  const define = { EDITION: JSON.stringify(edition), LANGUAGE: JSON.stringify(language) };
  await build({ ...options(root, folder, 'en', ['service-worker']), plugins: [textsOf(language)], define });
}

const leanIn = (language: Language): Plugin[] => [simulationsElsewhere, withoutFormulas, textsOf(language)];

/** @param as what the script is called, where not like its source */
const options = (root: string, folder: string, language: Language, names: readonly string[], as?: string): BuildOptions => ({
  entryPoints: Object.fromEntries(names.map((name) => [scriptName(as ?? name, language).replace(/\.js$/, ''), join(root, 'src', 'browser', `${name}.ts`)])),
  outdir: folder,
  bundle: true,
  format: 'iife',
  target: 'es2020',
  minify: true,
  charset: 'utf8',
  legalComments: 'none',
  logLevel: 'error',
});
