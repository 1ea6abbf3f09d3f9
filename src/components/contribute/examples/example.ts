/** A piece of lesson text that the guide shows as source and as drawn: one text for both, so that they cannot part. */
import type { SheetKind } from '../../../authoring/index.ts';

export interface Example {
  /** The component, the table kind or the part of Markdown that it shows. */
  readonly of: string;
  /** When to use it. */
  readonly about: string;
  /** The kind of sheet that it stands on. */
  readonly on: SheetKind;
  readonly source: string;
  /** Drawn as the teachers' edition has it: for what nobody else sees. */
  readonly teachers?: true;
}

export interface ExampleGroup {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly examples: readonly Example[];
}
