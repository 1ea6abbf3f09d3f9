/** Broken content folders: every one is found out, with the right code at the right place and nothing besides. */
import { writeFile } from 'node:fs/promises';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { FINDINGS, formatFinding, HAZARD_TAGS, loadContent, type Finding } from '../../src/authoring/index.ts';
import { checkContent } from '../../src/commands/read-book.ts';
import { MINIMAL, PUBLISHED, withOverlay } from './folders.ts';
import { vocabulary } from './vocabulary.ts';

/** Folder in tests/content/bad, its findings as `code file:line:column`, the file taken away. Places were counted in the files. */
const CASES: readonly (readonly [name: string, findings: readonly string[], without?: string])[] = [
  ['bare-number', ['quantity-without-unit rooms/workshop.yaml:3:14']],
  ['wrong-dimension', ['wrong-dimension rooms/workshop.yaml:3:14']],
  ['unknown-unit', ['unknown-unit rooms/workshop.yaml:2:18']],
  ['decimal-comma', ['decimal-comma rooms/workshop.yaml:3:14']],
  ['not-a-quantity', ['quantity-unreadable rooms/workshop.yaml:3:14']],
  ['temperature-out-of-range', ['quantity-out-of-range rooms/workshop.yaml:3:14']],
  ['pressure-out-of-range', ['quantity-out-of-range rooms/workshop.yaml:2:18']],
  ['humidity-above-100', ['quantity-out-of-range rooms/workshop.yaml:4:11']],
  ['level-without-reference', ['level-without-reference apparatus/jar.yaml:8:11']],
  ['difference-with-reference', ['reference-not-wanted kits/first-cloud/kit.yaml:9:7']],
  ['unknown-key', ['unknown-key rooms/workshop.yaml:4:1']],
  ['missing-key', ['missing-key apparatus/jar.yaml:17:1']],
  ['wrong-type', ['wrong-type rooms/workshop.yaml:1:8']],
  ['wrong-form', ['wrong-form site.yaml:2:10']],
  ['unknown-choice', ['unknown-choice apparatus/jar.yaml:7:13']],
  ['number-out-of-range', ['number-out-of-range particles/salt-haze.yaml:3:9']],
  ['elevation-and-pressure', ['contradiction rooms/workshop.yaml:3:18']],
  ['yaml-syntax', ['yaml-syntax rooms/workshop.yaml:1:8']],
  ['duplicate-key', ['yaml-duplicate-key rooms/workshop.yaml:5:1']],
  ['anchor', ['yaml-anchor rooms/workshop.yaml:2:18']],
  ['tag', ['yaml-tag rooms/workshop.yaml:1:8']],
  ['two-documents', ['yaml-documents rooms/workshop.yaml:4:1']],
  ['byte-order-mark', ['byte-order-mark rooms/workshop.yaml:1:1']],
  ['hidden-character', ['hidden-character kits/first-cloud/background.mdx:3:9']],
  ['not-utf-8', ['not-utf-8 rooms/workshop.yaml:1:1']],
  ['missing-file', ['missing-file kits/first-cloud/background.mdx:1:1'], 'kits/first-cloud/background.mdx'],
  ['missing-site', ['missing-file site.yaml:1:1'], 'site.yaml'],
  ['unknown-file', ['unknown-file rooms/attic.yml:1:1']],
  ['translation-language', ['translation-language kits/second-cloud/kit.yaml:3:16']],
  ['translation-of-translation', ['translation-of-translation kits/first-cloud/kit.yaml:3:16']],
  ['bad-name', ['bad-name rooms/Big Hall.yaml:1:1']],
  ['unknown-room', ['unknown-reference site.yaml:4:7']],
  ['unknown-standard', ['unknown-reference kits/first-cloud/kit.yaml:11:18']],
  ['unknown-source', ['unknown-reference misconceptions/cloud-is-vapor.mdx:5:56']],
  ['unknown-question', ['unknown-reference kits/first-cloud/student.mdx:7:11']],
  ['unknown-picture', ['unknown-reference kits/first-cloud/background.mdx:1:1']],
  ['dead-link', ['dead-link kits/first-cloud/background.mdx:7:5']],
  ['duplicate-source', ['duplicate-name sources.yaml:9:9']],
  ['listed-twice', ['duplicate-reference kits/first-cloud/kit.yaml:10:19']],
  ['never-cited', ['source-never-cited sources.yaml:9:9']],
  ['front-matter-missing', ['front-matter hazards/vacuum.mdx:1:1']],
  ['front-matter-toml', ['front-matter hazards/vacuum.mdx:1:1']],
  ['front-matter-on-sheet', ['front-matter kits/first-cloud/student.mdx:1:1']],
  ['front-matter-field', ['unknown-choice hazards/vacuum.mdx:3:9']],
  ['unknown-component', ['unknown-component kits/first-cloud/student.mdx:1:1']],
  ['unclosed-component', ['lesson-syntax kits/first-cloud/student.mdx:1:1']],
  ['expression', ['expression kits/first-cloud/background.mdx:3:58']],
  ['attribute-expression', ['expression kits/first-cloud/run.mdx:3:64']],
  ['attribute-spread', ['expression kits/first-cloud/run.mdx:3:78']],
  ['import', ['import-or-export kits/first-cloud/background.mdx:1:1']],
  ['export', ['import-or-export kits/first-cloud/background.mdx:7:1']],
  ['script', ['script kits/first-cloud/background.mdx:7:1']],
  ['raw-html', ['raw-html kits/first-cloud/background.mdx:7:3']],
  ['html-comment', ['html-comment kits/first-cloud/background.mdx:7:2']],
  ['event-attribute', ['unsafe-attribute kits/first-cloud/run.mdx:21:44']],
  ['directive-attribute', ['unsafe-attribute kits/first-cloud/run.mdx:21:44']],
  ['duplicate-attribute', ['duplicate-attribute kits/first-cloud/run.mdx:21:44']],
  ['unknown-attribute', ['unknown-key kits/first-cloud/run.mdx:21:72']],
  ['javascript-link', ['unsafe-link kits/first-cloud/background.mdx:7:5']],
  ['encoded-link', ['unsafe-link kits/first-cloud/background.mdx:7:5']],
  ['http-link', ['unsafe-link kits/first-cloud/background.mdx:7:5']],
  ['link-definition', ['link-definition kits/first-cloud/background.mdx:7:1']],
  ['image-outside-kit', ['image-address kits/first-cloud/background.mdx:7:1']],
  ['footnote', ['markdown-refused kits/first-cloud/background.mdx:7:1']],
  ['heading-level', ['heading-level kits/first-cloud/background.mdx:1:1']],
  ['heading-jump', ['heading-level kits/first-cloud/background.mdx:7:1']],
  ['entity-markup', ['entity-markup kits/first-cloud/background.mdx:7:1']],
  ['too-deep', ['too-deep kits/first-cloud/background.mdx:7:1']],
  ['typed-quantity', ['typed-quantity kits/first-cloud/background.mdx:3:62']],
  ['typed-in-title', ['typed-quantity kits/first-cloud/run.mdx:21:30']],
  ['typed-in-formula', ['typed-quantity kits/first-cloud/background.mdx:7:12']],
  ['typed-in-option', ['typed-quantity kits/first-cloud/questions/why.mdx:7:13']],
  ['broken-formula', ['math-error kits/first-cloud/background.mdx:7:4']],
  ['formula-command', ['math-command kits/first-cloud/background.mdx:7:5']],
  ['block-in-sentence', ['component-placement kits/first-cloud/run.mdx:27:6']],
  ['wrong-sheet', ['component-placement kits/first-cloud/student.mdx:9:1']],
  ['component-not-empty', ['component-children kits/first-cloud/student.mdx:11:1']],
  ['unknown-value', ['unknown-choice kits/first-cloud/background.mdx:3:29']],
  ['value-without-parameter', ['missing-key kits/first-cloud/run.mdx:5:9']],
  ['cycle', ['cycle misconceptions/cloud-is-vapor.mdx:7:9']],
  ['drop-beyond-rating', ['beyond-rating kits/first-cloud/kit.yaml:10:7', 'beyond-rating kits/first-cloud/run.mdx:3:1', 'beyond-rating kits/first-cloud/run.mdx:21:1']],
  ['step-beyond-gauge', ['beyond-gauge kits/first-cloud/run.mdx:21:1']],
  ['drop-beyond-pump', ['beyond-pump kits/first-cloud/kit.yaml:10:7', 'beyond-pump kits/first-cloud/run.mdx:3:1', 'beyond-pump kits/first-cloud/run.mdx:21:1']],
  ['drop-below-resolution', ['below-resolution kits/first-cloud/run.mdx:21:1']],
  ['missing-hazard', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['vacuum-without-sheet', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['flame-without-end', ['flame-not-extinguished kits/first-cloud/run.mdx:9:1']],
  ['ember-without-end', ['flame-not-extinguished kits/first-cloud/kit.yaml:7:13']],
  ['ember-put-out-before', ['flame-not-extinguished kits/first-cloud/run.mdx:15:1']],
  ['flame-with-vapor', ['flame-with-vapor kits/first-cloud/kit.yaml:7:13']],
  ['component-in-field', ['component-placement kits/first-cloud/questions/in-words.mdx:6:24']],
  ['cloud-without-particles', ['cloud-denied kits/first-cloud/run.mdx:3:1']],
  ['cloud-before-saturation', ['cloud-denied kits/first-cloud/run.mdx:21:1']],
  ['clear-beyond-limit', ['clear-denied kits/first-cloud/run.mdx:3:1']],
  ['steps-out-of-order', ['step-order kits/first-cloud/run.mdx:15:1']],
  ['beyond-the-lesson', ['beyond-lesson kits/first-cloud/run.mdx:21:1']],
  ['particles-not-listed', ['unknown-reference kits/first-cloud/run.mdx:15:1']],
  ['table-of-other-particles', ['particles-not-listed kits/first-cloud/background.mdx:7:1']],
  ['strokes-without-pump', ['strokes-without-pump kits/first-cloud/background.mdx:7:1', 'strokes-without-pump kits/first-cloud/background.mdx:9:10']],
  ['question-in-two-minds', ['contradiction kits/first-cloud/questions/why.mdx:6:3']],
  ['outside-physics', ['outside-physics kits/first-cloud/kit.yaml:9:7']],
  ['release-beyond-rating', ['beyond-rating kits/first-cloud/kit.yaml:10:7', 'beyond-rating kits/first-cloud/run.mdx:3:1', 'beyond-rating kits/first-cloud/run.mdx:21:1']],
  ['release-beyond-source', ['beyond-pump kits/first-cloud/kit.yaml:10:7', 'beyond-pump kits/first-cloud/run.mdx:3:1', 'beyond-pump kits/first-cloud/run.mdx:21:1']],
  ['cooling-below-resolution', ['below-resolution kits/first-cloud/kit.yaml:9:7']],
  ['off-the-thermometer', ['below-resolution kits/first-cloud/kit.yaml:8:1']],
  ['hazard-flame', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-ember', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-smoke', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-aerosol', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-pressurised', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-glass', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-plastic', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-solvent', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-hot-water', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['hazard-lamp', ['hazard-missing kits/first-cloud/kit.yaml:11:1']],
  ['apparatus-burns-without-end', ['flame-not-extinguished kits/first-cloud/kit.yaml:6:12']],
  ['kit-without-sheets', ['missing-file kits/second-cloud/background.mdx:1:1', 'missing-file kits/second-cloud/run.mdx:1:1', 'missing-file kits/second-cloud/student.mdx:1:1']],
  ['symbolic-link', ['symbolic-link rooms/attic.yaml:1:1']],
  ['too-many-readings', ['file-too-large kits/first-cloud/readings/7b.csv:1:1']],
  ['readings-without-unit', ['readings-header kits/first-cloud/readings/7b.csv:1:10']],
  ['readings-column-missing', ['readings-header kits/first-cloud/readings/7b.csv:1:1']],
  ['readings-semicolons', ['readings-header kits/first-cloud/readings/7b.csv:1:1']],
  ['readings-not-a-number', ['readings-value kits/first-cloud/readings/7b.csv:3:8']],
  ['readings-decimal-comma', ['readings-value kits/first-cloud/readings/7b.csv:3:1']],
  ['readings-out-of-order', ['readings-value kits/first-cloud/readings/7b.csv:3:1']],
  ['readings-formula', ['csv-formula kits/first-cloud/readings/7b.csv:3:8']],
  ['options-alike', ['options-alike kits/first-cloud/questions/why.mdx:6:5', 'options-alike kits/first-cloud/questions/why.mdx:7:5']],
  ['option-within-tolerance', ['option-within-tolerance kits/first-cloud/questions/why.mdx:7:5']],
  ['question-without-answer', ['question-without-answer kits/first-cloud/questions/why.mdx:5:9']],
  ['all-at-once', ['wrong-type misconceptions/cloud-is-vapor.mdx:2:8', 'unknown-key misconceptions/cloud-is-vapor.mdx:3:1', 'raw-html misconceptions/cloud-is-vapor.mdx:6:10', 'typed-quantity misconceptions/cloud-is-vapor.mdx:6:25', 'lesson-syntax misconceptions/cloud-is-vapor.mdx:6:40', 'unknown-choice misconceptions/cloud-is-vapor.mdx:7:52', 'lesson-syntax misconceptions/cloud-is-vapor.mdx:9:1', 'typed-quantity misconceptions/cloud-is-vapor.mdx:11:1', 'unsafe-link misconceptions/cloud-is-vapor.mdx:11:20']],
];

/** The same on the folder with two published editions. */
const EDITION_CASES: typeof CASES = [
  ['edition-edited', ['edition-file-edited editions/first-cloud/1.0.1/kits/first-cloud/run.mdx:1:1']],
  ['edition-results-edited', ['edition-file-edited editions/first-cloud/1.0.1/results.json:1:1']],
  ['edition-without-file', ['edition-file-missing editions/first-cloud/1.0.1/rooms/attic.yaml:1:1']],
  ['edition-with-more', ['edition-file-added editions/first-cloud/1.0.1/rooms/attic.yaml:1:1']],
  ['edition-number', ['edition-number editions/first-cloud/1.0.1/results.json:9:3']],
  ['notice-number', ['notice-number editions/first-cloud/1.0.1/notice.yaml:5:14', 'notice-number editions/first-cloud/1.0.1/notice.yaml:9:14', 'notice-number editions/first-cloud/1.0.1/notice.yaml:13:14']],
  ['notice-replacement', ['notice-replacement editions/first-cloud/1.0.1/notice.yaml:4:18']],
];

const check = async (folder: string): Promise<readonly Finding[]> => (await checkContent(folder)).findings;
/** On sheets alone may things be brought in, so texts that bring in each other need another vocabulary. */
const checkFreely = async (folder: string): Promise<readonly Finding[]> => (await loadContent(folder, vocabulary)).findings;

const brief = ({ code, file, line, column }: Finding): string => `${code} ${file.replace(/^content\//, '')}:${line}:${column}`;

describe('content folders', () => {
  it('finds nothing in the smallest good one', async () => {
    expect((await check(MINIMAL)).map(formatFinding)).toEqual([]);
  });

  it('finds nothing in one with published editions', async () => {
    expect((await check(PUBLISHED)).map(formatFinding)).toEqual([]);
  });

  const cases = [...CASES.map((one) => ({ one, good: MINIMAL })), ...EDITION_CASES.map((one) => ({ one, good: PUBLISHED }))];
  it.each(cases.map(({ one: [name, expected, without], good }) => ({ name, expected, without, good })))('$name', async ({ name, expected, without, good }) => {
    await withOverlay(name, without, async (folder) => {
      const findings = name === 'cycle' ? await checkFreely(folder) : await check(folder);
      expect(findings.map(brief)).toEqual(expected);
      for (const { what, instead } of findings) {
        expect(what).toMatch(/\S.*[^.]$/);
        expect(instead).toMatch(/\S.*[^.]$/);
      }
    }, good);
  });

  it('has a case for every folder of broken content', () => {
    const folders = readdirSync(fileURLToPath(new URL('../content/bad/', import.meta.url)));
    const cases = [...CASES, ...EDITION_CASES].filter(([, , without]) => without === undefined).map(([name]) => name);
    expect(folders.filter((name) => name !== 'hostile').sort()).toEqual(cases.sort());
  });

  it('refuses a file too large to be read quickly', async () => {
    const findings = await withOverlay('none', undefined, async (folder) => {
      await writeFile(join(folder, 'rooms/attic.yaml'), `title: ${'x'.repeat(300 * 1024)}\n`);
      return check(folder);
    });
    expect(findings.map(brief)).toEqual(['file-too-large rooms/attic.yaml:1:1']);
  });

  it('says so when there is no folder', async () => {
    const { content, findings } = await loadContent(join(MINIMAL, 'nowhere'), vocabulary);
    expect(content).toBeUndefined();
    expect(findings.map(({ code }) => code)).toContain('missing-file');
  });

  it('shows all findings of all files at once', async () => {
    const findings = await withOverlay('bare-number', 'kits/first-cloud/background.mdx', async (folder) => {
      await writeFile(join(folder, 'kits/first-cloud/student.mdx'), 'It is {cold} at 5 kPa.\n');
      return check(folder);
    });
    expect(findings.map(brief)).toEqual([
      'missing-file kits/first-cloud/background.mdx:1:1',
      'expression kits/first-cloud/student.mdx:1:7',
      'typed-quantity kits/first-cloud/student.mdx:1:17',
      'quantity-without-unit rooms/workshop.yaml:3:14',
    ]);
  });
});

/** Codes of gates that compare two numbers. */
const COMPARING = ['beyond-rating', 'beyond-gauge', 'beyond-pump', 'below-resolution', 'step-order', 'beyond-lesson', 'clear-denied'];

describe('what a step of a vessel under pressure may expect', () => {
  it.each([
    ['a cloud as the vessel is opened', 'vent', 'cloud', []],
    ['a cloud as air is pressed in', 'pump', 'cloud', ['cloud-denied']],
    ['clear air as air is pressed in', 'pump', 'clear', []],
  ])('%s', async (_, action, expected, codes) => {
    const findings = await withOverlay('none', undefined, async (folder) => {
      const jar = join(folder, 'apparatus/jar.yaml');
      await writeFile(jar, readFileSync(jar, 'utf8').replace(/kind: stroke-pump[\s\S]*?(?=gauge:)/, 'kind: pressurise\n  highest: 60 kPa gauge\n  releaseTime: 0.3 s\n'));
      const run = join(folder, 'kits/first-cloud/run.mdx');
      await writeFile(run, `<Step at="0 min" for="1 min" title="Let particles in" action="particles">\nOpen.\n</Step>\n\n<Step at="1 min" for="1 min" title="Go" action="${action}" expect="${expected}">\nGo.\n</Step>\n`);
      return check(folder);
    });
    expect(findings.map(({ code }) => code).filter((code) => code.endsWith('-denied'))).toEqual(codes);
  });
});

describe('what was lit before the lesson', () => {
  const at = (minute: number, action: string): string => `<Step at="${minute} min" for="1 min" title="Step" action="${action}">\nNow.\n</Step>\n\n`;
  it.each([
    ['an ember that is put out after its smoke is let in', 'ember', ['particles', 'extinguish'], []],
    ['an ember that is put out before', 'ember', ['extinguish', 'particles'], ['flame-not-extinguished']],
    ['an ember that is put out between two times', 'ember', ['particles', 'extinguish', 'particles'], ['flame-not-extinguished']],
    ['an ember that no step uses', 'ember', ['extinguish', 'vent'], []],
    ['a flame that is blown out for its smoke', 'flame', ['extinguish', 'particles'], []],
  ])('%s', async (_, tag, actions, codes) => {
    const findings = await withOverlay('none', undefined, async (folder) => {
      const particles = join(folder, 'particles/salt-haze.yaml');
      await writeFile(particles, readFileSync(particles, 'utf8').replace(/uses: .*/, `uses: [${tag}]`));
      await writeFile(join(folder, 'kits/first-cloud/run.mdx'), actions.map((action, i) => at(i, action)).join(''));
      return check(folder);
    });
    expect(findings.map(({ code }) => code).filter((code) => code !== 'hazard-missing')).toEqual(codes);
  });
});

describe('the catalogue', () => {
  const codesOf = (findings: readonly string[]): Set<string> => new Set(findings.map((finding) => finding.split(' ')[0] ?? ''));

  it('has for every code a fixture folder that provokes it and nothing else', () => {
    const alone = [...CASES, ...EDITION_CASES].filter(([, , without]) => without === undefined)
      .map(([, findings]) => [...codesOf(findings)])
      .filter((codes) => codes.length === 1)
      .flat();
    expect([...new Set(alone)].sort()).toEqual(Object.keys(FINDINGS).sort());
  });

  it('has for every hazard a folder in which its sheet is missing', async () => {
    const missing = new Set<string>();
    for (const [name, findings] of CASES) {
      if (!codesOf(findings).has('hazard-missing')) continue;
      for (const { what } of await withOverlay(name, undefined, check)) missing.add(/^`([a-z-]+)`/.exec(what)?.[1] ?? what);
    }
    expect([...missing].sort()).toEqual([...HAZARD_TAGS].sort());
  });

  it.each(COMPARING)('states both numbers in %s', async (code) => {
    const folders = CASES.filter(([, findings]) => codesOf(findings).has(code));
    expect(folders.length).toBeGreaterThan(0);
    for (const [name] of folders)
      for (const { what } of await withOverlay(name, undefined, check)) expect(what.match(/\d+(?:\.\d+)? ?(?:kPa|K|°C|min)/g)?.length).toBeGreaterThan(1);
  });
});

describe('typed-in quantities that the kit states', () => {
  it.each([
    ['985 hPa', '<Value of="roomPressure"/>'],
    ['98.5 kPa', '<Value of="roomPressure"/>'],
    ['20.0 °C', '<Value of="roomTemperature"/>'],
    ['20 degrees Celsius', '<Value of="roomTemperature"/>'],
    ['95%', '<Value of="startHumidity"/>'],
    ['15 kPa', '<Value of="plannedDrop"/>'],
    ['−15 kPa', '<Value of="gaugeAtDrop" drop="15 kPa"/>'],
    ['4 liters', '<Value of="vesselVolume"/>'],
    ['10 seconds', '<Value of="thermometerTimeConstant"/>'],
    ['35 kPa', '<Given>35 kPa</Given>'],
  ])('%s: proposes %s', async (typed, proposal) => {
    const [finding] = await withOverlay('none', undefined, async (folder) => {
      await writeFile(join(folder, 'kits/first-cloud/background.mdx'), `It is ${typed} here. <Misconception id="cloud-is-vapor"/>\n`);
      return check(folder);
    });
    expect(finding?.code).toBe('typed-quantity');
    expect(finding?.instead).toContain(`\`${proposal}\``);
  });
});
