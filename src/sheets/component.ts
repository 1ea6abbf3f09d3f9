/** What a component of lesson text is: how it may be written, and what it becomes. A new one is one file in components/ and one line in its list. */
import type { Content, ComponentSpec } from '../authoring/index.ts';
import type { Attributes } from '../tables/index.ts';
import type { Setting } from './html/table.ts';
import type { Raw } from './html/text.ts';

/** What a component may look at while it is drawn. */
export interface Scene {
  readonly setting: Setting;
  readonly content: Content;
  /** Whether what <TeacherOnly> holds is shown. */
  readonly teachers: boolean;
  /** Gives each table and figure of a kit an id of its own. */
  readonly nextId: (kind: string, wanted: string | undefined) => string;
  /** Draws another lesson in this scene: a hazard's text, a question's stem. */
  readonly draw: (name: 'hazard' | 'misconception' | 'question' | 'source', id: string) => Raw;
  /** Told of each table and figure, for tables.json and the numbers page. */
  readonly onTable: (attributes: Attributes, id: string, isCurve?: boolean) => void;
}

export interface Component {
  readonly spec: ComponentSpec;
  /** @param children draws the enclosed text: what is not asked for leaves no trace, such as a table in the list of tables */
  readonly draw: (attributes: Attributes, children: () => Raw, scene: Scene) => Raw;
}
