/** Which way a vessel's air expands. */
import type { Apparatus } from './conditions.ts';

/** From above the room's pressure down to it, and not from the room's to below. */
export const startsAbove = ({ source }: Apparatus): boolean => source.kind === 'pressurise' || source.kind === 'squeeze';
