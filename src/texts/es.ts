/** Lo que el sitio dice en español, con la misma forma que en.ts: un texto que falta no compila. */
import type * as en from './en.ts';

const counted = (count: number, one: string, several: string): string => `${count} ${count === 1 ? one : several}`;
/** La elección en el estante. */
export const shelf: typeof en.shelf = {
  find: 'Buscar un kit',
  age: 'Edad de la clase',
  time: 'Tiempo',
  apparatus: 'Aparato',
  any: 'cualquiera',
  upTo: (minutes) => `hasta ${minutes} min`,
  without: 'Sin',
  of: (kits) => `de ${kits} kits`,
  all: 'Mostrar todos',
};

/** Before a word that begins with the sound of i, y becomes e. */
const listed = (words: readonly string[]): string => {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${/^h?i(?!e)/i.test(last) ? 'e' : 'y'} ${last}`;
};

export const labels: typeof en.labels = {
  roomTemperature: 'temperatura del aula',
  roomPressure: 'presión del aula, absoluta',
  roomHumidity: 'humedad relativa del aula',
  roomDewPoint: 'punto de rocío del aula',
  startTemperature: 'temperatura en el recipiente',
  startPressure: 'presión en el recipiente, absoluta',
  startHumidity: 'humedad relativa en el recipiente',
  startDewPoint: 'punto de rocío en el recipiente',
  startVaporPressure: 'presión de vapor en el recipiente',
  plannedDrop: 'caída de presión prevista',
  vesselVolume: 'volumen del recipiente',
  vesselDiameter: 'diámetro del recipiente',
  ratedLowestGauge: 'presión mínima admisible del recipiente',
  ratedHighestGauge: 'presión máxima admisible del recipiente',
  gaugeResolution: 'resolución del manómetro',
  thermometerResolution: 'resolución del termómetro',
  thermometerTimeConstant: 'constante de tiempo del termómetro',
  pressureDrop: 'caída de presión',
  gaugeAtDrop: 'manómetro',
  absolutePressure: 'presión absoluta',
  pressureRatio: 'presión dividida por la presión inicial',
  temperatureClear: 'aire, sin gotitas',
  coolingClear: 'enfriamiento, sin gotitas',
  saturationRatioClear: 'razón de saturación, sin gotitas',
  vaporPressureClear: 'presión de vapor, sin gotitas',
  saturationRatioUnexpanded: 'razón de saturación si la presión de vapor no cambiara',
  coolingAtConstantVolume: 'enfriamiento si la temperatura bajara con la presión',
  temperatureCloudy: 'aire, con gotitas',
  coolingCloudy: 'enfriamiento, con gotitas',
  cloudWater: 'agua de nube',
  altitudeSamePressure: 'atmósfera estándar, misma presión',
  parcelHeightSamePressure: 'parcela ascendente, misma presión',
  parcelRiseSameCooling: 'parcela sin nube, mismo enfriamiento',
  onsetPressureDrop: 'caída con la que puede empezar la nube',
  onsetGauge: 'manómetro cuando puede empezar la nube',
  onsetTemperature: 'temperatura cuando puede empezar la nube',
  onsetCooling: 'enfriamiento hasta que puede empezar la nube',
  noParticleLimitDrop: 'caída con la que se forma nube sin partículas',
  noParticleLimitSaturation: 'razón de saturación con la que se forma nube sin partículas',
  cloudBaseHeight: 'base de la nube de una parcela con el mismo aire de partida',
  strokesToDrop: 'emboladas de la bomba',
  pumpingTime: 'tiempo de bombeo',
  wallTimeConstant: 'constante de tiempo de las paredes',
  gasFallAtDrop: 'enfriamiento del aire al acabar el bombeo',
  thermometerFallAtDrop: 'descenso del termómetro al acabar el bombeo',
  thermometerLargestFall: 'mayor descenso del termómetro',
  particleNumber: 'partículas',
  peakSaturationRatio: 'mayor razón de saturación',
  peakSupersaturation: 'mayor sobresaturación',
  dropletDiameter: 'diámetro de las gotitas',
  dropletWater: 'agua en gotitas',
  cloudOpticalDepth: 'espesor óptico a través del recipiente',
  dropletFallSpeed: 'velocidad de caída',
  coronaRadius: 'primer anillo oscuro en torno a una lámpara, radio',
  lidForce: 'fuerza sobre la tapa',
  wallStress: 'tensión en la pared',
  storedEnergy: 'energía almacenada',
  ratingMargin: 'margen hasta el límite',
  ratingUsed: 'parte del límite',
  stationPressure: 'presión del lugar',
  elevation: 'altitud',
  gaugeSameCooling: 'manómetro para el mismo enfriamiento',
  startingHumidity: 'humedad en el recipiente',
  parcelHeight: 'altura sobre el aula',
  parcelPressure: 'presión',
  parcelTemperature: 'temperatura',
  parcelHumidity: 'humedad relativa',
  parcelCloudWater: 'agua de nube',
  gaugeReading: 'manómetro',
  absoluteAtReading: 'presión absoluta',
  seen: 'nube',
  ionLimit: 'gotas sobre iones desde',
  homogeneousLimit: 'gotas sobre nada desde',
  withoutParticles: 'sin partículas',
  waitingTime: 'al cabo de',
  particlesLeft: 'quedan',
  lostToSettling: 'caídas al fondo',
  lostToCoagulation: 'unidas a otras',
  lostToWalls: 'en las paredes',
  lostToClouds: 'arrastradas por gotas',
  cloudAtPlannedDrop: 'nube con la caída prevista',
  dryDiameter: 'diámetro seco',
  supersaturationNeeded: 'sobresaturación necesaria',
  becomesDrop: 'se convierte en gota',
  stroke: 'embolada',
  time: 'tiempo',
  air: 'aire',
  thermometer: 'termómetro',
  saturationRatio: 'razón de saturación',
  insideLessOutside: 'interior menos exterior',
};

export const cells: typeof en.cells = { seen: 'se ve', notSeen: 'no se ve', clear: 'sin nube', cloud: 'nube', yes: 'sí', no: 'no' };

export const marks: typeof en.marks = {
  saturated: 'saturado',
  cloudWithoutParticles: 'nube sin partículas',
  smallest: 'la menor que lo hace',
  cloudBase: 'base de la nube',
  highestRated: 'máxima admisible',
  lowestRated: 'mínima admisible',
};

export const kindTitles: typeof en.kindTitles = {
  'pressure-steps': 'Lo que hace cada caída de presión',
  strokes: 'Embolada a embolada',
  elevations: 'El mismo enfriamiento a otra altitud',
  'starting-humidity': 'Cuanto más seco el aire, más tarde la nube',
  'particle-sizes': 'Qué partículas se convierten en gotas',
  droplets: 'Pocas partículas o muchas',
  'particle-lifetime': 'Cuánto duran las partículas',
  'rising-parcel': 'El mismo aire, al ascender',
  'no-particle-limit': 'Hasta dónde sigue sin nube el aire limpio',
  'gauge-readings': 'Leer el manómetro',
  'wall-forces': 'Lo que el recipiente ha de soportar',
};

export const curves: typeof en.curves = {
  pressureSteps: {
    title: 'Enfriamiento con gotitas y sin ellas',
    description: 'Temperatura del aire del recipiente frente a la caída de presión: sin gotitas baja cerca del doble que con gotitas.',
    x: 'caída de presión', y: 'temperatura del aire', clear: 'sin gotitas', cloudy: 'con gotitas',
  },
  strokes: {
    title: 'El aire y el termómetro dentro de él',
    description: 'Temperatura del aire del recipiente y lectura del termómetro frente al tiempo de bombeo: el aire se enfría enseguida; la lectura apenas cambia en ese tiempo.',
    x: 'tiempo de bombeo', y: 'temperatura', air: 'aire', thermometer: 'termómetro',
  },
  elevations: {
    title: 'Manómetro para el mismo enfriamiento',
    description: 'Lectura del manómetro con la que el aire se ha enfriado lo mismo, frente a la altitud del centro: cuanto más alto el centro, menor la lectura.',
    x: 'altitud del centro', y: 'manómetro', same: 'mismo enfriamiento',
  },
  startingHumidity: {
    title: 'Caída de presión hasta que puede empezar la nube',
    description: 'La caída de presión con la que el aire se satura, frente a la humedad relativa con la que empieza.',
    x: 'humedad relativa inicial', y: 'caída de presión hasta la saturación', reached: 'saturación alcanzada',
  },
  droplets: {
    title: 'Más partículas, gotas menores',
    description: 'Diámetro de las gotitas al acabar el bombeo frente al número de partículas, en una escala de potencias de diez: cuantas más partículas se reparten el agua, menores las gotas.',
    x: 'partículas por cm³, como potencia de diez', y: 'diámetro de las gotitas', droplets: 'gotitas',
  },
  particleLifetime: {
    title: 'Partículas que quedan en el recipiente cerrado',
    description: 'Número de partículas en el aire del recipiente cerrado frente a las horas desde que se dejaron entrar: baja deprisa al principio y luego cada vez más despacio.',
    x: 'desde que se dejaron entrar', y: 'partículas que quedan', inAir: 'en el aire',
  },
  risingParcel: {
    title: 'El aire del recipiente y el aire que asciende',
    description:
      'Presión absoluta, que baja hacia arriba como en el cielo, frente a la temperatura: el aire que queda en el recipiente mientras baja su presión, con gotitas y sin ellas, y una parcela que asciende. ' +
      'El gas que queda sigue la misma adiabática que una parcela ascendente: un aire de igual temperatura y humedad toma el mismo camino, se lo bombee o se lo eleve. ' +
      'Los círculos señalan dónde se satura cada uno. A partir de ahí el aire con gotitas se enfría más despacio, porque el vapor que se condensa cede calor.',
    x: 'temperatura', y: 'presión absoluta', clear: 'recipiente, sin gotitas', cloudy: 'recipiente, con gotitas', room: 'el aire del aula, al ascender', vessel: 'el aire del recipiente, al ascender',
  },
  noParticleLimit: {
    title: 'Saturación del aire sin nube y lo que la limita',
    description:
      'Razón de saturación del aire sin gotitas frente a la caída de presión. Con 1 se forman gotas sobre partículas. Sin partículas sigue subiendo, hasta los límites en que se forman gotas sobre iones o sobre nada.',
    x: 'caída de presión', y: 'razón de saturación', air: 'aire sin partículas', nothing: 'gotas sobre nada', ions: 'gotas sobre iones', particles: 'gotas sobre partículas',
  },
};

export const methods: typeof en.methods = {
  'pressure-steps':
    'Sin gotitas: todo el vapor permanece y se conserva la entropía del aire húmedo. Con gotitas: el vapor se mantiene en la saturación y ' +
    'se conserva la entropía de aire, vapor y líquido. En ningún caso se cede calor a las paredes. La altitud de igual presión es la de la ' +
    'atmósfera estándar por encima del aula; la parcela es el propio aire del recipiente, que asciende.',
  strokes:
    'Cada embolada saca gas, y el que queda se expande y se enfría; las paredes lo calientan de nuevo con la constante de tiempo τ_w y, si están mojadas, ceden vapor; ' +
    'el termómetro lo sigue con la suya, τ_m, y las paredes lo calientan un poco. Las gotitas, si se dejan entrar partículas, son todas iguales y crecen por ' +
    'difusión. La presión sube un poco entre emboladas, al calentarse el aire. La constante de tiempo de las paredes se conoce con un margen de un tercio: eso decide cuántas cifras se imprimen.',
  elevations:
    'La presión según la altitud es la de la atmósfera estándar; el tiempo atmosférico la cambia cerca de un uno por ciento. El enfriamiento depende del cociente de ' +
    'presiones, de modo que más arriba, donde hay menos presión de partida, basta una lectura menor del manómetro.',
  'starting-humidity': 'La caída con la que el aire que se expande sin gotitas alcanza justo la saturación, y la altura a la que lo hace una parcela ascendente del mismo aire.',
  'particle-sizes':
    'Una partícula de diámetro seco d se convierte en gota cuando la razón de saturación pasa del punto más alto de esta curva sobre el diámetro húmedo D; κ dice con qué ' +
    'facilidad su sustancia toma agua. La saturación alcanzada resulta de gotitas que crecen mientras trabaja la bomba del kit, sobre el número y los tamaños de ' +
    'partículas del propio kit, sin ayuda de las paredes. El número y κ son estimaciones: las cifras valen con un error de cerca de una décima parte.',
  droplets:
    'Partículas de todos los tamaños toman vapor mientras la bomba del kit lleva el recipiente hasta la caída; las paredes no ceden ni calor ni vapor. El espesor óptico τ ' +
    'es el del agua w a través del recipiente L, en gotas de su radio efectivo. Que se vea o no depende de la luz y del fondo del propio kit, con ' +
    'un contraste del 5 %. Los anillos se dan para gotas de más de 2 µm. Los tamaños y el número de las partículas reales son estimaciones: las cifras valen con un error de cerca de una décima parte.',
  'particle-lifetime':
    'Partículas de todos los tamaños, con el agua que retienen en el recipiente húmedo, chocan y se unen, caen al fondo y llegan a las paredes; el aire se mueve solo por pequeñas ' +
    'diferencias de temperatura. Si entretanto se hacen nubes, cada una dura medio minuto sobre todas las partículas, y las gotas que llegan al fondo se quedan con las suyas. ' +
    'La última columna hace la nube de la tabla de gotitas con lo que queda. Las velocidades de pérdida se conocen con un error de un quinto.',
  'rising-parcel':
    'La parcela tiene la presión de su entorno, no se mezcla con nada y no cede calor. Bajo la base de la nube su vapor sigue siendo ' +
    'vapor; por encima, lo que excede de la saturación es agua de nube y viaja con ella. Las alturas resultan de su propio peso. El gas que queda en un recipiente del que se bombea ' +
    'sigue la misma adiabática que una parcela ascendente: sacar gas no cambia la temperatura del que queda; expandirlo, sí. En la figura ambos se separan solo donde empiezan con distinta humedad.',
  'no-particle-limit':
    'Aire que se expande sin gotitas, junto a la razón de saturación con la que crecen gotas sobre iones pequeños, que el aire siempre tiene, y aquella con la que se forma una gota ' +
    'por centímetro cúbico y segundo sobre nada (teoría clásica). La primera que se alcanza pone fin al aire sin nube: más allá, «sin partículas no hay nube» no es verdad. ' +
    'Teoría y experimento concuerdan con un error de cerca del 7 % de la razón de saturación.',
  'gauge-readings': 'El manómetro compara el recipiente con el aula. La física pide la presión absoluta: la del aula más la lectura, que es negativa por debajo de ella.',
  'wall-forces':
    'Fuerza sobre una tapa tan ancha como el recipiente y tensión en su pared de espesor s; negativa: presionada hacia dentro. La energía es la que se liberaría de golpe. ' +
    'Estas cifras dicen por qué importa el límite admisible. No lo sustituyen: arañazos, edad y forma deciden cuándo falla un recipiente, y solo el límite que da el fabricante autoriza su uso.',
};

export const formulaWords: typeof en.formulaWords = { room: 'aula', gauge: 'man', drop: 'gota', ion: 'ion', cylinder: '(cilindro)', sphere: '(esfera)' };

export const formulaSpeech: typeof en.formulaSpeech = {
  index: (base, below) => `${base} subíndice ${below}`,
  longIndex: (base, below) => `${base} subíndice ${below}, fin del subíndice,`,
  squared: (base) => `${base} al cuadrado`,
  cubed: (base) => `${base} al cubo`,
  power: (base, exponent) => `${base} elevado a ${exponent}`,
  longPower: (base, exponent) => `${base} elevado a ${exponent}, fin del exponente,`,
  over: (top, bottom) => `${top} sobre ${bottom}`,
  fraction: (top, bottom) => `la fracción ${top} sobre ${bottom}, fin de la fracción,`,
  root: (of) => `la raíz cuadrada de ${of}, fin de la raíz,`,
  rootOf: (index, of) => `la raíz de índice ${index} de ${of}, fin de la raíz,`,
  overAll: (sum, index) => `${sum} para todo ${index} de`,
  fromTo: (sum, from, to) => `${sum} desde ${from} hasta ${to} de`,
  above: (base, mark) => `${base} con ${mark} encima`,
  capital: (letter) => `${letter} mayúscula`,
  greek: 'alfa beta gamma delta épsilon zeta eta theta iota kappa lambda mi ni xi ómicron pi ro sigma tau ípsilon fi ji psi omega',
  functions: { ln: 'logaritmo natural de', log: 'logaritmo de', exp: 'función exponencial de', sin: 'seno de', cos: 'coseno de', tan: 'tangente de', max: 'máximo', min: 'mínimo' },
  signs: {
    '=': 'igual a', '+': 'más', '−': 'menos', '-': 'menos', '±': 'más o menos', '⋅': 'por', '×': 'por', '∗': 'asterisco', '/': 'dividido entre', '≈': 'aproximadamente igual a', '∝': 'proporcional a', '≠': 'distinto de',
    '<': 'menor que', '>': 'mayor que', '≤': 'menor o igual que', '≥': 'mayor o igual que', '→': 'tiende a', '(': 'abre paréntesis', ')': 'cierra paréntesis', '[': 'abre corchete', ']': 'cierra corchete',
    '∑': 'la suma', '∏': 'el producto', '∫': 'la integral', '∂': 'derivada parcial', '∞': 'infinito', '′': 'prima', 'ˉ': 'una barra', '%': 'por ciento', '°': 'grados',
  },
};

export const references: typeof en.references = {
  murphyKoop: 'D. M. Murphy y T. Koop 2005, Q. J. R. Meteorol. Soc. 131, 1539: presión de vapor (ec. 10), calor latente (ec. 9)',
  wmo8: 'OMM-N.º 8, Guía de instrumentos y métodos de observación, anexo 4.B: vapor en presencia de aire',
  emanuel: 'K. A. Emanuel 1994, Atmospheric Convection, cap. 4: expansión saturada reversible',
  iso2533: 'ISO 2533:1975, Atmósfera estándar',
  hypsometric: 'J. M. Wallace y P. V. Hobbs 2006, Atmospheric Science, 2.ª ed., cap. 3: columna hidrostática',
  nist811: 'NIST Special Publication 811 (2008), apéndice B.8: unidades de presión',
  pettersKreidenweis: 'M. D. Petters y S. M. Kreidenweis 2007, Atmos. Chem. Phys. 7, 1961: curva de Köhler con kappa (ec. 6)',
  pruppacherKlett: 'H. R. Pruppacher y J. D. Klett 1997, Microphysics of Clouds and Precipitation, 2.ª ed., cap. 13: crecimiento de gotitas',
  bohrenHuffman: 'C. F. Bohren y D. R. Huffman 1983, Absorption and Scattering of Light by Small Particles, caps. 3 y 4: extinción por gotitas',
  koschmieder: 'H. Koschmieder 1924, Beitr. Phys. freien Atmos. 12, 33: contraste; menor contraste visible de 0,05 como en OMM-N.º 8',
  hinds: 'W. C. Hinds 1999, Aerosol Technology, 2.ª ed., cap. 3: caída con deslizamiento',
  cliftGraceWeber: 'R. Clift, J. R. Grace y M. E. Weber 1978, Bubbles, Drops and Particles, tabla 5.2: resistencia de gotas mayores',
  seinfeldPandis: 'J. H. Seinfeld y S. N. Pandis 2006, Atmospheric Chemistry and Physics, 2.ª ed., caps. 11 y 13: nucleación, coagulación',
  cornerPendlebury: 'J. Corner y E. D. Pendlebury 1951, Proc. Phys. Soc. B 64, 645: caída y difusión hacia las paredes de un recipiente; esfera según J. G. Crump y J. H. Seinfeld 1981, J. Aerosol Sci. 12, 405',
  thomson: 'J. J. Thomson 1906, Conduction of Electricity through Gases, 2.ª ed.: gotitas sobre iones',
  airy: 'G. B. Airy 1835, Trans. Cambridge Phil. Soc. 5, 283: anillos de un obstáculo redondo',
  evansStefany: 'L. B. Evans y N. E. Stefany 1966, Chem. Eng. Prog. Symp. Ser. 62 (64), 209: calor entre el gas y las paredes de un cilindro cerrado',
  jousten: 'K. Jousten 2016, Handbook of Vacuum Technology, 2.ª ed.: presión tras las emboladas de una bomba',
  youngBudynas: 'W. C. Young y R. G. Budynas 2002, Roark’s Formulas for Stress and Strain, 7.ª ed., tabla 13.1: paredes delgadas',
  baker: 'W. E. Baker et al. 1983, Explosion Hazards and Evaluation, cap. 2: energía de un gas a presión',
};

export const run: typeof en.run = {
  title: 'La práctica, minuto a minuto',
  titleDownward: 'La práctica, minuto a minuto, hacia abajo',
  gaugePanel: (unit) => `Manómetro, ${unit} respecto al aula`,
  thermometerPanel: (unit) => `Termómetro, ${unit}`,
  gauge: 'Manóm.',
  thermometer: 'Termómetro',
  minutesAxis: 'Minutos desde el timbre',
  thermometerCurve: 'termómetro',
  airCurve: 'el aire mismo',
  describe: (steps, minutes, gaugeLow, gaugeHigh, gaugeUnit, low, high, unit) =>
    `${counted(steps, 'paso', 'pasos')} en ${minutes} minutos. El manómetro va de ${gaugeLow} a ${gaugeHigh} ${gaugeUnit} respecto al aula; el termómetro, de ${low} a ${high} ${unit}. La misma práctica está en una tabla bajo el dibujo.`,
  step: (number, at, title) => `Paso ${number}, ${at}: ${title}`,
  asTable: 'La práctica en una tabla',
  heads: { step: 'Paso', begins: 'Empieza', gauge: 'El manómetro llega a', thermometer: 'Termómetro al final', air: 'Aire al final' },
};

export const path: typeof en.path = {
  pressure: 'Presión, hPa',
  temperature: 'Temperatura, °C',
  clear: 'sin nube',
  cloudy: 'con nube',
  describe: (from, to, warm, clear, cloudy) =>
    `La presión baja de ${from} a ${to} hPa. Sin gotitas el aire se enfría de ${warm} a ${clear} °C; con gotitas, a ${cloudy} °C.`,
};

export const setup: typeof en.setup = {
  fromSide: 'Vista lateral',
  fromAbove: 'Vista desde arriba',
  titleFromSide: (title) => `${title}, vista lateral`,
  titleFromAbove: (title) => `${title}, vista desde arriba`,
  classLooks: 'desde aquí mira la clase',
  shapes: { cylinder: 'cilindro', sphere: 'esfera' },
  thermometers: {
    stem: 'un termómetro de varilla (2) que entra por arriba',
    thermocouple: 'un termopar (2) de hilo fino que entra por arriba',
    digital: 'la sonda de un termómetro digital (2) que entra por arriba',
  },
  gauges: { dial: 'Un manómetro de aguja (3)', digital: 'Un manómetro digital (3)' },
  sources: {
    'stroke-pump': 'Una bomba de mano (5) extrae aire por la válvula (4)',
    'steady-pump': 'Una bomba en marcha (5) extrae aire por la válvula (4)',
    squeeze: 'Las manos aprietan los lados del recipiente y los sueltan (5); la válvula (4) está cerrada',
    pressurise: 'Una bomba (5) introduce aire por la válvula (4), que después lo deja salir',
  },
  describeSide: (shape, thermometer, gauge, source) =>
    `Recipiente cerrado en forma de ${shape} (1) con ${thermometer}. ${gauge} está entre el recipiente y la válvula. ${source}. Los números son los de la lista de piezas.`,
  describeAbove: (from) => `La luz (6) viene ${from}; el fondo (7) está detrás del recipiente (1); la clase mira desde delante.`,
  lightFrom: { side: 'de lado', back: 'desde atrás', front: 'desde delante' },
  materials: { polycarbonate: 'policarbonato', acrylic: 'metacrilato', PET: 'PET', glass: 'vidrio', steel: 'acero' },
  vessel: (material, shape, volume, lowest, highest) => `${shape} de ${material}, ${volume}, presión admisible de ${lowest} a ${highest}`,
  gauge: { dial: 'manómetro de aguja', digital: 'manómetro digital' },
  gaugeLabel: (gauge, unit, resolution) => `${gauge} en ${unit}, resolución de ${resolution}`,
  thermometer: { stem: 'termómetro de varilla', thermocouple: 'termopar', digital: 'termómetro digital' },
  handPump: (volume) => `bomba de mano, ${volume} por embolada`,
  pump: (volume) => `bomba, ${volume} por minuto`,
  squeezed: (volume) => `se aprieta ${volume}`,
  pumpedUp: (pressure) => `bomba, hasta ${pressure}; luego se suelta el aire`,
};

export const code: typeof en.code = { of: (address) => `Código de la dirección ${address}` };

export const signs: typeof en.signs = {
  W001: 'Advertencia',
  W002: 'Materia explosiva',
  W010: 'Baja temperatura, congelación',
  W011: 'Suelo resbaladizo',
  W012: 'Electricidad',
  W017: 'Superficie caliente',
  W021: 'Materia inflamable',
  W023: 'Sustancia corrosiva',
  W027: 'Radiación óptica intensa',
  W029: 'Recipiente o botella a presión',
  P001: 'Prohibido',
  P002: 'Prohibido fumar',
  P003: 'Prohibidas las llamas abiertas, el fuego y las fuentes de ignición; prohibido fumar',
  P010: 'Prohibido tocar',
  M001: 'Es obligatorio',
  M002: 'Leer las instrucciones',
  M003: 'Protección de los oídos',
  M004: 'Protección de los ojos',
  M009: 'Guantes de protección',
  M010: 'Ropa de protección',
  M011: 'Lavarse las manos',
  M013: 'Pantalla facial',
  E003: 'Primeros auxilios',
  E004: 'Teléfono de emergencia',
  E011: 'Lavaojos',
  F001: 'Extintor',
  F004: 'Equipo contra incendios',
  F005: 'Pulsador de alarma de incendios',
};

export const signals: typeof en.signals = { DANGER: 'PELIGRO', WARNING: 'ADVERTENCIA', CAUTION: 'PRECAUCIÓN', NOTICE: 'AVISO' };

export const tags: typeof en.tags = {
  flame: 'llama', ember: 'brasa', smoke: 'humo', aerosol: 'niebla fina', evacuated: 'vacío', pressurised: 'presión', glass: 'vidrio', plastic: 'plástico', solvent: 'disolvente',
  'hot-water': 'agua caliente', lamp: 'lámpara',
};

export const conditions: typeof en.conditions = {
  computedFor: (room, temperature, pressure, humidity) => `Calculado para ${room}: ${temperature}, ${pressure}, humedad del ${humidity} en el recipiente`,
  elsewhere: (elevation) => `una sala a ${elevation}`,
  drop: (drop) => `una caída de ${drop}`,
  number: (number) => `partículas ${number}`,
  cloudEvery: (time) => `una nube cada ${time}`,
};

export const stated: typeof en.stated = {
  roomPressure: 'Presión del aula, absoluta',
  roomTemperature: 'Temperatura del aula',
  roomHumidity: 'Humedad del aula',
  startHumidity: 'Humedad en el recipiente',
  vesselVolume: 'Volumen del recipiente',
  ratedLowestGauge: 'Presión mínima admisible',
  ratedHighestGauge: 'Presión máxima admisible',
  plannedDrop: 'Caída prevista',
  gaugeResolution: 'Resolución del manómetro',
  thermometerResolution: 'Resolución del termómetro',
  byItsMaker: 'presión manométrica, según su fabricante',
};

export const answers: typeof en.answers = { within: (width) => `, correcto dentro de ±${width}`, points: 'puntos porcentuales' };

export const key: typeof en.key = {
  rule: 'Correcto dentro de dos incertidumbres típicas: lo que dejan sin determinar el aula, el manómetro y el redondeo, y un medio por ciento (en una temperatura, 0,2 K) por las constantes que use cada estudiante.',
  authorsRule: 'Hasta dónde vale una respuesta lo ha fijado quien escribió la pregunta.',
  alsoRight: (answers) => `También es correcto: ${answers}.`,
  right: 'correcta',
  wrong: 'incorrecta',
  rightOrder: 'Orden correcto:',
  markedOutOf: (points) => `Se califica sobre ${points}:`,
};

export const questions: typeof en.questions = {
  kinds: { choice: 'Elegir una', numeric: 'Número con unidad', ordering: 'Ordenar', text: 'Con palabras propias' },
  kindsOnBoard: { choice: 'elegir una', numeric: 'un número con su unidad', ordering: 'ordenar', text: 'con palabras propias' },
  among: 'Entre las preguntas de este kit',
  answer: 'Respuesta',
  order: 'Orden',
  level: (level) => `Nivel ${level}`,
  levels: { 1: 'Recordar lo visto', 2: 'Usarlo', 3: 'Razonar más allá' },
  none: 'Este kit aún no tiene preguntas.',
  paperFrom: '¿Un examen con ellas?',
  ofLevels: 'Niveles',
  howMany: 'Preguntas',
  version: 'Versión',
  printIt: 'Imprimir',
  allOfThem: 'Volver a la lista',
  aboutVersions: 'Cada versión tiene las mismas preguntas en otro orden, para quienes se sientan juntos. La dirección de esta página nombra el examen; abierta en la carpeta del profesorado, muestra la clave.',
  paper: 'Examen',
  keyToPaper: 'Clave del examen',
};

export const platform: typeof en.platform = {
  item: (kit, number) => `${kit}, pregunta ${number}`,
  answer: 'Respuesta (con punto decimal):',
  forPlatform: 'Para una plataforma de aprendizaje:',
  file: (version) => `Las preguntas en QTI ${version}`,
  holdsAnswers: 'Los archivos llevan las respuestas.',
};

export const tableFiles: typeof en.tableFiles = { mark: 'Observación' };

export const lesson: typeof en.lesson = {
  asTable: (name) => `${name}, en una tabla`,
  table: 'Tabla',
  predict: 'Predecir',
  observe: 'Observar',
  explain: 'Explicar',
  gauge: 'manómetro',
  lookFor: { clear: 'se busca: aire sin nube', cloud: 'se busca: nube', clearing: 'se busca: la nube desaparece' },
  whatToDo: 'Qué hacer si ocurre',
  quoted: (text) => `«${text}»`,
};

export const citation: typeof en.citation = {
  and: 'y',
  noDate: 's. f.',
  edition: (edition) => `${edition}.ª ed.`,
};

export const verdict: typeof en.verdict = {
  yes: 'Sí.',
  no: 'No.',
  works: 'sí',
  fails: 'no',
  whatToChange: 'Qué cambiar',
  cloud: (drop, seen) => `Llevado a ${drop} por debajo del inicio, este aire forma una nube; se ve a partir de ${seen}.`,
  rating: (gauge, rated) => `El manómetro llegaría a ${gauge}, y el fabricante solo autoriza el recipiente hasta ${rated}.`,
  gauge: (gauge) => `El manómetro no muestra ${gauge}.`,
  pump: (drop, deepest) => `La bomba no da una caída de ${drop}; aquí se queda en ${deepest}.`,
  neverSaturated: 'El aire es tan seco o frío que ninguna caída de presión lo satura antes de que se congelen las gotitas.',
  dry: (onset, deepest) => `El aire es demasiado seco: solo se satura a ${onset}, y recipiente, manómetro y bomba permiten ${deepest}.`,
  shallow: (drop, seen) => `Con ${drop} aún no hay nube que se pueda ver; hacen falta ${seen}.`,
  frozen: 'Las gotitas estarían a menos de −38 °C, donde se congelan por sí solas: una nube de hielo, de la que estos números nada dicen.',
  unseen: 'La nube queda demasiado tenue para verse a través de este recipiente con su luz.',
  stayWithin: (deepest) => `No pase del límite: prevea como mucho ${deepest}, o tome un recipiente que admita más. Nunca ponga a prueba un límite.`,
  otherGauge: 'Tome un manómetro cuyo alcance abarque toda la práctica, o prevea menos.',
  planLess: (deepest) => `Prevea ${deepest} o menos, o tome una bomba que llegue más lejos.`,
  warmRoom: 'Caliente el aula: a esta temperatura incluso el aire húmedo contiene muy poco vapor.',
  moisten: (humidity) => `Humedezca el aire: un poco de agua en el recipiente cerrado durante unos minutos. Desde una humedad del ${humidity}, la nube empieza a la mitad de la caída prevista.`,
  pumpMore: (drop) => `Prevea ${drop} o más.`,
  pumpMoreOrMoisten: (drop, humidity) => `Prevea ${drop} o más, o humedezca el aire del recipiente hasta el ${humidity}.`,
  pumpLess: 'Bombee menos, o empiece con más temperatura.',
  letInParticles: 'Deje entrar partículas, ilumine de lado contra un fondo negro, o tome un recipiente más ancho.',
  saturatedAt: (drop) => `El aire del recipiente se satura a ${drop} por debajo del inicio.`,
  strokes: (strokes, count) => `La bomba necesita ${strokes} ${count === 1 ? 'embolada' : 'emboladas'}.`,
  strokesAndTime: (strokes, count, time) => `La bomba necesita ${strokes} ${count === 1 ? 'embolada' : 'emboladas'}, cerca de ${time}.`,
  time: (time) => `La presión cae en cerca de ${time}.`,
  gaugeShows: (gauge) => `El manómetro muestra ${gauge} respecto al aula.`,
  airCools: (fall) => `Sin gotitas el aire se enfría ${fall}.`,
  thermometerFalls: (fall, most) => `El termómetro baja ${fall} al acabar la caída de presión, y ${most} como mucho.`,
  thermometerHardly: (fall, most) => `El termómetro baja ${fall} al acabar la caída de presión, y ${most} como mucho, lo que apenas muestra: tome uno más rápido o más fino.`,
  margin: (rated, left) => `Hasta el límite del recipiente, ${rated}, quedan ${left}.`,
  littleMargin: (rated, left) => `Hasta el límite del recipiente, ${rated}, quedan ${left}: poco.`,
};

export const willItWork: typeof en.willItWork = {
  title: '¿Funcionará aquí?',
  description: 'Su aula y sus aparatos: si se forma una nube, desde qué caída, con cuántas emboladas, y cuánto falta hasta el límite del recipiente.',
  apparatus: 'Aparatos',
  room: 'Aula',
  plannedAs: (plan) => `Según el plan de ${plan}`,
  plan: (kit, drop) => `${kit}: ${drop} por debajo del inicio`,
  answer: 'La respuesta',
  forRoom: 'para',
  each: 'Cada aparato',
  inRoom: (room) => `en ${room}`,
  heads: {
    works: 'Funciona', saturated: 'Saturado con una caída de', seen: 'Nube visible desde', strokes: 'Emboladas', pumping: 'La presión cae en', gauge: 'Manómetro al final',
    thermometer: 'El termómetro baja', margin: 'Margen hasta el límite',
  },
};

export const roomFields: typeof en.roomFields = {
  elevation: 'Altitud',
  pressure: 'Presión del lugar, absoluta',
  temperature: 'Temperatura del aula',
  humidity: 'Humedad del aula',
  moisture: 'Humedad en el recipiente',
  volume: 'Volumen del recipiente',
  diameter: 'Su diámetro interior',
  rating: 'Límite del fabricante, respecto al aula',
  stroke: 'Volumen de una embolada',
  pumping: 'Caudal de la bomba',
  thermometer: 'Constante de tiempo del termómetro',
  drop: 'Bombeado por debajo del inicio',
};

export const room: typeof en.room = {
  yours: 'su aula',
  noNumber: (field, typed, example) => `${field}: «${typed}» no es un número. Escriba uno como ${example}.`,
  outside: (field, typed, low, high) => `${field}: ${typed} queda fuera de lo que se puede calcular, de ${low} a ${high}.`,
  noUnit: (field, typed, example) => `${field}: «${typed}» no lleva una unidad conocida aquí. Escriba una como en ${example}.`,
  meansNothing: (text) => `La dirección dice ${text}, que aquí no significa nada.`,
  keepsLast: 'La página conserva sus últimos números.',
  someKeepLast: 'Parte de esta página conserva sus últimos números: la física no tiene respuesta para esta aula.',
  notLoaded: (file) => `Parte de esta página conserva sus últimos números: no se pudo cargar ${file}.`,
};

export const roomControl: typeof en.roomControl = {
  ask: '¿Su propia aula?',
  nowFor: 'Ahora calculado para',
  air: 'Aire del aula',
  vessel: 'Recipiente',
  instruments: 'Instrumentos',
  less: (field) => `${field}: menos`,
  more: (field) => `${field}: más`,
  shape: 'Su forma',
  shapes: { cylinder: 'cilindro', sphere: 'esfera' },
  units: 'Unidades que van primero',
  back: 'Volver al aula de la página',
  about:
    'La altitud y la presión del lugar dicen lo mismo: cuenta la última que usted ponga. Lo que ponga se queda en este dispositivo y en la dirección de esta página, de modo que una dirección copiada lo lleva consigo. El límite es el de su propio recipiente, tal como lo declara su fabricante.',
};

export const fit: typeof en.fit = {
  constants: {
    wallTimeConstant: 'la constante de tiempo de las paredes',
    thermometerTimeConstant: 'la constante de tiempo del termómetro',
    leak: 'la fuga',
    offset: 'el error de cero del termómetro',
  },
  determined: 'Las lecturas determinan cada constante.',
  undetermined: (constants) => `Las lecturas no determinan ${listed(constants)}: un bombeo más rápido o más lecturas lo harían.`,
  inseparable: (one, other) => `Las lecturas apenas distinguen ${one} de ${other}: lo que una añade, la otra puede quitarlo.`,
  course: 'Los residuos no son aleatorios: ocurrió algo que el modelo no tiene en cuenta.',
  tooFew: (count, fewest) => `Hay ${counted(count, 'lectura', 'lecturas')}. Un ajuste necesita al menos ${fewest}, mejor 20 o más.`,
  cannotFollow: 'El modelo no puede seguir estas lecturas: quedan fuera de lo que puede calcular.',
  absolute: (room) => `El manómetro empieza cerca de la presión del aula, ${room}: parecen presiones absolutas. Reste la presión del aula a cada una, de modo que el manómetro empiece en 0.`,
  otherRoom: 'El termómetro queda lejos de la temperatura del aula, de la que parte el modelo: diga en «Su aula» qué temperatura tenía la suya.',
  startsFar: 'La primera lectura queda lejos de donde empieza el recipiente. Lea una vez antes de bombear, con todo en reposo: ahí empieza el modelo.',
  explained: 'Explicado.',
  notExplained: 'Sin explicar.',
  accountFor: (percent) => `El calor de las paredes y el retraso del termómetro explican el ${percent} % de lo que hizo el termómetro (de sus desviaciones cuadráticas respecto a la media).`,
  found: (values) => `Hallado, cada valor con su error típico: ${values}.`,
  scatter: (left) => `Las lecturas se dispersan en torno al modelo ${left}, una desviación típica.`,
  readingBrings: (resolution, brings) => `Leer con una resolución de ${resolution} ya produce por sí solo una dispersión de ${brings}, de modo que apenas queda nada más sin explicar.`,
  somethingElse: (resolution, brings) => `Leer con una resolución de ${resolution} ya produce por sí solo una dispersión de ${brings}: algo más se suma. Busque una tendencia en los residuos.`,
  noClosed: 'El manómetro no muestra ningún intervalo en que no se tocaran ni la bomba ni la válvula, así que no hay de dónde hallar una fuga.',
  closed: (from, to) => `Se toma como intervalo sin tocar bomba ni válvula el que va de ${from} a ${to} s.`,
  closedAsGauge: (from, to) => `Se toma como intervalo sin tocar bomba ni válvula el que va de ${from} a ${to} s, como muestra el manómetro.`,
  bars: 'Las barras abarcan dos incertidumbres típicas a cada lado, cerca del 95 %: las declaradas con las lecturas o, si no las hay, las de leer con la resolución del instrumento.',
  names: {
    wallTimeConstant: 'Constante de tiempo de las paredes',
    thermometerTimeConstant: 'Constante de tiempo del termómetro',
    leak: 'Fuga, de la diferencia con el aula',
    offset: 'Termómetro menos temperatura verdadera',
  },
  perMinute: '% por minuto',
  ownConstants: 'Las constantes propias del recipiente',
  constantsOf: (title) => `${title}: constantes`,
  bestConstants: (title) => `${title}: constantes que mejor se ajustan a las lecturas`,
  heads: { constant: 'Constante', fitted: 'Ajustada', error: 'Error típico', interval: 'Intervalo del 95 %', own: 'La del kit' },
  intervals: (degrees) =>
    `Los intervalos contienen la constante verdadera en 95 de cada 100 prácticas como esta, si el modelo es correcto: factor de Student para ${degrees} grados de libertad, errores del modelo linealizado, dispersión de cada instrumento tomada de los residuos.`,
  notFound: 'no hallada: hacen falta lecturas con la válvula cerrada',
  notDetermined: 'estas lecturas no la determinan',
  inside: (value) => `${value}, dentro`,
  outside: (value) => `${value}, fuera`,
  between: (low, high) => `de ${low} a ${high}`,
  columns: { time: 'Tiempo', gauge: 'Manómetro', thermometer: 'Termómetro', model: 'Modelo', residual: 'Lectura menos modelo' },
  rowsAsTable: (rows) => `${counted(rows, 'fila', 'filas')} en una tabla`,
  asTable: (name) => `${name}, en una tabla`,
  gaugePanel: (unit) => `Manómetro, ${unit} respecto al aula`,
  thermometerPanel: (unit) => `Termómetro, ${unit}`,
  residualPanel: (unit) => `Termómetro: lectura menos modelo, ${unit}`,
  timeAxis: 'Tiempo, s',
  model: 'modelo',
  readings: 'lecturas',
  leftOver: 'residuos',
  leftAlone: 'sin tocar bomba ni válvula',
  span: (gaugeLow, gaugeHigh, low, high) => `El manómetro va de ${gaugeLow} a ${gaugeHigh} respecto al aula; el termómetro, de ${low} a ${high}.`,
  describeModel: (span) => `${span} Ambos son del modelo. Los mismos valores están en la tabla.`,
  describeReadings: (count, span) => `${counted(count, 'lectura', 'lecturas')} como puntos con barras de error, el modelo como línea. ${span} Los mismos valores están en la tabla.`,
  titleOf: (name) => `${name}: lecturas y modelo`,
  expected: 'Lo que el modelo permite esperar de la prueba sin partículas',
};

export const readingsFile: typeof en.readingsFile = {
  columns: {
    time: 'tiempo', gauge: 'manómetro', thermometer: 'termómetro', timeUncertainty: 'incertidumbre del tiempo', gaugeUncertainty: 'incertidumbre del manómetro',
    thermometerUncertainty: 'incertidumbre del termómetro',
  },
  tooManyRows: (rows, most) => [`hay ${rows} filas, y ${most} son el máximo`, 'conserve una de cada dos o de cada diez'],
  tooFewRows: (rows, fewest) => [`hay ${rows} filas de lecturas`, `escriba al menos ${fewest}, cada una en su línea`],
  notAfter: (time, before) => [`el tiempo ${time} s no viene después de ${before} s, el de la fila anterior`, 'ponga las filas en el orden de sus tiempos'],
  notParted: (header) => ['las columnas no están separadas', `sepárelas con punto y coma: \`${header}\``],
  missing: (column, example) => [`falta la columna \`${column}\``, `escriba una columna \`${example}\``],
  twice: (column) => [`la columna \`${column}\` está dos veces`, 'quite una de las dos'],
  noHeader: (header) => ['la primera línea no nombra ninguna de las columnas que se leen', `escriba \`${header}\` como primera línea`],
  noColumn: (column, example) => [`no hay ninguna columna \`${column}\``, `escriba \`${example}\` o quite la columna`],
  noUnit: (column, example) => [`la columna \`${column}\` no lleva unidad`, `escriba la unidad detrás, como en \`${example}\``],
  wrongUnit: (unit, column, example) => [`\`${unit}\` no es una unidad de \`${column}\``, `escriba una como en \`${example}\``],
  tooManyCells: (cells, columns) => [`esta fila tiene ${cells} celdas, y la cabecera tiene ${columns} columnas`, 'separe las columnas con punto y coma, y los decimales con coma'],
  tooFewCells: (cells, columns, missing) => [`esta fila tiene ${cells} celdas, y la cabecera tiene ${columns} columnas: falta \`${missing}\``, 'escriba un número en cada columna o quite la fila'],
  empty: (column, unit) => [`\`${column}\` está vacía`, `escriba un número en ${unit} o quite la fila`],
  noClock: (cell) => [`\`${cell}\` no es un tiempo en minutos y segundos`, 'escríbalo como en `0:05`'],
  noNumber: (cell, unit) => [`\`${cell}\` no es un número`, `escriba un número en ${unit} sin la unidad, como en \`12,5\``],
  beyond: (cell, column) => [`\`${cell}\` está fuera de lo que puede ser \`${column}\``, 'revise el número y la unidad de la cabecera'],
  formula: (cell) => [`\`${cell}\` empieza como una fórmula, que una hoja de cálculo ejecutaría`, 'escriba el número que da'],
};

