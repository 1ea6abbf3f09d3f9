/** Components that give a sheet its parts: steps, predict–observe–explain, what only teachers see. */
import { z } from 'zod';
import { count, quantity, reference, text, type Anchor, type ComponentSpec, type Lesson } from '../../authoring/index.ts';
import { formatNumber, type Attributes, type PlannedStep } from '../../tables/index.ts';
import { LESSON_TEXTS } from '../../texts/index.ts';
import type { Component } from '../component.ts';
import { html, NOTHING } from '../html/text.ts';
import { renderValue } from '../html/value.ts';

const STEP_ACTIONS = ['talk', 'prepare', 'pump', 'hold', 'vent', 'particles', 'wait', 'light', 'extinguish', 'predict', 'record'] as const;

/** A step's attributes, read. */
export interface StepAttributes extends PlannedStep {
  readonly title: string;
  readonly expect?: 'clear' | 'cloud' | 'clearing';
}

const stepSchema = z.strictObject({
  at: quantity('time', ['0 min', '8 h']),
  for: quantity('time', ['0 min', '8 h']),
  title: text(200),
  action: z.enum(STEP_ACTIONS).optional(),
  drop: quantity('pressure', ['0 kPa', '400 kPa']).optional(),
  particles: reference('particles').optional(),
  expect: z.enum(['clear', 'cloud', 'clearing']).optional(),
});

/** The steps of a run sheet, in its order. */
export const stepsOf = ({ components }: Lesson): StepAttributes[] => components.filter(({ name }) => name === 'Step').map(({ attributes }) => stepOf(attributes));

/** A step's attributes as numbers; a step without an action is talk. */
function stepOf(attributes: Attributes): StepAttributes {
  const { at, for: duration, title, action = 'talk', drop, particles, expect } = attributes as z.infer<typeof stepSchema>;
  return { at: at.value, duration: duration.value, title, action, drop: drop?.value, particles, expect };
}

const STEP_ANCHOR: Anchor = { series: 'step', own: undefined };

export const step: Component = {
  spec: { name: 'Step', placement: 'block', children: 'block', allowedIn: ['run'], attributes: stepSchema, anchor: () => STEP_ANCHOR },
  draw: (attributes, children, scene) => {
    const { at, title, action, drop, expect } = stepOf(attributes);
    const said = LESSON_TEXTS[scene.setting.style.language];
    const minutes = formatNumber(at / 60, at % 60 === 0 ? 0 : 1, scene.setting.style);
    const readings = [
      drop === undefined ? NOTHING : html`<span class="reading">${said.gauge} ${renderValue({ of: 'gaugeAtDrop', at: { drop } }, scene.setting)}</span>`,
      expect === undefined ? NOTHING : html`<span class="look">${said.lookFor[expect]}</span>`,
    ];
    const margin = drop === undefined && expect === undefined ? NOTHING : html`<p class="readings">${readings}</p>`;
    return html`<section class="step step-${action}" id="${scene.nextId(STEP_ANCHOR.series, STEP_ANCHOR.own)}"><p class="clock"><time datetime="PT${Math.floor(at / 60)}M${at % 60}S">${minutes} min</time></p>${margin}<div class="deed"><h3>${title}</h3>${children()}</div></section>`;
  },
};

const LINES = { predict: 4, observe: 4, explain: 6 } as const;

function part(name: 'Predict' | 'Observe' | 'Explain'): Component {
  const key = name.toLowerCase() as keyof typeof LINES;
  const spec: ComponentSpec = {
    name, placement: 'block', children: 'block', allowedIn: ['student'],
    attributes: z.strictObject({ lines: count(0, 12).optional(), title: text(100).optional() }),
  };
  return {
    spec,
    draw: (attributes, children, scene) => {
      const lines = (attributes['lines'] as number | undefined) ?? LINES[key];
      const room = lines === 0 ? NOTHING : html`<div class="lines lines-${lines}" aria-hidden="true"></div>`;
      return html`<section class="${key}"><h2>${(attributes['title'] as string | undefined) ?? LESSON_TEXTS[scene.setting.style.language][key]}</h2>${children()}${room}</section>`;
    },
  };
}

export const predict = part('Predict');
export const observe = part('Observe');
export const explain = part('Explain');

export const teacherOnly: Component = {
  spec: { name: 'TeacherOnly', placement: 'block', children: 'block', allowedIn: ['run', 'student', 'background', 'question'], attributes: z.strictObject({}) },
  draw: (_, children, { teachers }) => (teachers ? html`<div class="teacher-only">${children()}</div>` : NOTHING),
};
