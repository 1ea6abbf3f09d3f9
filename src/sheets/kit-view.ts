/** One kit of a content folder, computed and drawn. */
import { HAZARD_TAGS, apparatusOf, particlesOf, type Content, type Kit, type Lesson, type Statement } from '../authoring/index.ts';
import { formatWithUnit, STYLES, type Style } from '../tables/index.ts';
import { KIT_TEXTS, SIGNALS, type Language, type TagName } from '../texts/index.ts';
import type { HazardView, KitView, MisconceptionView, SheetHtml, StepView } from './book.ts';
import { signsOf } from './asides.ts';
import { stepsOf } from './components/index.ts';
import { computedFor, conditionsList } from './conditions-text.ts';
import { conditionsOf, movingLevels } from './kit-conditions.ts';
import { writeLive } from './html/live.ts';
import { drawSheet, KIT_SOURCE_LIST, type Place } from './kit-scene.ts';
import { computedTables, tableRecords, tablesJson, tableViews, withOwnRows, type SheetTable } from './kit-tables.ts';
import type { MathStyles } from './math.ts';
import { renderLiveSetup } from './html/setup.ts';
import { kitPicture, runChartsOf } from './pictures.ts';
import { questionView } from './question-view.ts';
import { readingsView } from './readings-view.ts';
import { sourceView } from './reference.ts';

/** The version of a kit's working copy. */
export const DRAFT = 'draft';

/** The component whose content is left out for everybody. */
const TEACHER_ONLY = 'TeacherOnly';

/** The language of a kit: its own, else the site's. */
export const languageOf = (content: Content, kit: Kit): Language => kit.meta.language ?? content.site.language;

/** The scene of a kit: its content in its own conditions. */
export function placeOf(content: Content, kit: Kit, math: MathStyles, sourceList = KIT_SOURCE_LIST): Place {
  const conditions = conditionsOf(content, kit);
  const style = STYLES[languageOf(content, kit)];
  return { content, kit, math, sourceList, setting: { conditions, style } };
}

/** A kit as the pages show it. */
export function kitView(content: Content, id: string, kit: Kit, version: string, math: MathStyles): KitView {
  const place = placeOf(content, kit, math);
  const { conditions, style } = place.setting;
  const { meta } = kit;
  const sheets = { run: drawTwice(place, kit.run), student: drawTwice(place, kit.student), background: drawTwice(place, kit.background) };
  const tables = withOwnRows((['run', 'student', 'background'] as const).flatMap((sheet) => sheets[sheet].tables.map((table): SheetTable => ({ ...table, sheet }))));
  const computed = computedTables(conditions, tables);
  const steps = stepsOf(kit.run);
  const views = steps.map(({ at, duration, title, action }, i): StepView => ({ at, duration, title, action, anchor: `step-${i + 1}` }));
  const minutes = Math.round(meta.minutes.value / 60);
  const charts = runChartsOf(id, conditions, steps, views, minutes, style);
  return {
    id,
    version,
    draft: version === DRAFT,
    notices: [],
    license: content.site.license,
    language: style.language,
    translationOf: meta.translationOf,
    title: meta.title,
    summary: meta.summary,
    ages: meta.audience.ages.replace('-', '–'),
    level: meta.audience.level,
    minutes,
    roomTitle: conditions.roomTitle,
    conditions: conditionsList(conditions, style),
    computedFor: computedFor(conditions, style),
    objectives: meta.objectives,
    materials: meta.materials,
    preparation: [...meta.preparation].sort((a, b) => b.before.value - a.before.value).map(({ before, task }) => ({ before: timeBefore(before.value, style), task })),
    changes: meta.changes,
    standards: standardsOf(content, kit),
    run: sheets.run.html,
    student: sheets.student.html,
    background: sheets.background.html,
    steps: views,
    runChart: charts.everybody,
    runChartForTeachers: charts.teachers,
    picture: kitPicture(id, meta.title, conditions, style),
    setup: renderLiveSetup(`${id}-setup`, conditions, style),
    tables: tableViews(place, tables),
    questions: questionsOf(place, kit),
    readings: readingsView(kit, place.setting),
    hazards: meta.hazards.map((hazard) => hazardView(place, hazard)),
    misconceptions: misconceptionsOf(place, kit),
    sources: [...content.sources.values()].map((source) => sourceView(source, style.language)),
    pictures: kit.pictures,
    tablesJson: tablesJson(id, version, conditions, computed),
    records: tableRecords(computed, style),
    live: writeLive({ conditions, moving: movingLevels(apparatusOf(content, kit)), language: style.language }),
    apparatusTitle: conditions.apparatus.title,
    uses: usesOf(content, kit),
  };
}