export const ownReadings: typeof en.ownReadings = {
  title: 'Sus lecturas y el modelo',
  writeFirst: (column) => `Escriba antes ${column}.`,
  notAdded: 'La fila no se ha añadido.',
  added: (rows) => `Fila añadida: ${counted(rows, 'fila', 'filas')}.`,
  tooLarge: (file) => `${file} es mayor de lo que puede ser una tabla de lecturas.`,
  unreadable: (file) => `No se pudo leer ${file}.`,
  wrong: (count) => (count === 1 ? 'Hay un error.' : `Hay ${count} errores.`),
  fitting: 'Ajustando el modelo …',
  compared: (count, room, said) => `${counted(count, 'lectura comparada', 'lecturas comparadas')} para ${room}. ${said}`,
  twoTimes: 'Escriba dos tiempos en segundos, primero el menor, o deje ambos vacíos.',
  nothingToSave: 'Aún no hay nada que guardar.',
  saved: (file) => `Guardado como ${file}.`,
  fileName: (kit) => `${kit}-lecturas.csv`,
  cleared: 'Sus lecturas se han borrado de este dispositivo.',
  noAnswer: 'El modelo no tiene respuesta para esta aula.',
  line: (line, column, what, instead) => `Línea ${line}${column === undefined ? '' : `, columna ${column}`}: ${what}; ${instead}.`,
  more: (count) => `Y ${count} más.`,
};

