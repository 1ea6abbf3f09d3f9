/** Draws the guide's examples: through the real vocabulary and the real drawing functions, in the practice room. */
import { formatFinding, parseLesson, type SheetKind } from '../../../authoring/index.ts';
import { VOCABULARY, type HazardView, type QuestionView, type SourceView } from '../../../sheets/index.ts';
import { drawSheet, type Place } from '../../../sheets/kit-scene.ts';
import { hazardView, placeOf } from '../../../sheets/kit-view.ts';
import { MathStyles } from '../../../sheets/math.ts';
import { questionView } from '../../../sheets/question-view.ts';
import { sourceView } from '../../../sheets/reference.ts';
import { EXAMPLE_GROUPS } from '../examples/index.ts';
import { loadPractice } from './folder.ts';

const math = new MathStyles();

const { content, findings } = loadPractice();
if (content === undefined) throw new Error(`the practice folder of the guide has findings:\n${findings.map(formatFinding).join('\n')}`);
const kit = content.kits.get('practice')!;

/** The kit's room, its sources on the page itself. */
const place: Place = placeOf(content, kit, math, '#source-');

/**
 * A piece of lesson text as the pages would show it.
 * @param prefix keeps the ids of several pieces on one page apart
 * @throws Error with the findings if the text would not build
 */
export function drawExample(source: string, kind: SheetKind, prefix: string, teachers = false): string {
  const { lesson, findings: wrong } = parseLesson(source, `${prefix}.mdx`, kind, VOCABULARY);
  if (lesson === undefined) throw new Error(`an example of the guide would not build:\n${wrong.map(formatFinding).join('\n')}`);
  // On a kit's pages hazards and questions stand on sheets of their own; here they stand on this page.
  return drawSheet(place, lesson, { teachers, prefix }).body.html.replace(/href="\.\.\/(?:safety|questions)\/index\.html#/g, 'href="#');
}

/** The hazard sheets, questions and sources that the examples bring in. */
export const practiceHazards = (): HazardView[] => [...content.hazards.keys()].map((id) => hazardView(place, id));
export const practiceSources = (): SourceView[] => [...content.sources.values()].map((source) => sourceView(source, 'en'));
export const practiceQuestions = (): QuestionView[] =>
  [...kit.questions].map(([id, { meta, lesson }], i) =>
    questionView(id, i + 1, meta, place.setting, {
      stem: drawSheet(place, lesson, { teachers: false, lowerHeadings: 2, prefix: id }).body,
      solution: { html: '' },
    }));

/** The stylesheet of the formulas in all examples. */
export function exampleFormulaCss(): string {
  for (const { examples } of EXAMPLE_GROUPS) for (const { source, on, of } of examples) if (source.includes('$')) drawExample(source, on, of);
  return math.css;
}
