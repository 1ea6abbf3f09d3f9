/** `npm run bench`: how fast the parts of this project are, a table for each. A part joins with its line in `SECTIONS`. */
import { authoring } from './authoring.ts';
import { physics } from './physics.ts';
import { clouds } from './clouds.ts';
import { tableLines, type BenchSection } from './section.ts';
import { site } from './site.ts';

const SECTIONS: readonly BenchSection[] = [physics, clouds, authoring, site];

const HELP = `npm run bench [-- NAME …]

Measures how fast the parts of this project are and prints a table for each.

  NAME     only these parts: ${SECTIONS.map(({ name }) => name).join(', ')}
  --help   prints this

Exit code: 0 measured, 2 no such part.`;

const names = process.argv.slice(2);
const unknown = names.filter((name) => !SECTIONS.some((section) => section.name === name) && !/^(-h|--help)$/.test(name));
if (names.some((name) => /^(-h|--help)$/.test(name))) {
  console.log(HELP);
} else if (unknown.length > 0) {
  console.error(`No part of the benchmark is named ${unknown.join(', ')}.\n\n${HELP}`);
  process.exitCode = 2;
} else {
  for (const section of SECTIONS) if (names.length === 0 || names.includes(section.name)) await show(section);
}

async function show(section: BenchSection): Promise<void> {
  const rows = await section.measure((what) => console.error(`${section.name}: ${what} …`));
  console.log(['', section.title, '', ...tableLines(section.head, rows), ''].join('\n'));
}