export const readings: typeof en.readings = {
  fittedFor: 'Ajustado para el aula del propio kit.',
  howToRecord: 'Cómo anotar',
  columns: 'Escriba tres columnas, cada una con su unidad en la cabecera: el tiempo en s, min o min:s; el manómetro en kPa, hPa, mbar, inHg, mmHg o psi; el termómetro en °C o °F. Las hojas de cálculo guardan una tabla así como CSV; o copie sus celdas y péguelas abajo.',
  example: 'Ejemplo de una tabla de lecturas',
  everyFive: 'Lea cada cinco segundos. Una persona canta el tiempo, otra lee el manómetro, otra el termómetro, otra escribe. O grabe ambos en vídeo y léalos después.',
  begin: 'Empiece diez segundos antes de bombear, con todo en reposo. Bombee con ritmo constante y rápido hasta la lectura prevista, cierre la válvula y no toque nada durante dos minutos y medio. Termine antes de dejar entrar aire.',
  beginPressed: 'Meta aire hasta la lectura prevista y espere a que el termómetro vuelva a marcar la temperatura del aula. Empiece diez segundos antes de soltar. Suelte de golpe y del todo, cierre la salida cuando el manómetro marque cero y no toque nada durante dos minutos y medio.',
  estimate: 'Estime entre las divisiones. Las lecturas por debajo de la presión del aula llevan signo menos.',
  note: 'Anote además: temperatura y presión del aula, cuánto tiempo estuvo cerrado el recipiente, cuándo empezó y acabó el bombeo, y si se vio una nube y con qué lectura.',
  notePressed: 'Anote además: temperatura y presión del aula, cuánto tiempo estuvo cerrado el recipiente, cuándo se soltó el aire, y si se vio una nube.',
  uncertainties: (gauge, thermometer) => `Si sabe con qué precisión lee, añada columnas como ${gauge} y ${thermometer}: incertidumbres típicas.`,
  whatToExpect: 'Qué esperar',
  cleanRun: 'La prueba sin partículas de los aparatos del propio kit, según el modelo.',
  yourOwn: 'Sus propias lecturas',
  staysHere: 'Nada sale de este dispositivo. Conserva sus lecturas hasta que las borre.',
  paste: 'Sus lecturas: pegue una tabla, o escriba',
  orLoad: 'O cargue un archivo CSV',
  addRow: 'Añadir una fila',
  addTheRow: 'Añadir la fila',
  aboutRun: 'Sobre la prueba',
  inVessel: 'En el recipiente',
  noParticles: 'sin partículas: no se formó nube',
  cloudSeen: (particles) => `${particles}: se vio una nube`,
  closedFrom: 'Válvula cerrada desde, s',
  closedTo: 'hasta, s',
  leaveEmpty: 'Deje ambos tiempos vacíos para que se tomen del manómetro.',
  compare: 'Comparar con el modelo',
  save: 'Guardar como CSV',
  clear: 'Borrar',
  allowScript: 'Para ajustar lecturas propias en esta página, permita que se ejecute su programa. No envía nada.',
};

