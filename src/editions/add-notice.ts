/** A notice added to an edition's `notice.yaml`: the one thing that may be. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Document, isSeq, parseDocument } from 'yaml';
import { schemaLine, type Notice } from '../authoring/index.ts';
import { NOTICE, readIfThere } from './manifest.ts';

/**
 * Adds a notice after those that are there.
 * @param directory of the edition
 * @param path of the notice file in the content folder, with `/`
 */
export function addNotice(directory: string, path: string, notice: Notice): void {
  const file = join(directory, NOTICE);
  const text = readIfThere(file);
  const document = text === undefined ? new Document([]) : parseDocument(text);
  if (!isSeq(document.contents)) throw new RangeError(`${path} is no list: notices are read before one is added`);
  document.contents.items.push(document.createNode(notice));
  const head = text === undefined ? `${schemaLine('notice', path)}\n` : '';
  writeFileSync(file, head + document.toString({ lineWidth: 0 }));
}
