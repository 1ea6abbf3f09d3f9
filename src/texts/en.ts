/**
 * What the site says in English, by where it stands. Plain texts, and small functions where numbers, names or
 * other texts go in; what goes in is ready to be read, and may be HTML where the result becomes HTML.
 */

/** One or several. */
const counted = (count: number, one: string, several: string): string => `${count} ${count === 1 ? one : several}`;
const listed = (words: readonly string[]): string => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`);

/** What is wrong, and what to write instead. */
type Said = readonly [what: string, instead: string];

/** Names of quantities and of the columns of tables. */
export const labels = {
  roomTemperature: 'room temperature',
  roomPressure: 'room pressure, absolute',
  roomHumidity: 'relative humidity of the room',
  roomDewPoint: 'dew point of the room',
  startTemperature: 'temperature in the vessel',
  startPressure: 'pressure in the vessel, absolute',
  startHumidity: 'relative humidity in the vessel',
  startDewPoint: 'dew point in the vessel',
  startVaporPressure: 'vapor pressure in the vessel',
  plannedDrop: 'planned pressure drop',
  vesselVolume: 'volume of the vessel',
  vesselDiameter: 'diameter of the vessel',
  ratedLowestGauge: 'lowest pressure the vessel is rated for',
  ratedHighestGauge: 'highest pressure the vessel is rated for',
  gaugeResolution: 'resolution of the gauge',
  thermometerResolution: 'resolution of the thermometer',
  thermometerTimeConstant: 'time constant of the thermometer',
  pressureDrop: 'pressure drop',
  gaugeAtDrop: 'gauge',
  absolutePressure: 'absolute pressure',
  pressureRatio: 'pressure divided by starting pressure',
  temperatureClear: 'air, no droplets',
  coolingClear: 'cooling, no droplets',
  saturationRatioClear: 'saturation ratio, no droplets',
  vaporPressureClear: 'vapor pressure, no droplets',
  saturationRatioUnexpanded: 'saturation ratio if the vapor pressure stayed',
  coolingAtConstantVolume: 'cooling if the temperature fell with the pressure',
  temperatureCloudy: 'air, with droplets',
  coolingCloudy: 'cooling, with droplets',
  cloudWater: 'cloud water',
  altitudeSamePressure: 'standard atmosphere, same pressure',
  parcelHeightSamePressure: 'rising parcel, same pressure',
  parcelRiseSameCooling: 'clear parcel, same cooling',
  onsetPressureDrop: 'drop at which cloud can begin',
  onsetGauge: 'gauge when cloud can begin',
  onsetTemperature: 'temperature when cloud can begin',
  onsetCooling: 'cooling until cloud can begin',
  noParticleLimitDrop: 'drop at which cloud forms without particles',
  noParticleLimitSaturation: 'saturation ratio at which cloud forms without particles',
  cloudBaseHeight: 'cloud base of a parcel with the same start',
  strokesToDrop: 'strokes of the pump',
  pumpingTime: 'time of pumping',
  wallTimeConstant: 'time constant of the walls',
  gasFallAtDrop: 'cooling of the air as pumping ends',
  thermometerFallAtDrop: 'fall of the thermometer as pumping ends',
  thermometerLargestFall: 'largest fall of the thermometer',
  particleNumber: 'particles',
  peakSaturationRatio: 'highest saturation ratio',
  peakSupersaturation: 'highest supersaturation',
  dropletDiameter: 'droplet diameter',
  dropletWater: 'water in droplets',
  cloudOpticalDepth: 'optical depth across the vessel',
  dropletFallSpeed: 'fall speed',
  coronaRadius: 'first dark ring around a lamp, radius',
  lidForce: 'force on the lid',
  wallStress: 'stress in the wall',
  storedEnergy: 'energy stored',
  ratingMargin: 'left before the rating',
  ratingUsed: 'share of the rating',
  stationPressure: 'station pressure',
  elevation: 'elevation',
  gaugeSameCooling: 'gauge for the same cooling',
  startingHumidity: 'humidity in the vessel',
  parcelHeight: 'height above the room',
  parcelPressure: 'pressure',
  parcelTemperature: 'temperature',
  parcelHumidity: 'relative humidity',
  parcelCloudWater: 'cloud water',
  gaugeReading: 'gauge',
  absoluteAtReading: 'absolute pressure',
  // Columns that show no quantity of their own.
  seen: 'cloud',
  ionLimit: 'drops on ions from',
  homogeneousLimit: 'drops on nothing from',
  withoutParticles: 'without particles',
  waitingTime: 'after',
  particlesLeft: 'left',
  lostToSettling: 'settled',
  lostToCoagulation: 'joined',
  lostToWalls: 'on the walls',
  lostToClouds: 'carried down by drops',
  cloudAtPlannedDrop: 'cloud at the planned drop',
  dryDiameter: 'dry diameter',
  supersaturationNeeded: 'supersaturation needed',
  becomesDrop: 'becomes a drop',
  stroke: 'stroke',
  time: 'time',
  air: 'air',
  thermometer: 'thermometer',
  saturationRatio: 'saturation ratio',
  insideLessOutside: 'inside less outside',
};

/** Cells that say yes or no. */
export const cells = { seen: 'seen', notSeen: 'not seen', clear: 'clear', cloud: 'cloud', yes: 'yes', no: 'no' };

/** Words at the rows that stand at a computed place. */
export const marks = {
  saturated: 'saturated',
  cloudWithoutParticles: 'cloud without particles',
  smallest: 'smallest that does',
  cloudBase: 'cloud base',
  highestRated: 'highest rated',
  lowestRated: 'lowest rated',
};

/** Titles of the tables, by their kind. */
export const kindTitles = {
  'pressure-steps': 'What each fall in pressure does',
  strokes: 'Stroke by stroke',
  elevations: 'The same cooling at another elevation',
  'starting-humidity': 'Starting drier, cloud begins later',
  'particle-sizes': 'Which particles become drops',
  droplets: 'Few particles or many',
  'particle-lifetime': 'How long the particles last',
  'rising-parcel': 'The same air, rising',
  'no-particle-limit': 'How far clean air stays clear',
  'gauge-readings': 'Reading the gauge',
  'wall-forces': 'What the vessel has to bear',
};

/** Figures drawn from tables: title, description, axes, and the names at the curves. */
export const curves = {
  pressureSteps: {
    title: 'Cooling with droplets and without',
    description: 'Air temperature in the vessel against the fall in pressure: without droplets it falls about twice as far as with droplets.',
    x: 'pressure drop', y: 'air temperature', clear: 'no droplets', cloudy: 'with droplets',
  },
  strokes: {
    title: 'The air and the thermometer in it',
    description: 'Temperature of the air in the vessel and reading of the thermometer against the time of pumping: the air cools at once, and the reading hardly moves in that time.',
    x: 'time of pumping', y: 'temperature', air: 'air', thermometer: 'thermometer',
  },
  elevations: {
    title: 'Gauge for the same cooling',
    description: 'Gauge reading at which the air has cooled equally far, against the elevation of the school: the higher the school, the smaller the reading.',
    x: 'elevation of the school', y: 'gauge', same: 'same cooling',
  },
  startingHumidity: {
    title: 'Pressure drop until cloud can begin',
    description: 'The fall in pressure at which the air becomes saturated, against the relative humidity it starts with.',
    x: 'relative humidity at the start', y: 'pressure drop to saturation', reached: 'saturation reached',
  },
  droplets: {
    title: 'More particles, smaller drops',
    description: 'Diameter of the droplets as pumping ends against the number of particles, on a scale of powers of ten: the more particles share the water, the smaller the drops.',
    x: 'particles per cm³, as a power of ten', y: 'droplet diameter', droplets: 'droplets',
  },
  particleLifetime: {
    title: 'Particles left in the closed vessel',
    description: 'Number of particles in the air of the closed vessel against the hours since they were let in: it falls fast at first, then ever more slowly.',
    x: 'since they were let in', y: 'particles left', inAir: 'in the air',
  },
  risingParcel: {
    title: 'The vessel’s air and rising air',
    description:
      'Absolute pressure, falling upward as in the sky, against temperature: the air that stays in the vessel as its pressure falls, with droplets and without, and a rising parcel. ' +
      'The remaining gas follows the same adiabat as a rising parcel: air of the same temperature and moisture takes the same way, whether it is pumped or lifted. ' +
      'Rings mark where each is saturated. From there on air with droplets cools more slowly, because vapor that condenses gives off heat.',
    x: 'temperature', y: 'absolute pressure', clear: 'vessel, no droplets', cloudy: 'vessel, with droplets', room: 'the room’s air, rising', vessel: 'the vessel’s air, rising',
  },
  noParticleLimit: {
    title: 'Saturation of clear air, and what ends it',
    description:
      'Saturation ratio of air without droplets against the fall in pressure. At 1 drops form on particles. Without particles it rises on, to the limits at which drops form on ions or on nothing at all.',
    x: 'pressure drop', y: 'saturation ratio', air: 'air without particles', nothing: 'drops on nothing', ions: 'drops on ions', particles: 'drops on particles',
  },
};

/** How each kind of table is computed, in words. */
export const methods = {
  'pressure-steps':
    'Without droplets: all vapor stays and the entropy of the moist air is conserved. With droplets: the vapor stays at saturation and ' +
    'the entropy of air, vapor and liquid is conserved. Neither gives off heat to the walls. The altitude of equal pressure is that of the ' +
    'standard atmosphere above the room; the parcel is the vessel’s own air, rising.',
  strokes:
    'Each stroke takes out gas, and what stays expands and cools; the walls warm it again with the time constant τ_w and, if wet, give off vapor; ' +
    'the thermometer follows with its own, τ_m, and is warmed a little by the walls. Droplets, where particles are let in, are of one size and grow by ' +
    'diffusion. Pressure rises a little between strokes, as the air warms. The time constant of the walls is known within a third: that decides how many digits are printed.',
  elevations:
    'Pressure by elevation is that of the standard atmosphere; the weather moves it by a percent or so. Cooling depends on the ratio of ' +
    'pressures, so that higher up, where there is less pressure to begin with, a smaller gauge reading does the same.',
  'starting-humidity': 'The drop at which air expanding without droplets just reaches saturation, and the height at which a rising parcel of the same air does.',
  'particle-sizes':
    'A particle of dry diameter d becomes a drop when the saturation ratio passes the highest point of this curve over the wet diameter D; κ says how ' +
    'readily its substance takes up water. The saturation that is reached follows from droplets that grow while the kit’s pump runs, on the kit’s ' +
    'own number and sizes of particles, without the walls’ help. Number and κ are estimates: the figures are good to about a tenth.',
  droplets:
    'Particles of all sizes take up vapor while the kit’s pump brings the vessel to the drop; the walls give off neither heat nor vapor. Optical depth τ ' +
    'is that of the water w across the vessel L, in drops of their effective radius. Whether it is seen is asked of the kit’s own light and backing, at ' +
    'a contrast of 5 %. Rings are given for drops above 2 µm. Sizes and number of real particles are estimates: the figures are good to about a tenth.',
  'particle-lifetime':
    'Particles of all sizes, with the water they hold in the moist vessel, meet and join, fall to the floor and reach the walls; air moves only by small ' +
    'differences of temperature. If clouds are made meanwhile, each lasts half a minute on all particles, and drops that reach the floor keep theirs. ' +
    'The last column makes the cloud of the droplets table with what is left. The rates are known within about a fifth.',
  'rising-parcel':
    'The parcel has the pressure of its surroundings, mixes with nothing and gives off no heat. Below the cloud base its vapor stays ' +
    'vapor; above, what exceeds saturation is cloud water and travels along. Heights follow from its own weight. The remaining gas of a pumped vessel ' +
    'follows the same adiabat as a rising parcel: taking gas out does not change the temperature of what stays, expanding does. In the figure the two part only where they start with different moisture.',
  'no-particle-limit':
    'Air that expands without droplets, beside the saturation ratio at which drops grow on small ions, of which air always has some, and that at which one drop ' +
    'per cubic centimeter and second forms on nothing at all (classical theory). Whichever it meets first ends the clear air: beyond, “no particles, no cloud” is not true. ' +
    'Theory and experiment agree within about 7 % of the saturation ratio.',
  'gauge-readings': 'A gauge compares the vessel with the room. Physics asks for the absolute pressure: that of the room plus the reading, which is negative below it.',
  'wall-forces':
    'Force on a lid as wide as the vessel and stress in its wall of thickness s; negative: pressed inward. The energy is what would be set free at once. ' +
    'These figures say why a rating matters. They do not replace it: scratches, age and shape decide when a vessel fails, and only its maker’s rating permits a use.',
};

/** Words inside formulas. */
export const formulaWords = { room: 'room', gauge: 'gauge', drop: 'drop', ion: 'ion', cylinder: '(cylinder)', sphere: '(sphere)' };

/** How formulas are read aloud. */
export const formulaSpeech = {
  index: (base: string, below: string) => `${base} sub ${below}`,
  longIndex: (base: string, below: string) => `${base} sub ${below}, end of index,`,
  squared: (base: string) => `${base} squared`,
  cubed: (base: string) => `${base} cubed`,
  power: (base: string, exponent: string) => `${base} to the power ${exponent}`,
  longPower: (base: string, exponent: string) => `${base} to the power ${exponent}, end of power,`,
  over: (top: string, bottom: string) => `${top} over ${bottom}`,
  fraction: (top: string, bottom: string) => `the fraction ${top} over ${bottom}, end of fraction,`,
  root: (of: string) => `the square root of ${of}, end of root,`,
  rootOf: (index: string, of: string) => `the root with index ${index} of ${of}, end of root,`,
  overAll: (sum: string, index: string) => `${sum} over all ${index} of`,
  fromTo: (sum: string, from: string, to: string) => `${sum} from ${from} to ${to} of`,
  above: (base: string, mark: string) => `${base} with ${mark} above`,
  capital: (letter: string) => `capital ${letter}`,
  /** In the order of the Greek alphabet. */
  greek: 'alpha beta gamma delta epsilon zeta eta theta iota kappa lambda mu nu xi omicron pi rho sigma tau upsilon phi chi psi omega',
  functions: { ln: 'the natural logarithm of', log: 'the logarithm of', exp: 'the exponential function of', sin: 'the sine of', cos: 'the cosine of', tan: 'the tangent of', max: 'the greatest value', min: 'the least value' },
  signs: {
    '=': 'equals', '+': 'plus', '−': 'minus', '-': 'minus', '±': 'plus or minus', '⋅': 'times', '×': 'times', '∗': 'star', '/': 'divided by', '≈': 'is about', '∝': 'is proportional to', '≠': 'is not',
    '<': 'is less than', '>': 'is greater than', '≤': 'is at most', '≥': 'is at least', '→': 'goes to', '(': 'open parenthesis', ')': 'close parenthesis', '[': 'open bracket', ']': 'close bracket',
    '∑': 'the sum', '∏': 'the product', '∫': 'the integral', '∂': 'partial', '∞': 'infinity', '′': 'prime', 'ˉ': 'a bar', '%': 'percent', '°': 'degrees',
  },
};

/** Where the formulas of the tables come from, and what was taken from there. */
export const references = {
  murphyKoop: 'D. M. Murphy and T. Koop 2005, Q. J. R. Meteorol. Soc. 131, 1539: vapor pressure (eq. 10), latent heat (eq. 9)',
  wmo8: 'WMO-No. 8, Guide to Instruments and Methods of Observation, annex 4.B: vapor in the presence of air',
  emanuel: 'K. A. Emanuel 1994, Atmospheric Convection, ch. 4: reversible saturated expansion',
  iso2533: 'ISO 2533:1975, Standard Atmosphere',
  hypsometric: 'J. M. Wallace and P. V. Hobbs 2006, Atmospheric Science, 2nd ed., ch. 3: hydrostatic column',
  nist811: 'NIST Special Publication 811 (2008), appendix B.8: pressure units',
  pettersKreidenweis: 'M. D. Petters and S. M. Kreidenweis 2007, Atmos. Chem. Phys. 7, 1961: Köhler curve with kappa (eq. 6)',
  pruppacherKlett: 'H. R. Pruppacher and J. D. Klett 1997, Microphysics of Clouds and Precipitation, 2nd ed., ch. 13: growth of droplets',
  bohrenHuffman: 'C. F. Bohren and D. R. Huffman 1983, Absorption and Scattering of Light by Small Particles, ch. 3 and 4: extinction by droplets',
  koschmieder: 'H. Koschmieder 1924, Beitr. Phys. freien Atmos. 12, 33: contrast; least contrast seen of 0.05 as in WMO-No. 8',
  hinds: 'W. C. Hinds 1999, Aerosol Technology, 2nd ed., ch. 3: settling with slip',
  cliftGraceWeber: 'R. Clift, J. R. Grace and M. E. Weber 1978, Bubbles, Drops and Particles, table 5.2: drag on larger drops',
  seinfeldPandis: 'J. H. Seinfeld and S. N. Pandis 2006, Atmospheric Chemistry and Physics, 2nd ed., ch. 11 and 13: nucleation, coagulation',
  cornerPendlebury: 'J. Corner and E. D. Pendlebury 1951, Proc. Phys. Soc. B 64, 645: settling and diffusion to the walls of a vessel; sphere by J. G. Crump and J. H. Seinfeld 1981, J. Aerosol Sci. 12, 405',
  thomson: 'J. J. Thomson 1906, Conduction of Electricity through Gases, 2nd ed.: droplets on ions',
  airy: 'G. B. Airy 1835, Trans. Cambridge Phil. Soc. 5, 283: rings of a round obstacle',
  evansStefany: 'L. B. Evans and N. E. Stefany 1966, Chem. Eng. Prog. Symp. Ser. 62 (64), 209: heat between the gas and the walls of a closed cylinder',
  jousten: 'K. Jousten 2016, Handbook of Vacuum Technology, 2nd ed.: pressure after strokes of a pump',
  youngBudynas: 'W. C. Young and R. G. Budynas 2002, Roark’s Formulas for Stress and Strain, 7th ed., table 13.1: thin walls',
  baker: 'W. E. Baker et al. 1983, Explosion Hazards and Evaluation, ch. 2: energy of a gas under pressure',
};

/** The run chart and its table. */
export const run = {
  title: 'The run, minute by minute',
  titleDownward: 'The run, minute by minute, downward',
  gaugePanel: (unit: string) => `Gauge, ${unit} against the room`,
  thermometerPanel: (unit: string) => `Thermometer, ${unit}`,
  gauge: 'Gauge',
  thermometer: 'Thermometer',
  minutesAxis: 'Minutes from the bell',
  thermometerCurve: 'thermometer',
  airCurve: 'air itself',
  describe: (steps: number, minutes: string, gaugeLow: string, gaugeHigh: string, gaugeUnit: string, low: string, high: string, unit: string) =>
    `${counted(steps, 'step', 'steps')} in ${minutes} minutes. The gauge goes between ${gaugeLow} and ${gaugeHigh} ${gaugeUnit} against the room, the thermometer between ${low} and ${high} ${unit}. The same run stands in a table below the drawing.`,
  step: (number: number, at: string, title: string) => `Step ${number}, ${at}: ${title}`,
  asTable: 'The run as a table',
  heads: { step: 'Step', begins: 'Begins', gauge: 'Gauge at its end', thermometer: 'Thermometer at its end', air: 'Air at its end' },
};

/** A kit's picture on the shelf. */
export const path = {
  pressure: 'Pressure, hPa',
  temperature: 'Temperature, °C',
  clear: 'clear',
  cloudy: 'cloudy',
  describe: (from: string, to: string, warm: string, clear: string, cloudy: string) =>
    `Pressure falls from ${from} to ${to} hPa. Without droplets the air cools from ${warm} to ${clear} °C; with droplets to ${cloudy} °C.`,
};

/** The set-up drawing. */
export const setup = {
  fromSide: 'From the side',
  fromAbove: 'From above',
  titleFromSide: (title: string) => `${title}, from the side`,
  titleFromAbove: (title: string) => `${title}, from above`,
  classLooks: 'the class looks from here',
  shapes: { cylinder: 'cylinder', sphere: 'sphere' },
  thermometers: {
    stem: 'a stem thermometer (2) through the top',
    thermocouple: 'a thermocouple (2) on a thin wire through the top',
    digital: 'the probe of a digital thermometer (2) through the top',
  },
  gauges: { dial: 'A dial gauge (3)', digital: 'A digital gauge (3)' },
  sources: {
    'stroke-pump': 'A pump worked by hand (5) draws air out through the valve (4)',
    'steady-pump': 'A running pump (5) draws air out through the valve (4)',
    squeeze: 'Hands press the sides of the vessel and let go (5); the valve (4) is closed',
    pressurise: 'A pump (5) presses air in through the valve (4), which then lets it out',
  },
  describeSide: (shape: string, thermometer: string, gauge: string, source: string) =>
    `A closed ${shape} (1) with ${thermometer}. ${gauge} sits between vessel and valve. ${source}. The numbers are those of the list of parts.`,
  describeAbove: (from: string) => `The light (6) comes ${from}; the backing (7) stands behind the vessel (1); the class looks from the front.`,
  lightFrom: { side: 'from the side', back: 'from the back', front: 'from the front' },
  materials: { polycarbonate: 'polycarbonate', acrylic: 'acrylic', PET: 'PET', glass: 'glass', steel: 'steel' },
  vessel: (material: string, shape: string, volume: string, lowest: string, highest: string) => `${material} ${shape}, ${volume}, rated from ${lowest} to ${highest}`,
  gauge: { dial: 'dial gauge', digital: 'digital gauge' },
  gaugeLabel: (gauge: string, unit: string, resolution: string) => `${gauge} in ${unit}, read to ${resolution}`,
  thermometer: { stem: 'stem thermometer', thermocouple: 'thermocouple thermometer', digital: 'digital thermometer' },
  handPump: (volume: string) => `hand pump, ${volume} a stroke`,
  pump: (volume: string) => `pump, ${volume} a minute`,
  squeezed: (volume: string) => `squeezed by ${volume}`,
  pumpedUp: (pressure: string) => `pump, up to ${pressure}; then the air is let go`,
};

/** Printed codes. */
export const code = { of: (address: string) => `Code of the address ${address}` };

/** What the safety signs mean: ISO 7010, in our own short wording. */
export const signs = {
  W001: 'Warning',
  W002: 'Explosive material',
  W010: 'Low temperature, freezing',
  W011: 'Slippery floor',
  W012: 'Electricity',
  W017: 'Hot surface',
  W021: 'Flammable material',
  W023: 'Corrosive substance',
  W027: 'Bright optical radiation',
  W029: 'Pressurized vessel or cylinder',
  P001: 'Not allowed',
  P002: 'No smoking',
  P003: 'No open flame, fire or open source of ignition; no smoking',
  P010: 'Do not touch',
  M001: 'Must be done',
  M002: 'Read the instructions',
  M003: 'Wear ear protection',
  M004: 'Wear eye protection',
  M009: 'Wear protective gloves',
  M010: 'Wear protective clothing',
  M011: 'Wash your hands',
  M013: 'Wear a face shield',
  E003: 'First aid',
  E004: 'Emergency telephone',
  E011: 'Eyewash station',
  F001: 'Fire extinguisher',
  F004: 'Fire-fighting equipment',
  F005: 'Fire alarm call point',
};

/** Signal words: ANSI Z535. */
export const signals = { DANGER: 'DANGER', WARNING: 'WARNING', CAUTION: 'CAUTION', NOTICE: 'NOTICE' };

/** What of a kit can hurt. */
export const tags = {
  flame: 'flame', ember: 'ember', smoke: 'smoke', aerosol: 'fine mist', evacuated: 'vacuum', pressurised: 'pressure', glass: 'glass', plastic: 'plastic', solvent: 'solvent',
  'hot-water': 'hot water', lamp: 'lamp',
};

/** Conditions in one sentence: under every table, in the margins of paper. */
export const conditions = {
  computedFor: (room: string, temperature: string, pressure: string, humidity: string) => `Computed for ${room}: ${temperature}, ${pressure}, ${humidity} humidity in the vessel`,
  /** In place of the room's name, where a table is asked at another elevation. */
  elsewhere: (elevation: string) => `a room at ${elevation}`,
  drop: (drop: string) => `a drop of ${drop}`,
  number: (number: string) => `particles ${number}`,
  cloudEvery: (time: string) => `a cloud every ${time}`,
};

/** Conditions one by one. */
export const stated = {
  roomPressure: 'Room pressure, absolute',
  roomTemperature: 'Room temperature',
  roomHumidity: 'Humidity of the room',
  startHumidity: 'Humidity in the vessel',
  vesselVolume: 'Volume of the vessel',
  ratedLowestGauge: 'Vessel rated down to',
  ratedHighestGauge: 'Vessel rated up to',
  plannedDrop: 'Planned drop',
  gaugeResolution: 'Gauge read to',
  thermometerResolution: 'Thermometer read to',
  byItsMaker: 'gauge, by its maker',
};

/** Answers of questions; on the reader's device only what a room moves. */
export const answers = {
  within: (width: string) => `, right within ±${width}`,
  /** Of a share, whose width is no share of it. */
  points: 'percentage points',
};

/** The answer key. */
export const key = {
  rule: 'Right within twice the standard uncertainty: what room, gauge and rounding leave open, and half a percent (of a temperature, 0.2 K) for the constants a student may use.',
  authorsRule: 'How far from the number still counts as right is the choice of whoever wrote the question.',
  alsoRight: (answers: string) => `Also right: ${answers}.`,
  right: 'right',
  wrong: 'wrong',
  rightOrder: 'Right order:',
  markedOutOf: (points: string) => `Marked out of ${points}:`,
};

/** Questions, on their own sheet, inside another, and on the board. */
export const questions = {
  kinds: { choice: 'Choose one', numeric: 'Number with unit', ordering: 'Put in order', text: 'In your own words' },
  kindsOnBoard: { choice: 'choose one', numeric: 'a number with its unit', ordering: 'put in order', text: 'in your own words' },
  among: 'Among the questions of this kit',
  answer: 'Answer',
  order: 'Order',
  level: (level: number) => `Level ${level}`,
  levels: { 1: 'Recall what was seen', 2: 'Use it', 3: 'Reason beyond it' },
  none: 'This kit has no questions yet.',
  paperFrom: 'A paper from these?',
  ofLevels: 'Levels',
  howMany: 'Questions',
  version: 'Version',
  printIt: 'Print',
  allOfThem: 'List all again',
  aboutVersions: 'Each version has the same questions in another order, for students who sit side by side. The address of this page names the paper; opened in the teachers’ folder, it shows the key.',
  paper: 'Paper',
  keyToPaper: 'Key to paper',
};

/** The questions on a learning platform. */
export const platform = {
  item: (kit: string, number: number) => `${kit}, question ${number}`,
  answer: 'Answer:',
  forPlatform: 'For a learning platform:',
  file: (version: string) => `The questions in QTI ${version}`,
  holdsAnswers: 'The files hold the answers.',
};

/** The tables as files for a spreadsheet. */
export const tableFiles = { mark: 'Remark' };

/** Parts of lessons that the site itself writes. */
export const lesson = {
  table: 'Table',
  asTable: (name: string) => `${name}, as a table`,
  predict: 'Predict',
  observe: 'Observe',
  explain: 'Explain',
  gauge: 'gauge',
  lookFor: { clear: 'look for: clear air', cloud: 'look for: cloud', clearing: 'look for: the cloud going' },
  whatToDo: 'What to do if it happens',
  quoted: (text: string) => `“${text}”`,
};

/** References in lists and in the text. */
export const citation = {
  and: 'and',
  noDate: 'no date',
  edition: (edition: string) => `ed. ${edition}`,
};

/** “Will it work here?”: the answer, its reasons, what to change. */
export const verdict = {
  yes: 'Yes.',
  no: 'No.',
  works: 'yes',
  fails: 'no',
  whatToChange: 'What to change',
  cloud: (drop: string, seen: string) => `Brought ${drop} below its start, this air makes a cloud; it is seen from ${seen} on.`,
  rating: (gauge: string, rated: string) => `The gauge would go to ${gauge}, and the vessel is rated by its maker to ${rated} only.`,
  gauge: (gauge: string) => `The gauge does not show ${gauge}.`,
  pump: (drop: string, deepest: string) => `The pump does not give a fall of ${drop}; here it ends at ${deepest}.`,
  neverSaturated: 'The air is so dry or cold that no fall in pressure saturates it before droplets would freeze.',
  dry: (onset: string, deepest: string) => `The air is too dry: it becomes saturated only at ${onset}, and vessel, gauge and pump allow ${deepest}.`,
  shallow: (drop: string, seen: string) => `At ${drop} there is no cloud that can be seen yet; that takes ${seen}.`,
  frozen: 'The droplets would be colder than −38 °C, where they freeze by themselves: a cloud of ice, of which these numbers say nothing.',
  unseen: 'The cloud stays too thin to be seen across this vessel in its light.',
  stayWithin: (deepest: string) => `Stay within the rating: plan no more than ${deepest}, or take a vessel rated for more. Never test a rating by trying.`,
  otherGauge: 'Take a gauge whose range holds the whole run, or plan less.',
  planLess: (deepest: string) => `Plan ${deepest} or less, or take a pump that comes further.`,
  warmRoom: 'Warm the room: at this temperature even moist air contains too little vapor.',
  moisten: (humidity: string) => `Moisten the air: a little water in the closed vessel for some minutes. From ${humidity} humidity on, cloud begins at half of the planned drop.`,
  pumpMore: (drop: string) => `Plan ${drop} or more.`,
  pumpMoreOrMoisten: (drop: string, humidity: string) => `Plan ${drop} or more, or moisten the air in the vessel to ${humidity}.`,
  pumpLess: 'Pump less far, or start warmer.',
  letInParticles: 'Let in particles, light it from the side against black, or take a wider vessel.',
  saturatedAt: (drop: string) => `The air in the vessel becomes saturated at ${drop} below its start.`,
  strokes: (strokes: string, count: number) => `The pump takes ${strokes} ${count === 1 ? 'stroke' : 'strokes'}.`,
  strokesAndTime: (strokes: string, count: number, time: string) => `The pump takes ${strokes} ${count === 1 ? 'stroke' : 'strokes'}, about ${time}.`,
  time: (time: string) => `The pressure falls within about ${time}.`,
  gaugeShows: (gauge: string) => `The gauge shows ${gauge} against the room.`,
  airCools: (fall: string) => `Without droplets the air cools by ${fall}.`,
  thermometerFalls: (fall: string, most: string) => `The thermometer falls by ${fall} as the fall in pressure ends and by ${most} at most.`,
  thermometerHardly: (fall: string, most: string) => `The thermometer falls by ${fall} as the fall in pressure ends and by ${most} at most, which it hardly shows: take a quicker or finer one.`,
  margin: (rated: string, left: string) => `That leaves ${left} to the vessel’s rating of ${rated}.`,
  littleMargin: (rated: string, left: string) => `That leaves only ${left} to the vessel’s rating of ${rated}.`,
};

/** The page of that question. */
export const willItWork = {
  title: 'Will it work here?',
  description: 'Your room and apparatus: whether a cloud forms, from which drop on, with how many strokes, and how far it is to the vessel’s rating.',
  apparatus: 'Apparatus',
  room: 'Room',
  plannedAs: (plan: string) => `For the plan of ${plan}`,
  plan: (kit: string, drop: string) => `${kit}: ${drop} below the start`,
  answer: 'The answer',
  forRoom: 'for',
  each: 'Each apparatus',
  inRoom: (room: string) => `in ${room}`,
  heads: {
    works: 'Works', saturated: 'Saturated at a drop of', seen: 'Cloud seen from', strokes: 'Strokes', pumping: 'Pressure falls in', gauge: 'Gauge goes to',
    thermometer: 'Thermometer falls by', margin: 'Left before the rating',
  },
};

/** The fields in which readers describe their room, and what is wrong with what they typed. */
export const roomFields = {
  elevation: 'Elevation',
  pressure: 'Station pressure, absolute',
  temperature: 'Room temperature',
  humidity: 'Humidity of the room',
  moisture: 'Humidity in the vessel',
  volume: 'Volume of the vessel',
  diameter: 'Its inner diameter',
  rating: 'Rated by its maker to, against the room',
  stroke: 'Volume of a pump stroke',
  pumping: 'Speed of the pump',
  thermometer: 'Time constant of the thermometer',
  drop: 'Pumped below the start by',
};

/** What the room's control says while it is used. */
export const room = {
  yours: 'your room',
  noNumber: (field: string, typed: string, example: string) => `${field}: “${typed}” is not a number. Write one such as ${example}.`,
  outside: (field: string, typed: string, low: string, high: string) => `${field}: ${typed} is outside what can be computed, ${low} to ${high}.`,
  noUnit: (field: string, typed: string, example: string) => `${field}: “${typed}” has no unit known here. Write one such as ${example}.`,
  meansNothing: (text: string) => `The address says ${text}, which means nothing here.`,
  keepsLast: 'The page keeps its last numbers.',
  someKeepLast: 'Some of this page keeps its last numbers: the physics has no answer for this room.',
  notLoaded: (file: string) => `Some of this page keeps its last numbers: ${file} could not be loaded.`,
};

/** The room's control as it stands on a page. */
export const roomControl = {
  ask: 'Your own room?',
  nowFor: 'Now computed for',
  air: 'Air of the room',
  vessel: 'Vessel',
  instruments: 'Instruments',
  less: (field: string) => `${field}: less`,
  more: (field: string) => `${field}: more`,
  shape: 'Its shape',
  shapes: { cylinder: 'cylinder', sphere: 'sphere' },
  units: 'Units shown first',
  back: 'Back to the page’s own room',
  about:
    'Elevation and station pressure say the same thing: the one you set last counts. What you set stays on this device and in this page’s address, so that a copied address carries it. A rating is your vessel’s own, as its maker states it.',
};

/** Readings held against the model. */
export const fit = {
  constants: {
    wallTimeConstant: 'the time constant of the walls',
    thermometerTimeConstant: 'the time constant of the thermometer',
    leak: 'the leak',
    offset: 'the offset of the thermometer',
  },
  determined: 'The readings determine each constant.',
  undetermined: (constants: readonly string[]) => `The readings do not determine ${listed(constants)}: faster pumping or more readings would.`,
  inseparable: (one: string, other: string) => `The readings hardly tell ${one} from ${other}: what one adds the other can take away.`,
  course: 'The residuals are not random: something happened that the model leaves out.',
  tooFew: (count: number, fewest: number) => `There are ${count} readings. A fit needs at least ${fewest}, better 20 or more.`,
  cannotFollow: 'The model cannot follow these readings: they lie outside what it can compute.',
  absolute: (room: string) => `The gauge begins near the pressure of the room, ${room}: these look like absolute pressures. Take the pressure of the room from each, so that the gauge begins at 0.`,
  otherRoom: 'The thermometer is far from the temperature of the room, which the model starts from: say under “Your room” how warm yours was.',
  startsFar: 'The first reading is far from where the vessel starts. Read once before pumping, with all at rest: the model begins there.',
  explained: 'Explained.',
  notExplained: 'Not explained.',
  accountFor: (percent: string) => `Heat from the walls and the lag of the thermometer account for ${percent} % of what the thermometer did (of its squared deviations from their mean).`,
  found: (values: string) => `Found, each with its standard error: ${values}.`,
  scatter: (left: string) => `Readings scatter about the model by ${left}, one standard deviation.`,
  readingBrings: (resolution: string, brings: string) => `Reading to ${resolution} alone makes a scatter of ${brings}, so hardly anything else is left unexplained.`,
  somethingElse: (resolution: string, brings: string) => `Reading to ${resolution} alone makes a scatter of ${brings}: something else adds to it. Look for a trend in what is left over.`,
  noClosed: 'The gauge shows no time when pump and valve were left alone, so there is nothing to find a leak from.',
  closed: (from: string, to: string) => `Pump and valve count as left alone from ${from} to ${to} s.`,
  closedAsGauge: (from: string, to: string) => `Pump and valve count as left alone from ${from} to ${to} s, as the gauge shows.`,
  bars: 'Bars reach two standard uncertainties to each side, about 95 %: as stated with the readings, else those of reading to the instrument’s resolution.',
  names: {
    wallTimeConstant: 'Time constant of the walls',
    thermometerTimeConstant: 'Time constant of the thermometer',
    leak: 'Leak, of the difference from the room',
    offset: 'Thermometer less true temperature',
  },
  perMinute: '% a minute',
  ownConstants: 'The vessel’s own constants',
  constantsOf: (title: string) => `${title}: constants`,
  bestConstants: (title: string) => `${title}: constants that fit the readings best`,
  heads: { constant: 'Constant', fitted: 'Fitted', error: 'Standard error', interval: '95 % interval', own: 'The kit’s own' },
  intervals: (degrees: number) =>
    `Intervals hold the true constant in 95 of 100 such runs, if the model is right: Student’s factor for ${degrees} degrees of freedom, errors of the linearized model, the scatter of each instrument taken from what is left over.`,
  notFound: 'not found: it takes readings with the valve closed',
  notDetermined: 'not determined by these readings',
  inside: (value: string) => `${value}, inside`,
  outside: (value: string) => `${value}, outside`,
  between: (low: string, high: string) => `${low} to ${high}`,
  columns: { time: 'Time', gauge: 'Gauge', thermometer: 'Thermometer', model: 'Model', residual: 'Reading less model' },
  rowsAsTable: (rows: number) => `${counted(rows, 'row', 'rows')} as a table`,
  asTable: (name: string) => `${name} as a table`,
  gaugePanel: (unit: string) => `Gauge, ${unit} against the room`,
  thermometerPanel: (unit: string) => `Thermometer, ${unit}`,
  residualPanel: (unit: string) => `Thermometer: reading less model, ${unit}`,
  timeAxis: 'Time, s',
  model: 'model',
  readings: 'readings',
  leftOver: 'left over',
  leftAlone: 'pump and valve left alone',
  span: (gaugeLow: string, gaugeHigh: string, low: string, high: string) =>
    `The gauge goes between ${gaugeLow} and ${gaugeHigh} against the room, the thermometer between ${low} and ${high}.`,
  describeModel: (span: string) => `${span} Both are the model’s. The same values stand in the table.`,
  describeReadings: (count: number, span: string) => `${count} readings as dots with error bars, the model as a line. ${span} The same values stand in the table.`,
  titleOf: (name: string) => `${name}: readings and model`,
  expected: 'What the model lets expect of the clean run',
};

/** The table of readings as a reader writes it; the names of its columns are understood in files as well. */
export const readingsFile = {
  columns: {
    time: 'time', gauge: 'gauge', thermometer: 'thermometer', timeUncertainty: 'time uncertainty', gaugeUncertainty: 'gauge uncertainty',
    thermometerUncertainty: 'thermometer uncertainty',
  },
  tooManyRows: (rows: number, most: number): Said => [`there are ${rows} rows, and ${most} are the most`, 'keep every second or tenth row'],
  tooFewRows: (rows: number, fewest: number): Said => [`there are ${rows} rows of readings`, `write at least ${fewest}, each on a line of its own`],
  notAfter: (time: string, before: string): Said => [`the time ${time} s does not come after ${before} s, that of the row above`, 'put the rows in the order of their times'],
  notParted: (header: string): Said => ['the columns are not parted by commas', `part them by commas, and write decimal points: \`${header}\``],
  missing: (column: string, example: string): Said => [`the column \`${column}\` is missing`, `write a column \`${example}\``],
  twice: (column: string): Said => [`the column \`${column}\` stands twice`, 'leave one of them out'],
  noHeader: (header: string): Said => ['the first line names none of the columns that are read', `write \`${header}\` as the first line`],
  noColumn: (column: string, example: string): Said => [`there is no column \`${column}\``, `write \`${example}\`, or leave the column out`],
  noUnit: (column: string, example: string): Said => [`the column \`${column}\` has no unit`, `write the unit after it, as in \`${example}\``],
  wrongUnit: (unit: string, column: string, example: string): Said => [`\`${unit}\` is no unit for \`${column}\``, `write one as in \`${example}\``],
  tooManyCells: (cells: number, columns: number): Said => [`this row has ${cells} cells, and the header has ${columns} columns`, 'write decimal points, and commas between columns only'],
  tooFewCells: (cells: number, columns: number, missing: string): Said => [`this row has ${cells} cells, and the header has ${columns} columns: \`${missing}\` is missing`, 'write a number in every column, or leave the row out'],
  empty: (column: string, unit: string): Said => [`\`${column}\` is empty`, `write a number in ${unit}, or leave the row out`],
  noClock: (cell: string): Said => [`\`${cell}\` is no time in minutes and seconds`, 'write it as in `0:05`'],
  noNumber: (cell: string, unit: string): Said => [`\`${cell}\` is not a plain number`, `write a number in ${unit} without the unit, as in \`12.5\``],
  beyond: (cell: string, column: string): Said => [`\`${cell}\` is beyond what \`${column}\` can be`, 'check the number and the unit in the header'],
  formula: (cell: string): Said => [`\`${cell}\` begins like a formula, which a spreadsheet would run`, 'write the number that it gives'],
};

