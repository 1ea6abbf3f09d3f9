/** Where the formulas of the tables come from. */
export const REFERENCES = {
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
} as const;

export type Reference = keyof typeof REFERENCES;
