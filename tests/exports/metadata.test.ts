/** What a book says to machines: schema.org LearningResource, sitemaps.org 0.9, Atom (RFC 4287), W3C Web Application Manifest. */
import { beforeAll, describe, expect, it } from 'vitest';
import { atomFeed, learningResource, licenseAddress, scriptData, sitemapXml, webManifest } from '../../src/exports/index.ts';
import type { Book, KitView, NoticeView } from '../../src/sheets/index.ts';
import { ownBook } from './data.ts';

let book: Book;
let kit: KitView;
beforeAll(async () => {
  book = await ownBook();
  kit = book.kits[0]!;
});

const CORRECTION: NoticeView = { kind: 'correction', date: '2026-04-01', why: 'A gauge was misread.', numbers: [], unseen: 0 };
const WITHDRAWN: NoticeView = { kind: 'withdrawn', date: '2026-06-01', why: 'It needs another vessel.', replacement: '1.1.0', numbers: [], unseen: 0 };

const QUESTIONS = 'https://school.example/kits/a/draft/questions/';
const PLACES = { kit: 'https://school.example/kits/a/draft/', sheets: [{ name: 'Run sheet', about: 'Steps.', address: 'https://school.example/kits/a/draft/run/' }], files: [], questions: { address: QUESTIONS, files: [] } };

describe('the data of a kit', () => {
  it('names what standards.md asks for, in the forms of schema.org', () => {
    const data: Record<string, unknown> = { ...learningResource(book, kit, PLACES) };
    expect(data).toMatchObject({ '@context': 'https://schema.org', '@type': 'LearningResource', '@id': PLACES.kit, version: kit.version, isAccessibleForFree: true });
    // ISO 8601 duration; schema.org/timeRequired.
    expect(data.timeRequired).toMatch(/^PT\d+M$/);
    // schema.org/typicalAgeRange gives "7-9" and "11-" as forms.
    expect(data.typicalAgeRange).toMatch(/^\d+-\d*$/);
    expect(data.teaches).toHaveLength(kit.objectives.length);
    const tested = kit.questions.map(({ objective }) => kit.objectives.find(({ id }) => id === objective)?.text);
    expect(new Set(data.assesses as string[])).toEqual(new Set(tested.filter((text) => text !== undefined)));
    expect(data.assesses).not.toEqual([]);
    expect(data.citation).toHaveLength(kit.sources.length);
    expect(data.license).toBe('https://creativecommons.org/licenses/by/4.0/');
    for (const name of ['learningResourceType', 'educationalLevel', 'author', 'publisher', 'accessMode', 'accessibilityFeature', 'accessibilityHazard', 'hasPart', 'educationalAlignment']) expect(data, name).toHaveProperty(name);
  });

  it('states a date of publication and an earlier edition only of an edition', () => {
    expect(learningResource(book, { ...kit, draft: true }, PLACES)).not.toHaveProperty('datePublished');
    const edition = { ...kit, draft: false, version: '2.0.0', published: '2026-03-01' };
    expect(learningResource(book, edition, { ...PLACES, basedOn: 'https://school.example/kits/a/1.0.0/' })).toMatchObject({ creativeWorkStatus: 'Published', datePublished: '2026-03-01', isBasedOn: 'https://school.example/kits/a/1.0.0/' });
    expect(learningResource(book, edition, PLACES)).not.toHaveProperty('correction');
  });

  it('says of an edition that it is corrected or withdrawn', () => {
    const changes = 'https://school.example/kits/a/changes/';
    const corrected = { ...kit, draft: false, version: '1.0.0', published: '2026-03-01', notices: [CORRECTION] };
    // schema.org/correction takes a CorrectionComment; schema.org/creativeWorkStatus gives "Obsolete" as an example.
    const comment = { '@type': 'CorrectionComment', text: 'A gauge was misread.', datePublished: '2026-04-01', url: changes };
    expect(learningResource(book, corrected, { ...PLACES, changes })).toMatchObject({ creativeWorkStatus: 'Published', correction: [comment] });
    expect(learningResource(book, { ...corrected, notices: [CORRECTION, WITHDRAWN] }, { ...PLACES, changes })).toMatchObject({ creativeWorkStatus: 'Obsolete', correction: [comment, { datePublished: '2026-06-01' }] });
  });

  it('names its questions, what each tests, and their files where there are any', () => {
    const sheets = [...PLACES.sheets, { name: 'Questions', about: 'By level.', address: QUESTIONS }];
    const partsWith = (files: Parameters<typeof learningResource>[2]['files']) => ({ ...learningResource(book, kit, { ...PLACES, sheets, questions: { address: QUESTIONS, files } }) }) as unknown as { readonly hasPart: readonly { readonly hasPart?: readonly Record<string, string>[]; readonly encoding?: unknown }[]; readonly encoding: unknown };
    const [run, { hasPart: parts = [], encoding } = {}] = partsWith([]).hasPart;
    expect([run?.hasPart, encoding]).toEqual([undefined, undefined]);
    // schema.org/Question, eduQuestionType, assesses; never acceptedAnswer.
    expect(parts.map(({ url }) => url)).toEqual(kit.questions.map(({ id }) => `${QUESTIONS}#question-${id}`));
    for (const part of parts) expect(Object.keys(part).sort()).toEqual(['@type', 'assesses', 'eduQuestionType', 'name', 'url']);
    expect(parts[0]).toMatchObject({ '@type': 'Question', assesses: kit.objectives.find(({ id }) => id === kit.questions[0]!.objective)!.text });
    const file = { '@type': 'MediaObject', name: 'QTI', encodingFormat: 'application/zip', contentUrl: `${QUESTIONS}a.zip` };
    const open = partsWith([{ name: 'QTI', format: 'application/zip', address: `${QUESTIONS}a.zip` }]);
    expect(open.hasPart[1]?.encoding).toEqual([file]);
    expect(open.encoding).toEqual([file]);
  });

  it('cannot end its script element', () => {
    const text = scriptData({ name: '</script><script>alert(1)</script><!--' });
    expect(text).not.toContain('<');
    expect(JSON.parse(text)).toEqual({ name: '</script><script>alert(1)</script><!--' });
  });
});

