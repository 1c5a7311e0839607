import { estimate, type Cause, type Estimate } from '../quantity/estimate.ts';
import { leastSquares } from '../statistics/least-squares.ts';
import { fitScatter, modelSpread, type Contribution } from './causes.ts';

/** Torque of one window as it was held, to be stated for the step of the plan. */
export interface HeldWindow {
  readonly name: string;
  readonly step_rad_s: number;
  readonly level_K: number;
  /** Mean of the window, over its step; without sign. */
  readonly held_ratio: number;
  readonly torque: Estimate;
}

export interface BroughtToStep {
  readonly torque: Estimate;
  readonly causes: readonly Cause[];
  /** How it was brought to the step; null where it was not. */
  readonly way: { readonly exponent: number; readonly by_Nm: number } | null;
  /** For the figure, where it stands too far off to be brought anywhere. */
  readonly note: string | null;
}

/** A power is fitted to four speeds or more (common practice, no source). */
const leastSpeeds = 4;

/**
 * Torque of every window at the speed of its step, by the exponent that the run itself has at that temperature:
 *
 *   T_step = T·(n_step/n)^e,   ln T = c + e·ln n through the windows of one temperature
 *
 * The doubt of e goes in as a cause. A window further off than `within_ratio`, or a temperature with fewer than four speeds,
 * is left where it is, and the whole of the way is doubt: torque grows at most in proportion to speed. Null: none is brought.
 *
 * source  common practice, no source
 */
export function broughtToStep(
  run: string,
  windows: readonly HeldWindow[],
  within_ratio: number | null,
): readonly BroughtToStep[] {
  if (within_ratio === null) return windows.map(({ torque }) => ({ torque, causes: [], way: null, note: null }));
  const levels = [...new Set(windows.map(({ level_K }) => level_K))];
  const exponents = new Map(levels.map((level_K) => [level_K, exponentAt(run, windows, level_K)]));
  return windows.map((window) => {
    const exponent = exponents.get(window.level_K) ?? null;
    const far = Math.abs(window.held_ratio - 1) > within_ratio;
    return exponent === null || far ? left(run, window, far) : brought(window, exponent);
  });
}

interface Exponent {
  readonly value: number;
  readonly doubt: Contribution;
}

function exponentAt(run: string, windows: readonly HeldWindow[], level_K: number): Exponent | null {
  const here = windows.filter((w) => w.level_K === level_K && w.torque.value > 0 && w.held_ratio > 0);
  if (new Set(here.map(({ step_rad_s }) => step_rad_s)).size < leastSpeeds) return null;
  const fit = leastSquares({
    design: here.map(({ step_rad_s, held_ratio }) => [1, Math.log(step_rad_s * held_ratio)]),
    y: here.map(({ torque }) => Math.log(torque.value)),
  });
  if (!fit.ok) return null;
  const celsius = Math.round(level_K - 273.15);
  const what = `exponent of torque in speed at ${celsius} °C`;
  return {
    value: fit.coefficients[1]!,
    doubt: fitScatter({ run, what, u: Math.sqrt(fit.covariance[1]![1]!), dof: fit.dof }),
  };
}

function brought({ torque, held_ratio }: HeldWindow, { value: exponent, doubt }: Exponent): BroughtToStep {
  const times = held_ratio ** -exponent;
  const value = torque.value * times;
  const perExponent = -value * Math.log(held_ratio);
  return {
    torque: estimate(value, [
      ...torque.parts.map(({ cause, u }) => ({ cause, u: u * times })),
      { cause: doubt.cause.id, u: perExponent * doubt.u },
    ]),
    causes: [doubt.cause],
    way: { exponent, by_Nm: value - torque.value },
    note: null,
  };
}

function left(run: string, { name, held_ratio, torque }: HeldWindow, far: boolean): BroughtToStep {
  const u = Math.abs((held_ratio - 1) * torque.value) / Math.sqrt(3);
  const off = modelSpread({ run, what: `speed off ${name}`, u });
  return {
    torque: estimate(torque.value, [...torque.parts, { cause: off.cause.id, u: off.u }]),
    causes: [off.cause],
    way: null,
    note: far ? 'held further off its step than the tolerance of speed: not brought to it' : null,
  };
}
