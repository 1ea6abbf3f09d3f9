/** The questions of a kit as QTI 3.0 and 2.1 packages: form, names, right answers, and the same numbers as on the page. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { unzipSync } from 'fflate';
import { XmlDocument, xmlRegisterInputProvider, XsdValidator } from 'libxml2-wasm';
import { beforeAll, describe, expect, it } from 'vitest';
import { readBook } from '../../src/commands/read-book.ts';
import { QTI_DIALECTS, qtiPackage } from '../../src/exports/index.ts';
import { bodyMarkup } from '../../src/exports/qti/body.ts';
import type { KitView, QuestionView } from '../../src/sheets/index.ts';
import { questionsOf } from '../support/lesson-secrets.ts';
import { ROOT } from '../support/root.ts';
import { faultsOf, VERSION_2_1, VERSION_3 } from './qti/grammar.ts';
import { scoreOf } from './qti/scoring.ts';
import { everyElement, only, treeOf, type Tree } from './qti/tree.ts';

const FOLDERS = [join(ROOT, 'content'), join(ROOT, 'tests', 'content', 'good', 'valle')];
const VERSIONS = [
  { dialect: QTI_DIALECTS[0]!, rules: VERSION_3, namespace: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0', schema: 'QTI Package', version: '3.0.0', type: 'imsqti_item_xmlv3p0' },
  { dialect: QTI_DIALECTS[1]!, rules: VERSION_2_1, namespace: 'http://www.imsglobal.org/xsd/imsqti_v2p1', schema: 'QTIv2.1 Package', version: '1.0.0', type: 'imsqti_item_xmlv2p1' },
];
/** Namespaces in XML 1.0, NCName, as far as it is ASCII. */
const NC_NAME = /^[A-Za-z_][A-Za-z0-9._-]*$/;

let kits: readonly KitView[];
beforeAll(async () => {
  const books = await Promise.all(FOLDERS.map(readBook));
  kits = books.flatMap((result) => {
    if ('findings' in result) throw new Error('The content has findings.');
    return result.book.kits;
  });
});

const filesOf = (kit: KitView, dialect: (typeof QTI_DIALECTS)[number]): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(qtiPackage(kit, dialect))).map(([path, data]) => [path, Buffer.from(data).toString()]));

