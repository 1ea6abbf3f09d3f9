/** The shape of a lesson's vocabulary: which components there are, where they stand, what they take. */
import type { ZodObject } from 'zod';

/** The kinds of lesson text: the three sheets of a kit, and the things with a text of their own. */
export const SHEET_KINDS = ['run', 'student', 'background', 'question', 'hazard', 'misconception'] as const;
export type SheetKind = (typeof SHEET_KINDS)[number];

/** Attributes as written: always text, the empty text where only the name stands. */
export type RawAttributes = Readonly<Record<string, string>>;

/** An attribute chooses the others, and names nothing that exists. */
export interface UnknownChoice {
  /** the attribute that chooses, for example `kind` */
  readonly attribute: string;
  /** what was written, undefined where the attribute is missing */
  readonly unknown: string | undefined;
  readonly choices: readonly string[];
}

/** What the place of a component on a page is called, so that links can lead to it. */
export interface Anchor {
  /** the name that the author gave it */
  readonly own: string | undefined;
  /** what those without such a name are counted by: `step` for `step-1`, `step-2` */
  readonly series: string;
}

/** One component that lesson text may use. */
export interface ComponentSpec {
  readonly name: string;
  /** in the place of a paragraph, or inside one */
  readonly placement: 'block' | 'inline';
  /** what it may enclose */
  readonly children: 'none' | 'inline' | 'block';
  /** components that it must stand in directly, undefined for anywhere */
  readonly parents?: readonly string[];
  readonly allowedIn: readonly SheetKind[];
  /** the schema of its attributes, or the choice of one by the attributes themselves */
  readonly attributes: ZodObject | ((raw: RawAttributes) => ZodObject | UnknownChoice);
  /** undefined where links cannot lead to it; of attributes that were read */
  readonly anchor?: (attributes: Readonly<Record<string, unknown>>) => Anchor;
}

/** All components that lesson text may use, by name. */
export interface Vocabulary {
  readonly components: ReadonlyMap<string, ComponentSpec>;
}

/** A vocabulary of the given components. */
export function vocabularyOf(specs: readonly ComponentSpec[]): Vocabulary {
  return { components: new Map(specs.map((spec) => [spec.name, spec])) };
}

/** Whether a spec's answer names no schema. */
export function isUnknownChoice(answer: ZodObject | UnknownChoice): answer is UnknownChoice {
  return 'choices' in answer;
}
