import type { Method } from './methods.ts';

const own = 'Common practice, no source.';

/** Rules of reduction of a spin trial beside its net torque. */
export const spinMethods: readonly Method[] = [
  {
    id: 'spin-law',
    title: 'Law through the windows of a run',
    formula: {
      latex: String.raw`T=a+b\left(\frac{\nu}{\nu_0}\right)^{p}\left(\frac{n}{n_0}\right)^{q}`,
      plain: 'T = a + b·(ν/ν0)^p·(n/n0)^q',
    },
    says: 'Its exponents stand on the run sheet where its condition number is ten at most. It carries the hottest window to the article’s own running temperature; a quarter of that way is added as doubt.',
    source: own,
  },
  {
    id: 'spin-exponents',
    title: 'Exponents of speed and viscosity in spin power',
    formula: { latex: String.raw`\ln P=c+p\ln n+q\ln\nu`, plain: 'ln P = c + p·ln n + q·ln ν' },
    says: 'Least squares through all windows of a run, of the whole loss with bearings and seals in it. The line is straight and the loss is not quite: its bend is in the ±. Beside it stand ranges of the literature, which are of churning alone; an exponent lies inside or outside with its whole interval, and is not told above a condition number of ten.',
    source: own,
  },
  {
    id: 'loss-envelope',
    title: 'What models let one expect of a spin loss',
    formula: {
      latex: String.raw`P_\mathrm{low}=\min_i P_{\mathrm{churn},i}+0.5\sum P_\mathrm{bearing}+\sum\min P_\mathrm{seal}`,
      plain: 'P_low = min P_churn + 0.5·Σ P_bearing + Σ min P_seal; P_high likewise with max and 1.5',
    },
    says: 'An envelope and no prediction. Churning of the ring gear: from the least to the most of the law with four regimes, a law by the dipping chord (unverified) and a hydraulic torque (unverified), and no narrower than a factor of two either way of the first. Bearings: classical moment without load with f0 3 to 4, and the turning torque of the preload where the rig sheet has it, half less to half more. Seals: from the least to the most of three estimates (unverified). Low ends are added to low ends, high to high. Dip at rest and litres at 20 °C; pressure angle 20° and spiral angle 30° are taken. Pinion, differential case, hubs that are not named, and windage are not in it.',
    source:
      'The relations named, with their sources on their own pages; widths: common practice, no source; laws of churning span a factor of 17 at one hot point of a road axle (computed by an independent script).',
  },
];
