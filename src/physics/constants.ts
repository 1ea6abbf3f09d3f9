/** Constants of the physics, each with unit and source. */
import type { JoulePerKilogramKelvin, Kelvin, KilogramPerCubicMeter, Pascal, Ratio } from './units.ts';

/** Molar gas constant, J/(mol·K). Exact: SI Brochure (BIPM, 9th ed. 2019). */
export const MOLAR_GAS_CONSTANT = 8.314462618;
/** Boltzmann constant, J/K. Exact: SI Brochure (BIPM, 9th ed. 2019). */
export const BOLTZMANN_CONSTANT = 1.380649e-23;
/** Avogadro constant, 1/mol. Exact: SI Brochure (BIPM, 9th ed. 2019). */
export const AVOGADRO_CONSTANT = 6.02214076e23;
/** Molar mass of dry air, kg/mol, at 400 µmol/mol of carbon dioxide: CIPM-2007 (Picard et al. 2008), eq. 4. */
const MOLAR_MASS_DRY_AIR = 0.02896546;
/** Molar mass of water, kg/mol: CIPM-2007 (Picard et al. 2008), table 1. */
export const MOLAR_MASS_WATER = 0.01801528;
/** Standard acceleration of free fall, m/s². Exact by definition: 3rd CGPM 1901; ISO 2533. */
export const STANDARD_GRAVITY = 9.80665;

/** Gas constant of dry air. */
export const GAS_CONSTANT_DRY_AIR: JoulePerKilogramKelvin = MOLAR_GAS_CONSTANT / MOLAR_MASS_DRY_AIR;
/** Gas constant of water vapor. */
export const GAS_CONSTANT_VAPOR: JoulePerKilogramKelvin = MOLAR_GAS_CONSTANT / MOLAR_MASS_WATER;
/** Molar mass of water over that of dry air. */
export const MOLAR_MASS_RATIO: Ratio = MOLAR_MASS_WATER / MOLAR_MASS_DRY_AIR;

/**
 * Heat capacity of dry air at constant pressure. Held constant: between −40 and 40 °C at
 * 50–100 kPa it varies by 0.2 % (Lemmon et al. 2000), which costs 0.05 K in a fall of 20 K.
 */
export const HEAT_CAPACITY_DRY_AIR: JoulePerKilogramKelvin = 1005;
/**
 * Heat capacity of water vapor at constant pressure: WMO-No. 8 and Rogers & Yau 1989 give
 * 1850–1870 near 0 °C. Held constant; one percent costs 0.005 K in a fall of 20 K.
 */
export const HEAT_CAPACITY_VAPOR: JoulePerKilogramKelvin = 1860;
/** Density of liquid water near 10 °C: CRC Handbook, "Properties of water". Varies by 0.5 % from 0 to 30 °C. */
export const DENSITY_LIQUID_WATER: KilogramPerCubicMeter = 999.7;
/** Temperature below which small droplets of pure water freeze by themselves: Pruppacher & Klett 1997, ch. 7. */
export const HOMOGENEOUS_FREEZING_POINT: Kelvin = 235.15;
/** Pressure of the standard atmosphere at sea level. Exact: ISO 2533. */
export const STANDARD_PRESSURE: Pascal = 101325;
