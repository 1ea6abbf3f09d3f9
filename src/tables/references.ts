/** Where the formulas of the tables come from. */
export const REFERENCES = {
  murphyKoop: 'D. M. Murphy and T. Koop 2005, Q. J. R. Meteorol. Soc. 131, 1539: vapor pressure (eq. 10), latent heat (eq. 9)',
  wmo8: 'WMO-No. 8, Guide to Instruments and Methods of Observation, annex 4.B: vapor in the presence of air',
  emanuel: 'K. A. Emanuel 1994, Atmospheric Convection, ch. 4: reversible saturated expansion',
  iso2533: 'ISO 2533:1975, Standard Atmosphere',
  hypsometric: 'J. M. Wallace and P. V. Hobbs 2006, Atmospheric Science, 2nd ed., ch. 3: hydrostatic column',
  nist811: 'NIST Special Publication 811 (2008), appendix B.8: pressure units',
} as const;

export type Reference = keyof typeof REFERENCES;