export const frame: typeof en.frame = {
  language: 'Español',
  kits: 'Kits',
  kitsOf: (school) => `Kits de ${school}`,
  yourRoom: 'Su aula',
  hazards: 'Peligros',
  sources: 'Fuentes',
  search: 'Buscar',
  skip: 'Ir directamente a la hoja',
  teachersEdition: 'Edición del profesorado',
  site: 'Sitio',
  everyNumber: 'Cada número está calculado para el aula y los aparatos que nombra su kit.',
  license: (license) => `Licencia: ${license}.`,
  holdsAnswers: 'Esta edición contiene respuestas: entréguela solo al profesorado.',
  checks: 'Comprobaciones',
  contribute: 'Contribuir',
  draft: (title) => `Borrador. ${title}`,
};

export const sheets: typeof en.sheets = {
  kit: { name: 'Kit', about: 'Qué muestra y qué necesita.' },
  run: { name: 'Guion', about: 'Preparación y, después, cada paso en su minuto, junto al manómetro, el termómetro y aquello en lo que fijarse.' },
  student: { name: 'Hoja del alumnado', about: 'Predecir, observar, explicar. Dos páginas impresas.' },
  background: { name: 'Fundamento', about: 'La ciencia, con sus fórmulas y figuras.' },
  numbers: { name: 'Números', about: 'Cada tabla y figura, con sus condiciones, su fórmula y sus fuentes.' },
  questions: { name: 'Preguntas', about: 'Por niveles, para la clase o para un examen.' },
  safety: { name: 'Seguridad', about: 'Peligros, medidas, qué hacer si ocurre; un formulario para firmar.' },
  board: { name: 'Pizarra', about: 'Para el proyector: un paso o una pregunta cada vez, la predicción antes que el número.' },
  readings: { name: 'Lecturas', about: 'Las lecturas de la clase frente al modelo: escríbalas, péguelas o cárguelas.' },
  booklet: { name: 'Cuadernillo', about: 'El kit entero en un documento, para imprimir.' },
};

