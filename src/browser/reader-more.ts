/** The simulations, and the chart of a simulated run, in a script of their own that is fetched when a page first needs one. */
import { renderRunChart } from '../figures/run-chart.ts';
import { condense } from '../physics/droplets.ts';
import { particleHistory } from '../physics/particle-history.ts';
import { simulateRun } from '../physics/run.ts';

(globalThis as { lapsebookSimulations?: object }).lapsebookSimulations = { condense, particleHistory, renderRunChart, simulateRun };
