/** The scene in which the lessons of one kit are drawn: its conditions, its content, what it brings in. */
import type { Content, Kit, Lesson } from '../authoring/index.ts';
import { tableKind, type Attributes } from '../tables/index.ts';
import { COMPONENTS } from './components/index.ts';
import type { Scene } from './component.ts';
import { drawLesson } from './draw.ts';
import { drawHazardAside, drawMisconceptionAside } from './asides.ts';
import type { Setting } from './html/table.ts';
import { html, type Raw } from './html/text.ts';
import type { MathStyles } from './math.ts';
import { drawQuestion } from './question-view.ts';
import { shortCitation } from './reference.ts';

/** Where the lessons of a kit are drawn. */
export interface Place {
  readonly content: Content;
  readonly kit: Kit;
  readonly setting: Setting;
  readonly math: MathStyles;
  /** From a page that shows the text to the list of sources, ending in `#`. */
  readonly sourceList: string;
}

/** A table, or a figure with rows behind it, as it stands on a sheet. */
export interface PlacedTable {
  readonly id: string;
  readonly isCurve: boolean;
  readonly attributes: Attributes;
}

export interface Drawn {
  readonly body: Raw;
  readonly tables: readonly PlacedTable[];
}

/** From any sheet of a kit to its list of sources. */
export const KIT_SOURCE_LIST = '../background/index.html#source-';
/** From the site's own pages to theirs. */
export const SITE_SOURCE_LIST = '../sources/index.html#source-';

/** Draws one lesson of a kit; `prefix` keeps ids apart where several lessons share a page. */
export function drawSheet(place: Place, lesson: Lesson, options: { readonly teachers: boolean; readonly lowerHeadings?: number; readonly prefix?: string }): Drawn {
  const counts = new Map<string, number>();
  const tables: PlacedTable[] = [];
  const { content, math, setting } = place;
  const { language } = setting.style;
  const prefix = options.prefix === undefined ? '' : `${options.prefix}-`;
  const nested = (inner: Lesson, lowerHeadings: number): Raw => drawLesson(inner, { scene, components: COMPONENTS, math, lowerHeadings });
  const scene: Scene = {
    setting,
    content,
    teachers: options.teachers,
    nextId: (kind, wanted) => {
      if (wanted !== undefined) return prefix + wanted;
      const count = (counts.get(kind) ?? 0) + 1;
      counts.set(kind, count);
      return `${prefix}${kind}-${count}`;
    },
    onTable: (attributes, id, isCurve = false) => {
      if (tableKind(attributes['kind'] as string) !== undefined) tables.push({ id, isCurve, attributes });
    },
    draw: (name, id) => {
      switch (name) {
        case 'hazard': {
          const { meta, lesson: text } = known(content.hazards, id);
          return drawHazardAside(meta, nested(atTheBench(text), 2), `../safety/index.html#hazard-${id}`, language);
        }
        case 'misconception': {
          const { meta, lesson: text } = known(content.misconceptions, id);
          return drawMisconceptionAside(meta, nested(text, 2), language);
        }
        case 'source':
          return html`<a class="cite" href="${place.sourceList}${id}">${shortCitation(known(content.sources, id), language)}</a>`;
        case 'question': {
          const { meta, lesson: text } = known(place.kit.questions, id);
          return drawQuestion(id, meta, setting, nested(text, 2));
        }
      }
    },
  };
  return { body: drawLesson(lesson, { scene, components: COMPONENTS, math, lowerHeadings: options.lowerHeadings ?? 0 }), tables };
}

function known<T>(map: ReadonlyMap<string, T>, id: string): T {
  const value = map.get(id);
  if (value === undefined) throw new Error(`there is nothing named ${id}: references are checked when content is loaded`);
  return value;
}

/**
 * What of a hazard sheet is wanted at the bench: its opening and, of its three parts (what can
 * happen, what prevents it, what to do if it happens), the second. The whole stands on the safety sheet.
 */
function atTheBench(lesson: Lesson): Lesson {
  const { children } = lesson.tree;
  const parts = children.flatMap(({ type }, i) => (type === 'heading' ? [i] : []));
  if (parts.length < 3) return lesson;
  return { ...lesson, tree: { ...lesson.tree, children: [...children.slice(0, parts[0]), ...children.slice(parts[1]! + 1, parts[2])] } };
}