describe.each(VERSIONS)('a package of QTI $dialect.version', ({ dialect, rules, namespace, schema, version, type }) => {
  const itemsOf = (kit: KitView): { question: QuestionView; xml: string; item: Tree }[] => {
    const files = filesOf(kit, dialect);
    return kit.questions.map((question) => {
      const xml = files[`items/${question.id}.xml`]!;
      return { question, xml, item: treeOf(xml) };
    });
  };

  it('holds well-formed items with children and attributes as the standard has them', () => {
    for (const kit of kits) {
      for (const { question, xml, item } of itemsOf(kit)) {
        expect(faultsOf(item, rules), question.id).toEqual([]);
        expect(xml).toMatch(new RegExp(`^<\\?xml version="1\\.0" encoding="UTF-8"\\?>\\n<[a-zA-Z-]+ xmlns="${namespace.replaceAll('.', '\\.')}"`));
        expect(item.attributes['xml:lang']).toBe(kit.language);
        expect(only(item, 'response-declaration').attributes['identifier']).toBe('RESPONSE');
      }
    }
    expect(new Set(kits.flatMap(({ questions }) => questions.map(({ kind }) => kind)))).toEqual(new Set(['choice', 'numeric', 'ordering', 'text']));
  });

  it('lists each file once, under a name of its own', () => {
    for (const kit of kits) {
      const files = filesOf(kit, dialect);
      const manifest = treeOf(files['imsmanifest.xml']!);
      expect(faultsOf(manifest, rules)).toEqual([]);
      expect([only(manifest, 'schema').text, only(manifest, 'schemaversion').text]).toEqual([schema, version]);
      const resources = everyElement(manifest).filter(({ name }) => name === 'resource');
      expect(resources.map(({ attributes }) => attributes['href']).sort()).toEqual(Object.keys(files).filter((path) => path !== 'imsmanifest.xml').sort());
      const names = [manifest, ...resources].map(({ attributes }) => attributes['identifier']!);
      expect(new Set(names).size).toBe(names.length);
      for (const { attributes, children } of resources) {
        expect(attributes['identifier']).toMatch(NC_NAME);
        expect(attributes['type']).toBe(type);
        expect(children.at(-1)!.attributes['href']).toBe(attributes['href']);
        expect(treeOf(files[attributes['href']!]!).attributes['identifier']).toBe(attributes['identifier']);
      }
    }
  });

  it('keeps editions apart, and makes a name of one that begins with a digit', () => {
    const names = ['1.0.0', '1.1.0'].map((edition) => everyElement(treeOf(filesOf({ ...kits[0]!, id: '2-clouds', version: edition }, dialect)['imsmanifest.xml']!)).flatMap(({ attributes }) => attributes['identifier'] ?? []));
    expect(names.flat().filter((name) => !NC_NAME.test(name))).toEqual([]);
    expect(names[0]!.filter((name) => names[1]!.includes(name))).toEqual([]);
  });

  it('names the curriculum statements of the objective that a question tests, and not those it only requires', () => {
    const kit = kits.find(({ questions }) => questions.some(({ id }) => id === 'q01-what-is-white'))!;
    const manifest = treeOf(filesOf(kit, dialect)['imsmanifest.xml']!);
    const codes = new Map(everyElement(manifest).filter(({ name }) => name === 'resource').map((resource) => [resource.attributes['href'], everyElement(resource).filter(({ name }) => name === '-g-u-i-d').map(({ text }) => text)]));
    // By the content's standards file: 5-PS1-1 requires this objective, MS-PS1-4 and MS-ESS2-4 teach it.
    expect(codes.get('items/q01-what-is-white.xml')).toEqual(expect.arrayContaining(['MS-PS1-4', 'MS-ESS2-4']));
    expect(codes.get('items/q01-what-is-white.xml')).not.toContain('5-PS1-1');
  });

  it('gives one point for what the author marked right and none for anything else', () => {
    const written = new Map(FOLDERS.flatMap(questionsOf).map((file) => [file.id, file]));
    for (const kit of kits) {
      for (const { question, item } of itemsOf(kit)) {
        const choices = everyElement(item).filter(({ name }) => name === 'simple-choice').map(({ attributes, text }) => ({ letter: attributes['identifier']!, text }));
        const lettersOf = (texts: readonly string[]): string[] => texts.map((text) => choices.find((choice) => choice.text === text)!.letter);
        if (question.kind === 'choice') {
          const right = written.get(question.id)!.options!.find((option) => option.right)!;
          const letters = right.text === undefined ? question.options.filter((option) => option.right).map(({ letter }) => letter) : lettersOf([right.text]);
          expect(choices.filter(({ letter }) => scoreOf(item, [letter]) === 1).map(({ letter }) => letter)).toEqual(letters);
          expect(choices.filter(({ letter }) => scoreOf(item, [letter]) !== 0)).toHaveLength(1);
        }
        if (question.kind === 'ordering') {
          const right = lettersOf(written.get(question.id)!.items!);
          expect(scoreOf(item, right)).toBe(1);
          expect(scoreOf(item, right.toReversed())).toBe(0);
          expect(scoreOf(item, choices.map(({ letter }) => letter))).toBe(0);
        }
        if (question.kind !== 'text') expect(scoreOf(item, null)).toBe(0);
      }
    }
  });

  it('takes a number within the tolerance that the page prints', () => {
    const numeric = kits.flatMap((kit) => itemsOf(kit).map((one) => ({ ...one, kit }))).filter(({ question }) => question.kind === 'numeric');
    expect(numeric.length).toBeGreaterThan(3);
    for (const { question, item, kit } of numeric) {
      // As a reader of the key reads it: the number in bold, and the one after ±.
      const numberIn = (text: string | undefined): number => Number((kit.language === 'es' ? text?.replace(/[\s\u00a0]/g, '').replace(',', '.') : text?.replaceAll(',', ''))?.replace('−', '-'));
      const [, value, width] = /<strong>(?:<[^>]*>)*([−\d.,\u00a0]+)[^±]*±([\d.,\u00a0]+)/.exec(question.answer) ?? [];
      const [answer, tolerance] = [numberIn(value), numberIn(width)];
      expect(only(item, 'equal').attributes['tolerance'], question.id).toBe(`${tolerance} ${tolerance}`);
      const places = Number(only(item, 'value').text);
      // Printed to fewer digits: off by no more than half of the last.
      const [whole = '', fraction] = value!.split(kit.language === 'es' ? ',' : '.');
      const lastDigit = 10 ** (fraction === undefined ? (/0*$/.exec(whole)?.[0].length ?? 0) : -fraction.length);
      expect(Math.abs(places - answer)).toBeLessThanOrEqual(lastDigit / 2 + 1e-9);
      for (const share of [-0.99, 0, 0.99]) expect(scoreOf(item, places + share * tolerance), question.id).toBe(1);
      for (const share of [-1.01, 1.01]) expect(scoreOf(item, places + share * tolerance), question.id).toBe(0);
      expect(scoreOf(item, answer)).toBe(1);
      expect(only(item, 'correct-response').attributes['interpretation']).toContain(`±${width}`);
    }
  });

  it('leaves an answer in words to a person, who is shown the rubric', () => {
    const written = new Map(FOLDERS.flatMap(questionsOf).map((file) => [file.id, file]));
    const texts = kits.flatMap(itemsOf).filter(({ question }) => question.kind === 'text');
    expect(texts).not.toEqual([]);
    for (const { question, item } of texts) {
      expect(scoreOf(item, ['anything'])).toBeUndefined();
      const rubric = only(item, 'rubric-block');
      expect(rubric.attributes['view']).toBe('scorer');
      const points = everyElement(rubric).filter(({ name }) => name === 'html:strong').map(({ text }) => Number(text));
      expect(only(item, 'outcome-declaration').attributes['normal-maximum']).toBe(String(points.reduce((sum, one) => sum + one, 0)));
      for (const { text } of written.get(question.id)!.rubric!) expect(rubric.text).toContain(text);
      // Nobody else is.
      expect(everyElement(item).filter(({ name }) => name === 'correct-response')).toEqual([]);
    }
  });

  it('is the same bytes each time', () => {
    expect(Buffer.from(qtiPackage(kits[0]!, dialect)).equals(Buffer.from(qtiPackage(kits[0]!, dialect)))).toBe(true);
  });
});

