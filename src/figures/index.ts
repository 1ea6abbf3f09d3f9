export { renderCurve } from './draw-curve.ts';
export { renderPath, type PathPicture } from './path.ts';
export { renderReadingsChart, type ChartReading, type ReadingsChart } from './readings-chart.ts';
export { renderRunChart, type ChartStep, type RunChart, type RunSeries } from './run-chart.ts';
export { renderSetup, type Setup } from './setup.ts';
export { renderSign } from './signs.ts';
export { SIGNS, type Sign, type SignKind } from './sign-table.ts';