/** The reader's own readings, while they are entered. */
export const ownReadings = {
  title: 'Your readings and the model',
  writeFirst: (column: string) => `Write ${column} first.`,
  notAdded: 'The row is not added.',
  added: (rows: number) => `Row added: ${counted(rows, 'row', 'rows')}.`,
  tooLarge: (file: string) => `${file} is larger than a table of readings can be.`,
  unreadable: (file: string) => `${file} could not be read.`,
  wrong: (count: number) => (count === 1 ? 'One thing is wrong.' : `${count} things are wrong.`),
  fitting: 'Fitting the model …',
  compared: (count: number, room: string, said: string) => `${count} readings compared for ${room}. ${said}`,
  twoTimes: 'Write two times in seconds, the later one second, or leave both empty.',
  nothingToSave: 'There is nothing to save yet.',
  saved: (file: string) => `Saved as ${file}.`,
  fileName: (kit: string) => `${kit}-readings.csv`,
  cleared: 'Your readings are gone from this device.',
  noAnswer: 'The model has no answer for this room.',
  line: (line: number, column: number | undefined, what: string, instead: string) => `Line ${line}${column === undefined ? '' : `, column ${column}`}: ${what}; ${instead}.`,
  more: (count: number) => `And ${count} more.`,
};

/** The sheet of readings. */
export const readings = {
  fittedFor: 'Fitted for the kit’s own room.',
  howToRecord: 'How to record',
  columns: 'Write three columns, each with its unit in the head: the time in s, min or min:s, the gauge in kPa, hPa, mbar, inHg, mmHg or psi, the thermometer in °C or °F. Spreadsheets save such a table as CSV; or copy its cells and paste them below.',
  example: 'Example of a table of readings',
  everyFive: 'Read every five seconds. One calls the time, one reads the gauge, one the thermometer, one writes. Or film both and read them off the film.',
  begin: 'Begin ten seconds before pumping, with everything at rest. Pump evenly and briskly to the planned reading, close the valve, and touch nothing for two minutes and a half. Stop before air is let in.',
  beginPressed: 'Press air in to the planned reading, and wait until the thermometer shows the temperature of the room again. Begin ten seconds before you let go. Let go at once and fully, close the release when the gauge shows zero, and touch nothing for two minutes and a half.',
  estimate: 'Estimate between the marks. Readings below the room’s pressure have a minus sign.',
  note: 'Note as well: temperature and pressure of the room, how long the vessel stood closed, when pumping began and ended, and whether a cloud was seen and at which reading.',
  notePressed: 'Note as well: temperature and pressure of the room, how long the vessel stood closed, when the air was let go, and whether a cloud was seen.',
  uncertainties: (gauge: string, thermometer: string) => `If you know how well you read, add columns such as ${gauge} and ${thermometer}: standard uncertainties.`,
  whatToExpect: 'What to expect',
  cleanRun: 'The clean run of this kit’s own apparatus, by the model.',
  yourOwn: 'Your own readings',
  staysHere: 'Nothing leaves this device. It keeps your readings until you clear them.',
  paste: 'Your readings: paste a table, or type',
  orLoad: 'Or load a CSV file',
  addRow: 'Add a row',
  addTheRow: 'Add the row',
  aboutRun: 'About the run',
  inVessel: 'In the vessel',
  noParticles: 'no particles: it stayed clear',
  cloudSeen: (particles: string) => `${particles}: a cloud was seen`,
  closedFrom: 'Valve closed from, s',
  closedTo: 'to, s',
  leaveEmpty: 'Leave both times empty to have them taken from the gauge.',
  compare: 'Compare with the model',
  save: 'Save as CSV',
  clear: 'Clear',
  allowScript: 'To fit readings of your own on this page, allow its script. It sends nothing.',
};

