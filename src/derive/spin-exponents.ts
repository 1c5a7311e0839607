import { highestCondition } from '../physics/churning-exponents.ts';
import { estimate, type Cause } from '../quantity/estimate.ts';
import { leastSquares } from '../statistics/least-squares.ts';
import type { Result } from '../trial/derived.ts';
import type { FittedExponents } from '../trial/exponents.ts';
import { fitScatter } from './causes.ts';
import type { SpinPoint } from './spin.ts';
import { enoughForLaw, type SpinLaw } from './spin-law.ts';

export interface ExponentsFound {
  readonly results: readonly Result[];
  readonly causes: readonly Cause[];
  readonly exponents: readonly FittedExponents[];
}

/**
 * How the spin power of one run goes with speed and viscosity through all its windows, to stand beside the literature:
 *
 *   ln P = c + p·ln n + q·ln ν                 the whole of it
 *   P = n·[a + b·(ν/ν0)^p'·(n/n0)^q']          above a constant part of the torque, by the law of the run: n^(1 + q'), ν^p'
 *
 * The second only where its condition number tells the exponents from the constant part.
 */
export function spinExponents(run: string, points: readonly SpinPoint[], law: SpinLaw | null): ExponentsFound {
  const found = [wholeOf(run, points), law === null ? null : aboveOf(run, points.length, law)].filter(
    (f): f is ExponentsFound => f !== null,
  );
  return {
    results: found.flatMap((f) => f.results),
    causes: found.flatMap((f) => f.causes),
    exponents: found.flatMap((f) => f.exponents),
  };
}

function wholeOf(run: string, points: readonly SpinPoint[]): ExponentsFound | null {
  const of = points.filter(({ torque_Nm }) => torque_Nm > 0);
  if (!enoughForLaw(of)) return null;
  const x = centred(of.map((p) => Math.log(p.step_rad_s)));
  const z = centred(of.map((p) => Math.log(p.nu_m2_s)));
  const fit = leastSquares({
    design: of.map((_, i) => [1, x[i]!, z[i]!]),
    y: of.map((p) => Math.log(p.torque_Nm * p.step_rad_s)),
  });
  if (!fit.ok) return null;
  const u = (j: number): number => Math.sqrt(fit.covariance[j]![j]!);
  return told({
    run,
    exponents: {
      of: 'whole',
      condition: fit.condition,
      speed: 'speed-exponent',
      viscosity: 'viscosity-exponent',
    },
    speed: { value: fit.coefficients[1]!, u: u(1) },
    viscosity: { value: fit.coefficients[2]!, u: u(2) },
    dof: fit.dof,
    relation: 'spin-exponents',
    notes: ['of the whole spin loss, bearings and seals with it; a straight line in logarithms, its bend in the ±'],
  });
}

/** Parameters of the law: a constant part, a size and two exponents. */
const parametersOfLaw = 4;

const aboveOf = (run: string, windows: number, law: SpinLaw): ExponentsFound =>
  told({
    run,
    exponents: {
      of: 'above a constant',
      condition: law.condition,
      speed: 'speed-exponent-above',
      viscosity: 'viscosity-exponent-above',
    },
    speed: { value: 1 + law.speedExponent, u: law.u[1] },
    viscosity: { value: law.viscosityExponent, u: law.u[0] },
    dof: windows - parametersOfLaw,
    relation: 'spin-law',
    notes: ['of what stands above a part of the torque that neither speed nor viscosity moves'],
  });

interface Number {
  readonly value: number;
  readonly u: number;
}

function told(of: {
  readonly run: string;
  readonly exponents: FittedExponents;
  readonly speed: Number;
  readonly viscosity: Number;
  readonly dof: number;
  readonly relation: string;
  readonly notes: readonly string[];
}): ExponentsFound {
  const { run, exponents, dof, relation } = of;
  if (!(exponents.condition <= highestCondition)) return { results: [], causes: [], exponents: [exponents] };
  const made = (['speed', 'viscosity'] as const).map((what) => {
    const { value, u } = of[what];
    const scatter = fitScatter({ run, what: `exponent of ${what}, ${exponents.of}`, u, dof });
    const result: Result = {
      quantity: exponents[what],
      at: {},
      estimate: estimate(value, [{ cause: scatter.cause.id, u: scatter.u }]),
      bound: null,
      class: 'derived from measurement',
      relation,
      method: 'spin/exponents',
      notes: of.notes,
      given: [],
      steps: [
        {
          says: 'Condition number of the fit, its columns at unit length',
          formula: 'cond',
          value: exponents.condition,
          unit: '1',
        },
      ],
    };
    return { result, cause: scatter.cause };
  });
  return { results: made.map((m) => m.result), causes: made.map((m) => m.cause), exponents: [exponents] };
}

function centred(values: readonly number[]): number[] {
  const middle = values.reduce((sum, v) => sum + v, 0) / values.length;
  return values.map((v) => v - middle);
}
