import { effectiveDof, standardUncertainty, type Cause, type CauseTable, type Estimate } from '../quantity/estimate.ts';
import { drawsOf } from '../statistics/standard-draws.ts';
import { coverageFactor } from '../statistics/student.ts';
import { agrees, runTrials } from '../statistics/trials.ts';
import type { ByTrials } from '../trial/compared.ts';

/** Answers a question once for the same key. */
export type Remember = <T>(key: () => string, make: () => T) => T;

/** Trials of one series: the same cause is the same number in every figure of one trial. */
export interface SeriesTrials {
  readonly seed: string;
  /** Of a sum of causes, as every difference of cells is. */
  readonly ofSum: (e: Estimate) => ByTrials;
  /**
   * Through a relation that is not linear, output by output; `linear` are the first-order estimates they are held against.
   * `moments` false for quotients whose divisor may be 0: they have ends, but no standard deviation.
   */
  readonly through: (of: {
    readonly inputs: readonly Estimate[];
    readonly relation: (values: readonly number[]) => readonly number[] | null;
    readonly linear: readonly Estimate[];
    readonly moments?: boolean;
  }) => readonly ByTrials[];
  /** Share of the trials in which each lies lowest. */
  readonly lowest: (list: readonly Estimate[]) => readonly number[];
}

/** One digit of the standard uncertainty settles (JCGM 101, 7.9.2); past so many trials it is said that it did not. */
const digits = 1;
/** Ends that lie apart by more than this share of u disagree: it lies between one and two digits of u, whatever they are. */
const tolerance = 0.1;
const cap = 1e6;
/** Causes below this share of u are not drawn: a hundred thousandth of the variance moves no end that is told. */
const negligible = 0.003;
/** Trials for the chance of lying lowest: its own standard error is half a percent at most. */
const lowestTrials = 1e4;

export function seriesTrials(of: {
  readonly seed: string;
  readonly causes: CauseTable;
  readonly coverage: number;
  readonly remember: Remember;
}): SeriesTrials {
  const { seed, causes, coverage, remember } = of;
  const draw = drawsOf(seed);
  const sum = (e: Estimate, block: number, size: number): Float64Array => {
    const out = new Float64Array(size).fill(e.value);
    const least = negligible * standardUncertainty(e);
    for (const { cause, u } of e.parts) {
      if (Math.abs(u) < least) continue;
      const z = draw(causeOf(cause, causes), block, size);
      for (let i = 0; i < size; i++) out[i] = out[i]! + u * z[i]!;
    }
    return out;
  };
  const kept = <T>(kind: string, list: readonly Estimate[], make: () => T): T =>
    remember(
      () => `${kind} ${seed} ${coverage} ${JSON.stringify(list.map((e) => [e, e.parts.map((p) => sizeOf(p.cause))]))}`,
      make,
    );
  const sizeOf = (id: string) => {
    const { distribution, dof, family } = causeOf(id, causes);
    return [distribution, dof === Infinity ? 'firm' : dof, family];
  };
  const told = (
    by: { readonly draws: number; readonly met: boolean },
    output: { readonly u: number; readonly interval: readonly [number, number] },
    linear: Estimate,
    shortest: boolean,
  ): ByTrials => {
    const u = standardUncertainty(linear);
    const dof = effectiveDof(linear, causes);
    const half = coverageFactor(coverage, dof) * u;
    const ends = [linear.value - half, linear.value + half] as const;
    return {
      interval: output.interval,
      u: dof > 2 ? output.u : null,
      draws: by.draws,
      met: by.met,
      agrees: agrees(ends, output.interval, u * tolerance),
      shortest,
    };
  };
  return {
    seed,
    ofSum: (e) =>
      kept('sum', [e], () => {
        const by = runTrials({ trial: (block, size) => [sum(e, block, size)], coverage, digits, cap });
        return told(by, by.outputs[0]!, e, false);
      }),
    through: ({ inputs, relation, linear, moments = true }) =>
      kept('through', [...inputs, ...linear], () => {
        const by = runTrials({
          trial: (block, size) => {
            const columns = inputs.map((e) => sum(e, block, size));
            const out = linear.map(() => new Float64Array(size));
            for (let i = 0; i < size; i++) {
              const values = relation(columns.map((c) => c[i]!));
              out.forEach((column, k) => (column[i] = values?.[k] ?? NaN));
            }
            return out;
          },
          coverage,
          digits,
          cap,
          shape: 'shortest',
          moments,
        });
        return by.outputs.map((output, k) => {
          const of = told(by, output, linear[k]!, true);
          return moments ? of : { ...of, u: null };
        });
      }),
    lowest: (list) =>
      kept('lowest', list, () => {
        const columns = list.map((e) => sum(e, 0, lowestTrials));
        const wins = list.map(() => 0);
        for (let i = 0; i < lowestTrials; i++) {
          let least = 0;
          for (let k = 1; k < columns.length; k++) if (columns[k]![i]! < columns[least]![i]!) least = k;
          wins[least] = wins[least]! + 1;
        }
        return wins.map((n) => n / lowestTrials);
      }),
  };
}

/** The interval that is published: the linear one, or that by trials where the two disagree (JCGM 101, clause 8). */
export const publishedInterval = (
  linear: readonly [number, number],
  trials: ByTrials | null,
): readonly [number, number] => (trials === null || trials.agrees ? linear : trials.interval);

const causeOf = (id: string, causes: CauseTable): Pick<Cause, 'id' | 'distribution' | 'dof' | 'family'> =>
  causes.get(id) ?? { id, distribution: 'normal', dof: Infinity };
