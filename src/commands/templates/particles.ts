/** Particles to start from: salt, which needs neither flame nor smoke. */
import { schemaLine } from '../../authoring/index.ts';
import { quoted, titleOf, type NewFile } from './new-file.ts';

/** Where the readiness of salt to take up water was published. */
export const SOURCE_OF_KAPPA_ID = 'petters-kreidenweis-2007';
export const SOURCE_OF_KAPPA = `- id: ${SOURCE_OF_KAPPA_ID}
  type: article-journal
  title: A single parameter representation of hygroscopic growth and cloud condensation nucleus activity
  author:
    - { family: Petters, given: M. D. }
    - { family: Kreidenweis, given: S. M. }
  container-title: Atmospheric Chemistry and Physics
  volume: "7"
  page: 1961-1971
  issued: { date-parts: [[2007]] }
  DOI: 10.5194/acp-7-1961-2007
`;

/** @param cites whether the source is among those of the content folder */
export function particlesFile(name: string, cites: boolean): NewFile {
  const path = `particles/${name}.yaml`;
  return {
    path,
    text: `${schemaLine('particles', path)}
# What droplets condense on. These are grains of table salt; change them to your own.

# What the particles are, as the sheets name them.
title: ${quoted(titleOf(name))}
# Median diameter when dry. Diameter and number are estimates unless you have measured them.
dryDiameter: 0.2 µm
# Geometric standard deviation of the diameters: a pure number, 1 where all are alike.
spread: 1.8
# How readily they take up water: a pure number, 0 for what does not dissolve.
kappa: 1.2
# How many there are in the air of the vessel after letting them in.
number: 5000 /cm³
# How to make them and let them in.
how: >-
  Dissolve a little table salt in water. Mist it into a clean plastic bag with a nebulizer, and wait until
  the mist has dried and the bag looks clear. Hold the hose of the vessel in the bag and open the valve
  for a moment.
# What can hurt in making them: flame, ember, smoke, solvent … Each needs a hazard sheet. none if nothing can.
uses: [none]
# Where the figures were published: ids of sources.yaml.
${cites ? '' : '# '}source: [${SOURCE_OF_KAPPA_ID}]
`,
  };
}