/** The frame of every page. */
export const frame = {
  /** The language's own name. */
  language: 'English',
  kits: 'Kits',
  kitsOf: (school: string) => `Kits of ${school}`,
  yourRoom: 'Your room',
  hazards: 'Hazards',
  sources: 'Sources',
  search: 'Search',
  skip: 'Skip to the sheet',
  teachersEdition: 'Teachers’ edition',
  site: 'Site',
  everyNumber: 'Every number is computed for the room and the apparatus that its kit names.',
  license: (license: string) => `License: ${license}.`,
  holdsAnswers: 'This edition holds answers: hand it to teachers only.',
  checks: 'Checks',
  contribute: 'Contribute',
  draft: (title: string) => `Draft. ${title}`,
};

/** The sheets of a kit: name, and one line for the kit's page. */
export const sheets = {
  kit: { name: 'Kit', about: 'What it shows, what it needs.' },
  run: { name: 'Run sheet', about: 'Preparation, then every step at its minute, beside gauge, thermometer and what to look for.' },
  student: { name: 'Student sheet', about: 'Predict, observe, explain. Two printed pages.' },
  background: { name: 'Background', about: 'The science, with its formulas and figures.' },
  numbers: { name: 'Numbers', about: 'Every table and figure, with its conditions, its formula and its sources.' },
  questions: { name: 'Questions', about: 'By level, for the class or for a paper.' },
  safety: { name: 'Safety', about: 'Hazards, controls, what to do if; a form to sign.' },
  board: { name: 'Board', about: 'For the projector: one step or question at a time, the prediction before the number.' },
  readings: { name: 'Readings', about: 'The class’s own readings against the model: enter, paste or load them.' },
  booklet: { name: 'Booklet', about: 'The whole kit in one document, to print.' },
};

