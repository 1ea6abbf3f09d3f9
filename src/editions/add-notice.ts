/** A notice added to an edition's `notice.yaml`: the one thing that may be. */
import { join } from 'node:path';
import { Document, isSeq, parseDocument } from 'yaml';
import { schemaLine, type Notice } from '../authoring/index.ts';
import { NOTICE, readIfThere } from './manifest.ts';

/**
 * The notice file of an edition with one more notice, after those that are there and in which nothing is wrong.
 * @param directory of the edition
 * @param path of the notice file in the content folder, with `/`
 */
export function withNotice(directory: string, path: string, notice: Notice): string {
  const text = readIfThere(join(directory, NOTICE));
  const document = text === undefined ? new Document([]) : parseDocument(text);
  if (!isSeq(document.contents)) throw new RangeError(`${path} is no list: notices are read before one is added`);
  document.contents.items.push(document.createNode(notice));
  const head = text === undefined ? `${schemaLine('notice', path)}\n` : '';
  return head + document.toString({ lineWidth: 0 });
}
