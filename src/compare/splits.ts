import { combine, standardUncertainty, type Estimate } from '../quantity/estimate.ts';
import { riseSplit } from '../physics/rise-split.ts';
import type { CellFigure, Effect, Split } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import type { SeriesTrials } from './by-trials.ts';
import { coverOf, type Areas } from './cover-share.ts';
import { cellKey } from './group.ts';
import * as texts from './texts-claims.ts';

/** The four numbers a difference in final rise is made of. */
interface Ends {
  readonly heat: Estimate;
  readonly rise: Estimate;
  readonly heat0: Estimate;
  readonly rise0: Estimate;
}

/**
 * Every difference in final rise that was compared, in its two parts: makes less, sheds more. Exact by the log-mean
 * identity, with no residue; causes that heat and rise share are carried through both.
 */
export function splitsOf(input: {
  effects: readonly Effect[];
  cells: readonly CellFigure[];
  trials: SeriesTrials | null;
  /** Outside surfaces, m²: of the axle, and of articles that state one. */
  areas: Areas;
  interval: (e: Estimate) => readonly [number, number];
}): Split[] {
  const { effects, cells, trials } = input;
  return effects
    .filter(({ quantity }) => quantity === 'final-rise')
    .flatMap((effect): Split[] => {
      const found = splitOf(effect.cell, effect.against, cells);
      if (found === null) return [];
      // By the same interval that the standing separates with: a share of what may be nothing says nothing.
      const whole = effect.separated;
      return [
        {
          cell: effect.cell,
          against: effect.against,
          byHeatMade: found.byHeatMade,
          byShed: found.byShed,
          share: whole ? found.share : null,
          trials: trials === null ? null : splitTrials(found, trials, whole),
          ...coverOf(effect, found, input),
          runs: [...new Set([...effect.runs, ...effect.againstRuns])],
          notes: whole ? [] : [texts.shareOfNothing],
        },
      ];
    });
}

type SplitTrials = NonNullable<Split['trials']>;

/** The same by trials, through the identity itself. The share of what may be nothing never settles, so it is left out there. */
export function splitTrials(
  found: NonNullable<ReturnType<typeof splitOf>>,
  trials: SeriesTrials,
  whole: boolean,
): SplitTrials {
  const { heat, rise, heat0, rise0 } = found.ends;
  const through = (
    linear: readonly Estimate[],
    pick: (parts: readonly number[]) => readonly number[],
    moments: boolean,
  ) =>
    trials.through({
      inputs: [heat, rise, heat0, rise0],
      relation: (v) => {
        const parts = splitAt(v as unknown as Four);
        return parts === null ? null : pick(parts);
      },
      linear,
      moments,
    });
  const [byHeatMade, byShed] = through([found.byHeatMade, found.byShed], (parts) => parts.slice(0, 2), true);
  // Its divisor, the whole difference, may be 0 in a trial.
  const share = whole ? through([found.share], (parts) => parts.slice(2), false)[0]! : null;
  return { byHeatMade: byHeatMade!, byShed: byShed!, share };
}

/** Both parts and the share of the heat made; null where one of the four numbers is missing or not above 0. */
export function splitOf(
  cell: Cell,
  against: Cell,
  cells: readonly CellFigure[],
): { readonly byHeatMade: Estimate; readonly byShed: Estimate; readonly share: Estimate; readonly ends: Ends } | null {
  const of = (of_: Cell, quantity: 'final-rise' | 'heat-made'): Estimate | null =>
    cells.find((c) => c.quantity === quantity && cellKey(c.cell) === cellKey(of_))?.estimate ?? null;
  const heat = of(cell, 'heat-made');
  const rise = of(cell, 'final-rise');
  const heat0 = of(against, 'heat-made');
  const rise0 = of(against, 'final-rise');
  if (heat === null || rise === null || heat0 === null || rise0 === null) return null;
  const ends: Ends = { heat, rise, heat0, rise0 };
  const parts = through(ends, (v) => splitAt(v));
  if (parts === null) return null;
  const [byHeatMade, byShed, share] = parts;
  return byHeatMade === undefined || byShed === undefined || share === undefined
    ? null
    : { byHeatMade, byShed, share, ends };
}

type Four = readonly [number, number, number, number];

function splitAt([heat_W, rise_K, heat0_W, rise0_K]: Four): readonly number[] | null {
  const split = riseSplit({
    baseline: { heat_W: heat0_W, rise_K: rise0_K },
    other: { heat_W, rise_K },
  });
  return split === null
    ? null
    : [split.byHeatMade_K, split.byShed_K, split.byHeatMade_K / (split.byHeatMade_K + split.byShed_K)];
}

/** First order propagation by central differences of a tenth of each standard uncertainty, cause by cause. */
function through(ends: Ends, of: (four: Four) => readonly number[] | null): Estimate[] | null {
  const inputs = [ends.heat, ends.rise, ends.heat0, ends.rise0];
  const at = inputs.map(({ value }) => value) as unknown as Four;
  const values = of(at);
  if (values === null) return null;
  const slopes = inputs.map((input, i) => {
    const step = 0.1 * standardUncertainty(input);
    if (step === 0) return values.map(() => 0);
    const moved = (by: number) => of(at.map((v, j) => (j === i ? v + by : v)) as unknown as Four);
    const [up, down] = [moved(step), moved(-step)];
    return values.map((_, k) => (up === null || down === null ? NaN : (up[k]! - down[k]!) / (2 * step)));
  });
  return values.map((value, k) =>
    combine(
      value,
      inputs.map((of_, i) => ({ of: of_, sensitivity: slopes[i]![k]! })),
    ),
  );
}
