/** Each page as Astro has rendered it, finished and written once into the folder that it belongs to: writing it first and finishing it later took as long as rendering. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { AstroIntegration } from 'astro';
import { relativeAssets } from './relative-assets.ts';
import { addPage, type Shown } from './lean-fonts.ts';
import { addClasses, withFormulaStyles } from './lean-math.ts';

/** The pages written into one folder, and what they hold. */
export interface WrittenPages {
  readonly folder: string;
  pages: number;
  /** Class attributes of pages with formulas. */
  readonly classes: Set<string>;
  readonly shown: Shown;
}

export const noPages = (folder: string): WrittenPages => ({ folder, pages: 0, classes: new Set(), shown: { runs: new Set(), formulas: new Set() } });

/**
 * Takes every page, and every file that a page program makes, from Astro.
 * @param placeOf from the path of an address, "/kits/" or "/teachers/math.css", to the folder and the address inside it
 */
export const pageWriter = (placeOf: (path: string) => { readonly pages: WrittenPages; readonly path: string }): AstroIntegration => ({
  name: 'page-writer',
  hooks: {
    'astro:build:start': ({ setPrerenderer }) => {
      setPrerenderer((own) => ({
        ...own,
        render: async (request, options) => {
          const rendered = await own.render(request, options);
          const { pages, path } = placeOf(decodeURI(new URL(request.url).pathname));
          writeFinished(pages, path, await (rendered instanceof Response ? rendered : rendered.response).text());
          // Astro writes what has a body.
          return new Response();
        },
      }));
    },
  },
});

/** Thousands of files one after another: waiting for each would take longer than the work. */
function writeFinished(written: WrittenPages, path: string, text: string): void {
  const isPage = path.endsWith('/');
  const file = join(written.folder, isPage ? `${path}index.html` : path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, isPage ? relativeAssets(withFormulaStyles(text), path.split('/').length - 2) : text);
  if (!isPage) return;
  written.pages += 1;
  addPage(written.shown, text);
  addClasses(written.classes, text);
}