describe('licenses', () => {
  it.each([
    ['CC-BY-4.0', 'https://creativecommons.org/licenses/by/4.0/'],
    ['CC BY 4.0', 'https://creativecommons.org/licenses/by/4.0/'],
    ['CC-BY-SA-4.0', 'https://creativecommons.org/licenses/by-sa/4.0/'],
    ['CC BY-NC-SA 4.0', 'https://creativecommons.org/licenses/by-nc-sa/4.0/'],
    ['CC0-1.0', 'https://creativecommons.org/publicdomain/zero/1.0/'],
    ['All rights reserved', undefined],
  ])('%s', (license, address) => expect(licenseAddress(license)).toBe(address));
});

describe('the feed', () => {
  const feedOf = (kits: readonly KitView[]): string => atomFeed({ ...book, kits }, 'https://school.example/', ({ id, draft, version }) => `https://school.example/kits/${id}/${draft ? 'draft' : version}/`);
  const ids = (xml: string): string[] => [...xml.matchAll(/<id>([^<]*)<\/id>/g)].map(([, id = '']) => id);

  it('has one entry for each version of a kit, newest first, at the edition that is of that version', () => {
    const changes = [{ version: '1.1.0', date: '2026-05-02', text: 'More & better.' }, { version: '1.0.0', date: '2026-02-01', text: 'First.' }];
    const draft = { ...kit, id: 'a', draft: true, version: '1.1.0', changes };
    const edition = { ...kit, id: 'a', draft: false, version: '1.0.0', published: '2026-02-01', changes: changes.slice(1) };
    const xml = feedOf([edition, draft]);
    expect(ids(xml)).toEqual(['https://school.example/', 'https://school.example/kits/a/draft/#version-1.1.0', 'https://school.example/kits/a/1.0.0/#version-1.0.0']);
    expect(xml).toContain('1.1.0 (draft)</title>');
    expect(xml).not.toContain('1.0.0 (draft)</title>');
    expect(xml).toContain('<summary>More &amp; better.</summary>');
    // RFC 4287, 4.1.1: one updated element of the feed, here that of its newest entry; RFC 3339 date-time.
    expect([...xml.matchAll(/<updated>([^<]*)<\/updated>/g)].map(([, date]) => date)).toEqual(['2026-05-02T00:00:00Z', '2026-05-02T00:00:00Z', '2026-02-01T00:00:00Z']);
  });

  it('tells each edition on the day on which it was published, and each notice on its own', () => {
    const edition = { ...kit, id: 'a', draft: false, version: '1.0.0', published: '2026-03-01', changes: [{ version: '1.0.0', date: '2026-02-01', text: 'First.' }], notices: [CORRECTION, WITHDRAWN] };
    const xml = feedOf([edition]);
    const place = 'https://school.example/kits/a/1.0.0/';
    expect(ids(xml)).toEqual(['https://school.example/', `${place}#notice-2`, `${place}#notice-1`, `${place}#version-1.0.0`]);
    expect([...xml.matchAll(/<updated>([^<T]*)T/g)].map(([, date]) => date)).toEqual(['2026-06-01', '2026-06-01', '2026-04-01', '2026-03-01']);
    for (const words of ['It needs another vessel.', 'edition 1.1.0 instead', 'A gauge was misread.', 'First.']) expect(xml).toContain(words);
  });

  it('is a feed also without any entry', () => expect(ids(feedOf([]))).toHaveLength(1));
});

it('lists pages with their addresses escaped', () => {
  expect(sitemapXml(['https://school.example/?a=1&b=2'])).toContain('<loc>https://school.example/?a=1&amp;b=2</loc>');
});

it('has only relative addresses in the manifest, so that it works in any folder', () => {
  const manifest = JSON.parse(webManifest(book)) as { start_url: string; scope: string; icons: { src: string }[] };
  for (const address of [manifest.start_url, manifest.scope, ...manifest.icons.map(({ src }) => src)]) expect(address).not.toMatch(/^(?:\/|[a-z]+:)/);
});
