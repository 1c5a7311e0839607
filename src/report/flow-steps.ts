import type { Figure } from '../ledger/figure.ts';
import { rpm } from '../ledger/ids.ts';
import type { DerivedRun, FlowRun, FlowStep } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { StepName } from '../trial/flow.ts';
import type { Run } from '../trial/run.ts';
import { figureNamed } from './cite.ts';
import { derivedOf, type View } from './view.ts';

/** A flow trial with the steps that were found in it. */
export interface FlowSheet {
  readonly run: Run;
  readonly derived: DerivedRun;
  readonly flow: FlowRun;
}

export function flowSheet(view: View, run: Run): FlowSheet | null {
  const derived = derivedOf(view, run.id);
  return derived?.flow == null ? null : { run, derived, flow: derived.flow };
}

/** Flow trials that count and have a step, in the order they were run. */
export const flowSheets = (view: View): readonly FlowSheet[] => sheetsAmong(view.runs, view.input.derived);

export const sheetsAmong = (runs: readonly Run[], of: ReadonlyMap<string, DerivedRun>): readonly FlowSheet[] =>
  runs
    .flatMap((run): FlowSheet[] => {
      const derived = of.get(run.id);
      const counts = run.trial === 'flow' && derived?.leftOut === null && (derived.flow?.steps.length ?? 0) > 0;
      return counts ? [{ run, derived, flow: derived.flow! }] : [];
    })
    .sort((a, b) => a.run.order - b.run.order);

export const isGraded = ({ flow }: Pick<FlowSheet, 'flow'>): boolean =>
  flow.steps.some(({ observations }) => observations.length > 0);

export const stepsUp = (flow: FlowRun): readonly FlowStep[] => flow.steps.filter(({ step }) => step.direction === 'up');
export const stepsDown = (flow: FlowRun): readonly FlowStep[] =>
  flow.steps.filter(({ step }) => step.direction === 'down');

/** The figure of one step: the way up goes without saying. */
export const stepFigure = (view: View, run: string, quantity: QuantityName, step: StepName): Figure | undefined =>
  figureNamed(view, {
    subject: { run },
    quantity,
    at: {
      outputSpeed_rad_s: step.outputSpeed_rad_s,
      ...(step.direction === 'down' ? { direction: 'down' as const } : {}),
    },
  });

export const sameStep = (a: StepName, b: StepName): boolean =>
  a.direction === b.direction && rpm(a.outputSpeed_rad_s) === rpm(b.outputSpeed_rad_s);

/** "290rpm-up": where a step stands on a page. */
export const stepAnchor = ({ outputSpeed_rad_s, direction }: StepName): string =>
  `${rpm(outputSpeed_rad_s)}rpm-${direction}`;

/** "290 wheel rpm, way up" */
export const stepWords = (view: View, { outputSpeed_rad_s, direction }: StepName): string =>
  `${rpm(outputSpeed_rad_s)} ${view.speed}, way ${direction}`;

/** "290 rpm up": in a table, whose head says whose speed it is. */
export const stepShort = ({ outputSpeed_rad_s, direction }: StepName): string =>
  `${rpm(outputSpeed_rad_s)}\u00a0rpm ${direction}`;

/** Every speed and way of several runs: up and then down, each as it was run. */
export function allSteps(flows: readonly FlowRun[]): readonly StepName[] {
  const steps = flows.flatMap(({ steps: own }) => own.map(({ step }) => step));
  const once = steps.filter((step, i) => steps.findIndex((other) => sameStep(other, step)) === i);
  const place = ({ outputSpeed_rad_s, direction }: StepName): number =>
    direction === 'up' ? outputSpeed_rad_s : 1e6 - outputSpeed_rad_s;
  return [...once].sort((a, b) => place(a) - place(b));
}
