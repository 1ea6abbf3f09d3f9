/** A place to draw lessons in: the small content folder of the tests, with lesson text written in the test. */
import { fileURLToPath } from 'node:url';
import { loadContent, parseLesson, type Content, type SheetKind } from '../../src/authoring/index.ts';
import { VOCABULARY } from '../../src/sheets/index.ts';
import { drawSheet, type Place } from '../../src/sheets/kit-scene.ts';
import { placeOf } from '../../src/sheets/kit-view.ts';
import { MathStyles } from '../../src/sheets/math.ts';

const FOLDER = fileURLToPath(new URL('../content/good/minimal', import.meta.url));

export async function loadMinimal(): Promise<Content> {
  const { content, findings } = await loadContent(FOLDER, VOCABULARY);
  if (content === undefined) throw new Error(JSON.stringify(findings));
  return content;
}

export const placeIn = (content: Content, math = new MathStyles()): Place => placeOf(content, [...content.kits.values()][0]!, math);

/** Lesson text as HTML; throws with the findings where it is not allowed. */
export function draw(place: Place, text: string, options: { readonly teachers?: boolean; readonly kind?: SheetKind } = {}): string {
  const { lesson, findings } = parseLesson(text, 'test.mdx', options.kind ?? 'student', VOCABULARY);
  if (lesson === undefined) throw new Error(findings.map(({ what }) => what).join('; '));
  return drawSheet(place, lesson, { teachers: options.teachers ?? false }).body.html;
}
