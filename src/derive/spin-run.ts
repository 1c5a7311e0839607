import type { LogLogLine } from '../physics/viscosity.ts';
import { highestCondition } from '../physics/churning-exponents.ts';
import { writeMeasured, writeNumber } from '../quantity/write.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import { lossEstimates, noEstimate, type Bath } from './loss-estimate.ts';
import { noWindow } from './no-window.ts';
import type { Reading } from './reading.ts';
import type { Ready } from './run.ts';
import { deriveSpin, type SpinDerived } from './spin.ts';
import { spinExponent } from './spin-exponent.ts';
import { spinExponents } from './spin-exponents.ts';
import { atOwnTemperature, spinLaw, type SpinLaw } from './spin-law.ts';
import { numbersAtFinal, numbersOfWindows } from './spin-numbers.ts';

interface SpinInput {
  readonly r: Ready;
  readonly reading: Reading;
  readonly plan: Plan;
  readonly line: LogLogLine;
  readonly done: ReadonlyMap<string, DerivedRun>;
  /** Steps at which the sump probe hung above the level. */
  readonly notAt: readonly number[];
}

/** What a spin run gives: its loss, the oil it was in, what models let one expect of it, and how it goes with speed and viscosity. */
export function spinRun({ r, reading, plan, line, done, notAt }: SpinInput) {
  const { input } = r;
  const { run, rig, oil, series } = input;
  const found = deriveSpin({
    ...{ reading, plan, line },
    reference_K: series.reference.sump_K,
    notAt_rad_s: notAt,
    // method 1 took torque as it was held
    speedWithin_ratio: series.method === '1' ? null : series.tolerance.outputSpeed_ratio,
  });
  const law = spinLaw(found.points);
  const step = plan.load?.outputSpeed_rad_s ?? series.reference.outputSpeed_rad_s;
  const final = finalOf(r, done);
  const ownFrom = final && { run: final.run, at: final.at };
  const atOwn =
    law === null || final === null || ownFrom === null || found.points.length === 0
      ? { results: [], causes: [] }
      : atOwnTemperature({
          ...{ reading, points: found.points, law, line, ownFrom },
          step_rad_s: step,
          own: final.estimate,
        });
  const bath: Bath = { rig, oil, line, level_z_m: r.level.level_z_m, volume20_m3: r.level.volume20_m3 };
  const oilThere = numbersOfWindows(reading, found.points, bath);
  const ownAt = { outputSpeed_rad_s: step, sump_K: 'own' } as const;
  const oilAtOwn = final === null || atOwn.results.length === 0 ? [] : numbersAtFinal(final, ownAt, step, bath);
  const exponent = spinExponent({ run: run.id, results: found.results, speed_rad_s: step });
  const exponents = spinExponents(run.id, found.points, law);
  return {
    results: [
      ...found.results,
      ...atOwn.results,
      ...oilThere.results,
      ...oilAtOwn,
      ...lossEstimates(bath, statesOf(found)),
      ...exponents.results,
    ],
    causes: [
      ...found.causes,
      ...atOwn.causes,
      ...oilThere.causes,
      ...exponents.causes,
      ...(exponent?.causes ?? []),
      ...(final?.causes ?? []),
    ],
    spinExponent: exponent?.estimate ?? null,
    exponents: exponents.exponents,
    noLossEstimate: noEstimate(bath),
    windows: found.windows,
    remarks: [
      ...(law === null ? [] : [lawSentence(law)]),
      ...restlessSentence(found.restless),
      ...unseenSentence(found.unseen, plan),
    ],
    leftOut: whyNot(found, reading, plan),
  };
}

/** Final temperature of the loaded run of the same cell and rig state: the own temperature of the article. */
function finalOf(r: Ready, done: ReadonlyMap<string, DerivedRun>) {
  const same = [...done.values()].filter((d) => d.trial === 'heat-up' && sameConditions(d, r));
  const found = same.flatMap((d) =>
    d.results.flatMap(({ quantity, at, estimate }) =>
      quantity === 'final-temperature' ? [{ run: d.run, at, estimate, causes: d.causes }] : [],
    ),
  )[0];
  return found?.estimate == null ? null : { ...found, estimate: found.estimate };
}

const sameConditions = (d: DerivedRun, r: Ready): boolean =>
  d.cell.article === r.cell.article &&
  d.cell.oil === r.cell.oil &&
  Math.abs(d.cell.fill_m3 - r.cell.fill_m3) < 1e-9 &&
  d.cell.tilt_ratio === r.cell.tilt_ratio &&
  d.rigState === r.input.run.rigState;

/** Speeds and temperatures that spin power is stated at. */
const statesOf = ({ results }: SpinDerived) =>
  results.flatMap(({ quantity, at }) =>
    quantity === 'spin-power' && at.outputSpeed_rad_s !== undefined && typeof at.sump_K === 'number'
      ? [{ at, speed_rad_s: at.outputSpeed_rad_s, oil_K: at.sump_K }]
      : [],
  );

function whyNot(found: SpinDerived, reading: Reading, plan: Plan): string | null {
  if (found.results.length === 0) return noWindow(reading, plan);
  return found.points.every((p) => p.torque_Nm <= 0)
    ? 'net torque is not above zero in any window; the sign of its column, or its zero, is wrong'
    : null;
}

const lawSentence = (law: SpinLaw): string => {
  if (!(law.condition <= highestCondition))
    return `One law lies through all windows, a constant part of the torque and one that goes with viscosity and speed; its condition number, ${writeNumber(law.condition, 0)}, is too high for its exponents to be told.`;
  const power = (value: number, u: number): string => writeMeasured({ value, u, unit: '1' }).text;
  return `Through all windows torque goes with viscosity to the power ${power(law.viscosityExponent, law.u[0])} and with speed to the power ${power(law.speedExponent, law.u[1])} above a constant part; condition number ${writeNumber(law.condition, 0)}.`;
};

const restlessSentence = (names: readonly string[]): string[] =>
  names.length === 0 ? [] : [`Not steady by the rule of the plan, and not used: ${names.join('; ')}.`];

/** Planned steps without a window, by temperature; a temperature that was not run at all is named as a whole. */
function unseenSentence(unseen: SpinDerived['unseen'], plan: Plan): string[] {
  const parts = plan.temperatures_K.flatMap((level_K) => {
    const steps = unseen.filter((u) => u.level_K === level_K).map((u) => writeNumber((u.step_rad_s * 30) / Math.PI, 0));
    if (steps.length === 0) return [];
    const which = steps.length === plan.steps_rad_s.length ? 'every step' : `${steps.join(', ')} rpm`;
    return [`${which} at ${writeNumber(level_K - 273.15, 0)} °C`];
  });
  return parts.length === 0 ? [] : [`Planned, and no window found within 2 K and 1.5 %: ${parts.join('; ')}.`];
}
