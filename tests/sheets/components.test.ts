/** Lesson text: every component is drawn, and only what everybody may see. */
import { beforeAll, describe, expect, it } from 'vitest';
import { parseLesson, type Content, type SheetKind } from '../../src/authoring/index.ts';
import { COMPONENTS, VOCABULARY, type KitView } from '../../src/sheets/index.ts';
import type { Scene } from '../../src/sheets/component.ts';
import { NOTHING } from '../../src/sheets/html/text.ts';
import type { Place } from '../../src/sheets/kit-scene.ts';
import { kitView } from '../../src/sheets/kit-view.ts';
import { MathStyles } from '../../src/sheets/math.ts';
import { TABLE_KINDS, QUANTITIES } from '../../src/tables/index.ts';
import { draw, loadMinimal, placeIn } from './place.ts';

let content: Content;
let place: Place;
beforeAll(async () => {
  content = await loadMinimal();
  place = placeIn(content);
});

/** One use of each component, the kind of text it stands in, and what must come of it. */
const USES: Record<string, { readonly text: string; readonly kind?: SheetKind; readonly expected: RegExp }> = {
  WorkedTable: { text: '<WorkedTable kind="pressure-steps"/>', expected: /<figure class="worked" id="pressure-steps-1"[^>]*>.*<table>/s },
  Curve: { text: '<Curve kind="pressure-steps"/>', expected: /<svg/ },
  Value: { text: 'The room has <Value of="roomPressure"/>.', expected: /98\.50 kPa/ },
  Given: { text: 'A drop of <Given source="bohren-1998">0.01 mm</Given>.', expected: /<span class="given">0\.01 mm<\/span>.*Bohren and Albrecht 1998/ },
  Step: { text: '<Step at="2 min" for="3 min" title="Pump" action="pump" drop="15 kPa" expect="cloud">\n\nSlowly.\n\n</Step>', kind: 'run', expected: /<time datetime="PT2M0S">2 min<\/time>.*−15 kPa.*<h3>Pump<\/h3>/s },
  Predict: { text: '<Predict lines="3">\n\nWhat next?\n\n</Predict>', expected: /<section class="predict"><h2>Predict<\/h2>.*lines-3/s },
  Observe: { text: '<Observe>\n\nLook.\n\n</Observe>', expected: /<section class="observe">/ },
  Explain: { text: '<Explain>\n\nWhy?\n\n</Explain>', expected: /<section class="explain">/ },
  TeacherOnly: { text: '<TeacherOnly>\n\nThe answer.\n\n</TeacherOnly>', expected: /^\s*$/ },
  Hazard: { text: '<Hazard id="vacuum"/>', kind: 'run', expected: /<aside class="hazard/ },
  Misconception: { text: '<Misconception id="cloud-is-vapor"/>', kind: 'background', expected: /<aside class="misconception">/ },
  Question: { text: '<Question id="why"/>', expected: /#question-why/ },
  Source: { text: 'So <Source id="bohren-1998"/>.', expected: /<a class="cite" href="[^"]*#source-bohren-1998">Bohren and Albrecht 1998<\/a>/ },
};

it('every component is tried', () => expect([...COMPONENTS.keys()].sort()).toEqual(Object.keys(USES).sort()));

describe.each(Object.entries(USES))('%s', (name, { text, kind, expected }) => {
  it('is drawn', () => {
    const markup = draw(place, text, { kind });
    expect(markup).toMatch(expected);
    expect(markup).not.toMatch(/undefined|NaN|\[object/);
  });
  it('is in the vocabulary', () => expect(VOCABULARY.components.has(name)).toBe(true));
});

describe('what only teachers see', () => {
  const text = 'Everybody.\n\n<TeacherOnly>\n\nThe **secret** is <Value of="roomPressure"/>.\n\n<WorkedTable kind="gauge-readings"/>\n\n</TeacherOnly>\n\nAll.';
  it('is in no student’s sheet, not its table either', () => {
    const markup = draw(place, text);
    expect(markup).toContain('Everybody');
    expect(markup).not.toMatch(/secret|teacher|98\.5|gauge-readings/);
  });
  it('is in the teacher’s', () => expect(draw(place, text, { teachers: true })).toMatch(/<div class="teacher-only">.*secret.*98\.5/s));
});

describe('every table kind and every value can be written', () => {
  it.each(TABLE_KINDS.map(({ kind }) => kind))('a table of %s, without saying more', (kind) => {
    expect(draw(place, `<WorkedTable kind="${kind}"/>`)).toMatch(/<tbody><tr( class="mark")?><th scope="row">/);
  });
  it.each([
    ['strokes', 'strokes="0, 1, 2" particles="salt-haze"'],
    ['particle-sizes', 'diameters="0.05 µm, 100 nm" drop="10 kPa"'],
    ['droplets', 'numbers="100 /cm³, 10000 /cm³" particles="salt-haze" humidity="95 %"'],
    ['particle-lifetime', 'times="0 min, 1 h, 1 d" number="5000 /cm³"'],
    ['particle-lifetime', 'cloudEvery="10 min"'],
    ['no-particle-limit', 'drops="0 kPa, 10 kPa, 30 kPa"'],
    ['wall-forces', 'readings="0 kPa gauge, -15 kPa gauge"'],
    ['rising-parcel', 'heights="0 m, 1 km" air="vessel"'],
    ['starting-humidity', 'humidities="60 %, 90 %" columns="relativeHumidity, onsetPressureDrop"'],
  ])('%s with %s', (kind, attributes) => expect(draw(place, `<WorkedTable kind="${kind}" ${attributes}/>`)).toContain('<table>'));

  const NEEDS: Record<string, string> = { height: 'height="500 m"', reading: 'reading="-10 kPa gauge"', humidity: 'humidity="80 %"', elevation: 'elevation="1000 m"', drop: '' };
  it.each(Object.entries(QUANTITIES).map(([of, { needs }]) => [of, needs.map((need) => NEEDS[need]).join(' ')]))('the value %s %s', (of, attributes) => {
    expect(draw(place, `It is <Value of="${of}" ${attributes}/>.`)).toMatch(/<span class="value"[^>]*>(−?\d|–)/);
  });

  it.each([
    ['<WorkedTable kind="no-such"/>', /no-such|kind/],
    ['<WorkedTable kind="pressure-steps" heights="5 m"/>', /heights/],
    ['<WorkedTable kind="droplets" numbers="5"/>', /unit/],
    ['Is <Value of="gaugeReading"/>.', /missing|reading/],
    ['Is <Value of="roomPressure" unit="m"/>.', /unit|`m`/],
  ])('%s is refused', (text, why) => expect(() => draw(place, text)).toThrow(why));
});

describe('tables that authors write', () => {
  const TABLE = '| Seen | Cause |\n|---|---|\n| No cloud | No particles |\n';
  const captions = (text: string, teachers = false): string[] => [...draw(place, text, { teachers }).matchAll(/<caption class="unseen">([^<]*)<\/caption>/g)].map(([, name = '']) => name);

  it('are named by the heading above them', () => expect(captions(`${TABLE}\n## If it goes wrong\n\nx\n\n${TABLE}\n## Afterwards\n\n${TABLE}`)).toEqual(['Table', 'If it goes wrong', 'Afterwards']));

  it('are not named by a heading that only teachers may read', () => {
    const text = `## Before\n\n<TeacherOnly>\n\n## The answer is 5\n\n</TeacherOnly>\n\n${TABLE}`;
    expect(captions(text)).toEqual(['Before']);
    expect(captions(text, true)).toEqual(['The answer is 5']);
  });
});

describe('hostile text', () => {
  const HOSTILE = 'A " onmouseover="alert(1)" <b>';
  it('in a caption or a title stays text', () => {
    const caption = draw(place, "<WorkedTable kind=\"gauge-readings\" caption='x\" onclick=\"y'/>");
    expect(caption).not.toMatch(/ onclick="/);
    const scene = { setting: place.setting, nextId: () => 'step-1' } as unknown as Scene;
    const title = COMPONENTS.get('Step')!.draw({ at: { value: 0 }, for: { value: 60 }, title: HOSTILE, action: 'talk' }, () => NOTHING, scene).html;
    expect(title).not.toMatch(/<b>|" onmouseover="/);
    expect(title).toContain('&lt;b&gt;');
  });
  it('in the content’s own fields stays text', () => {
    const source = { ...content.sources.get('bohren-1998')!, author: [{ family: '<img src=x onerror=alert(1)>' }] };
    const misconception = content.misconceptions.get('cloud-is-vapor')!;
    const hostile = placeIn({
      ...content,
      sources: new Map([['bohren-1998', source]]),
      misconceptions: new Map([['cloud-is-vapor', { ...misconception, meta: { ...misconception.meta, title: HOSTILE } }]]),
    } as Content);
    expect(draw(hostile, 'x <Source id="bohren-1998"/>')).not.toContain('<img');
    expect(draw(hostile, '<Misconception id="cloud-is-vapor"/>', { kind: 'background' })).not.toContain('<b>');
  });
  it.each(['<script>alert(1)</script>', '<b onclick="x">y</b>', '<Observe title="<b>x</b>">\n\ny\n\n</Observe>', '{process.env}', '[x](javascript:alert(1))', 'import x from "y"'])('%s is refused', (text) => {
    expect(() => draw(place, text)).toThrow();
  });
});

describe('a figure', () => {
  const FIGURE = '<Curve kind="rising-parcel" heights="0 m, 400 m, 800 m"/>';

  it('has the same data as a table, which is drawn again with it', () => {
    const markup = draw(place, FIGURE);
    const behind = /<details class="as-table" data-table="rising-parcel list=0,400,800">[^]*<\/details>/.exec(markup)?.[0] ?? '';
    expect(behind).toMatch(/<summary>[^<]+, as a table<\/summary>/);
    expect([...behind.matchAll(/<th scope="row">(\d+)/g)].map(([, height]) => height)).toEqual(expect.arrayContaining(['0', '400', '800']));
    expect(markup.indexOf('<svg')).toBeLessThan(markup.indexOf(behind));
  });

  it('stands on the numbers page and in tables.json, unless a table has its rows', () => {
    const { tables } = parsedTables(`${FIGURE}\n\n<Curve kind="pressure-steps" drops="0 kPa, 5 kPa"/>\n\n<WorkedTable kind="pressure-steps" drops="0 kPa, 5 kPa" caption="Two"/>`);
    expect(tables.map(({ id }) => id)).toEqual(['rising-parcel-figure-1', 'pressure-steps-1']);
  });
});

/** The tables of a kit whose background is this text. */
function parsedTables(text: string): { readonly tables: KitView['tables'] } {
  const { lesson, findings } = parseLesson(text, 'background.mdx', 'background', VOCABULARY);
  if (lesson === undefined) throw new Error(findings.map(({ what }) => what).join('; '));
  const [id, kit] = [...content.kits][0]!;
  const view = kitView(content, id, { ...kit, background: lesson }, 'draft', new MathStyles());
  // tables.json has the same ones.
  const written = JSON.parse(view.tablesJson) as { readonly tables: readonly { readonly id: string }[] };
  expect(written.tables.map(({ id: table }) => table)).toEqual(view.tables.map(({ sheet, id: table }) => `${sheet}-${table}`));
  return { tables: view.tables.filter(({ sheet }) => sheet === 'background') };
}

describe('ids', () => {
  it('differ within a sheet', () => {
    const markup = draw(place, '<WorkedTable kind="gauge-readings"/>\n\n<WorkedTable kind="gauge-readings"/>\n\n<Curve kind="pressure-steps"/>\n\n<WorkedTable kind="pressure-steps"/>\n\n<Curve kind="pressure-steps"/>');
    const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(ids.length).toBeGreaterThanOrEqual(5);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
