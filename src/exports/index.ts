/** A book in other forms: for machines, for search, for a disk. */
export { csv } from './csv.ts';
export { atomFeed } from './feed.ts';
export { kitArchive, publicNotices, publicSource, type ArchiveFile } from './kit-archive.ts';
export { learningResource, scriptData } from './learning-resource.ts';
export { licenseAddress } from './license.ts';
export { digestOf, KIT_LIST, type Digests, type Edition } from './offline-edition.ts';
export { noticeText } from './notice-text.ts';
export { bytesOf, oneFile, type Piece } from './one-file.ts';
export { QTI_DIALECTS, qtiFile, qtiPackage } from './qti/index.ts';
export { searchDocuments } from './search-documents.ts';
export type { SearchDocument } from './search-options.ts';
export { searchIndexScript } from './search-index.ts';
export { sitemapXml } from './sitemap.ts';
export { webManifest } from './web-manifest.ts';
