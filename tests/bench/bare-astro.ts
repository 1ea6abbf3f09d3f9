/** What Astro alone takes: plain Markdown pages through its content layer, one page each. */
import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ROOT } from '../support/root.ts';
import { generateMarkdown } from './generate-content.ts';
import { costOf, type Cost } from './measured-command.ts';

const FILES: Readonly<Record<string, string>> = {
  'package.json': '{ "name": "bare", "private": true, "type": "module" }\n',
  'astro.config.mjs': "import { defineConfig } from 'astro/config';\nexport default defineConfig({ cacheDir: './cache', vite: { cacheDir: './cache/vite' }, devToolbar: { enabled: false } });\n",
  'src/content.config.ts': `import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
export const collections = { pages: defineCollection({ loader: glob({ pattern: '*.md', base: './pages' }) }) };
`,
  'src/pages/[id].astro': `---
import { getCollection, render } from 'astro:content';
export const getStaticPaths = async () => (await getCollection('pages')).map((entry) => ({ params: { id: entry.id }, props: { entry } }));
const { Content } = await render(Astro.props.entry);
---
<!doctype html>
<html lang="en"><head><meta charset="utf-8" /><title>{Astro.props.entry.data.title}</title></head><body><main><Content /></main></body></html>
`,
  'build.mjs': "import { build } from 'astro';\nawait build({ logLevel: 'error' });\n",
};

/** What a build leaves behind, which would make the next one faster. */
export const LEFT_BY_A_BUILD: readonly string[] = ['dist', '.astro', 'cache'];

/** Writes a project of so many pages into an empty folder; it uses the packages of this one. */
export async function writeBareProject(folder: string, pages: number): Promise<void> {
  for (const part of ['src/pages', 'pages']) await mkdir(join(folder, part), { recursive: true });
  for (const [path, text] of Object.entries(FILES)) await writeFile(join(folder, path), text);
  await symlink(join(ROOT, 'node_modules'), join(folder, 'node_modules'), 'dir');
  await generateMarkdown(join(folder, 'pages'), pages);
}

/** Builds it. */
export const buildBareProject = (folder: string): Promise<Cost> => costOf(join(folder, 'build.mjs'), [], { ASTRO_TELEMETRY_DISABLED: '1' }, folder);