/** A hazard sheet, its values those of the place. */
export function hazardView(place: Place, id: string): HazardView {
  const { meta, lesson } = place.content.hazards.get(id)!;
  const { title, signal, who } = meta;
  const { language } = place.setting.style;
  return { id, title, signal, signalWord: SIGNALS[language][signal], who, signs: signsOf(meta, language), html: drawSheet(place, lesson, { teachers: false, lowerHeadings: 1, prefix: id }).body.html };
}

function drawTwice(place: Place, lesson: Lesson): { html: SheetHtml; tables: ReturnType<typeof drawSheet>['tables'] } {
  const everybody = drawSheet(place, lesson, { teachers: false });
  const teachers = differsForTeachers(place.kit, lesson) ? drawSheet(place, lesson, { teachers: true }) : everybody;
  return { html: { everybody: everybody.body.html, teachers: teachers.body.html }, tables: everybody.tables };
}

/** Whether anything of a sheet, or of a question that it brings in, is for teachers only. */
const differsForTeachers = ({ questions }: Kit, { components }: Lesson): boolean =>
  components.some(({ name, attributes }) => {
    const question = name === 'Question' ? questions.get(attributes['id'] as string)?.lesson : undefined;
    return name === TEACHER_ONLY || question?.components.some((inside) => inside.name === TEACHER_ONLY) === true;
  });

function questionsOf(place: Place, kit: Kit): KitView['questions'] {
  const ordered = [...kit.questions].sort(([a, x], [b, y]) => x.meta.level - y.meta.level || (a < b ? -1 : 1));
  return ordered.map(([id, { meta, lesson }], i) => {
    const draw = (text: Lesson, teachers: boolean) => drawSheet(place, text, { teachers, lowerHeadings: 2, prefix: id }).body;
    return questionView(id, i + 1, meta, place.setting, { stem: draw(lesson, false), solution: draw(onlyForTeachers(lesson), true) });
  });
}

/** What of a question's text is for teachers: its worked solution. */
const onlyForTeachers = (lesson: Lesson): Lesson => ({ ...lesson, tree: { ...lesson.tree, children: lesson.tree.children.filter(isForTeachers) } });
const isForTeachers = ({ data }: Lesson['tree']['children'][number]): boolean => (data as { component?: string } | undefined)?.component === TEACHER_ONLY;

/** Misconceptions that the kit's sheets or wrong options name. */
function misconceptionsOf(place: Place, kit: Kit): MisconceptionView[] {
  const placed = [kit.run, kit.student, kit.background].flatMap(({ components }) => components.filter(({ name }) => name === 'Misconception').map(({ attributes }) => attributes['id'] as string));
  const behind = [...kit.questions.values()].flatMap(({ meta }) => (meta.kind === 'choice' ? meta.options.flatMap(({ misconception }) => misconception ?? []) : []));
  return [...new Set([...placed, ...behind])].sort().map((id) => {
    const { meta, lesson } = place.content.misconceptions.get(id)!;
    return { id, title: meta.title, html: drawSheet(place, lesson, { teachers: false, lowerHeadings: 1, prefix: id }).body.html };
  });
}

function standardsOf(content: Content, kit: Kit): KitView['standards'] {
  const all = [...content.standards.values()].flatMap((framework) => framework.statements.map((statement) => [statement.code, { framework: framework.title, statement }] as const));
  const byCode = new Map<string, { framework: string; statement: Statement }>(all);
  return kit.meta.standards.map((code) => {
    const { framework, statement } = byCode.get(code)!;
    const beyond = statement.objectives.flatMap((one) => one.beyond ?? []).join(' ');
    const objectives = kit.meta.objectives.filter(({ id, text }) => statement.objectives.some(({ objective, relation }) => relation !== 'requires' && (objective === id || objective === text)));
    return { code, framework, paraphrase: statement.paraphrase, link: statement.link, beyond: beyond === '' ? undefined : beyond, objectives: objectives.map(({ id }) => id) };
  });
}

function usesOf(content: Content, kit: Kit): TagName[] {
  const used = new Set<string>([...apparatusOf(content, kit).uses, ...particlesOf(content, kit).flatMap(({ uses }) => uses)]);
  return HAZARD_TAGS.filter((tag) => used.has(tag));
}

const DAY = 86_400;
const HOUR = 3600;

function timeBefore(seconds: number, style: Style): string {
  const said = KIT_TEXTS[style.language];
  if (seconds === 0) return said.atBell;
  if (seconds >= DAY) return seconds === DAY ? said.dayBefore : said.daysBefore(seconds / DAY);
  return said.before(formatWithUnit(seconds >= HOUR ? 'h' : 'min', seconds, 0, style));
}
