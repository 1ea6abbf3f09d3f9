/** Lesson text: what is read from it, whatever the line breaks, and what it costs. */
import { describe, expect, it } from 'vitest';
import {
  componentOf,
  formatFinding,
  isParent,
  parseLesson,
  plainText,
  type LessonNode,
  type SheetKind,
} from '../../src/authoring/index.ts';
import { vocabulary } from './vocabulary.ts';

const parse = (text: string, kind: SheetKind = 'run') => parseLesson(text, 'content/kits/a/run.mdx', kind, vocabulary);
const codes = (text: string, kind?: SheetKind): string[] =>
  parse(text, kind).findings.map(({ code, line, column }) => `${code} ${line}:${column}`);

function treeOf(text: string) {
  const { lesson, findings } = parse(text);
  if (lesson === undefined) throw new Error(findings.map(formatFinding).join('\n'));
  return lesson.tree;
}

/** Types of the nodes, components by their name. */
function outline(node: LessonNode): string {
  const name = componentOf(node)?.component ?? node.type;
  return isParent(node) && node.children.length > 0 ? `${name}(${node.children.map(outline).join(' ')})` : name;
}

describe('parseLesson', () => {
  it('reads attributes by their schema, and keeps the place of every component', () => {
    const { lesson } = parse(
      '## A\n\n<Step at="1.5 min" drop="20 kPa">\n\nSee <Value of="gaugeAtDrop" drop="5 kPa"/>.\n\n</Step>\n',
    );
    expect(lesson?.components).toMatchObject([
      { name: 'Step', position: { line: 3, column: 1 }, attributes: { at: { value: 90, unit: 'min' }, drop: { value: 20_000 } } },
      { name: 'Value', position: { line: 5, column: 5 }, attributes: { of: 'gaugeAtDrop', drop: { value: 5000 } } },
    ]);
    expect(lesson?.headings).toEqual([{ depth: 2, text: 'A', position: { line: 1, column: 1 } }]);
  });

  it('keeps places true below front matter', () => {
    const { findings, frontMatter } = parse('---\ntitle: A\n---\n\nText {x}\n', 'misconception');
    expect(frontMatter?.data).toEqual({ title: 'A' });
    expect(frontMatter?.locate(['title'])).toEqual({ line: 2, column: 8 });
    expect(findings.map(formatFinding)).toEqual([
      'content/kits/a/run.mdx:5:6: braces enclose code; write the text itself; `\\{` is the sign',
    ]);
  });

  it('keeps places true with lines that end in CR LF', () => {
    expect(codes('One\r\n\r\nTwo {x}\r\n')).toEqual(['expression 3:5']);
  });

  it('collects what the text refers to', () => {
    const { lesson } = parse('<Hazard id="vacuum"/>\n\n<Given source="smith-2001">5 kPa</Given> and ![jar](jar.png)\n');
    expect(lesson?.references.map(({ to, name }) => `${to} ${name}`)).toEqual([
      'hazard vacuum',
      'source smith-2001',
      'picture jar.png',
    ]);
  });

  it.each([
    ['a block on one line', '<Step at="0 min">Go *now*.</Step>\n', 'root(Step(paragraph(text emphasis(text) text)))'],
    ['two blocks in two lines', '<Hazard id="a"/>\n<Hazard id="b"/>\n', 'root(Hazard Hazard)'],
    ['an inline component alone', '<Value of="roomPressure"/>\n', 'root(paragraph(Value))'],
    [
      'a sentence broken around a component',
      'It is\n<Value of="roomPressure"/>\ntoday.\n',
      'root(paragraph(text text Value text text))',
    ],
    ['a component with text on lines of its own', '<Given>\n5 kPa\n</Given>\n', 'root(paragraph(Given(text)))'],
    [
      'a component in a table',
      '| a |\n|---|\n| <Value of="roomPressure"/> |\n',
      'root(table(tableRow(tableCell(text)) tableRow(tableCell(Value))))',
    ],
  ])('puts %s where it belongs', (_, text, expected) => {
    expect(outline(treeOf(text))).toBe(expected);
  });

  it('reads escaped signs and entities as text', () => {
    expect(plainText(treeOf('5 \\< 6 and 5 &lt; 6, \\{x\\}, `<b>` and `{y}`\n'))).toBe('5 < 6 and 5 < 6, {x}, <b> and {y}');
  });

  it.each([
    ['<Explain>\n\nx\n\n</Explain>\n', 'student', ['component-placement 1:1']],
    ['<Predict>\n\n<Explain>\n\nx\n\n</Explain>\n\n</Predict>\n', 'student', []],
    ['<Predict>\n\n<Predict>\n\nx\n\n</Predict>\n\n</Predict>\n', 'student', ['component-placement 3:1']],
    ['[see <Given>a</Given>](b)\n', 'student', ['component-placement 1:6']],
    ['<Given/>\n', 'student', ['component-children 1:1']],
    ['<Given>a\n\nb</Given>\n', 'student', ['lesson-syntax 1:1']],
    ['<></>\n', 'student', ['raw-html 1:1']],
    [
      '<Predict onClick="x" lines="2" style="y">\n\nx\n\n</Predict>\n',
      'student',
      ['unsafe-attribute 1:10', 'unsafe-attribute 1:32'],
    ],
    ['{\n', 'student', ['lesson-syntax 1:1']],
    ['---<TeacherOnly>\ntitle: A\n---\n', 'student', ['lesson-syntax 1:1']],
    ['a {b\n\nc\n', 'student', ['lesson-syntax 1:3']],
    ['<https://example.org>\n', 'student', ['lesson-syntax 1:8']],
    [
      '[a](data:text/html,x) [b](vbscript:x) [c](//example.org) [d](https://example.org) [e](mailto:a@example.org) [f](../kit/)\n',
      'student',
      ['unsafe-link 1:1', 'unsafe-link 1:23', 'unsafe-link 1:39'],
    ],
    ['[a](java&#10;script:x)\n', 'student', ['unsafe-link 1:1']],
    ['$$\na \\\\ b\n$$\n', 'student', ['math-error 2:3']],
    ['$\\begin{aligned} a &= b \\\\ c &= d \\end{aligned}$\n', 'student', []],
    ['$\\def\\x{y} \\x$\n', 'student', ['math-command 1:2']],
    ['$20\\,\\text{of them}$\n', 'student', []],
  ] as const)('%j on a %s sheet: %j', (text, kind, expected) => {
    expect(codes(text, kind)).toEqual(expected);
  });
});

