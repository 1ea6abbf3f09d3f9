/**
 * A small grammar of what is written: which children in which order, which attributes.
 * Sources: the examples of 1EdTech for QTI 3.0 (repository 1EdTech/qti-examples: order, essay, rubric block, MathML, manifest); for 2.1 the
 * schema quoted element by element in the open reader pyslet (choiceInteraction, rubricBlock, outcomeDeclaration, itemBody); for the
 * manifest of 3.0 classes that others generated from its schema (schema, schemaversion, labelledGUID). Order of children of an item: from memory.
 */
import type { Tree } from './tree.ts';

interface Rule {
  /** Names of the children, each followed by a space. */
  readonly children?: RegExp;
  readonly required?: readonly string[];
  readonly optional?: readonly string[];
  /** Whether text may stand in it. */
  readonly text?: boolean;
}

const BLOCK = '(?:html:(?:p|div|h[1-6]|ul|ol|dl|blockquote|pre|hr|table) |math:math )';
const INLINE = '(?:html:(?:em|strong|code|sub|sup|br) |math:math )';
const FLOW = new RegExp(`^(?:${BLOCK}|${INLINE})*$`);
const INTERACTION = '(?:(?:choice|order|extended-text)-interaction )';
const NONE = /^$/;

const COMMON: Readonly<Record<string, Rule>> = {
  'assessment-item': { children: /^response-declaration outcome-declaration item-body (?:response-processing )?$/, required: ['identifier', 'title', 'adaptive', 'time-dependent', 'xml:lang', 'xsi:schemaLocation'], optional: ['tool-name', 'tool-version'] },
  'response-declaration': { children: /^(?:correct-response )?$/, required: ['identifier', 'cardinality', 'base-type'] },
  'correct-response': { children: /^(?:value )+$/, optional: ['interpretation'] },
  value: { children: NONE, text: true },
  'item-body': { children: new RegExp(`^(?:${BLOCK}|${INTERACTION}|rubric-block )+$`) },
  'choice-interaction': { children: /^(?:simple-choice ){2,}$/, required: ['response-identifier', 'shuffle', 'max-choices'] },
  'order-interaction': { children: /^(?:simple-choice ){2,}$/, required: ['response-identifier', 'shuffle'] },
  'simple-choice': { children: FLOW, required: ['identifier'], text: true },
  'extended-text-interaction': { children: NONE, required: ['response-identifier'], optional: ['expected-lines'] },
  'text-entry-interaction': { children: NONE, required: ['response-identifier'], optional: ['expected-length'] },
  'response-condition': { children: /^response-if (?:response-else-if )*(?:response-else )?$/ },
  'response-if': { children: /^(?:is-null|equal) set-outcome-value $/ },
  'response-else-if': { children: /^(?:is-null|equal) set-outcome-value $/ },
  'response-else': { children: /^set-outcome-value $/ },
  'is-null': { children: /^variable $/ },
  equal: { children: /^correct variable $/, required: ['tolerance-mode', 'tolerance'] },
  variable: { children: NONE, required: ['identifier'] },
  correct: { children: NONE, required: ['identifier'] },
  'set-outcome-value': { children: /^base-value $/, required: ['identifier'] },
  'base-value': { children: NONE, required: ['base-type'], text: true },
  'html:p': { children: new RegExp(`^(?:${INLINE}|text-entry-interaction )*$`), text: true },
  'html:ul': { children: /^(?:html:li )+$/ },
  'html:ol': { children: /^(?:html:li )+$/ },
  'html:dl': { children: /^(?:html:d[td] )+$/ },
  'html:table': { children: /^(?:html:caption )?(?:html:thead )?html:tbody $/ },
  'html:thead': { children: /^(?:html:tr )+$/ },
  'html:tbody': { children: /^(?:html:tr )+$/ },
  'html:tr': { children: /^(?:html:t[hd] )+$/ },
  'html:th': { children: FLOW, optional: ['scope'], text: true },
  'html:br': { children: NONE },
  'html:hr': { children: NONE },
  manifest: { children: /^metadata organizations resources $/, required: ['identifier', 'xsi:schemaLocation'] },
  metadata: { children: /^(?:schema schemaversion |curriculum-standards-metadata-set )$/ },
  schema: { children: NONE, text: true },
  schemaversion: { children: NONE, text: true },
  organizations: { children: NONE },
  resources: { children: /^(?:resource )*$/ },
  resource: { children: /^(?:metadata )?file $/, required: ['identifier', 'type', 'href'] },
  file: { children: NONE, required: ['href'] },
  'curriculum-standards-metadata-set': { children: /^curriculum-standards-metadata $/ },
  'curriculum-standards-metadata': { children: /^set-of-g-u-i-ds $/ },
  'set-of-g-u-i-ds': { children: /^(?:labelled-g-u-i-d )+$/ },
  'labelled-g-u-i-d': { children: /^label -g-u-i-d $/ },
  label: { children: NONE, text: true },
  '-g-u-i-d': { children: NONE, text: true },
};

export const VERSION_3: Readonly<Record<string, Rule>> = {
  ...COMMON,
  'outcome-declaration': { children: NONE, required: ['identifier', 'cardinality', 'base-type'], optional: ['normal-maximum', 'external-scored'] },
  'response-processing': { children: /^(?:response-condition )*$/, optional: ['template'] },
  'rubric-block': { children: /^content-body $/, required: ['use', 'view'] },
  'content-body': { children: new RegExp(`^${BLOCK}+$`) },
};

export const VERSION_2_1: Readonly<Record<string, Rule>> = {
  ...COMMON,
  'outcome-declaration': { children: NONE, required: ['identifier', 'cardinality', 'base-type'], optional: ['normal-maximum'] },
  'response-processing': { children: /^(?:response-condition )*$/, optional: ['template'] },
  'rubric-block': { children: new RegExp(`^${BLOCK}+$`), required: ['view'] },
};

/** MathML 3, chapter 3: presentation elements. */
const MATHML = /^math:(?:math|mi|mn|mo|mtext|mspace|ms|mrow|mfrac|msqrt|mroot|mstyle|mpadded|mphantom|menclose|msub|msup|msubsup|munder|mover|munderover|mtable|mtr|mtd)$/;

/** What is wrong with a tree, in words. */
export function faultsOf(tree: Tree, rules: Readonly<Record<string, Rule>>): string[] {
  const below = tree.children.flatMap((child) => faultsOf(child, rules));
  if (tree.name.startsWith('math:')) {
    const strange = Object.keys(tree.attributes).filter((name) => /^(?:class|style|data-.*|on.*|href)$/.test(name));
    return [...(MATHML.test(tree.name) ? [] : [`${tree.name} is no MathML`]), ...strange.map((name) => `${tree.name} has ${name}`), ...below];
  }
  const rule = rules[tree.name] ?? (tree.name.startsWith('html:') ? { children: FLOW, text: true } : undefined);
  if (rule === undefined) return [`${tree.name} is not known`];
  const { children = NONE, required = [], optional = [], text = false } = rule;
  const names = tree.children.map(({ name }) => `${name} `).join('');
  const given = Object.keys(tree.attributes);
  return [
    ...(children.test(names) ? [] : [`${tree.name} holds ${names}`]),
    ...required.filter((name) => !given.includes(name)).map((name) => `${tree.name} has no ${name}`),
    ...given.filter((name) => ![...required, ...optional].includes(name)).map((name) => `${tree.name} has ${name}`),
    ...(tree.isMixed && !text ? [`text stands in ${tree.name}`] : []),
    ...below,
  ];
}
