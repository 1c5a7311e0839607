import { ambientWalk_C, type Drawn, type Making, setUpOf } from './draws.ts';
import { type Fault, plantFaults } from './faults.ts';
import { type Load, type SetUp, shaft_rad_s } from './law.ts';
import type { RunPlan } from './order.ts';
import { still, stream } from './random.ts';
import { highReaders, lowReaders, readings } from './readings.ts';
import { interval_s, type Recording } from './recording.ts';
import { flowTimeline, type SpinSteps, spinTimeline } from './timeline.ts';
import { coolDown, heatUp, type LoadedEnd, stepped } from './trials.ts';
import { fanReturn_K, hillLoad } from './verdicts.ts';

export interface MadeRun {
  readonly plan: RunPlan;
  readonly drawn: Drawn;
  readonly setUp: SetUp;
  readonly spin: SpinSteps;
  /** True values. */
  readonly truth: Recording;
  /** What the logger wrote. */
  readonly recording: Recording;
  readonly load: Load | null;
  readonly crossings: ReadonlyMap<number, number>;
  readonly end: LoadedEnd | null;
  /** Ambient as the technician wrote it down, from the same probe. */
  readonly ambientRead_C: readonly [number, number];
  readonly faults: readonly Fault[];
}

export const limits_C = [80, 90, 95];
const targetHub_Nm = hillLoad.powerOut_W / (2 * shaft_rad_s(hillLoad.wheel_rpm));

export function makeRun(plan: RunPlan, drawn: Drawn, making: Making, start: LoadedEnd | null): MadeRun {
  const { quiet } = making;
  const own = (salt: number) => (quiet ? still : stream(making.seed, plan.order, salt));
  const setUp = setUpOf(plan, drawn, making.gear);
  const ambient_C = ambientWalk_C(start?.ambient_C ?? drawn.ambientStart_C, plan.length_s / interval_s + 1, own(3));
  const around = { ambient_C, air_m_s: airOf(plan, drawn, quiet), tilt_pct: plan.tilt_pct, wander: own(4) };
  const trial = trialOf(plan, drawn, { setUp, around }, making, start);
  const read = readings(trial.truth, plan.trial === 'spin' ? lowReaders : highReaders, {
    ...{ calibration: making.calibration, quiet, from: own(5) },
    inputZero: { before: drawn.zeroBefore_Nm, after: drawn.zeroAfter_Nm },
  });
  const spoilt = quiet
    ? { recording: read, faults: [] }
    : plantFaults({ run: plan, recording: read, setUp, from: own(6) });
  const probe_K = (quiet ? 0 : making.calibration['tc-ambient']!) + (plan.id === 'H-09' && !quiet ? fanReturn_K : 0);
  return {
    ...{ plan, drawn, setUp, spin: making.spin, ...trial, ...spoilt },
    ambientRead_C: [ambient_C[0]! + probe_K, ambient_C.at(-1)! + probe_K],
  };
}

const airOf = (plan: RunPlan, drawn: Drawn, quiet: boolean): number =>
  quiet ? ({ 'heat-up': 4, 'cool-down': 0.3, spin: 0, flow: 0 } as const)[plan.trial] : drawn.air_m_s;

function trialOf(
  plan: RunPlan,
  drawn: Drawn,
  of: Parameters<typeof heatUp>[0],
  making: Making,
  start: LoadedEnd | null,
): Pick<MadeRun, 'truth' | 'load' | 'crossings' | 'end'> {
  const none = { load: null, crossings: new Map<number, number>(), end: null };
  const { length_s } = plan;
  if (plan.trial === 'spin')
    return {
      ...none,
      truth: stepped(of, spinTimeline(making.spin), { torque: true, level: false, wander_K: making.quiet ? 0 : 0.12 }),
    };
  if (plan.trial === 'flow')
    return {
      ...none,
      truth: stepped(of, flowTimeline(making.spin.steps_rpm, flowTemps_C(plan, making.quiet)), {
        ...{ torque: false, level: true, wander_K: making.quiet ? 0 : 0.05 },
      }),
    };
  if (plan.trial === 'cool-down') return { ...none, truth: coolDown(of, { length_s, start: start! }) };
  const cold = { sump_C: drawn.sumpStart_C, skin_C: drawn.skinStart_C, race_C: drawn.sumpStart_C };
  const hubs_Nm = (['torque-out-l', 'torque-out-r'] as const).map(
    (id) => targetHub_Nm - (making.quiet ? 0 : making.calibration[id]!),
  ) as [number, number];
  const load = {
    wheel_rpm: hillLoad.wheel_rpm,
    powerOut_W: (hubs_Nm[0] + hubs_Nm[1]) * shaft_rad_s(hillLoad.wheel_rpm),
  };
  const { recording, crossings, end } = heatUp(of, { length_s, load, start: cold, limits_C, hubs_Nm });
  return { truth: recording, load, crossings, end };
}

/** The plastic wants less than 60 °C. The full bowl of F-04 churned itself past that. */
export const hotWindowRun = 'F-04';
function flowTemps_C(plan: RunPlan, quiet: boolean): { from: number; to: number } {
  if (quiet) return { from: 60, to: 60 };
  if (plan.id === hotWindowRun) return { from: 59.2, to: 61.2 };
  return plan.article === 'P2w' ? { from: 55.6, to: 56.1 } : { from: 57.8, to: 58.5 };
}
