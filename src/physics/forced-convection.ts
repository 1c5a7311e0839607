import { allAbove0, answer } from './answer.ts';
import { input, output, type Relation } from './relation.ts';

interface Stream {
  readonly reynolds: number;
  readonly prandtl: number;
}

const isStream = (air: Stream): boolean => air.reynolds >= 0 && allAbove0(air.prandtl);

/**
 * Mean Nusselt number of a cylinder with air across it: an axle tube or the housing on the road.
 *
 *   Nu = 0.3 + 0.62 Re^½ Pr^⅓/[1 + (0.4/Pr)^⅔]^¼ · [1 + (Re/282000)^(5/8)]^(4/5)
 *
 * reynolds with the diameter as length, prandtl  [1], air at film temperature
 * returns      Nu [1]; null for an Re below 0 or a Pr that is not above 0
 * range        Re Pr > 0.2, in air Re above 0.3
 * source       churchillBernstein1977      check: Incropera & DeWitt, example 7.4: 40.6
 */
export function crossFlowNusselt(air: Stream): number | null {
  if (!isStream(air)) return null;
  const laminar =
    (0.62 * Math.sqrt(air.reynolds) * Math.cbrt(air.prandtl)) / (1 + (0.4 / air.prandtl) ** (2 / 3)) ** 0.25;
  return answer(0.3 + laminar * (1 + (air.reynolds / 282000) ** (5 / 8)) ** 0.8);
}

/**
 * The same by Hilpert, for gases.
 *
 *   Nu = C Re^m Pr^⅓,  C 0.193, m 0.618 up to Re 4e4, C 0.027, m 0.805 above
 *
 * as crossFlowNusselt
 * returns      Nu [1]; null as crossFlowNusselt
 * range        Re 4e3 to 4e5
 * source       hilpert1933      check: Incropera & DeWitt, example 7.4: 37.3
 */
export function hilpertNusselt(air: Stream): number | null {
  if (!isStream(air)) return null;
  const [C, m] = air.reynolds <= 4e4 ? [0.193, 0.618] : [0.027, 0.805];
  return answer(C * air.reynolds ** m * Math.cbrt(air.prandtl));
}

/**
 * The same by Žukauskas, air at its temperature far off and Pr also at the surface.
 *
 *   Nu = C Re^m Pr^0.37 (Pr/Pr_s)^¼,  C 0.26, m 0.6 up to Re 2e5, C 0.076, m 0.7 above
 *
 * as crossFlowNusselt, surfacePrandtl [1]
 * returns      Nu [1]; null as crossFlowNusselt
 * range        Re 1e3 to 1e6, Pr 0.7 to 500
 * source       zukauskas1972      check: Incropera & DeWitt, example 7.4: 50.5
 */
export function zukauskasNusselt(air: Stream & { readonly surfacePrandtl: number }): number | null {
  if (!isStream(air) || !allAbove0(air.surfacePrandtl)) return null;
  const [C, m] = air.reynolds <= 2e5 ? [0.26, 0.6] : [0.076, 0.7];
  return answer(C * air.reynolds ** m * air.prandtl ** 0.37 * (air.prandtl / air.surfacePrandtl) ** 0.25);
}

const plateCritical = 5e5;

/**
 * Mean Nusselt number of a flat plate with air along it: a cover on the road.
 *
 *   Nu = 0.664 Re^½ Pr^⅓ up to Re 5e5,  (0.037 Re^0.8 − 871) Pr^⅓ above
 *
 * reynolds with the length along the air, prandtl  [1], air at film temperature
 * returns      Nu [1]; null as crossFlowNusselt
 * range        Pr from 0.6 to 60, Re up to 1e8 (from memory)
 * source       incropera      check: example 7.1: 57.4
 */
export function flatPlateNusselt(air: Stream): number | null {
  if (!isStream(air)) return null;
  const laminar = 0.664 * Math.sqrt(air.reynolds);
  const nusseltAtPr1 = air.reynolds <= plateCritical ? laminar : 0.037 * air.reynolds ** 0.8 - 871;
  return answer(nusseltAtPr1 * Math.cbrt(air.prandtl));
}

type Numbers = Readonly<Record<keyof Stream, number>>;
const re = input('reynolds', 'Re', 'Reynolds number of the air', '1');
const pr = input('prandtl', 'Pr', 'Prandtl number', '1');
const nu = output('Nu', 'Nusselt number, mean', '1');
const example74 = 'Incropera & DeWitt, example 7.4: rod of 12.7 mm in 10 m/s';

