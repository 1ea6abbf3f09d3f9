/** Each page as Astro has rendered it, finished and written once into the folder that it belongs to: writing it first and finishing it later took as long as rendering. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { AstroIntegration } from 'astro';
import { relativeAssets } from './relative-assets.ts';
import { addPage, type Shown } from './lean-fonts.ts';
import { addClasses, withFormulaStyles } from './lean-math.ts';

/** A folder that pages are written into, and what they hold. */
export interface Edition {
  readonly folder: string;
  pages: number;
  /** Class attributes of pages with formulas. */
  readonly classes: Set<string>;
  readonly shown: Shown;
}

export const emptyEdition = (folder: string): Edition => ({ folder, pages: 0, classes: new Set(), shown: { runs: new Set(), formulas: new Set() } });

/**
 * Takes every page, and every file that a page program makes, from Astro.
 * @param editionOf from the path of an address, "/kits/" or "/teachers/math.css", to the folder and the address inside it
 */
export const pageWriter = (editionOf: (path: string) => { readonly edition: Edition; readonly path: string }): AstroIntegration => ({
  name: 'page-writer',
  hooks: {
    'astro:build:start': ({ setPrerenderer }) => {
      setPrerenderer((own) => ({
        ...own,
        render: async (request, options) => {
          const rendered = await own.render(request, options);
          const { edition, path } = editionOf(decodeURI(new URL(request.url).pathname));
          writeFinished(edition, path, await (rendered instanceof Response ? rendered : rendered.response).text());
          // Astro writes what has a body.
          return new Response();
        },
      }));
    },
  },
});

/** Thousands of files one after another: waiting for each would take longer than the work. */
function writeFinished(edition: Edition, path: string, text: string): void {
  const isPage = path.endsWith('/');
  const file = join(edition.folder, isPage ? `${path}index.html` : path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, isPage ? relativeAssets(withFormulaStyles(text), path.split('/').length - 2) : text);
  if (!isPage) return;
  edition.pages += 1;
  addPage(edition.shown, text);
  addClasses(edition.classes, text);
}