export const kit: typeof en.kit = {
  edition: 'Edición',
  draft: 'Borrador',
  editionOf: (version) => `Edición ${version}`,
  draftNoEdition: 'Borrador, no es una edición',
  teachersEditionOf: (folder) => `Edición del profesorado de ${folder}`,
  ages: 'Edades',
  lesson: 'Duración',
  license: 'Licencia',
  language: 'Idioma',
  alsoIn: 'En otro idioma',
  computedFor: 'Calculado para',
  sheetsOfKit: 'Hojas de este kit',
  shelf: (school) => `Kits de clase de ${school}: demostraciones de laboratorio cuyos números están todos calculados para el aula.`,
  uses: 'Usa',
  nothingHazardous: 'nada peligroso',
  run: 'La práctica',
  leadsToRunSheet: 'Cada paso lleva a su lugar en el guion.',
  tapStep: 'Toque un paso para ir a él.',
  sheets: 'Hojas',
  data: 'Datos',
  dataAbout: 'Los números de este kit en un archivo (JSON).',
  oneFile: 'Un archivo',
  oneFileAbout: 'El kit entero en una página, para llevarlo en una memoria o enviarlo por correo.',
  zip: 'Zip',
  zipAbout: 'Esa página, cada tabla para una hoja de cálculo (CSV), los números y el texto del que se hizo.',
  learn: 'Los alumnos aprenden a',
  hazards: 'Peligros',
  onSafetySheet: (count) => `${count} en la hoja de seguridad`,
  materials: 'Materiales',
  item: 'Artículo',
  specification: 'Especificación',
  quantity: 'Cantidad',
  curriculum: 'Currículo',
  ownWords: 'Con nuestras palabras; el enunciado mismo está tras el enlace.',
  beyond: (text) => `Va más allá: ${text}`,
  changes: 'Cambios',
  allEditions: 'Todas las ediciones y lo que cambió de una a otra',
  newestEdition: 'La dirección que muestra siempre la edición más reciente',
  draftOfNext: 'Borrador de la próxima edición',
  published: 'publicada el',
  withdrawn: 'retirada',
  room: 'Aula',
  beforeBell: 'Antes del timbre',
  setUp: 'Montaje',
  name: 'Nombre',
  class: 'Clase',
  date: 'Fecha',
  sources: 'Fuentes',
  atBell: 'al sonar el timbre',
  dayBefore: 'la víspera',
  daysBefore: (days) => `${days} días antes`,
  before: (time) => `${time} antes`,
  thisPage: 'Esta página, para su propia aula:',
};