/** A kit, on its page, in its title block and on the shelf. */
export const kit = {
  edition: 'Edition',
  draft: 'Draft',
  editionOf: (version: string) => `Edition ${version}`,
  draftNoEdition: 'Draft, not an edition',
  teachersEditionOf: (folder: string) => `Teachers’ edition of ${folder}`,
  ages: 'Ages',
  lesson: 'Lesson',
  license: 'License',
  language: 'Language',
  alsoIn: 'In another language',
  computedFor: 'Computed for',
  sheetsOfKit: 'Sheets of this kit',
  shelf: (school: string) => `Lesson kits of ${school}: bench demonstrations whose every number is computed for the room.`,
  uses: 'Uses',
  nothingHazardous: 'nothing hazardous',
  run: 'The run',
  leadsToRunSheet: 'Each step leads to its place on the run sheet.',
  tapStep: 'Tap a step to go to it.',
  sheets: 'Sheets',
  data: 'Data',
  dataAbout: 'The numbers of this kit as a file (JSON).',
  oneFile: 'One file',
  oneFileAbout: 'The whole kit in one page, to carry on a stick or send by mail.',
  zip: 'Zip',
  zipAbout: 'That page, each table for a spreadsheet (CSV), the numbers and the text it was made from.',
  learn: 'Students learn to',
  hazards: 'Hazards',
  onSafetySheet: (count: number) => `${count} on the safety sheet`,
  materials: 'Materials',
  item: 'Item',
  specification: 'Specification',
  quantity: 'Quantity',
  curriculum: 'Curriculum',
  ownWords: 'In our own words; the statement itself is behind the link.',
  beyond: (text: string) => `Beyond it: ${text}`,
  changes: 'Changes',
  allEditions: 'All editions, and what changed from one to the next',
  newestEdition: 'The address that always shows the newest edition',
  draftOfNext: 'Draft of the next edition',
  published: 'published',
  withdrawn: 'withdrawn',
  room: 'Room',
  beforeBell: 'Before the bell',
  setUp: 'Set-up',
  name: 'Name',
  class: 'Class',
  date: 'Date',
  sources: 'Sources',
  atBell: 'at the bell',
  dayBefore: 'the day before',
  daysBefore: (days: number) => `${days} days before`,
  before: (time: string) => `${time} before`,
  thisPage: 'This page, for your own room:',
};

