/** The Markdown of a lesson: what sheets show, and nothing that a page should not hold. */
import type { Problem } from '../findings.ts';
import type { SheetKind } from '../vocabulary.ts';
import { hiddenProblem, holdsHidden } from '../hidden.ts';
import { checkFormula } from './formulas.ts';
import { imageProblem, linkProblem } from './links.ts';
import type { LessonNode } from './nodes.ts';
import { placeOf, placeOfPart, written, type LessonSource } from './source.ts';
import { checkProse, vouchedFor } from './prose.ts';
import { typedInFormula, typedProblem, typedQuantities } from './typed-quantities.ts';

const PLAIN = new Set<LessonNode['type']>([
  'root',
  'paragraph',
  'text',
  'emphasis',
  'strong',
  'delete',
  'inlineCode',
  'code',
  'list',
  'listItem',
  'table',
  'tableRow',
  'tableCell',
  'blockquote',
  'break',
  'thematicBreak',
]);
/** Kinds of text that stand in a kit's folder, beside its pictures. */
export const HAS_PICTURES: readonly SheetKind[] = ['run', 'student', 'background'];

/** Checks one node that is no component. */
export function checkMarkdown(source: LessonSource, node: LessonNode, ancestors: readonly LessonNode[], kind: SheetKind): void {
  const refuse = (problem: Problem | undefined): void => {
    if (problem !== undefined) source.report(placeOf(node), problem);
  };
  switch (node.type) {
    case 'text':
      if (/<\/?[a-z!?]/i.test(node.value) && /&[#a-z]/i.test(written(source, node))) {
        refuse({
          code: 'entity-markup',
          what: 'entities spell markup',
          instead: 'put it in backquotes if it is meant to be shown',
        });
      }
      // Those that are not spelled with entities are found in the file's text.
      if (holdsHidden(node.value) && !holdsHidden(written(source, node))) refuse(hiddenProblem(node.value));
      return;
    case 'paragraph':
    case 'tableCell':
      return checkProse(source, node, ancestors);
    case 'code':
      for (const { text, index } of typedQuantities(node.value)) source.reportTyped(placeOfPart(source, node, text, index), text);
      return;
    case 'math':
    case 'inlineMath':
      checkFormula(source, node);
      if (!vouchedFor(ancestors)) {
        for (const { text, index } of typedInFormula(node.value))
          source.report(
            placeOfPart(source, node, text, index),
            typedProblem(text, 'write the formula with symbols, and the number beside it with `<Value>` or `<Given>`'),
          );
      }
      return;
    case 'link':
      checkAside(source, node, node.title);
      return refuse(linkProblem(node.url));
    case 'image':
      checkAside(source, node, node.alt);
      checkAside(source, node, node.title);
      if (!HAS_PICTURES.includes(kind))
        return refuse({
          code: 'image-address',
          what: 'a picture stands in a text that has no folder for it',
          instead: 'put it on a sheet of the kit',
        });
      return refuse(imageProblem(node.url, node.alt ?? ''));
    case 'definition':
    case 'linkReference':
    case 'imageReference':
      return refuse({
        code: 'link-definition',
        what: 'an address is given apart from its link',
        instead: 'write `[text](address)`',
      });
    case 'heading':
      if (node.depth === 1)
        refuse({ code: 'heading-level', what: 'a heading has the level of the title', instead: 'begin it with `##`' });
      return checkProse(source, node, ancestors);
    case 'html':
      return refuse({ code: 'raw-html', what: 'this is raw HTML', instead: 'write it in Markdown or with a component' });
    case 'mdxFlowExpression':
    case 'mdxTextExpression':
      return refuse({ code: 'expression', what: 'braces enclose code', instead: 'write the text itself; `\\{` is the sign' });
    case 'mdxjsEsm':
      return refuse({
        code: 'import-or-export',
        what: `a line begins with \`${/^\w+/.exec(node.value)?.[0] ?? 'import'}\``,
        instead: 'remove it: lessons hold no code',
      });
    default:
      if (!PLAIN.has(node.type))
        refuse({
          code: 'markdown-refused',
          what: `${NAMES[node.type] ?? 'this part of Markdown'} is not shown on sheets`,
          instead: 'write it in plain paragraphs',
        });
  }
}

const NAMES: Readonly<Partial<Record<string, string>>> = { footnoteDefinition: 'a footnote', footnoteReference: 'a footnote' };

/** Words read with a picture or link: components cannot stand in them. */
function checkAside(source: LessonSource, node: LessonNode, text: string | null | undefined): void {
  for (const typed of typedQuantities(text ?? ''))
    source.report(
      placeOfPart(source, node, typed.text),
      typedProblem(typed.text, 'move the number into the text, with `<Value>` or `<Given>`'),
    );
}