export const crossFlowRelation: Relation<Numbers> = {
  id: 'cross-flow',
  title: 'Tube with air across it',
  formula: {
    latex: String.raw`\mathrm{Nu}=0.3+\frac{0.62\,\mathrm{Re}^{1/2}\mathrm{Pr}^{1/3}}{\left[1+(0.4/\mathrm{Pr})^{2/3}\right]^{1/4}}\left[1+\left(\frac{\mathrm{Re}}{282000}\right)^{5/8}\right]^{4/5}`,
    plain: 'Nu = 0.3 + 0.62 Re^(1/2) Pr^(1/3)/[1 + (0.4/Pr)^(2/3)]^(1/4) · [1 + (Re/282000)^(5/8)]^(4/5)',
  },
  symbols: [re, pr, nu],
  range: [{ symbol: 'Re', from: 0.3, to: null, why: 'Re Pr above 0.2, in air Re above 0.3' }],
  source: 'churchillBernstein1977',
  grade: 'V2',
  checks: [
    { source: example74, seen: 'published', inputs: { reynolds: 6071, prandtl: 0.7 }, printed: '40.6' },
    {
      source: 'the same in an open heat-transfer library',
      seen: 'published',
      inputs: { reynolds: 6071, prandtl: 0.7 },
      printed: '40.637',
    },
  ],
  of: (air) => crossFlowNusselt(air),
};

export const hilpertRelation: Relation<Numbers> = {
  id: 'cross-flow-hilpert',
  title: 'Tube with air across it, by Hilpert',
  formula: {
    latex: String.raw`\mathrm{Nu}=C\,\mathrm{Re}^m\,\mathrm{Pr}^{1/3},\quad (C,m)=\begin{cases}(0.193,\ 0.618)&\mathrm{Re}\le4\cdot10^4\\(0.027,\ 0.805)&\mathrm{Re}>4\cdot10^4\end{cases}`,
    plain: 'Nu = C Re^m Pr^(1/3); C 0.193, m 0.618 up to Re 40000; C 0.027, m 0.805 above',
  },
  symbols: [re, pr, nu],
  range: [{ symbol: 'Re', from: 4e3, to: 4e5, why: 'constants for Re from 4e3 to 4e5' }],
  source: 'hilpert1933',
  grade: 'VC',
  checks: [{ source: example74, seen: 'memory', inputs: { reynolds: 6071, prandtl: 0.7 }, printed: '37.3' }],
  of: (air) => hilpertNusselt(air),
};

export const zukauskasRelation: Relation<Numbers & { readonly surfacePrandtl: number }> = {
  id: 'cross-flow-zukauskas',
  title: 'Tube with air across it, by Žukauskas',
  formula: {
    latex: String.raw`\mathrm{Nu}=C\,\mathrm{Re}^m\,\mathrm{Pr}^{0.37}\left(\frac{\mathrm{Pr}}{\mathrm{Pr}_s}\right)^{1/4},\quad (C,m)=\begin{cases}(0.26,\ 0.6)&\mathrm{Re}\le2\cdot10^5\\(0.076,\ 0.7)&\mathrm{Re}>2\cdot10^5\end{cases}`,
    plain: 'Nu = C Re^m Pr^0.37 (Pr/Prs)^(1/4); C 0.26, m 0.6 up to Re 200000; C 0.076, m 0.7 above',
  },
  symbols: [re, pr, input('surfacePrandtl', 'Prs', 'Prandtl number at the surface', '1'), nu],
  range: [
    { symbol: 'Re', from: 1e3, to: 1e6, why: 'constants for Re from 1e3 to 1e6' },
    { symbol: 'Pr', from: 0.7, to: 500, why: 'Pr from 0.7 to 500' },
  ],
  source: 'zukauskas1972',
  grade: 'V2',
  checks: [
    {
      source: `${example74}, air far off`,
      seen: 'memory',
      inputs: { reynolds: 7992, prandtl: 0.707, surfacePrandtl: 0.69 },
      printed: '50.5',
    },
  ],
  of: (air) => zukauskasNusselt(air),
};

export const flatPlateRelation: Relation<Numbers> = {
  id: 'flat-plate',
  title: 'Flat wall with air along it',
  formula: {
    latex: String.raw`\mathrm{Nu}=\begin{cases}0.664\,\mathrm{Re}^{1/2}\,\mathrm{Pr}^{1/3}&\mathrm{Re}\le5\cdot10^5\\(0.037\,\mathrm{Re}^{4/5}-871)\,\mathrm{Pr}^{1/3}&\mathrm{Re}>5\cdot10^5\end{cases}`,
    plain: 'Nu = 0.664 Re^(1/2) Pr^(1/3) up to Re 500000; (0.037 Re^(4/5) − 871) Pr^(1/3) above',
  },
  symbols: [re, pr, nu],
  range: [
    { symbol: 'Re', from: null, to: 1e8, why: 'Re up to 1e8 (from memory)' },
    { symbol: 'Pr', from: 0.6, to: 60, why: 'Pr from 0.6 to 60 (from memory)' },
  ],
  source: 'incropera',
  grade: 'VC',
  checks: [
    {
      source: 'Incropera & DeWitt, 6th edition, example 7.1: 10 m/s along 0.5 m at 6 kPa',
      seen: 'memory',
      inputs: { reynolds: 9597, prandtl: 0.687 },
      printed: '57.4',
    },
  ],
  of: (air) => flatPlateNusselt(air),
};
