/** What runs on the reader's device: each program one plain file at the site's root, which every page can load from a server or a disk. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build, type BuildOptions, type Plugin } from 'esbuild';
import { NOT_THERE } from '../browser/later.ts';

/** Entry files in src/browser. Classic scripts, since a browser loads no module from a disk. */
const SCRIPTS = ['board', 'search', 'reader-more', 'readings'];
/** Those that leave the simulations to a script that is fetched when they are needed. */
const LEAN_SCRIPTS = ['reader', 'will-it-work'];

/** Modules that reader-more.js holds: the simulations, and what is drawn of nothing else. */
const SIMULATIONS = /[\\/]src[\\/](physics[\\/](droplets|particle-history|run)|figures[\\/]run-chart)\.ts$/;
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

/** Modules of the table kinds, and in them how each is computed: the pages say it, and it is the same in every room. */
const TABLE_KINDS = /[\\/]src[\\/]tables[\\/]kinds[\\/][\w-]+\.ts$/;
const METHOD = /^  method: \{\n[\s\S]*?^  \},$/m;

/** Leaves the words on methods out. */
const withoutMethods: Plugin = {
  name: 'without-methods',
  setup: ({ onLoad }) => {
    onLoad({ filter: TABLE_KINDS }, async ({ path }) => ({ contents: (await readFile(path, 'utf8')).replace(METHOD, "  method: { formula: '', words: '' },"), loader: 'ts' }));
  },
};

/** Writes NAME.js into the public folder for each script. */
export async function bundleScripts(root: string, folder: string): Promise<void> {
  await build(options(root, folder, SCRIPTS));
  await build({ ...options(root, folder, LEAN_SCRIPTS), ...LEAN });
}

/** Puts the teachers' reader.js in place of the public one. */
export async function bundleTeachersScripts(root: string, folder: string): Promise<void> {
  await build({ ...options(root, folder, ['reader-teachers']), ...LEAN, entryNames: 'reader' });
}

const LEAN: BuildOptions = { plugins: [simulationsElsewhere, withoutMethods] };

const options = (root: string, folder: string, names: readonly string[]): BuildOptions => ({
  entryPoints: names.map((name) => join(root, 'src', 'browser', `${name}.ts`)),
  outdir: folder,
  bundle: true,
  format: 'iife',
  target: 'es2020',
  minify: true,
  charset: 'utf8',
  legalComments: 'none',
  logLevel: 'error',
});