export const notices: typeof en.notices = {
  ofThisEdition: 'Lo que se ha sabido de esta edición desde que se publicó',
  kinds: { withdrawn: 'Retirada', correction: 'Corregida' },
  doNotUse: 'No use más esta edición.',
  useInstead: (version) => `Use en su lugar la edición ${version}.`,
  corrected: (count) => counted(count, 'número corregido', 'números corregidos'),
  heads: { what: 'Qué', before: 'Como se publicó', after: 'Corregido' },
  unseen: (count) => (count === 1 ? 'Un número cambia en menos de lo que se imprime.' : `${count} números cambian en menos de lo que se imprime.`),
  forTeachers: (count) => (count === 1 ? 'Otro número corregido está en la edición del profesorado.' : `Otros ${count} números corregidos están en la edición del profesorado.`),
  all: 'Todas las ediciones y lo que cambió',
  withdrawnTitle: (title) => `Retirada. ${title}`,
  inMargin: (date) => `Retirada el ${date}. No la use.`,
  foundAt: (address) => `Correcciones: ${address}`,
};

export const changes: typeof en.changes = {
  title: 'Ediciones y cambios',
  description: (title) => `Las ediciones de ${title}, lo que se corrigió después y lo que cambió de una a otra.`,
  editions: 'Ediciones',
  heads: { edition: 'Edición', published: 'Publicada', state: 'Estado' },
  newest: 'la más reciente',
  withdrawn: (date) => `retirada el ${date}`,
  replacedBy: (version) => `la sustituye la ${version}`,
  corrected: (date) => `corregida el ${date}`,
  notPublished: 'sin publicar',
  first: 'La primera edición.',
  since: (version) => `Lo que cambió desde la ${version}`,
  nothing: 'Nada que se imprima.',
  forTeachersOnly: 'Solo lo que está en la edición del profesorado.',
  onSheet: (sheet) => `Palabras: ${sheet}`,
  numbers: (count) => counted(count, 'número que se imprime de otro modo', 'números que se imprimen de otro modo'),
  number: 'Número',
};

