import type { LogLogLine } from '../physics/viscosity.ts';
import type { Cause, Estimate } from '../quantity/estimate.ts';
import { writeMeasured, writeNumber } from '../quantity/write.ts';
import type { Step } from '../trial/derived.ts';
import { modelSpread, type Contribution } from './causes.ts';
import type { HeatSeries } from './heat-series.ts';
import { heatSlope } from './heat-slope.ts';
import { endAmbient_K, laggedAmbient } from './lagged.ts';
import type { StoreFit } from './stores.ts';

/** What a final temperature owes to the ambient before the last half hour: what that leaves open, and how it is said. */
export interface Felt {
  readonly open: Contribution | null;
  readonly steps: readonly Step[];
}

/**
 * A final temperature is stated for the ambient of the last half hour. One store and two take the ambient as logged; the tail
 * settles on what the axle has felt, behind its own time constant, and one that is off by a quarter is open as a rectangle
 * (common practice, no source).
 */
export function feltAmbient(of: { run: string; series: HeatSeries; taken: StoreFit }): Felt {
  const { run, series, taken } = of;
  const { ambient_K, tau_s } = taken.felt;
  const other_K = tau_s === null ? ambient_K : laggedAmbient(series, 1.25 * tau_s).ambient_K;
  return {
    open:
      taken.model === 'tail'
        ? modelSpread({ run, what: 'lag of ambient', u: Math.abs(other_K - ambient_K) / Math.sqrt(3) })
        : null,
    steps: [
      {
        says: 'Ambient of the last half hour, for which the final temperature is stated',
        formula: 'T_amb',
        value: endAmbient_K(series) - 273.15,
        unit: '°C',
      },
      {
        says:
          tau_s === null
            ? 'Ambient, mean over the run: its time constant is not known'
            : `What the axle had felt of it by then: as logged, behind its own time constant of ${writeNumber(tau_s / 60, 0)} min`,
        formula: tau_s === null ? 'A = mean T_amb' : "A' = (T_amb − A)/τ",
        value: ambient_K - 273.15,
        unit: '°C',
      },
    ],
  };
}

/** The slope of heat made against temperature as a run keeps it, with the sentence that says so. */
export function heatAnswer(of: {
  run: string;
  series: HeatSeries;
  line: LogLogLine;
  final_K: number;
  shed_W_K: number;
  made: Contribution;
  chain: readonly { of: Contribution | null; sensitivity: number }[];
}): { estimate: Estimate | null; causes: readonly Cause[]; steps: readonly Step[]; says: string } {
  const zeros = of.chain.flatMap((c) =>
    c.of !== null && c.of.cause.scope === 'run' ? [{ of: c.of, sensitivity: c.sensitivity }] : [],
  );
  const slope = heatSlope({ ...of, zeros });
  if (slope.estimate === null)
    return {
      ...{ estimate: null, causes: [], steps: [] },
      says: `No slope of heat made against temperature: ${slope.why}. So the run is not corrected to another ambient, load or speed.`,
    };
  const { value, parts } = slope.estimate;
  const text = writeMeasured({ value, u: Math.hypot(...parts.map((p) => p.u)), unit: 'W/K' }).text;
  return {
    estimate: slope.estimate,
    causes: slope.causes,
    steps: [{ says: 'How it changes with temperature there', formula: 'dQ/dT', value, unit: 'W/K' }],
    says: `At its final temperature heat made changes by ${text} with the sump.`,
  };
}
