import type { FlowStep } from '../trial/derived.ts';
import { capital } from './spans.ts';
import { numberText, quantityText } from './digits.ts';
import { stepFigure, stepShort, type FlowSheet } from './flow-steps.ts';
import { notice } from './flow-beside.ts';
import type { Block, MarginNote } from './page.ts';
import type { FlowPair } from './pairs.ts';
import type { View } from './view.ts';

/** What differs between two runs besides the article, and what of their doubt is one and the same. */

type Both = readonly [FlowStep, FlowStep];

/** Two sumps nearer than this are told to be alike: it is twice what a probe in place is trusted to (our rule), K. */
const alike_K = 0.6;

/** Pictures in oils farther apart than this, by Reynolds number, are told not to be laid beside each other (our rule). */
const apart_ratio = 2;

interface Apart {
  readonly step: FlowStep['step'];
  /** Left less right. */
  readonly by_K: number;
  /** Reynolds number left over right: how many times thinner the oil is on the left. Null where either has none. */
  readonly thinner_ratio: number | null;
}

/** The step at which the oils lie farthest apart; a probe above the level says nothing of the oil. */
function farthest(view: View, { left, right }: FlowPair, steps: readonly Both[]): Apart | null {
  const all = steps.flatMap(([a, b]): Apart[] => {
    if (a.sump_K === null || b.sump_K === null || a.probeAbove || b.probeAbove) return [];
    const [here, there] = [left, right].map(({ run }) => stepFigure(view, run.id, 'reynolds', a.step)?.value ?? null);
    return [
      {
        step: a.step,
        by_K: a.sump_K - b.sump_K,
        thinner_ratio: here == null || there == null || !(there > 0) ? null : here / there,
      },
    ];
  });
  return all.reduce<Apart | null>(
    (most, of) => (most === null || Math.abs(of.by_K) > Math.abs(most.by_K) ? of : most),
    null,
  );
}

/** How far the oils are apart in temperature, and what that makes of them. */
export function sumpNote(view: View, pair: FlowPair, steps: readonly Both[]): MarginNote {
  const most = farthest(view, pair, steps);
  return {
    name: 'Sump.',
    text: [
      most === null ? 'At no step was it read in both: how thick the oils were is not known.' : sumpWords(pair, most),
    ],
  };
}

function sumpWords({ left, right }: FlowPair, { step, by_K, thinner_ratio }: Apart): string {
  if (Math.abs(by_K) <= alike_K) return `Alike in both, within ${quantityText(Math.abs(by_K), 'K', 1)} at every step.`;
  const cold = by_K > 0 ? right : left;
  const warm = by_K > 0 ? left : right;
  const thicker = thinner_ratio === null ? null : by_K > 0 ? thinner_ratio : 1 / thinner_ratio;
  const oil = thicker === null ? 'thicker' : `${numberText((thicker - 1) * 100, 0)} % thicker`;
  return `${capital(cold.run.article)} in ${cold.run.id} was run ${quantityText(Math.abs(by_K), 'K', 1)} colder than ${warm.run.article} in ${warm.run.id}, at ${stepShort(step)} where they lie farthest apart: its oil was ${oil}, which moves what is carried and what is held up.`;
}

/** Before two pictures that were taken in oils too unlike. Null where they are near enough. */
export function unlikeOils(view: View, pair: FlowPair, steps: readonly Both[]): Block | null {
  const ratio = farthest(view, pair, steps)?.thinner_ratio ?? null;
  const times = ratio === null ? 1 : Math.max(ratio, 1 / ratio);
  if (times <= apart_ratio) return null;
  return notice([
    `The oil of one run was ${numberText(times, 1)} times thicker than that of the other: what differs between the two pictures is not the doing of the articles alone.`,
  ]);
}

/** What a difference of one grade is worth: how often two observers give one and the same step grades that differ. */
export function oneGradeNote(view: View): MarginNote | null {
  const own = view.input.compared.agreements.filter(({ grade, n }) => grade === 'reach' && n > 0);
  const sum = (of: (agreement: (typeof own)[number]) => number): number => own.reduce((total, a) => total + of(a), 0);
  const [pairs, differ] = [sum(({ n }) => n), sum(({ n, equal }) => n - equal)];
  if (pairs === 0 || differ === 0) return null;
  return {
    name: 'One grade.',
    text: [
      `Two observers gave one and the same step unlike grades of Reach in ${numberText(differ, 0)} of ${numberText(pairs, 0)} pairs. One grade between two articles at one step may be no more than that; the same way at every step is more.`,
    ],
  };
}

/** Causes that stand in the ± of both levels take no part in what lies between them. Null where they share none. */
export function levelNote(view: View, { left, right }: FlowPair, steps: readonly Both[]): MarginNote | null {
  const budget = ({ run }: FlowSheet) => {
    const [step] = steps[0] ?? [];
    const figure = step === undefined ? undefined : stepFigure(view, run.id, 'running-level', step.step);
    return figure === undefined ? [] : (view.input.ledger.workings.get(figure.id)?.budget ?? []);
  };
  const there = budget(right);
  const shared = budget(left).filter(({ cause }) => there.some((row) => row.cause === cause));
  if (shared.length === 0) return null;
  return {
    name: 'Levels.',
    text: [
      `In the ± of both stands ${shared.map(({ name }) => name).join(' and ')}, which takes no part in what lies between them: two levels differ more surely than their ± makes it look.`,
    ],
  };
}
