/**
 * Where the relations come from. `seen` says how far: `published` the text itself was read, `seen` it was read as
 * reproduced in other published places, `memory` it was recalled and not looked up.
 */
export interface Reference {
  readonly authors: string | null;
  readonly year: number | null;
  readonly title: string;
  readonly where: string | null;
  readonly seen: 'published' | 'seen' | 'memory' | 'none';
}

const reference = (
  seen: Reference['seen'],
  authors: string | null,
  year: number | null,
  title: string,
  where: string | null = null,
): Reference => ({ authors, year, title, where, seen });

export const sources = {
  definition: reference('none', null, null, 'Follows from the definitions of its quantities'),
  derived: reference(
    'none',
    null,
    null,
    'Derived here from an energy or volume balance; the working stands at the relation',
  ),
  commonPractice: reference('none', null, null, 'Common practice, no source'),
  astmD341: reference(
    'seen',
    'ASTM International',
    2020,
    'ASTM D341, Viscosity-Temperature Equations and Charts for Liquid Petroleum or Hydrocarbon Products',
  ),
  astmD341Long: reference(
    'memory',
    'ASTM International',
    null,
    'ASTM D341, Viscosity-Temperature Equations and Charts: long form of Z',
    'its structure was read, its constants are recalled; within 0.11 % of the short form from 0.5 mm²/s up',
  ),
  din51563: reference('seen', 'DIN', 2011, 'DIN 51563, viscosity-temperature relation of mineral oils (constant 0.8)'),
  astmD2270: reference(
    'published',
    'ASTM International',
    null,
    'ASTM D2270, Calculating Viscosity Index from Kinematic Viscosity at 40 °C and 100 °C',
    'procedures A and B with their examples',
  ),
  iso2909: reference(
    'memory',
    'ISO',
    null,
    'ISO 2909, Calculation of viscosity index from kinematic viscosity',
    'coefficients of L and H by band; compared with all 311 rows of ASTM D2270 Table 1: within 0.12 %',
  ),
  saeJ306of2019: reference(
    'seen',
    'SAE International',
    2019,
    'SAE J306, Automotive Gear Lubricant Viscosity Classification',
  ),
  saeJ306of2005: reference(
    'seen',
    'SAE International',
    2005,
    'SAE J306, Automotive Gear Lubricant Viscosity Classification',
  ),
  iso3448: reference('memory', 'ISO', 1992, 'ISO 3448, Industrial liquid lubricants, ISO viscosity classification'),
  astmD1250: reference(
    'memory',
    'API and ASTM International',
    1980,
    'API MPMS Chapter 11.1 / ASTM D1250, petroleum measurement tables',
    'lubricating oils, K0 = 0, K1 = 0.6278',
  ),
  cragoe1929: reference(
    'memory',
    'C. S. Cragoe',
    1929,
    'Thermal Properties of Petroleum Products',
    'NBS Miscellaneous Publication 97',
  ),
  incropera: reference(
    'memory',
    'F. P. Incropera, D. P. DeWitt',
    2007,
    'Fundamentals of Heat and Mass Transfer, 6th edition',
    'chapter 5, Table A.5',
  ),
  deryagin1943: reference(
    'memory',
    'B. V. Deryagin',
    1943,
    'Thickness of the liquid film left on walls',
    'the same largest flow is the condition of a film on a roller: H. K. Moffatt, J. Mécanique 16 (1977), seen as reproduced elsewhere',
  ),
  stokes1851: reference(
    'memory',
    'G. G. Stokes',
    1851,
    'On the effect of the internal friction of fluids on the motion of pendulums',
    'the wall that is set moving at once',
  ),
  nusselt1916: reference(
    'memory',
    'W. Nusselt',
    1916,
    'Die Oberflächenkondensation des Wasserdampfes',
    'the falling film',
  ),
  wooster: reference('memory', 'Wooster', null, 'Pressure–viscosity coefficient from viscosity at no pressure'),
  gold2001: reference(
    'memory',
    'Gold et al.',
    2001,
    'Pressure–viscosity coefficient as a power of viscosity, by base oil',
  ),
  hamrockDowson: reference(
    'seen',
    'Hamrock, Dowson',
    null,
    'Film thickness of elliptical contacts',
    'as coded in an open bearing model',
  ),
  hamrockAnderson1983: reference(
    'memory',
    'Hamrock, Anderson',
    1983,
    'NASA RP-1105, examples of a ball and a roller bearing',
    'inputs seen as reproduced elsewhere',
  ),
  dowson1968: reference(
    'seen',
    'D. Dowson',
    1968,
    'Film thickness of a line contact',
    'as reproduced in open documentation',
  ),
  panHamrock1989: reference('memory', 'Pan, Hamrock', 1989, 'Film thickness of a line contact'),
  gupta1992: reference(
    'memory',
    'Gupta, Cheng, Zhu, Forster, Schrand',
    1992,
    'Thermal reduction of a film by heating of its inlet',
    'J. Tribol.',
  ),
  oxidationPer10K: reference(
    'seen',
    'ASTM International',
    1986,
    'Turbine lubricant oxidation: testing, experience and prediction',
    'ASTM STP; the abstract was read',
  ),
  oxidationLife: reference('memory', null, null, 'Oxidation life of an oil as an Arrhenius line, log10 L = k + 4750/T'),
  einstein1906: reference('memory', 'A. Einstein', 1906, 'Viscosity of a liquid with rigid spheres in it'),
  taylor1932: reference('memory', 'G. I. Taylor', 1932, 'Viscosity of a liquid with drops of another in it'),
  hayward1961: reference('memory', 'Hayward', 1961, 'Viscosity of bubbly oil'),
  stokesDrag: reference(
    'memory',
    'G. G. Stokes',
    1851,
    'On the effect of the internal friction of fluids on the motion of pendulums',
    'drag of a slow sphere',
  ),
  hadamard1911: reference('memory', 'Hadamard; Rybczynski', 1911, 'Slow motion of a sphere of one fluid in another'),
  landauLevich1942: reference('memory', 'Landau, Levich', 1942, 'Film drawn out of a liquid by a moving plate'),
  leslie2012: reference(
    'seen',
    'Leslie, Wilson, Duffy',
    2012,
    'Thermoviscous coating and rimming flow',
    'the abstract was read; the film is that of H. K. Moffatt, J. Mécanique 16 (1977)',
  ),
  schillerNaumann: reference('memory', 'Schiller, Naumann', null, 'Drag coefficient of a sphere at moderate speed'),
  sutherland: reference(
    'memory',
    'W. Sutherland',
    1893,
    'The viscosity of gases and molecular force',
    'constants of air as handbooks give them; the ideal gas; held against air of Incropera & DeWitt, Table A.4',
  ),
  churchillChu1975: reference(
    'seen',
    'S. W. Churchill, H. H. S. Chu',
    1975,
    'Correlating equations for laminar and turbulent free convection',
    'Int. J. Heat Mass Transfer 18, pages 1049 and 1323',
  ),
  churchillBernstein1977: reference(
    'seen',
    'S. W. Churchill, M. Bernstein',
    1977,
    'A correlating equation for forced convection from gases and liquids to a circular cylinder in crossflow',
  ),
  zukauskas1972: reference('seen', 'A. Zukauskas', 1972, 'Heat transfer from tubes in crossflow'),
  hilpert1933: reference(
    'memory',
    'R. Hilpert',
    1933,
    'Wärmeabgabe von geheizten Drähten und Rohren im Luftstrom',
    'constants as Incropera & DeWitt give them',
  ),
  barCohen1984: reference(
    'seen',
    'A. Bar-Cohen, W. M. Rohsenow',
    1984,
    'Thermally optimum spacing of vertical, natural convection cooled, parallel plates',
  ),
  iso14179part2: reference(
    'memory',
    'ISO',
    2001,
    'ISO/TR 14179-2, thermal capacity of gear drives',
    'its term of radiation only',
  ),
  cfr1037: reference('published', 'US EPA', null, '40 CFR 1037.560, axle efficiency test'),
} as const satisfies Readonly<Record<string, Reference>>;

export type SourceKey = keyof typeof sources;
