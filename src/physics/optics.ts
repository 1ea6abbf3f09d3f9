/** What can be seen of a cloud of droplets: extinction, contrast, visual range and the colored rings. */
import { DENSITY_LIQUID_WATER } from './constants.ts';
import { exp, log } from './elementary.ts';
import { mieExtinction } from './mie.ts';
import { chosen, inRange, wholeInRange } from './range.ts';
import type { KilogramPerCubicMeter, Meter, PerCubicMeter, Radian, Ratio } from './units.ts';

/** Extinction coefficient: share of a beam lost per meter of path, 1/m. */
export type PerMeter = number;

/** Refractive index of water for yellow-green light: Hale & Querry 1973. */
const INDEX_OF_WATER: Ratio = 1.333;
/** Where the eye is most sensitive by day: CIE 1931 luminous efficiency peaks at 555 nm. */
const WAVELENGTH_SEEN: Meter = 555e-9;
/** Cross-section over geometric one of drops well above the wavelength: half blocked, half diffracted (Bohren & Huffman 1983, 4.4.3). */
const EXTINCTION_OF_LARGE_DROPS: Ratio = 2;
/** Diameter from which a mixture of sizes comes near that: the first great swing of the efficiency is over. */
const SMALLEST_LARGE_DROP: Meter = 2e-6;

/**
 * Extinction efficiency of a droplet: cross-section for light over the geometric one. About 2 for cloud droplets,
 * up to 4 where the diameter is near the wavelength, next to nothing below a tenth of it.
 * @param drop.diameter m, 1·10⁻⁸ to 2·10⁻⁴
 * @param drop.wavelength m, 3·10⁻⁷ to 1·10⁻⁶; 555 nm if not given
 * @param drop.refractiveIndex real, 1.05 to 2.5; water's if not given
 * @returns pure number
 * @throws RangeError outside a range
 * Source: {@link mieExtinction}; no absorption, so not for soot.
 */
export function extinctionEfficiency(drop: {
  diameter: Meter;
  wavelength?: Meter;
  refractiveIndex?: Ratio;
}): Ratio {
  const diameter = inRange('diameter', drop.diameter, 1e-8, 2e-4, 'm');
  const wavelength = inRange('wavelength', drop.wavelength ?? WAVELENGTH_SEEN, 3e-7, 1e-6, 'm');
  const index = inRange('refractiveIndex', drop.refractiveIndex ?? INDEX_OF_WATER, 1.05, 2.5);
  return mieExtinction((Math.PI * diameter) / wavelength, index);
}

/** A cloud by its number and size, or by its water and effective radius. */
export type CloudOfDroplets =
  | { readonly number: PerCubicMeter; readonly diameter: Meter; readonly efficiency?: Ratio }
  | { readonly liquidWaterContent: KilogramPerCubicMeter; readonly effectiveRadius: Meter; readonly efficiency?: Ratio };

/**
 * Extinction coefficient of a cloud.
 * @param cloud.number per m³, 0 to 10¹⁴, with `diameter`, m; or
 * @param cloud.liquidWaterContent kg/m³, 0 to 0.1, with `effectiveRadius` (third moment over second), m
 * @param cloud.efficiency extinction efficiency, 0 to 5. If not given it is 2 from 2 µm of diameter up (a mixture of
 *   sizes has 2.3 at 2–4 µm, 2.2 at 4–10 µm, 2.1 at 8–20 µm), and below that {@link extinctionEfficiency}
 * @returns 1/m
 * @throws RangeError outside a range
 * Source: Bohren & Huffman 1983, section 3.4; in terms of water, Stephens 1978, J. Atmos. Sci. 35, 2123, eq. 7.
 */
export function extinctionCoefficient(cloud: CloudOfDroplets): PerMeter {
  if ('number' in cloud) {
    const number = inRange('number', cloud.number, 0, 1e14, '1/m³');
    const diameter = inRange('diameter', cloud.diameter, 1e-8, 1e-3, 'm');
    return (number * efficiencyOf(cloud.efficiency, diameter) * Math.PI * diameter ** 2) / 4;
  }
  const water = inRange('liquidWaterContent', cloud.liquidWaterContent, 0, 0.1, 'kg/m³');
  const radius = inRange('effectiveRadius', cloud.effectiveRadius, 5e-9, 5e-4, 'm');
  return (0.75 * efficiencyOf(cloud.efficiency, 2 * radius) * water) / (DENSITY_LIQUID_WATER * radius);
}

function efficiencyOf(given: Ratio | undefined, diameter: Meter): Ratio {
  if (given !== undefined) return inRange('efficiency', given, 0, 5);
  return diameter >= SMALLEST_LARGE_DROP ? EXTINCTION_OF_LARGE_DROPS : extinctionEfficiency({ diameter });
}

