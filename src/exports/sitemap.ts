/** The list of pages for those who look for them: the protocol of sitemaps.org, version 0.9. */
import { element, XML_HEAD } from './xml.ts';

/** @param addresses - whole addresses of the pages, in order */
export const sitemapXml = (addresses: readonly string[]): string =>
  `${XML_HEAD}<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${addresses.map((address) => `<url>${element('loc', address)}</url>\n`).join('')}</urlset>\n`;
