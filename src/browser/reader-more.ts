/** The simulations, and all drawings: figures, run chart, set-up, printed code; in a script of their own that is fetched when a page first needs one. */
import { renderCurve } from '../figures/draw-curve.ts';
import { printedCode } from '../figures/printed-code.ts';
import { renderRunChart } from '../figures/run-chart.ts';
import { renderApparatus } from '../figures/setup-parts.ts';
import { condense } from '../physics/droplets.ts';
import { particleHistory } from '../physics/particle-history.ts';
import { simulateRun } from '../physics/run.ts';

(globalThis as { lapsebookSimulations?: object }).lapsebookSimulations = { condense, particleHistory, printedCode, renderApparatus, renderCurve, renderRunChart, simulateRun };
