/** The set-up from the side. */
import { SETUP_TEXTS } from '../texts/index.ts';
import type { Setup } from './setup.ts';
import { arrowHead, balloon, moved, outline, solid, thin, tube, way, type Place } from './setup-pens.ts';
import { textAt } from './svg.ts';

/** The shapes are drawn this far to the right of where they stand. */
const SHIFT = 120;

const VESSEL: Record<Setup['shape'], string> = {
  cylinder: outline('M182 122h116v196a10 10 0 0 1-10 10h-96a10 10 0 0 1-10-10z') + outline('M176 108h128v14H176z') + thin('M140 328h200'),
  sphere: outline('M222 122v22a92 92 0 1 0 36 0v-22z') + outline('M216 106h48l-5 22h-38z') + thin('M140 332h200'),
};

const THERMOMETER: Record<Setup['thermometer'], string> = {
  stem: outline('M229 66a3 3 0 0 1 6 0v142h-6z') + solid('M232 200a7 7 0 1 1-.1 0z') + thin('M229 90h3M229 98h3M229 140h3M229 150h3M229 160h3M229 170h3M229 180h3'),
  thermocouple: thin('M230 216V78h-34M234 216V82h-38') + solid('M232 212a4 4 0 1 1-.1 0z') + outline('M152 66h44v28h-44z') + thin('M160 80h28'),
  digital: outline('M230 92h4v122h-4z') + outline('M210 64h44v28h-44z') + thin('M218 78h28'),
};

const GAUGE: Record<Setup['gauge'], string> = {
  dial: outline('M322 30a20 20 0 1 1-.1 0z') + thin('M322 50l9-9M308 50h3M322 36v3M333 50h3'),
  digital: outline('M298 32h48v34h-48z') + thin('M306 49h32'),
};

/** Tube from the stopper to the end, the gauge upon it before the valve: it reads the vessel also when the valve is closed. */
const piping = ({ shape, source, gauge }: Setup): string =>
  tube(`${shape === 'cylinder' ? 'M264 112V88' : 'M252 112V88'}H${source === 'squeeze' ? 400 : 440}`) + tube('M322 90V68') + GAUGE[gauge] + outline('M366 78l22 20V78l-22 20z') + thin('M377 88V74M370 74h14');

const outward = way('M396 74h32') + arrowHead(434, 74, 'right');
const inward = way('M434 74h-32') + arrowHead(394, 74, 'left');

const SOURCE: Record<Setup['source'], string> = {
  'stroke-pump': tube('M438 88h18v40') + outline('M442 128h28v86h-28z') + thin('M442 176h28M442 181h28') + outline('M454 181h4v58h-4z') + outline('M438 238h36v8h-36z') + way('M484 196v40') + arrowHead(484, 242, 'down') + outward,
  'steady-pump': tube('M438 88h18v48') + outline('M420 136h72v62h-72z') + thin('M456 148a19 19 0 1 1-.1 0M456 148l14 31M456 148l-14 31M428 198v8M484 198v8') + outward,
  squeeze: way('M120 200h24') + arrowHead(152, 200, 'right') + way('M360 200h-24') + arrowHead(328, 200, 'left') + solid('M398 82h6v12h-6z'),
  pressurise: tube('M438 88h18v132') + outline('M442 132h28v96h-28z') + thin('M442 166h28M442 171h28') + outline('M454 112h4v54h-4z') + outline('M438 104h36v8h-36z') + outline('M430 228h52v6h-52z') + way('M484 112v40') + arrowHead(484, 158, 'down') + inward,
};

const AT_VESSEL: Record<Setup['shape'], Place> = { cylinder: [26, 262, 62, 254], sphere: [22, 306, 49, 290] };
const AT_THERMOMETER: Record<Setup['thermometer'], Place> = { stem: [72, 58, 109, 76], thermocouple: [16, 48, 38, 68], digital: [60, 60, 90, 74] };
const AT_GAUGE: Record<Setup['gauge'], Place> = { dial: [250, 30, 221, 43], digital: [256, 32, 226, 43] };
const AT_VALVE: Place = [257, 126, 257, 96];
const AT_SOURCE: Record<Setup['source'], Place> = { 'stroke-pump': [290, 196, 322, 184], 'steady-pump': [276, 218, 302, 194], squeeze: [266, 220, 240, 203], pressurise: [290, 204, 322, 192] };

/** The drawing from the side. */
export const drawSide = (setup: Setup): string =>
  textAt(0, 13, SETUP_TEXTS[setup.language].fromSide, { bold: true }) +
  moved(SHIFT, VESSEL[setup.shape] + THERMOMETER[setup.thermometer] + piping(setup) + SOURCE[setup.source]) +
  balloon(1, AT_VESSEL[setup.shape]) +
  balloon(2, AT_THERMOMETER[setup.thermometer]) +
  balloon(3, AT_GAUGE[setup.gauge]) +
  balloon(4, AT_VALVE) +
  balloon(5, AT_SOURCE[setup.source]);
