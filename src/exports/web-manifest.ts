/** What a device needs to put the site among its programs: W3C Web Application Manifest. */
import type { Book } from '../sheets/index.ts';
import { FILE_TEXTS } from '../texts/index.ts';

/** Every address is relative: the manifest stands at the site's root, wherever that is. */
export const webManifest = (book: Book): string =>
  `${JSON.stringify({
    name: FILE_TEXTS[book.language].lessonKits(book.school),
    short_name: FILE_TEXTS[book.language].short,
    lang: book.language,
    id: 'index.html',
    start_url: 'index.html',
    scope: './',
    display: 'minimal-ui',
    background_color: '#ffffff',
    theme_color: '#ffffff',
    icons: [{ src: 'mark.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
  })}\n`;
