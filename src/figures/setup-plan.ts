/** The set-up from above: where the light comes from, what is behind the vessel, where the class looks from. */
import { SETUP_TEXTS } from '../texts/index.ts';
import type { Setup } from './setup.ts';
import { arrowHead, balloon, outline, solid, thin, way, type Place } from './setup-pens.ts';
import { lineAt, textAt } from './svg.ts';

const lamp = (x: number, y: number): string => outline(`M${x - 9} ${y}a9 9 0 1 1 18 0a9 9 0 1 1-18 0z`) + thin(`M${x - 6} ${y - 6}l12 12M${x + 6} ${y - 6}l-12 12`);

const LIGHT: Record<Setup['lightFrom'], string> = {
  side: lamp(28, 184) + way('M42 184h18M41 178l17-6M41 190l17 6') + arrowHead(68, 184, 'right'),
  back: lamp(76, 106) + way('M80 119l6 13M88 116l8 12M73 119l2 13') + arrowHead(89, 142, 'down'),
  front: lamp(58, 252) + way('M65 240l9-14M70 245l13-14M59 238l4-14') + arrowHead(80, 220, 'up'),
};

const AT_LIGHT: Record<Setup['lightFrom'], Place> = { side: [14, 146, 25, 176], back: [36, 122, 68, 110], front: [24, 224, 51, 246] };

/** The drawing from above. */
export const drawPlan = ({ lightFrom, language }: Setup): string =>
  textAt(0, 13, SETUP_TEXTS[language].fromAbove, { bold: true }) +
  solid('M46 64h128v7H46z') +
  outline('M110 148a36 36 0 1 1-.1 0z') +
  lineAt('lead', 110, 224, 110, 290) +
  outline('M92 304c10-13 26-13 36 0-10 13-26 13-36 0z') +
  solid('M110 299a5 5 0 1 1-.1 0z') +
  textAt(110, 336, SETUP_TEXTS[language].classLooks, { anchor: 'middle' }) +
  LIGHT[lightFrom] +
  balloon(6, AT_LIGHT[lightFrom]) +
  balloon(7, [20, 46, 48, 66]) +
  balloon(1, [172, 150, 142, 170]);
