/** A kit as machines read it: schema.org LearningResource, written as JSON-LD. */
import type { LearningResource, WithContext } from 'schema-dts';
import { isWithdrawn, plainText, type Book, type KitView, type NoticeView } from '../sheets/index.ts';
import { FILE_TEXTS, PLATFORM_TEXTS, QUESTION_TEXTS } from '../texts/index.ts';
import { licenseAddress } from './license.ts';

interface FilePlace {
  readonly name: string;
  readonly format: string;
  readonly address: string;
}

/** Where a kit and its parts stand: whole addresses. */
export interface KitPlaces {
  readonly kit: string;
  readonly sheets: readonly { readonly name: string; readonly about: string; readonly address: string }[];
  readonly files: readonly FilePlace[];
  /** Where its questions stand, each at `#question-` and its id; and the same for learning platforms, where the public may have them. */
  readonly questions: { readonly address: string; readonly files: readonly FilePlace[] };
  /** Of an edition: where its notices stand. */
  readonly changes?: string | undefined;
  /** The edition that came before this one. */
  readonly basedOn?: string | undefined;
  /** The kit that this one translates, and those that translate it. */
  readonly translationOf?: string | undefined;
  readonly translations?: readonly string[];
}

/** What the pages offer to readers, by the words of the schema.org accessibility vocabulary. */
const ACCESS = {
  accessMode: ['textual', 'visual'],
  accessModeSufficient: { '@type': 'ItemList', itemListElement: ['textual'] },
  accessibilityFeature: ['alternativeText', 'longDescription', 'MathML', 'structuralNavigation', 'tableOfContents', 'highContrastDisplay'],
  accessibilityHazard: ['noFlashingHazard', 'noMotionSimulationHazard', 'noSoundHazard'],
} as const;

/** A notice as a comment of the school on its own edition. */
const correctionOf = ({ why, date }: NoticeView, changes: string | undefined) => ({ '@type': 'CorrectionComment', text: why, datePublished: date, ...(changes === undefined ? {} : { url: changes }) }) as const;

const mediaOf = ({ name, format, address }: FilePlace) => ({ '@type': 'MediaObject', name, encodingFormat: format, contentUrl: address }) as const;

/** The questions of the sheet that holds them: what each tests, and never what is right. */
const questionsOf = (kit: KitView, { questions: { address, files } }: KitPlaces) => ({
  hasPart: kit.questions.map(({ id, number, kind, objective }) => {
    const tested = kit.objectives.find((one) => one.id === objective);
    return { '@type': 'Question', name: PLATFORM_TEXTS[kit.language].item(kit.title, number), url: `${address}#question-${id}`, eduQuestionType: QUESTION_TEXTS[kit.language].kinds[kind], ...(tested === undefined ? {} : { assesses: tested.text }) } as const;
  }),
  ...(files.length === 0 ? {} : { encoding: files.map(mediaOf) }),
});

/** How far along it is: schema.org/creativeWorkStatus names such stages. */
const statusOf = (kit: KitView): string => (kit.draft ? 'Draft' : isWithdrawn(kit) ? 'Obsolete' : 'Published');

/** The kit's own description of itself; dates only where it is published. */
export function learningResource(book: Book, kit: KitView, places: KitPlaces): WithContext<LearningResource> {
  const said = FILE_TEXTS[kit.language];
  const school = { '@type': 'EducationalOrganization', name: book.school } as const;
  const license = licenseAddress(kit.license) ?? ({ '@type': 'CreativeWork', name: kit.license } as const);
  return {
    '@context': 'https://schema.org',
    '@type': 'LearningResource',
    '@id': places.kit,
    url: places.kit,
    name: kit.title,
    description: kit.summary,
    inLanguage: kit.language,
    version: kit.version,
    creativeWorkStatus: statusOf(kit),
    ...(kit.published === undefined ? {} : { datePublished: kit.published }),
    ...(kit.notices.length === 0 ? {} : { correction: kit.notices.map((notice) => correctionOf(notice, places.changes)) }),
    ...(places.basedOn === undefined ? {} : { isBasedOn: places.basedOn }),
    ...(places.translationOf === undefined ? {} : { translationOfWork: { '@type': 'LearningResource', '@id': places.translationOf } as const }),
    ...(places.translations === undefined || places.translations.length === 0 ? {} : { workTranslation: places.translations.map((address) => ({ '@type': 'LearningResource', '@id': address }) as const) }),
    learningResourceType: [said.demonstration, said.lessonPlan],
    educationalLevel: kit.level,
    typicalAgeRange: kit.ages.replace(/\s*[–—]\s*/g, '-'),
    timeRequired: `PT${kit.minutes}M`,
    teaches: kit.objectives.map(({ text }) => text),
    assesses: kit.objectives.filter(({ id }) => kit.questions.some(({ objective }) => objective === id)).map(({ text }) => text),
    educationalAlignment: kit.standards.map(({ code, framework, paraphrase, link }) => ({
      '@type': 'AlignmentObject', educationalFramework: framework, targetName: code, targetDescription: paraphrase, targetUrl: link,
    })),
    license,
    author: school,
    publisher: school,
    isAccessibleForFree: true,
    ...ACCESS,
    hasPart: places.sheets.map(({ name, about, address }) => ({ '@type': 'LearningResource', name, description: about, url: address, ...(address === places.questions.address ? questionsOf(kit, places) : {}) }) as const),
    encoding: [...places.files, ...places.questions.files].map(mediaOf),
    citation: kit.sources.map(({ html }) => plainText(html)),
  };
}

/** Data as the text of a script element: nothing in it can end the element. */
export const scriptData = (data: object): string => JSON.stringify(data).replaceAll('<', '\\u003c');
