/** Contributors' files: quantities, schemas, loading, the closed vocabulary, gates, findings. */
export * from './catalogue.ts';
export * from './findings.ts';
export * from './names.ts';
export * from './unit-table.ts';
export * from './quantities.ts';
export * from './fields.ts';
export * from './vocabulary.ts';
export * from './request.ts';
export * from './yaml.ts';
export * from './schema.ts';
export * from './schemas/index.ts';
export * from './lesson.ts';
export { componentOf, isComponent, isParent, plainText } from './lesson/nodes.ts';
export type { ComponentData, ComponentNode, LessonNode, LessonParent } from './lesson/nodes.ts';
export * from './content.ts';
export { loadContent, type Loaded } from './load.ts';
export { checkGates } from './gates/index.ts';