/** The shelf's choice. */
export const shelf = {
  find: 'Find a kit',
  age: 'Age of the class',
  time: 'Time',
  apparatus: 'Apparatus',
  any: 'any',
  upTo: (minutes: number) => `up to ${minutes} min`,
  without: 'Without',
  of: (kits: number) => `of ${kits} kits`,
  all: 'Show all',
};

/** What is to be known of an edition since it was published. None of its words is a signal word: those are for hazards. */
export const notices = {
  ofThisEdition: 'What has become known of this edition since it was published',
  kinds: { withdrawn: 'Withdrawn', correction: 'Corrected' },
  doNotUse: 'Do not use this edition any more.',
  useInstead: (version: string) => `Use edition ${version} instead.`,
  corrected: (count: number) => counted(count, 'corrected number', 'corrected numbers'),
  heads: { what: 'What', before: 'As published', after: 'Corrected' },
  unseen: (count: number) => (count === 1 ? 'One number changes by less than is printed.' : `${count} numbers change by less than is printed.`),
  forTeachers: (count: number) => (count === 1 ? 'One more corrected number stands in the teachers’ edition.' : `${count} more corrected numbers stand in the teachers’ edition.`),
  all: 'All editions, and what changed',
  /** In the title of a page. */
  withdrawnTitle: (title: string) => `Withdrawn. ${title}`,
  /** In the margin of a printed page. */
  inMargin: (date: string) => `Withdrawn ${date}. Do not use.`,
  /** Before an address, in the foot of a printed page. */
  foundAt: (address: string) => `Corrections: ${address}`,
};

