/** Addresses of built files made relative, so that the site works in any folder and from a disk. */

/** Those that start at the site's root, in attributes and in `url()`. */
const ASSET = /(["'(=]|url\()\/_astro\//g;

/**
 * The text of a built page or stylesheet with its assets addressed relatively.
 * @param text - HTML or CSS
 * @param depth - folders between the file and the site's root: 0 for "index.html", 3 for "kits/cloud/draft/index.html", 1 for "_astro/sheet.css"
 */
export const relativeAssets = (text: string, depth: number): string => text.replace(ASSET, (_, before: string) => `${before}${'../'.repeat(depth) || './'}_astro/`);