/**
 * Optical depth of an even cloud.
 * @param extinction 1/m, 0 to 10⁴
 * @param path m, 0 to 10⁵
 * @returns pure number
 * @throws RangeError outside a range
 * Source: definition; Petty 2006, A First Course in Atmospheric Radiation, ch. 7.
 */
export function opticalDepth(extinction: PerMeter, path: Meter): number {
  return inRange('extinction', extinction, 0, 1e4, '1/m') * inRange('path', path, 0, 1e5, 'm');
}

/**
 * Share of a beam that crosses a cloud without being scattered.
 * @param depth optical depth, 0 to 700
 * @returns fraction
 * @throws RangeError outside the range
 * Source: law of Bouguer.
 */
export function transmittance(depth: number): Ratio {
  return exp(-inRange('opticalDepth', depth, 0, 700));
}

/**
 * Distance at which a large black object is just seen against the horizon sky.
 * @param extinction 1/m, 10⁻⁶ to 10⁴
 * @param threshold least contrast seen, 0.001 to 0.9: 0.02 if not given (Koschmieder), 0.05 for the meteorological
 *   optical range of WMO-No. 8
 * @returns m; 3.912 over the extinction at 0.02
 * @throws RangeError outside a range
 * Source: Koschmieder 1924; Middleton 1952, Vision through the Atmosphere, ch. 6.
 */
export function visualRange(extinction: PerMeter, threshold: Ratio = 0.02): Meter {
  const limit = inRange('threshold', threshold, 0.001, 0.9);
  return -log(limit) / inRange('extinction', extinction, 1e-6, 1e4, '1/m');
}

/**
 * Where the lamp is: none but the room's light; beside the vessel, its beam across the line of sight and past the
 * backing; on the observer's side, lighting the backing too; behind, just out of sight, 30° off the line of sight.
 */
export type Lighting = 'room' | 'side' | 'front' | 'back';
export type Backing = 'black' | 'white';

/** How a cloud stands out from its backing. */
export interface Visibility {
  /** Brightness of the cloud less that of the backing seen without it, over the latter; negative where the cloud is darker */
  readonly contrast: number;
  /** Whether the contrast is above the threshold in size */
  readonly visible: boolean;
  /** Least contrast taken as seen */
  readonly threshold: Ratio;
}

/**
 * Share of light a droplet sends toward an angle, over an even spread: droplets of 4 to 20 µm, 555 nm, by
 * `mieSphere`; 75–105° for the side, 30° behind, 150° in front.
 */
const PHASE: Record<Lighting, number> = { room: 0, side: 0.041, back: 2.3, front: 0.17 };
/** Share sent within 45° of straight on, where the eye looks through the cloud at the backing; same source. */
const SHARE_TOWARD_BACKING: Ratio = 0.88;
/** Reflectance of matte black paper or cloth and of white paper: usual measured values, 3–6 % and 80–90 %. */
const REFLECTANCE: Record<Backing, Ratio> = { black: 0.05, white: 0.85 };
/** The room mirrored by the vessel's four faces, 4 % each at an index of 1.5 (Fresnel). */
const MIRRORED: Ratio = 0.16;
/** Illuminance by a hand lamp of 3,000 cd at 0.6 m over a dimmed classroom's 280 lx. */
const LAMP_OVER_ROOM: Ratio = 30;
/** Least contrast an observer not told where to look recognizes: CIE e-ILV "visual contrast threshold"; WMO-No. 8, part I, ch. 9. */
const CONTRAST_THRESHOLD: Ratio = 0.05;

/**
 * Whether a cloud in a vessel is seen, by single scattering. Brightness is counted against that of a white surface
 * in the room's light. The cloud takes away a share 1 − e^(−τ) of the backing's light; it adds the lamp's light by
 * its phase function, and the room's from all directions but those in which the backing stands; the vessel mirrors
 * the room. Good for τ below about 0.5; in a denser cloud light scattered more than once makes it brighter than this.
 * @param view.opticalDepth τ along the line of sight, 0 to 700
 * @param view.lighting see {@link Lighting}
 * @param view.backing matte black or white, filling 45° about the line of sight
 * @param view.lampOverRoom illuminance by the lamp over the room's, 0 to 10⁵; 30 if not given
 * @param view.threshold least contrast seen, 0.001 to 0.9; 0.05 if not given
 * @returns see {@link Visibility}
 * @throws RangeError outside a range
 * Source: single scattering (Bohren & Huffman 1983, ch. 4); contrast as Koschmieder 1924; threshold CIE and WMO-No. 8.
 */
