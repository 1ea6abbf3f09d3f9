/** The list of components that lesson text may use: one line each. */
import { vocabularyOf, type Vocabulary } from '../../authoring/index.ts';
import type { Component } from '../component.ts';
import { curve, given, value, workedTable } from './computed.ts';
import { hazard, misconception, question, source } from './references.ts';
import { explain, observe, predict, step, teacherOnly } from './sheet.ts';

const ALL: readonly Component[] = [
  workedTable, curve, value, given, step, predict, observe, explain, teacherOnly, hazard, misconception, question, source,
];

export const COMPONENTS: ReadonlyMap<string, Component> = new Map(ALL.map((component) => [component.spec.name, component]));

/** What lesson text may say. */
export const VOCABULARY: Vocabulary = vocabularyOf(ALL.map(({ spec }) => spec));

export { stepsOf, type StepAttributes } from './sheet.ts';
