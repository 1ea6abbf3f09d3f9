/** Names of items and packages: what a learning platform tells questions apart by. */
import type { KitView } from '../../sheets/index.ts';

/** A name as XML has it without a namespace: it begins with a letter or `_` (Namespaces in XML 1.0, NCName). */
const ncName = (text: string): string => text.replace(/[^\w.-]/g, '_').replace(/^(?![A-Za-z_])/, '_');

/** The package of an edition: another version is another package. */
export const packageName = ({ id, version }: KitView): string => ncName(`${id}-${version}`);

/** A question of an edition. */
export const itemName = (kit: KitView, question: string): string => ncName(`${kit.id}-${kit.version}-${question}`);
