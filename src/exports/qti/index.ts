/** The questions of a kit for a school's learning platform, in each version of QTI. They hold the answers. */
import type { KitView } from '../../sheets/index.ts';
import { kitArchive } from '../kit-archive.ts';
import type { Dialect } from './dialects.ts';
import { qtiItem } from './item.ts';
import { itemPath, qtiManifest } from './manifest.ts';

export { QTI_DIALECTS } from './dialects.ts';

/** What a package is called beside the kit's page. */
export const qtiFile = ({ id }: KitView, { file }: Dialect): string => `${id}-${file}.zip`;

/** The bytes of a package. */
export const qtiPackage = (kit: KitView, dialect: Dialect): Uint8Array =>
  kitArchive([
    { path: 'imsmanifest.xml', data: qtiManifest(kit, dialect) },
    ...kit.questions.map((question) => ({ path: itemPath(question), data: qtiItem(kit, question, dialect) })),
  ]);
