import { outsideRange } from '../physics/relation.ts';
import { viscosityRelation } from '../physics/viscosity.ts';
import { estimate, type Cause, type Estimate } from '../quantity/estimate.ts';
import type { At, Given, Result } from '../trial/derived.ts';
import { calibration, gather } from './causes.ts';
import { logSource, type Reading } from './reading.ts';
import { nuAt } from './readings-of.ts';
import { ofTheSheet, reynoldsAt, viscosityStep, type Oiled } from './similarity.ts';
import type { SpinPoint } from './spin.ts';

/** A state that oil and ring gear stood in: speed, sump, and where the sump is from. */
export interface OilState {
  readonly at: At;
  readonly speed_rad_s: number;
  readonly sump: Estimate;
  readonly given: Given;
  readonly says: string;
}

/** Kinematic viscosity of the oil and Reynolds number of the ring gear in every window of a spin run. */
export function numbersOfWindows(
  reading: Reading,
  points: readonly SpinPoint[],
  of: Oiled,
): { results: Result[]; causes: Cause[] } {
  const probe = reading.instrument('sump');
  const all = points.map((p) => {
    const found = gather([{ of: probe && calibration(probe, p.sump_K), sensitivity: 1 }]);
    const state: OilState = {
      at: { outputSpeed_rad_s: p.step_rad_s, sump_K: p.level_K },
      speed_rad_s: p.step_rad_s,
      sump: estimate(p.sump_K, found.parts),
      given: {
        symbol: 'T',
        name: 'sump of the window',
        value: p.sump_K - 273.15,
        u: p.uSump_K,
        unit: '°C',
        from: logSource(reading.log, 'sump', p.rows),
      },
      says: 'at the sump of the window, not at the reference temperature',
    };
    return { results: numbersOf(state, of), causes: found.causes };
  });
  return { results: all.flatMap((a) => a.results), causes: all.flatMap((a) => a.causes) };
}

/** The same at the temperature that a loaded run of the article settles at: null sources are left out by the caller. */
export const numbersAtFinal = (
  final: { readonly run: string; readonly at: At; readonly estimate: Estimate },
  at: At,
  speed_rad_s: number,
  of: Oiled,
): Result[] =>
  numbersOf(
    {
      at,
      speed_rad_s,
      sump: final.estimate,
      given: {
        symbol: 'T',
        name: `final temperature of ${final.run}`,
        value: final.estimate.value - 273.15,
        u: null,
        unit: '°C',
        from: { kind: 'result', run: final.run, quantity: 'final-temperature', at: final.at },
      },
      says: `at the final temperature of ${final.run}`,
    },
    of,
  );

/** Nothing where the line of the oil has no viscosity there; no Reynolds number without the face of the ring gear. */
export function numbersOf(state: OilState, of: Oiled): Result[] {
  const { value: sump_K, parts } = state.sump;
  const nu_m2_s = nuAt(of.line, sump_K);
  if (Number.isNaN(nu_m2_s)) return [];
  const carried = (value: number, warmer: number): Estimate =>
    estimate(
      value,
      parts.map(({ cause, u }) => ({ cause, u: u * (warmer - value) })),
    );
  const shared = {
    at: state.at,
    bound: null,
    class: 'derived from measurement',
    notes: [state.says, ...outsideRange(viscosityRelation, { ...of.oil, oil_K: sump_K }), ...ofTheSheet(of.oil)],
    given: [state.given],
  } as const;
  const Re = reynoldsAt(state.speed_rad_s, sump_K, of);
  const warm = reynoldsAt(state.speed_rad_s, sump_K + 1, of);
  return [
    {
      ...shared,
      quantity: 'viscosity',
      estimate: carried(nu_m2_s, nuAt(of.line, sump_K + 1)),
      relation: 'viscosity-log-log',
      method: 'spin/viscosity',
      steps: [],
    },
    ...(Re === null
      ? []
      : [
          {
            ...shared,
            quantity: 'reynolds',
            estimate: carried(Re, warm ?? Re),
            relation: 'ring-reynolds',
            method: 'spin/reynolds',
            steps: [viscosityStep(of.line, sump_K)],
          } as const,
        ]),
  ];
}
