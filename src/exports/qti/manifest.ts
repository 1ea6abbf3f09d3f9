/** What a package holds, and which curriculum statements each question belongs to: IMS Content Packaging. */
import type { KitView, QuestionView } from '../../sheets/index.ts';
import { XML_HEAD } from '../xml.ts';
import type { Dialect } from './dialects.ts';
import { AS_WRITTEN, element, leaf, written, type Element } from './markup.ts';
import { itemName, packageName } from './names.ts';

/** Where a question stands in a package. */
export const itemPath = ({ id }: QuestionView): string => `items/${id}.xml`;

/** The text of imsmanifest.xml. */
export function qtiManifest(kit: KitView, dialect: Dialect): string {
  const [namespace, schema] = dialect.manifest;
  const [form, version] = dialect.form;
  const manifest = element(
    'manifest',
    { xmlns: namespace, 'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance', 'xsi:schemaLocation': `${namespace} ${schema}`, identifier: packageName(kit) },
    element('metadata', {}, leaf('schema', {}, form), leaf('schemaversion', {}, version)),
    element('organizations', {}),
    element('resources', {}, ...kit.questions.map((question) => resource(kit, question, dialect))),
  );
  return `${XML_HEAD}${written(manifest, AS_WRITTEN)}\n`;
}

function resource(kit: KitView, question: QuestionView, dialect: Dialect): Element {
  const href = itemPath(question);
  const statements = kit.standards.filter(({ objectives }) => question.objective !== undefined && objectives.includes(question.objective));
  const metadata = statements.length === 0 ? [] : [element('metadata', {}, curriculum(statements, dialect))];
  return element('resource', { identifier: itemName(kit, question.id), type: dialect.resourceType, href }, ...metadata, element('file', { href }));
}

/** The codes themselves stand where frameworks give identifiers of their own: it is by them that teachers know a statement. */
const curriculum = (statements: KitView['standards'], { curriculum: namespace }: Dialect): Element =>
  element(
    'curriculumStandardsMetadataSet',
    { xmlns: namespace },
    element(
      'curriculumStandardsMetadata',
      {},
      element('setOfGUIDs', {}, ...statements.map(({ code, framework }) => element('labelledGUID', {}, leaf('label', {}, `${framework}: ${code}`), leaf('GUID', {}, code)))),
    ),
  );
