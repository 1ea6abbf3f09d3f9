/**
 * The two versions of QTI that platforms read, and all in which they differ for our items.
 * Source: 1EdTech QTI 3.0 and IMS QTI 2.1, Assessment, Section and Item Information Model; examples of 1EdTech for 3.0.
 */
import { element, type Attributes, type Element, type Naming } from './markup.ts';

export interface Dialect extends Naming {
  /** In the name of the file. */
  readonly file: string;
  readonly version: string;
  /** Namespace, and where its schema is. */
  readonly item: readonly [namespace: string, schema: string];
  /** The rule that gives one point for exactly the right response. */
  readonly matchCorrect: string;
  /** Of the score of an answer that a person reads. */
  readonly scoredByPerson: Attributes;
  /** What only who scores is shown. */
  readonly rubric: (body: string) => Element;
  readonly manifest: readonly [namespace: string, schema: string];
  /** Name and version of the form of the package. */
  readonly form: readonly [schema: string, version: string];
  readonly resourceType: string;
  /** Namespace of curriculum statements. */
  readonly curriculum: string;
}

const QTI_3: Dialect = {
  file: 'qti3',
  version: '3.0',
  element: (name) => `qti-${name}`,
  attribute: (name) => name,
  item: ['http://www.imsglobal.org/xsd/imsqtiasi_v3p0', 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0p1_v1p0.xsd'],
  matchCorrect: 'https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct.xml',
  scoredByPerson: { 'external-scored': 'human' },
  rubric: (body) => element('rubric-block', { use: 'scoring', view: 'scorer' }, element('content-body', {}, body)),
  manifest: ['http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1', 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd'],
  form: ['QTI Package', '3.0.0'],
  resourceType: 'imsqti_item_xmlv3p0',
  curriculum: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscsmd_v1p1',
};

const camelCase = (name: string): string => name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

const QTI_2_1: Dialect = {
  file: 'qti21',
  version: '2.1',
  element: camelCase,
  attribute: camelCase,
  item: ['http://www.imsglobal.org/xsd/imsqti_v2p1', 'http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1p2.xsd'],
  matchCorrect: 'http://www.imsglobal.org/question/qti_v2p1/rptemplates/match_correct',
  scoredByPerson: {},
  rubric: (body) => element('rubric-block', { view: 'scorer' }, body),
  manifest: ['http://www.imsglobal.org/xsd/imscp_v1p1', 'http://www.imsglobal.org/xsd/qti/qtiv2p1/qtiv2p1_imscpv1p2_v1p0.xsd'],
  form: ['QTIv2.1 Package', '1.0.0'],
  resourceType: 'imsqti_item_xmlv2p1',
  curriculum: 'http://www.imsglobal.org/xsd/imsccv1p2/imscsmd_v1p0',
};

/** One line a version. */
export const QTI_DIALECTS: readonly Dialect[] = [QTI_3, QTI_2_1];
