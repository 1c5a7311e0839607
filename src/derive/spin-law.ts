import { estimate, type Cause, type Estimate } from '../quantity/estimate.ts';
import type { LogLogLine } from '../physics/viscosity.ts';
import { nuAt } from './readings-of.ts';
import { fitNonlinear } from '../statistics/nonlinear.ts';
import type { At, Result } from '../trial/derived.ts';
import { gather } from './causes.ts';
import { ratioOf, type Reading } from './reading.ts';
import type { SpinPoint } from './spin.ts';

/**
 * One law through all windows of a run, for its exponents and for the way from the hottest window to the article's own
 * running temperature:
 *
 *   T = a + b·(ν/ν0)^p·(n/n0)^q
 *
 * Not a prediction: a smooth line through this run. ν0, n0 are the means of the windows.
 */
export interface SpinLaw {
  readonly viscosityExponent: number;
  readonly speedExponent: number;
  readonly u: readonly [number, number];
  readonly condition: number;
  readonly misfit_Nm: number;
  readonly torque_Nm: (at: { nu_m2_s: number; speed_rad_s: number }) => number;
}

/** Null with fewer than eight windows, three speeds or two temperatures: the exponents could not be told apart. */
export function spinLaw(points: readonly SpinPoint[]): SpinLaw | null {
  if (!enoughForLaw(points)) return null;
  const nu0 = Math.exp(points.reduce((s, p) => s + Math.log(p.nu_m2_s), 0) / points.length);
  const n0 = Math.exp(points.reduce((s, p) => s + Math.log(p.step_rad_s), 0) / points.length);
  const law = (q: readonly number[], nu: number, n: number): number =>
    q[0]! + q[1]! * (nu / nu0) ** q[2]! * (n / n0) ** q[3]!;
  const y = points.map((p) => p.torque_Nm);
  const top = Math.max(...y);
  const fit = fitNonlinear({
    model: (q) => points.map((p) => law(q, p.nu_m2_s, p.step_rad_s)),
    y,
    start: [top / 4, top / 3, 0.4, 0.7],
  });
  const [, , p = 0, q = 0] = fit.parameters;
  return {
    viscosityExponent: p,
    speedExponent: q,
    u: [Math.sqrt(fit.covariance[2]?.[2] ?? 0), Math.sqrt(fit.covariance[3]?.[3] ?? 0)],
    condition: fit.condition,
    misfit_Nm: fit.s,
    torque_Nm: (at) => law(fit.parameters, at.nu_m2_s, at.speed_rad_s),
  };
}

/** Eight windows, three speeds, two temperatures (common practice, no source). */
export const enoughForLaw = (points: readonly SpinPoint[]): boolean =>
  points.length >= 8 &&
  new Set(points.map((p) => p.step_rad_s)).size >= 3 &&
  new Set(points.map((p) => p.level_K)).size >= 2;

const lawBeyond: Cause = {
  id: 'model:spin torque beyond the hottest window',
  name: 'choice of law for spin torque beyond the hottest window',
  kind: 'model',
  distribution: 'rectangular',
  dof: Infinity,
  scope: 'series',
};

/**
 * Spin torque and power at the article's own running temperature: the hottest window of that speed, moved along the law.
 * The way is uncertain by a quarter of itself, because other laws of the kind fit as well (common practice, no source). All
 * runs go it by the same law, so that repeats do not average it away and like ways cancel in a difference.
 */
export function atOwnTemperature(input: {
  reading: Reading;
  points: readonly SpinPoint[];
  law: SpinLaw;
  line: LogLogLine;
  step_rad_s: number;
  own: Estimate;
  ownFrom: { readonly run: string; readonly at: At };
}): { results: Result[]; causes: Cause[] } {
  const { reading, points, law, line, step_rad_s, own, ownFrom } = input;
  const hottest = points.filter((p) => p.step_rad_s === step_rad_s).sort((a, b) => b.sump_K - a.sump_K)[0];
  if (hottest === undefined) return { results: [], causes: [] };
  const at = (oil_K: number): number => law.torque_Nm({ nu_m2_s: nuAt(line, oil_K), speed_rad_s: step_rad_s });
  const way = at(own.value) - at(hottest.sump_K);
  const perKelvin = (at(own.value + 0.5) - at(own.value - 0.5)) / 1;
  const found = gather([{ of: { cause: lawBeyond, u: way / 4 }, sensitivity: 1 }]);
  const torque = estimate(hottest.torque_Nm + way, [
    ...hottest.torque.parts,
    ...own.parts.map((p) => ({ cause: p.cause, u: p.u * perKelvin })),
    ...found.parts,
  ]);
  const omega = step_rad_s * ratioOf(reading.rig);
  const common = {
    at: { outputSpeed_rad_s: step_rad_s, sump_K: 'own' },
    bound: null,
    class: 'derived from measurement',
    method: 'spin/law-to-own-temperature',
    notes: [`at the final sump temperature of ${ownFrom.run}, beyond the hottest window of this run`],
    given: [
      {
        symbol: 't_own',
        name: 'own running temperature of the article',
        value: own.value - 273.15,
        u: null,
        unit: '°C',
        from: { kind: 'result', quantity: 'final-temperature', ...ownFrom },
      },
      {
        symbol: 'T_hot',
        name: 'torque of the hottest window of this speed',
        value: hottest.torque_Nm,
        u: hottest.u_Nm,
        unit: 'N·m',
        from: {
          kind: 'log',
          file: reading.log.file,
          fromLine: hottest.window.fromLine,
          toLine: hottest.window.toLine,
          from_s: hottest.window.from_s,
          to_s: hottest.window.to_s,
          channel: 'torque-in',
        },
      },
    ],
  } as const;
  const steps = [
    { says: 'Way along the law of this run', formula: 'ΔT = f(ν_own, n) − f(ν_hot, n)', value: way, unit: 'N·m' },
    { says: 'Torque at the own temperature', formula: 'T_own = T_hot + ΔT', value: torque.value, unit: 'N·m' },
  ];
  return {
    causes: found.causes.slice(),
    results: [
      { ...common, quantity: 'spin-torque', relation: 'net-torque', estimate: torque, steps },
      {
        ...common,
        quantity: 'spin-power',
        relation: 'shaft-power',
        estimate: estimate(
          torque.value * omega,
          torque.parts.map((p) => ({ cause: p.cause, u: p.u * omega })),
        ),
        steps: [
          ...steps,
          { says: 'Power at the input shaft', formula: 'P = T·ω', value: torque.value * omega, unit: 'W' },
        ],
      },
    ],
  };
}
