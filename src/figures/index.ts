export { renderCurve } from './draw-curve.ts';
export { renderPath } from './path.ts';
export { renderRunChart, type RunChart } from './run-chart.ts';
export { renderSetup, type Setup } from './setup.ts';
export { renderSign } from './signs.ts';
export { SIGNS } from './sign-table.ts';
