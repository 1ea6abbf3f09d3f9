/** Where the pages of a book stand: paths from the site's root, and whole addresses. */
import type { Book, KitView } from './book.ts';

/** Site path of a kit's page or of one of its sheets. */
export const kitPath = ({ id, version }: KitView, sheet = ''): string => `/kits/${id}/${version}/${sheet === '' ? '' : `${sheet}/`}`;

/** Site path of the page that shows the newest edition of a kit. */
export const titlePath = ({ id }: Pick<KitView, 'id'>): string => `/kits/${id}/`;

/** Site path of the page of a kit's editions, their notices and what changed. */
export const changesPath = ({ id }: Pick<KitView, 'id'>): string => `/kits/${id}/changes/`;

/** The whole address of a page, or the folder where the site has no address yet. */
export const fullAddress = (book: Book, path: string): string => `${book.address.replace(/\/$/, '')}${path}`.replace(/^https?:\/\//, '');

/** The permanent address of a page; undefined where the site has none. */
export const permanentAddress = (book: Book, path: string): string | undefined => (/^https?:\/\//.test(book.address) ? `${book.address.replace(/\/$/, '')}${path}` : undefined);
