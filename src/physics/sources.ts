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
  cfr1037: reference('published', 'US EPA', null, '40 CFR 1037.560, axle efficiency test'),
} as const satisfies Readonly<Record<string, Reference>>;

export type SourceKey = keyof typeof sources;
