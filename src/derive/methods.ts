import { flowMethods } from './methods-flow.ts';
import { spinMethods } from './methods-spin.ts';

/** A step of reduction that is a rule and not a published relation: what it does, its formula, where it is from. */
export interface Method {
  readonly id: string;
  readonly title: string;
  readonly formula: { readonly latex: string; readonly plain: string };
  readonly says: string;
  readonly source: string;
}

const own = 'Common practice, no source.';

/** Every `relation` a figure may name that is not an object of physics/. In the order a run goes through them. */
export const methods: readonly Method[] = [
  {
    id: 'mean-of-readings',
    title: 'Mean of the readings of a window',
    formula: {
      latex: String.raw`\bar y=\frac1n\sum y_i,\quad u=\frac{s}{\sqrt{n_\mathrm{eff}}}`,
      plain: 'ȳ = Σy/n, u = s/√n_eff',
    },
    says: 'Neighbouring readings resemble each other, so that n_eff = n(1 − r₁)/(1 + r₁) stands for n.',
    source: 'r₁: NIST/SEMATECH e-Handbook 1.3.5.12; n_eff: common practice, no source.',
  },
  {
    id: 'difference-of-readings',
    title: 'Difference of two channels',
    formula: { latex: String.raw`\Delta=\overline{a-b}`, plain: 'Δ = mean(a − b)' },
    says: 'Row by row, then the mean of the last half hour.',
    source: own,
  },
  {
    id: 'net-torque',
    title: 'Net torque at the reference temperature',
    formula: {
      latex: String.raw`T=\sum_i \left(T_{\mathrm{raw},i}-z(t_i)\right)L_i(\ln\nu_\mathrm{ref})`,
      plain: 'T = Σ (T_raw,i − z(t_i))·L_i(ln ν_ref)',
    },
    says: 'The zero goes in a straight line from before to after. The windows of one speed stand within 2 K of the reference temperatures; the polynomial through them in ln ν carries each the rest of the way. Of one temperature alone the way is not gone but left open. Before that a window held a little off its step is brought to it, T_step = T·(n_step/n)^e, by the exponent of its own temperature in this run, whose doubt is a cause; one further off than the tolerance of speed is not.',
    source: own,
  },
  ...spinMethods,
  {
    id: 'sustained-crossing',
    title: 'Sustained crossing of a limit',
    formula: {
      latex: String.raw`T(t)\ge T_\mathrm{limit}\ \text{for}\ \Delta t`,
      plain: 'T(t) ≥ limit for the hold of the plan',
    },
    says: 'The first time the sump stays at or above the limit for the hold; a parabola through the five minutes round it says when. Not reached is kept as a bound.',
    source: own,
  },
  {
    id: 'heat-law',
    title: 'Heat made against viscosity',
    formula: {
      latex: String.raw`Q=c_0+c_1\sqrt{\nu/\nu_\mathrm{end}}+c_2\,\nu_\mathrm{end}/\nu`,
      plain: 'Q = c0 + c1·(ν/ν_end)^½ + c2·(ν_end/ν)',
    },
    says: 'A smooth line through the heat of one run, so that heat can be stated at its final temperature.',
    source: own,
  },
  {
    id: 'rise',
    title: 'Rise above ambient',
    formula: { latex: String.raw`\theta_\infty=T_\infty-\bar T_\mathrm{amb}`, plain: 'θ∞ = T∞ − T_amb' },
    says: 'Ambient is what the axle feels of it at the end: as logged, behind its own time constant; the mean of the run where none is known.',
    source: own,
  },
  {
    id: 'tail',
    title: 'Tail of a heat-up',
    formula: { latex: String.raw`T=T_\infty-A\,e^{-t/\tau}`, plain: 'T = T∞ − A·exp(−t/τ)' },
    says: 'Through the last hour alone, or the last half of a shorter run. It falls short where heat has to cross from oil to housing, so a fifth of the way still to go is open.',
    source: own,
  },
  {
    id: 'shed',
    title: 'Shed while running',
    formula: { latex: String.raw`K=Q/\theta_\infty`, plain: 'K = Q/θ∞' },
    says: 'Heat made over final rise: of the whole axle, not of its cover alone.',
    source: 'Definition.',
  },
  {
    id: 'store',
    title: 'Store of heat',
    formula: { latex: String.raw`C=C_1+C_2`, plain: 'C = C1 + C2' },
    says: 'Oil and housing together, from the model that was taken. An error of heat made is an equal share of the store.',
    source: 'Definition.',
  },
  {
    id: 'closure',
    title: 'Closure of the energy balance',
    formula: {
      latex: String.raw`\Delta Q=\frac1t\left[\int Q\,dt-\int K(T-T_\mathrm{amb})\,dt-C\,\Delta T\right]`,
      plain: 'ΔQ = [∫Q dt − ∫K·(T − T_amb) dt − C·ΔT]/t',
    },
    says: 'What heat made leaves over once shed and store are taken off, as mean power of the run.',
    source: 'Definition.',
  },
  {
    id: 'newton-cooling',
    title: 'Cooling at rest',
    formula: { latex: String.raw`\dot T=-(T-T_\mathrm{amb})/\tau`, plain: "T' = −(T − T_amb)/τ" },
    says: 'From half an hour after the stop, when oil and housing fall together, with ambient as logged.',
    source: own,
  },
  {
    id: 'store-over-time-constant',
    title: 'Shed at rest',
    formula: { latex: String.raw`K_\mathrm{rest}=C/\tau`, plain: 'K_rest = C/τ' },
    says: 'With the store of the heat-up before. Not the running value: still gears stir nothing.',
    source: own,
  },
  {
    id: 'thermal-dose',
    title: 'Thermal dose of the oil',
    formula: {
      latex: String.raw`t_\mathrm{band}=\sum\Delta t_i\,s_i`,
      plain: 't_band = Σ Δt·share of the step in the band',
    },
    says: 'Hours of the sump in each band of ten degrees, with a whole ten in its middle since benches hold there; between two rows in a straight line, over the whole log of a run. A gap in the log and a row without a reading of the sump are no time of it; a stretch that a note excludes is, unless it excludes the sump. Sums over runs say over which. No life of an oil follows from it.',
    source: own,
  },
  {
    id: 'sample-change',
    title: 'Change of an oil from unused to used',
    formula: {
      latex: String.raw`d=y-y_0,\quad |d|>r=1.96\sqrt2\,s_r`,
      plain: 'd = y − y0; changed when |d| > r = 1.96·√2·s_r',
    },
    says: 'Of one batch and by one method; a data sheet is never the before. r is the repeatability that the method states for two results, so that the interval of d, at 95 %, is ± r. Of two stated values the larger is taken.',
    source: 'r = 2.8 s_r: ISO 5725-2:1994, 7.4.',
  },
  {
    id: 'mean-of-refits',
    title: 'Figure of an article at a fill',
    formula: { latex: String.raw`\bar y_g=\frac1n\sum y_i-\beta(\bar t_g-\bar t)`, plain: 'ȳ = Σy_i/n − β·(t̄_g − t̄)' },
    says: 'Mean of its refits at the middle of the series; β is one drift common to all. Loaded runs without enough repeats stand alone and take their scatter from causes. Runs under different conditions have no mean.',
    source: 'Analysis of covariance with a common slope; common practice, no source.',
  },
  {
    id: 'difference',
    title: 'Difference from the baseline',
    formula: {
      latex: String.raw`d=y-y_0,\quad |d|>\frac{q}{\sqrt2}\,u(d)`,
      plain: 'd = y − y0; separated when |d| > q/√2·u(d)',
    },
    says: 'Causes that both share cancel. q is the studentized range for all pairs of the standing (Tukey–Kramer), family 5 %.',
    source: 'NIST/SEMATECH e-Handbook 7.4.7.1; JCGM 100:2008, 5.2.2.',
  },
  ...flowMethods,
];
