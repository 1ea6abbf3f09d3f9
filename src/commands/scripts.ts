/** What runs on the reader's device: each program one plain file at the site's root, which every page can load from a server or a disk. */
import { join } from 'node:path';
import { build } from 'esbuild';

/** Entry files in src/browser. Classic scripts, since a browser loads no module from a disk. */
const SCRIPTS = ['board', 'search'];

/** Writes NAME.js into the folder for each script. */
export async function bundleScripts(root: string, folder: string): Promise<void> {
  await build({
    entryPoints: SCRIPTS.map((name) => join(root, 'src', 'browser', `${name}.ts`)),
    outdir: folder,
    bundle: true,
    format: 'iife',
    target: 'es2020',
    minify: true,
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'error',
  });
}