/** The page of a kit's editions. */
export const changes = {
  title: 'Editions and changes',
  description: (title: string) => `The editions of ${title}, what was corrected since, and what changed from one to the next.`,
  editions: 'Editions',
  heads: { edition: 'Edition', published: 'Published', state: 'State' },
  newest: 'newest',
  withdrawn: (date: string) => `withdrawn ${date}`,
  replacedBy: (version: string) => `replaced by ${version}`,
  corrected: (date: string) => `corrected ${date}`,
  notPublished: 'not published',
  first: 'The first edition.',
  since: (version: string) => `What changed since ${version}`,
  nothing: 'Nothing that is printed.',
  forTeachersOnly: 'Only what is in the teachers’ edition.',
  onSheet: (sheet: string) => `Words: ${sheet}`,
  numbers: (count: number) => counted(count, 'number that is printed differently', 'numbers that are printed differently'),
  number: 'Number',
};

/** The sheet of numbers. */
export const numbers = {
  alsoOn: (sheet: string) => `Also in: ${sheet}.`,
  how: 'How it is computed',
  from: 'From',
};

/** The board. */
export const board = {
  predictFirst: 'Predict first, then look',
  computedFor: 'Computed for',
  fromBoard: (number: number) => `From board ${number}`,
  previous: 'Previous',
  next: 'Next',
  kit: 'Kit',
  whatGauge: 'What will the gauge say?',
  whatSeen: 'What will you see?',
  step: (number: number, count: number, minutes: string) => `Step ${number} of ${count} · ${minutes} min`,
  withdrawn: 'This edition is withdrawn. Do not use it.',
  corrected: 'This edition has been corrected.',
  question: (number: number, count: number, level: number, kind: string) => `Question ${number} of ${count} · level ${level} · ${kind}`,
};