describe('the body of an item', () => {
  it.each([
    ['<p>At <span class="value" data-value="x">81.2 kPa<span class="also"> (24 inHg)</span></span> &#x26; less</p>', '<p>At 81.2 kPa (24 inHg) &amp; less</p>'],
    ['<p>By formula<a class="cite" href="../background/index.html#source-a">Bolton 1980</a>. See <a href="https://x.example/">x</a></p>', '<p>By formula (Bolton 1980). See x</p>'],
    ['<p>a<br>b</p><hr>', '<p>a<br/>b</p><hr/>'],
    ['<div class="scroll" tabindex="0"><table><thead><tr><th scope="col">a</th></tr></thead><tbody><tr><td>1</td></tr></tbody></table></div>', '<div><table><thead><tr><th scope="col">a</th></tr></thead><tbody><tr><td>1</td></tr></tbody></table></div>'],
    ['<section><svg viewBox="0 0 1 1"><g><path d="M0 0"/></g></svg><p>t</p><button type="button">b</button></section>', '<div><p>t</p></div>'],
    [
      '<span class="katex"><span class="katex-mathml"><math xmlns="http://www.w3.org/1998/Math/MathML"><semantics><mrow><mi class="q" mathvariant="normal">t</mi><mo>&lt;</mo><mspace width="1em"/></mrow><annotation encoding="application/x-tex">t &lt;</annotation></semantics></math></span><span class="katex-html" aria-hidden="true"><span class="base">t<br></span></span></span>.',
      '<math xmlns="http://www.w3.org/1998/Math/MathML"><mrow><mi mathvariant="normal">t</mi><mo>&lt;</mo><mspace width="1em"/></mrow></math>.',
    ],
  ])('%s', (html, body) => expect(bodyMarkup(html)).toBe(body));
});

/** A folder with the schemas of 1EdTech, W3C and IEEE side by side, which may not be handed on with this project. */
const XSD = process.env['QTI_XSD_DIR'];
const SCHEMAS = [
  { dialect: QTI_DIALECTS[0]!, item: 'imsqti_asiv3p0p1_v1p0.xsd', manifest: 'imsqtiv3p0_imscpv1p2_v1p0.xsd' },
  { dialect: QTI_DIALECTS[1]!, item: 'imsqti_v2p1p2.xsd', manifest: 'qtiv2p1_imscpv1p2_v1p0.xsd' },
];

describe.skipIf(XSD === undefined)('by the official schemas (set QTI_XSD_DIR to the folder that holds them)', () => {
  beforeAll(() => void provideSchemas(XSD!));
  it.each(SCHEMAS.flatMap(({ dialect, item, manifest }) => [{ dialect, file: item, of: 'items' }, { dialect, file: manifest, of: 'imsmanifest' }]))('QTI $dialect.version: $of', ({ dialect, file, of }) => {
    const schema = XmlDocument.fromBuffer(readFileSync(join(XSD!, file)), { url: file });
    const validator = XsdValidator.fromDoc(schema);
    for (const kit of kits) {
      for (const [path, xml] of Object.entries(filesOf(kit, dialect)).filter(([name]) => name.startsWith(of))) {
        const document = XmlDocument.fromString(xml);
        expect(() => validator.validate(document), path).not.toThrow();
        document.dispose();
      }
    }
    validator.dispose();
    schema.dispose();
  });
});

/** Whatever address a schema gives for another: the file of that name in the folder. */
function provideSchemas(folder: string): void {
  const open = new Map<number, { readonly data: Uint8Array; at: number }>();
  const names = new Set(readdirSync(folder));
  const pathOf = (address: string): string => join(folder, basename(address));
  xmlRegisterInputProvider({
    match: (address) => names.has(basename(address)),
    open: (address) => {
      if (!existsSync(pathOf(address))) return undefined;
      open.set(open.size + 1, { data: readFileSync(pathOf(address)), at: 0 });
      return open.size;
    },
    read: (handle, buffer) => {
      const file = open.get(handle)!;
      const part = file.data.subarray(file.at, file.at + buffer.byteLength);
      buffer.set(part);
      file.at += part.length;
      return part.length;
    },
    close: () => true,
  });
}
