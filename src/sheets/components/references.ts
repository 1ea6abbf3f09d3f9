/** Components that bring in a thing of the content folder by its name. */
import { z } from 'zod';
import { reference, type ReferenceKind, type SheetKind } from '../../authoring/index.ts';
import type { Component } from '../component.ts';

const SHEETS: readonly SheetKind[] = ['run', 'student', 'background'];

function bringsIn(name: string, to: ReferenceKind & ('hazard' | 'misconception' | 'question')): Component {
  return {
    spec: { name, placement: 'block', children: 'none', allowedIn: SHEETS, attributes: z.strictObject({ id: reference(to) }) },
    draw: (attributes, _, scene) => scene.draw(to, attributes['id'] as string),
  };
}

export const hazard = bringsIn('Hazard', 'hazard');
export const misconception = bringsIn('Misconception', 'misconception');
export const question = bringsIn('Question', 'question');

export const source: Component = {
  spec: {
    name: 'Source', placement: 'inline', children: 'none', allowedIn: ['run', 'student', 'background', 'question', 'hazard', 'misconception'],
    attributes: z.strictObject({ id: reference('source') }),
  },
  draw: (attributes, _, scene) => scene.draw('source', attributes['id'] as string),
};
