/** A question as a QTI item: the same words, numbers and tolerances as on the page. */
import { ENGINE_VERSION } from '../../physics/index.ts';
import { answerInUnit, toleranceAsPrinted, toleranceText, type Item } from '../../questions/index.ts';
import type { KitView, QuestionView } from '../../sheets/index.ts';
import { DISPLAY_UNITS, STYLES } from '../../tables/index.ts';
import { KEY_TEXTS, PLATFORM_TEXTS, type Language } from '../../texts/index.ts';
import { escapeXml, XML_HEAD } from '../xml.ts';
import { bodyMarkup } from './body.ts';
import type { Dialect } from './dialects.ts';
import { element, leaf, written, type Attributes, type Element, type Node } from './markup.ts';
import { itemName } from './names.ts';

/** Where the student's response and the points for it are kept: the names that the standard's own rules use. */
const RESPONSE = 'RESPONSE';
const SCORE = 'SCORE';

/** What differs from one kind of question to another. */
interface Parts {
  readonly response: Element;
  /** The most that can be reached. */
  readonly points: number;
  readonly score?: Attributes;
  readonly body: readonly Node[];
  /** None: a person scores. */
  readonly processing?: Element;
}

/** The text of an item's file. */
export function qtiItem(kit: KitView, question: QuestionView, dialect: Dialect): string {
  const [namespace, schema] = dialect.item;
  const { response, points, score, body, processing } = partsOf(question, kit.language, dialect);
  const item = element(
    'assessment-item',
    {
      xmlns: namespace,
      'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
      'xsi:schemaLocation': `${namespace} ${schema}`,
      identifier: itemName(kit, question.id),
      title: PLATFORM_TEXTS[kit.language].item(kit.title, question.number),
      'xml:lang': kit.language,
      adaptive: 'false',
      'time-dependent': 'false',
      'tool-name': 'Lapsebook',
      'tool-version': ENGINE_VERSION,
    },
    response,
    element('outcome-declaration', { identifier: SCORE, cardinality: 'single', 'base-type': 'float', 'normal-maximum': points, ...score }),
    element('item-body', {}, bodyMarkup(question.stem), ...body),
    ...(processing === undefined ? [] : [processing]),
  );
  return `${XML_HEAD}${written(item, dialect)}\n`;
}

function partsOf({ item, options }: QuestionView, language: Language, dialect: Dialect): Parts {
  switch (item.kind) {
    case 'choice': {
      const right = options.filter((option) => option.right);
      return {
        response: declared('single', 'identifier', right.map(({ letter }) => letter), right.map(({ why }) => why).join(' ')),
        points: 1,
        body: [element('choice-interaction', { 'response-identifier': RESPONSE, shuffle: 'false', 'max-choices': 1 }, ...choicesOf(options))],
        processing: matched(dialect),
      };
    }
    case 'ordering':
      return {
        response: declared('ordered', 'identifier', item.rightOrder.map((text) => options[item.items.indexOf(text)]!.letter)),
        points: 1,
        body: [element('order-interaction', { 'response-identifier': RESPONSE, shuffle: 'false' }, ...choicesOf(options))],
        processing: matched(dialect),
      };
    case 'numeric':
      return numericParts(item, language);
    case 'text':
      return {
        response: element('response-declaration', { identifier: RESPONSE, cardinality: 'single', 'base-type': 'string' }),
        points: item.rubric.reduce((sum, { points }) => sum + points, 0),
        score: dialect.scoredByPerson,
        body: [element('extended-text-interaction', { 'response-identifier': RESPONSE, 'expected-lines': LINES }), dialect.rubric(rubricOf(item.rubric, language))],
      };
  }
}

/** As many as the page leaves free. */
const LINES = 4;

/** The unit stands beside the entry, not in the answer. */
function numericParts({ answer, accepts }: Item & { readonly kind: 'numeric' }, language: Language): Parts {
  const said = PLATFORM_TEXTS[language];
  const also = accepts.length === 0 ? '' : ` ${KEY_TEXTS[language].alsoRight(accepts.join(', '))}`;
  const { symbol } = DISPLAY_UNITS[answer.unit];
  const width = toleranceAsPrinted(answer);
  return {
    response: declared('single', 'float', [answerInUnit(answer)], `${answer.printed.text}${toleranceText(answer, STYLES[language])}${also}`),
    points: 1,
    body: [`<p>${escapeXml(said.answer)} `, element('text-entry-interaction', { 'response-identifier': RESPONSE, 'expected-length': LETTERS_OF_A_NUMBER }), `${escapeXml(symbol === '' ? '' : ` ${symbol}`)}</p>`],
    processing: element(
      'response-processing',
      {},
      element(
        'response-condition',
        {},
        element('response-if', {}, element('is-null', {}, element('variable', { identifier: RESPONSE })), scored(0)),
        element(
          'response-else-if',
          {},
          element('equal', { 'tolerance-mode': 'absolute', tolerance: `${width} ${width}` }, element('correct', { identifier: RESPONSE }), element('variable', { identifier: RESPONSE })),
          scored(1),
        ),
        element('response-else', {}, scored(0)),
      ),
    ),
  };
}

const LETTERS_OF_A_NUMBER = 10;

const declared = (cardinality: 'single' | 'ordered', type: 'identifier' | 'float', values: readonly (string | number)[], interpretation?: string): Element =>
  element(
    'response-declaration',
    { identifier: RESPONSE, cardinality, 'base-type': type },
    element('correct-response', { interpretation }, ...values.map((value) => leaf('value', {}, value))),
  );

const choicesOf = (options: QuestionView['options']): Element[] => options.map(({ letter, html }) => element('simple-choice', { identifier: letter }, bodyMarkup(html)));

const matched = ({ matchCorrect }: Dialect): Element => element('response-processing', { template: matchCorrect });

const scored = (points: number): Element => element('set-outcome-value', { identifier: SCORE }, leaf('base-value', { 'base-type': 'float' }, points));

function rubricOf(rubric: readonly { readonly points: number; readonly text: string }[], language: Language): string {
  const total = rubric.reduce((sum, { points }) => sum + points, 0);
  const rows = rubric.map(({ points, text }) => `<li><strong>${points}</strong> ${escapeXml(text)}</li>`);
  return `<p>${escapeXml(KEY_TEXTS[language].markedOutOf(String(total)))}</p><ul>${rows.join('')}</ul>`;
}