export function visibleContrast(view: {
  opticalDepth: number;
  lighting: Lighting;
  backing: Backing;
  lampOverRoom?: Ratio;
  threshold?: Ratio;
}): Visibility {
  const lost = 1 - transmittance(view.opticalDepth);
  const lamp = inRange('lampOverRoom', view.lampOverRoom ?? LAMP_OVER_ROOM, 0, 1e5);
  const threshold = inRange('threshold', view.threshold ?? CONTRAST_THRESHOLD, 0.001, 0.9);
  const backing = chosen('backing', view.backing, REFLECTANCE) * (view.lighting === 'front' ? 1 + lamp : 1);
  const byRoom = SHARE_TOWARD_BACKING * backing + (1 - SHARE_TOWARD_BACKING);
  // A white surface under illuminance E has luminance E/π, an even scatterer E/(4π): hence the fourth.
  const byLamp = (lamp * chosen('lighting', view.lighting, PHASE)) / 4;
  const contrast = (lost * (byRoom + byLamp - backing)) / (backing + MIRRORED);
  return { contrast, visible: Math.abs(contrast) >= threshold, threshold };
}

/** What of a ring is measured: its dark or bright circle in light of one color, or its red edge in white light. */
export type RingFeature = 'dark' | 'bright' | 'red';

/** Zeros of the Bessel functions J₁ (dark) and J₂ (bright), over π: Abramowitz & Stegun 1964, table 9.5. */
const DARK = /* @__PURE__ */ [3.83170597, 7.01558667, 10.17346814].map((zero) => zero / Math.PI);
const BRIGHT = /* @__PURE__ */ [5.1356223, 8.41724414, 11.61984117].map((zero) => zero / Math.PI);
/** Angle times radius of the red rings in white light, degree·µm: Laven 2015, Appl. Opt. 54, B46. */
const RED = /* @__PURE__ */ [16, 31, 47].map((product) => ((product * Math.PI) / 180) * 2e-6);
/** Effective wavelength of white light in a corona: Minnaert 1954, section 164, 0.57 µm. */
const WAVELENGTH_OF_RINGS: Meter = 570e-9;

/**
 * Angular radius of a colored ring (corona) around a small lamp seen through droplets of one size.
 * @param ring.dropletDiameter m, 2·10⁻⁶ to 2·10⁻⁴
 * @param ring.ring which, counted from the middle: 1, 2 or 3; 1 if not given
 * @param ring.feature `dark`: circle of no light, the edge of the bright middle for ring 1 (sin θ = 1.22 λ/d);
 *   `bright`: brightest circle; `red`: red edge in white light, for which no wavelength is given. Dark if not given
 * @param ring.wavelength m, 3·10⁻⁷ to 1·10⁻⁶; 570 nm if not given
 * @returns rad
 * @throws RangeError outside a range, or where the ring would be wider than a right angle
 * Source: Fraunhofer diffraction by a disk (Airy 1835); white light: Laven 2015.
 */
export function coronaRadius(ring: RingOfDroplets & { dropletDiameter: Meter }): Radian {
  const diameter = inRange('dropletDiameter', ring.dropletDiameter, 2e-6, 2e-4, 'm');
  if (ring.feature === 'red') return ringConstant(ring) / diameter;
  return Math.asin(inRange('sine of the ring', ringConstant(ring) / diameter, 0, 1));
}

/**
 * Diameter of the droplets from the angular radius of a ring: inverse of {@link coronaRadius}.
 * @param angle rad, 0.002 to 1
 * @param ring as in {@link coronaRadius}
 * @returns m
 * @throws RangeError outside a range, or where the diameter would be outside 2·10⁻⁶ to 2·10⁻⁴ m
 */
export function dropletDiameterFromCorona(angle: Radian, ring: RingOfDroplets = {}): Meter {
  inRange('angle', angle, 0.002, 1, 'rad');
  const diameter = ringConstant(ring) / (ring.feature === 'red' ? angle : Math.sin(angle));
  return inRange('dropletDiameter', diameter, 2e-6 * (1 - 1e-12), 2e-4 * (1 + 1e-12), 'm');
}

/** Which ring, in which light. */
export interface RingOfDroplets {
  readonly ring?: number;
  readonly feature?: RingFeature;
  readonly wavelength?: Meter;
}

/** Diameter times the sine (in white light: the angle) of a ring, m. */
function ringConstant({ ring = 1, feature = 'dark', wavelength }: RingOfDroplets): Meter {
  const constant = chosen('feature', feature, { dark: DARK, bright: BRIGHT, red: RED })[wholeInRange('ring', ring, 1, 3) - 1]!;
  if (feature === 'red') {
    if (wavelength !== undefined) throw new RangeError(`wavelength is ${wavelength} m; the red edge in white light takes none`);
    return constant;
  }
  return constant * inRange('wavelength', wavelength ?? WAVELENGTH_OF_RINGS, 3e-7, 1e-6, 'm');
}