/** The board's keys. */
export const boardKeys = { space: 'space', or: 'or', kit: 'kit' };

/** The booklet. */
export const booklet = {
  theKit: 'The kit',
  contents: 'Contents',
  ages: (ages: string, level: string) => `ages ${ages} (${level})`,
  computedFor: 'Computed for',
  everyNumber: 'every number in this booklet is that room’s.',
};

/** Hazards, and the form to sign. */
export const safety = {
  title: 'Hazards',
  description: 'Every hazard of the kits: what can happen, what prevents it, what to do if it happens.',
  who: (who: string) => `Who: ${who}`,
  assessment: 'Risk assessment',
  assessmentTable: 'Risk assessment table',
  notValid: 'Draft, not valid until signed.',
  localRules: (activity: string, edition: string) => `Local rules and qualified people decide. Activity: ${activity}, ${edition}.`,
  draft: 'draft',
  edition: (version: string) => `edition ${version}`,
  heads: {
    hazard: 'Hazard', who: 'Who, and how', controls: 'Controls in place', before: 'L × S', further: 'Further controls', after: 'L × S', action: 'Action, by whom, by when',
  },
  blanks: { place: 'Place', class: 'Class and age', assessor: 'Assessor', date: 'Date', trial: 'Trial done on', review: 'Review date' },
  anotherHazard: 'Another hazard of this room',
  scale:
    'L likelihood and S severity, each 1 to 3, multiplied: before and after the further controls. Further controls in this order: eliminate, substitute, engineer, organize, protect.',
  emergency: 'Emergency plan',
  signature: 'Signature',
  nameAndOffice: 'Name and office',
};

