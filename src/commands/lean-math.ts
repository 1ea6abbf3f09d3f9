/** The styles of formulas in a file of their own, with the rules that the formulas use: pages without formulas do not ask for it. */
import { existsSync } from 'node:fs';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { addCopy } from './writing.ts';

/** At the site's root; holds the sizes of the formulas before their rules are put there. */
const MATH_FILE = 'math.css';
const FORMULA = /class="katex/;
const MATH_LINK = /<link rel="stylesheet" href="[^"]*\bmath\.css">/;
const FORMULA_RULE = /^(?:\.katex|@font-face\s*\{\s*font-family:\s*"?KaTeX_)/;

/** A page that asks for the styles of formulas only if it has one. */
export const withFormulaStyles = (page: string): string => (FORMULA.test(page) ? page : page.replace(MATH_LINK, ''));

const CLASS = ' class="';

/** Adds the class attributes of a page with formulas to those in use; most say what others said. */
export function addClasses(used: Set<string>, page: string): void {
  if (!FORMULA.test(page)) return;
  for (let at = page.indexOf(CLASS); at >= 0; ) {
    const end = page.indexOf('"', at + CLASS.length);
    addCopy(used, page.slice(at + CLASS.length, end));
    at = page.indexOf(CLASS, end);
  }
}

/** Moves the rules of formulas out of the stylesheets of a finished folder, and leaves out those of classes that no page has. */
export async function leanMath(folder: string, assets: string, attributes: ReadonlySet<string>): Promise<void> {
  const used = new Set([...attributes].flatMap((attribute) => attribute.split(' ')));
  const moved: string[] = [];
  for (const name of (await readdir(join(folder, assets))).filter((file) => file.endsWith('.css'))) {
    const file = join(folder, assets, name);
    const rules = rulesOf(await readFile(file, 'utf8'));
    const ofFormulas = rules.filter((rule) => FORMULA_RULE.test(rule));
    if (ofFormulas.length === 0) continue;
    moved.push(...ofFormulas);
    await writeFile(file, rules.filter((rule) => !FORMULA_RULE.test(rule)).join(''));
  }
  const file = join(folder, MATH_FILE);
  const styles = moved.filter((rule) => isUsed(rule, used)).join('').replaceAll(`../${assets}/`, `./${assets}/`);
  const sizes = existsSync(file) ? await readFile(file, 'utf8') : '';
  await writeFile(file, `${sizes}\n${styles}\n`);
}

/** The rules of a packed stylesheet, one by one; a group of them, as of `@media`, is one. */
export function rulesOf(css: string): string[] {
  const rules: string[] = [];
  let [start, depth] = [0, 0];
  for (const { 0: sign, index } of css.matchAll(/[{};]/g)) {
    depth += sign === '{' ? 1 : sign === '}' ? -1 : 0;
    if (depth > 0 || (sign === ';' && !css.slice(start, index).trimStart().startsWith('@'))) continue;
    rules.push(css.slice(start, index + 1).trim());
    start = index + 1;
  }
  return rules;
}

/** Whether one of its selectors names only classes that are in use; a font is fetched only where it is needed. */
function isUsed(rule: string, used: ReadonlySet<string>): boolean {
  const selectors = rule.slice(0, rule.indexOf('{'));
  return selectors.split(',').some((selector) => [...selector.matchAll(/\.([\w-]+)/g)].every(([, name]) => used.has(name!)));
}
