import { input, output, type Relation } from './relation.ts';

type Tyre = { readonly width_m: number; readonly aspect: number; readonly rim_m: number; readonly deflection: number };

/** Ask for turns a mile, or measure over a roller, first: what a marking says is some 3 % off the road. */
export const rollingRadiusRelation: Relation<Tyre> = {
  id: 'rolling-radius',
  title: 'Rolling radius from the marking of a tyre',
  formula: { latex: String.raw`r=d\left(\frac{D_{rim}}{2}+a\,w\right)`, plain: 'r = d·(D_rim/2 + a·w)' },
  symbols: [
    input('width_m', 'w', 'width of the section', 'mm'),
    input('aspect', 'a', 'height of the section over its width', '1'),
    input('rim_m', 'D_rim', 'diameter of the rim', 'in'),
    input('deflection', 'd', 'rolling radius over the free one: 0.97', '1'),
    output('r', 'rolling radius', 'mm'),
  ],
  range: [{ symbol: 'd', from: 0.94, to: 1, why: 'a tyre at its pressure under its load' }],
  source: 'commonPractice',
  grade: 'VC',
  checks: [
    {
      source: '265/70 R 17, free, by geometry',
      seen: 'computed',
      inputs: { width_m: 0.265, aspect: 0.7, rim_m: 17 * 0.0254, deflection: 1 },
      printed: '401.400',
    },
    {
      source: '265/70 R 17, rolling: 0.97 is common practice, no source',
      seen: 'computed',
      inputs: { width_m: 0.265, aspect: 0.7, rim_m: 17 * 0.0254, deflection: 0.97 },
      printed: '389.358',
    },
  ],
  of: ({ width_m, aspect, rim_m, deflection }) => {
    const r = deflection * (rim_m / 2 + aspect * width_m);
    return r > 0 && Number.isFinite(r) ? r : null;
  },
};
