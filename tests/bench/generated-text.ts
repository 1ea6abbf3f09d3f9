/** Sentences and formulas that the benchmark's lessons are put together from: the words of a lesson, not a lesson. */

/** One sentence each, none with a quantity. */
export const SENTENCES: readonly string[] = [
  'Air that expands pushes other air away, and the energy for this work comes from the motion of its molecules.',
  'The needle compares the vessel with the room, so the first thing to do with a reading is to add the pressure of the room.',
  'A drop begins on something: a grain of salt, a speck of soot, a trace of acid.',
  'Nobody has taken heat out of the vessel, and still the air in it is colder than before.',
  'What looks like smoke in the beam is water, and it goes when air is let in again.',
  'The wall has kept the temperature of the room and warms the air next to it.',
  'Write down first what you expect; a prediction that was wrong teaches more than one that was never made.',
  'The **absolute** pressure is what the gas laws speak of, not the reading.',
  'With drops the air cools less, because vapor gives off heat when it condenses.',
  'Look against the black card, across the beam and not into it.',
  'A thermometer shows its own temperature, which comes near that of the air only after a while.',
  'The flat base of a fair-weather cloud lies where rising air becomes saturated.',
  'In the first run the air is moist and clean; in the second one thing has been changed.',
  'If the cloud goes at once, the wall is warm or the pump was slow.',
  'Saturated is a word for a balance: as many molecules leave the water as come back to it.',
  'The *vapor* itself cannot be seen, neither in the vessel nor above a kettle.',
  'A curved surface lets molecules go more easily than a flat one.',
  'Say aloud what happens while it happens, so that the last row can follow.',
  'Above the room there is less air to press on what is below, so pressure falls with height.',
  'The same reading is a larger share of the pressure at a school on a mountain.',
  'Let the pairs compare their predictions before anybody touches the pump.',
  'Cooling alone makes no cloud, and particles alone make none either.',
  'A clean vessel can be far past saturation and stay as clear as glass.',
  'Ask what would have to be seen if the white were only smoke.',
  'Leave the valve closed until the thermometer stands where it stood before.',
  'The gap between formula and reading is a result, and the best part of the lesson for older students.',
  'Energy is conserved: what the air loses in warmth it has given away as work.',
  'Swirl the water once and wait, so that the air becomes moist again.',
  'Rising air needs no pump; the weight of the air above does its work.',
  'Count hands for each answer, write the count on the board, and do not hint.',
];

/** TeX, without surrounding marks. */
export const FORMULAS: readonly string[] = [
  String.raw`\frac{T_2}{T_1} = \left(\frac{p_2}{p_1}\right)^{R/c_p}`,
  String.raw`c_p\,\mathrm{d}T = \frac{R\,T}{p}\,\mathrm{d}p`,
  String.raw`S_2 = \frac{e_1}{e_s(T_2)}\cdot\frac{p_2}{p_1}`,
  String.raw`\frac{\mathrm{d}p}{\mathrm{d}z} = -\rho g`,
  String.raw`\frac{\mathrm{d}T_m}{\mathrm{d}t} = \frac{T - T_m}{\tau_m}`,
  String.raw`p = p_\mathrm{room} + p_\mathrm{gauge}`,
  String.raw`F = A\,(p_\mathrm{room} - p)`,
  String.raw`\frac{\mathrm{d}T}{\mathrm{d}z} = -\frac{g}{c_p}`,
  String.raw`c_p\,\mathrm{d}T = \frac{R\,T}{p}\,\mathrm{d}p - L\,\mathrm{d}q`,
  String.raw`\ln S = \frac{A}{D} - \frac{\kappa D_d^3}{D^3}`,
  String.raw`q = \frac{\varepsilon\,e}{p - (1 - \varepsilon)\,e}`,
  String.raw`u = \sqrt{\sum_i \left(\frac{\partial f}{\partial x_i}\right)^2 u_i^2}`,
];

/** A formula of one kit alone: no two kits have the same exponent. */
export const ownFormula = (number: number): string => String.raw`x_{${number}} = \left(\frac{p_2}{p_1}\right)^{${(0.28 + (number % 997) / 1e5).toFixed(5)}}`;