export const numbers: typeof en.numbers = {
  alsoOn: (sheet) => `También en: ${sheet}.`,
  how: 'Cómo se calcula',
  from: 'Fuentes',
};

export const board: typeof en.board = {
  predictFirst: 'Primero predecir, luego mirar',
  computedFor: 'Calculado para',
  fromBoard: (number) => `Desde la pizarra ${number}`,
  previous: 'Anterior',
  next: 'Siguiente',
  kit: 'Kit',
  whatGauge: '¿Qué dirá el manómetro?',
  whatSeen: '¿Qué se verá?',
  step: (number, count, minutes) => `Paso ${number} de ${count} · ${minutes} min`,
  withdrawn: 'Esta edición está retirada. No la use.',
  corrected: 'Esta edición se ha corregido.',
  question: (number, count, level, kind) => `Pregunta ${number} de ${count} · nivel ${level} · ${kind}`,
};

export const boardKeys: typeof en.boardKeys = { space: 'espacio', or: 'o', kit: 'kit' };

export const booklet: typeof en.booklet = {
  theKit: 'El kit',
  contents: 'Contenido',
  ages: (ages, level) => `${ages} años (${level})`,
  computedFor: 'Calculado para',
  everyNumber: 'cada número de este cuadernillo es de esa aula.',
};

