/** The kinds of content files, one a line. */
export * from './site.ts';
export * from './room.ts';
export * from './apparatus.ts';
export * from './particles.ts';
export * from './hazard.ts';
export * from './misconception.ts';
export * from './standards.ts';
export * from './sources.ts';
export * from './kit.ts';
export * from './notice.ts';
export * from './question.ts';
export * from './tags.ts';
export * from './by-kind.ts';