/** The list of sources. */
export const sources = {
  title: 'Sources',
  description: 'Every reference the kits and their numbers rest on.',
  references: 'References',
  inAll: (count: number) => `${count} in all`,
};

/** The page of searching. */
export const search = {
  title: 'Search',
  description: 'Kits, questions, numbers, hazards and sources, found as you type.',
  groups: { kit: 'Kits', question: 'Questions', table: 'Numbers', hazard: 'Hazards', source: 'Sources' },
  draft: 'Draft',
  draftOf: (title: string) => `${title} (draft)`,
};

/** What searching says. */
export const found = {
  /** Stands in the empty field. */
  example: 'a word, such as thermometer',
  kinds: { kit: 'Kit', table: 'Numbers', question: 'Question', hazard: 'Hazard', source: 'Source' },
  nothing: 'Nothing found',
  count: (count: number) => `${count} found`,
  first: (count: number, shown: number) => `${count} found; the first ${shown} are shown`,
};

/** Published checks. */
export const checks = {
  title: 'Checks',
  description: 'What this site computes, beside what others have published: value, deviation, tolerance and source.',
  summary: (values: number, sources: number) =>
    `${values} published values from ${sources} sources, beside what this site’s physics computes for the same inputs. They were computed when this site was built. The same rows are tests of the software.`,
  atAGlance: 'At a glance',
  summaryOf: 'Summary of the checks',
  heads: { module: 'Module', values: 'Values', sources: 'Sources', mostUsed: 'Most used' },
  mostUsed:
    'Most used: the largest part of its tolerance that any value of the module uses up. Beyond 100 % the tests fail. The reason for each tolerance stands with it. “From memory” marks a figure that was not read again in its source.',
  published: 'Published',
  computed: 'Computed',
  deviation: 'Deviation',
  allowed: 'Allowed',
  used: 'Used',
  fromMemory: 'From memory.',
  readIn: (where: string) => `Read in: ${where}`,
  tolerance: (reason: string) => `Tolerance: ${reason}`,
  below: 'below the bound',
  above: 'above the bound',
  atMost: 'at most the published value',
  atLeast: 'at least the published value',
  under: (share: string) => `under ${share}`,
};

/** What the service worker and the script that starts it say. */
export const offline = {
  kept: 'This page is kept on this device and needs no network.',
};
export const notHere = {
  title: 'Not on this device',
  words: 'There is no network, and this page was not opened here before.',
  kits: 'Kits',
};

/** Files to take away. */
export const files = {
  oneFile: 'The kit in one file',
  zip: 'The kit as a zip',
  numbers: 'The numbers of the kit',
  inOneFile: (title: string) => `In one file: ${title}`,
  license: (license: string) => `License: ${license}`,
  lessonKits: (school: string) => `Lesson kits · ${school}`,
  short: 'Kits',
  draftOf: (title: string) => `${title} (draft)`,
  demonstration: 'demonstration',
  lessonPlan: 'lesson plan',
};