describe('typed-in quantities', () => {
  it.each([
    'cools by 10 K',
    'to 97%',
    'to 97 %',
    'at 20kPa',
    'in 5 minutes',
    'a 5-minute wait',
    '−5 °C',
    'about 29.1 inHg',
    '1,600 m up',
    'a `5 L` jar',
    '2 × 10³ /cm³',
    '5 grados',
    'por 3 litros',
    'between 5 and\u00a010 hPa',
    'heated (20 °C)',
  ])('finds one in "%s"', (text) => {
    expect(codes(`It is ${text}.\n`, 'student').map((one) => one.split(' ')[0])).toEqual(['typed-quantity']);
  });

  it.each(['two inches of mercury', '2 degrees Celsius', 'ten degrees Fahrenheit'])('names all of "%s"', (text) => {
    expect(formatFinding(parse(`It falls by ${text} at most.\n`, 'student').findings[0]!)).toContain(text);
  });

  it.each([
    'the 1990s',
    'in 2026',
    'ages 11-14',
    'for 3 in class',
    'figure 5',
    'page 24, table 3',
    'W021',
    'step 2 of 5',
    '3 kids',
    '<Given>10 K</Given>',
    '<Given>*10 K*</Given>',
    '5 Kelvinists',
    'grade 7 students',
    '3.2.1',
  ])('finds none in "%s"', (text) => {
    expect(codes(`It is ${text}.\n`, 'student')).toEqual([]);
  });
});

describe('text made to be slow', () => {
  it.each([
    ['links never closed', '![a]('.repeat(10_000)],
    ['emphasis never closed', '*a_'.repeat(10_000)],
    ['quotes in quotes', `${'> '.repeat(10_000)}a`],
    ['components in components', '<TeacherOnly>\n\n'.repeat(3000)],
    ['braces', '{'.repeat(60_000)],
    ['groups in a formula', `$${'{'.repeat(900)}${'}'.repeat(900)}$`],
    ['addresses', 'a@'.repeat(30_000)],
  ])('%s take less than two seconds of the processor', (_, text) => {
    const start = process.cpuUsage();
    parse(text);
    const { user, system } = process.cpuUsage(start);
    expect((user + system) / 1000).toBeLessThan(2000);
  });
});