export const safety: typeof en.safety = {
  title: 'Peligros',
  description: 'Cada peligro de los kits: qué puede ocurrir, qué lo evita, qué hacer si ocurre.',
  who: (who) => `Quién: ${who}`,
  assessment: 'Evaluación de riesgos',
  assessmentTable: 'Tabla de la evaluación de riesgos',
  notValid: 'Borrador, no es válido hasta que se firme.',
  localRules: (activity, edition) => `Deciden las normas locales y personas cualificadas. Actividad: ${activity}, ${edition}.`,
  draft: 'borrador',
  edition: (version) => `edición ${version}`,
  heads: {
    hazard: 'Peligro', who: 'Quién, y cómo', controls: 'Medidas existentes', before: 'P × G', further: 'Otras medidas', after: 'P × G', action: 'Acción, quién, cuándo',
  },
  blanks: { place: 'Lugar', class: 'Clase y edad', assessor: 'Quien evalúa', date: 'Fecha', trial: 'Ensayo hecho el', review: 'Fecha de revisión' },
  anotherHazard: 'Otro peligro de esta aula',
  scale:
    'P probabilidad y G gravedad, cada una de 1 a 3, multiplicadas: antes y después de las otras medidas. Otras medidas en este orden: eliminar, sustituir, aislar, organizar, proteger.',
  emergency: 'Plan de emergencia',
  signature: 'Firma',
  nameAndOffice: 'Nombre y cargo',
};

export const sources: typeof en.sources = {
  title: 'Fuentes',
  description: 'Cada referencia en que se apoyan los kits y sus números.',
  references: 'Referencias',
  inAll: (count) => `${count} en total`,
};

export const search: typeof en.search = {
  title: 'Buscar',
  description: 'Kits, preguntas, números, peligros y fuentes, que aparecen mientras se escribe.',
  groups: { kit: 'Kits', question: 'Preguntas', table: 'Números', hazard: 'Peligros', source: 'Fuentes' },
  draft: 'Borrador',
  draftOf: (title) => `${title} (borrador)`,
};

export const found: typeof en.found = {
  example: 'una palabra, como termómetro',
  kinds: { kit: 'Kit', table: 'Números', question: 'Pregunta', hazard: 'Peligro', source: 'Fuente' },
  nothing: 'No se encontró nada',
  count: (count) => counted(count, 'resultado', 'resultados'),
  first: (count, shown) => `${count} resultados; se muestran los ${shown} primeros`,
};

export const checks: typeof en.checks = {
  title: 'Comprobaciones',
  description: 'Lo que este sitio calcula, junto a lo que otros han publicado: valor, desviación, tolerancia y fuente.',
  summary: (values, sources) =>
    `${values} valores publicados de ${sources} fuentes, junto a lo que calcula la física de este sitio con los mismos datos. Se calcularon al construir este sitio. Las mismas filas son pruebas del programa.`,
  atAGlance: 'De un vistazo',
  summaryOf: 'Resumen de las comprobaciones',
  heads: { module: 'Módulo', values: 'Valores', sources: 'Fuentes', mostUsed: 'Máximo usado' },
  mostUsed:
    'Máximo usado: la mayor parte de su tolerancia que gasta algún valor del módulo. Más allá del 100 % fallan las pruebas. La razón de cada tolerancia está con ella, en inglés. «De memoria» marca una cifra que no se volvió a leer en su fuente.',
  published: 'Publicado',
  computed: 'Calculado',
  deviation: 'Desviación',
  allowed: 'Permitido',
  used: 'Usado',
  fromMemory: 'De memoria.',
  readIn: (where) => `Leído en: ${where}`,
  tolerance: (reason) => `Tolerancia: ${reason}`,
  below: 'por debajo de la cota',
  above: 'por encima de la cota',
  atMost: 'como mucho el valor publicado',
  atLeast: 'al menos el valor publicado',
  under: (share) => `menos del ${share}`,
};

export const offline: typeof en.offline = {
  kept: 'Esta página queda guardada en este dispositivo y no necesita red.',
};
export const notHere: typeof en.notHere = {
  title: 'No está en este dispositivo',
  words: 'No hay red, y esta página no se abrió aquí antes.',
  kits: 'Kits',
};

export const files: typeof en.files = {
  oneFile: 'El kit en un archivo',
  zip: 'El kit en un zip',
  numbers: 'Los números del kit',
  inOneFile: (title) => `En un archivo: ${title}`,
  license: (license) => `Licencia: ${license}`,
  lessonKits: (school) => `Kits de clase · ${school}`,
  short: 'Kits',
  draftOf: (title) => `${title} (borrador)`,
  demonstration: 'demostración',
  lessonPlan: 'plan de clase',
};
