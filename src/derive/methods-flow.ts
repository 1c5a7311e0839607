import type { Method } from './methods.ts';

const own = 'Common practice, no source.';

/** Rules of reduction of the flow trial. */
export const flowMethods: readonly Method[] = [
  {
    id: 'swing-of-readings',
    title: 'Swing of the running level',
    formula: { latex: String.raw`a=2s`, plain: 'a = 2·s' },
    says: 'Twice the standard deviation of the level readings of the hold: where readings scatter normally the level stays within it nineteen times of twenty, and a plain wave never leaves it.',
    source: own,
  },
  {
    id: 'up-less-down',
    title: 'Gap between the way up and the way down',
    formula: { latex: String.raw`\Delta z=z_\uparrow-z_\downarrow`, plain: 'Δz = z up − z down' },
    says: 'At one speed. Air let in at speed leaves slowly and oil hangs on walls, so the two ways are told apart and never averaged. The calibration of the glass cancels.',
    source: own,
  },
  {
    id: 'grade-that-stands',
    title: 'Grade that stands for a step',
    formula: { latex: String.raw`g\in\{0,1,2,3,4,\mathrm{ng}\}`, plain: 'g = 0, 1, 2, 3, 4 or ng' },
    says: 'The grade of a joint look; without one, the first grades where all observers gave the same; otherwise none. With View 0 or 1 nothing is gradable (ng), and ng is never counted as 0.',
    source: own,
  },
  {
    id: 'weighted-kappa',
    title: 'Agreement of two observers',
    formula: {
      latex: String.raw`\kappa=1-\frac{\sum w_{ij}\,p_{ij}}{\sum w_{ij}\,p_{i\cdot}\,p_{\cdot j}},\quad w_{ij}=(i-j)^2`,
      plain: 'κ = 1 − Σ(i − j)²·p_ij/Σ(i − j)²·p_i·p_j',
    },
    says: 'Quadratic weights over the grades 0 to 4; a pair with ng is no pair. 1 is full agreement, 0 what chance would give. With these weights it is the concordance coefficient of the two lists with moments over n.',
    source:
      'Cohen, Psychological Bulletin 70 (1968) 213; standard error: Fleiss, Cohen and Everitt, Psychological Bulletin 72 (1969) 323; concordance: Lin, Biometrics 45 (1989) 255. From memory.',
  },
  {
    id: 'share-of-pairs',
    title: 'Share of pairs that agree',
    formula: { latex: String.raw`p=\frac{n_\mathrm{agree}}{n}`, plain: 'p = n agree/n' },
    says: 'Of all steps that both observers could grade, on their own, before any joint look.',
    source: 'Definition.',
  },
  {
    id: 'camera-less-logger',
    title: 'Camera clock against logger clock',
    formula: { latex: String.raw`\Delta t=t_\mathrm{film}-t_\mathrm{log}`, plain: 'Δt = t film − t log' },
    says: 'Both times of one flash that camera and logger saw. Every cue, step and mark is moved by it.',
    source: 'Definition.',
  },
  {
    id: 'drain-back',
    title: 'Level after the stop',
    formula: { latex: String.raw`z=z_\mathrm{end}-d\,2^{-t/t_{1/2}}`, plain: 'z = z_end − d·2^(−t/t½)' },
    says: 'Least squares through the level readings from the gear’s standstill on. Its ± is widened where what is left of neighbouring readings hangs together. Not told where the readings show no depth or the half-time is longer than they are.',
    source: own,
  },
  {
    id: 'level-missing',
    title: 'Level missing after settling',
    formula: { latex: String.raw`\Delta z=z_0-z_\mathrm{end}`, plain: 'Δz = z0 − z_end' },
    says: 'Level at rest before the first step less the end of the curve after the stop, by one glass.',
    source: 'Definition.',
  },
  {
    id: 'between-readings',
    title: 'Time between two readings',
    formula: { latex: String.raw`t_1<t\le t_2`, plain: 't1 < t ≤ t2' },
    says: 'It happened after the one and by the other; either end of the gap is as likely as its middle, so both ends are given and no mark between them.',
    source: 'Definition.',
  },
  {
    id: 'air-from-level',
    title: 'Air share from the fall of the level',
    formula: {
      latex: String.raw`\varphi=1-\frac{V(z_\mathrm{end})}{V(z_\mathrm{high})}`,
      plain: 'φ = 1 − V(z end)/V(z high)',
    },
    says: 'Volumes by the level table, not a ratio of heights, at one temperature. Only where the level falls again after its highest point and the fill was weighed: before that, oil draining back hides it.',
    source: own,
  },
];
