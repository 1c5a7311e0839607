import { interval_s } from './recording.ts';

/** A stretch of a stepped trial: speed and sump change evenly from the last values to these. */
export interface Segment {
  readonly length_s: number;
  readonly wheel_rpm: number;
  readonly temp_C: number;
  readonly event?: string;
}

const ramp_s = 8;

export interface SpinSteps {
  readonly lead_s: number;
  readonly hold_s: number;
  readonly warm_s: number;
  readonly even_s: number;
  readonly idle_rpm: number;
  readonly steps_rpm: readonly number[];
  readonly temps_C: readonly number[];
}

export const hillSpin: SpinSteps = {
  ...{ lead_s: 90, hold_s: 120, warm_s: 450, even_s: 60, idle_rpm: 290 },
  steps_rpm: [60, 120, 200, 290, 390, 520],
  temps_C: [40, 60, 80],
};

export function spinTimeline(s: SpinSteps): readonly Segment[] {
  const first_C = s.temps_C[0]!;
  return s.temps_C.flatMap((temp_C, level) => {
    const before_C = s.temps_C[level - 1] ?? first_C;
    const warming: Segment[] =
      level === 0
        ? [{ length_s: s.lead_s, wheel_rpm: s.idle_rpm, temp_C }]
        : [
            { length_s: ramp_s, wheel_rpm: s.idle_rpm, temp_C: before_C },
            { length_s: s.warm_s, wheel_rpm: s.idle_rpm, temp_C },
            { length_s: s.even_s, wheel_rpm: s.idle_rpm, temp_C },
          ];
    return [...warming, ...s.steps_rpm.flatMap((rpm) => step(rpm, temp_C, s.hold_s))];
  });
}

/** Steps up, then down, then the stop and ten minutes of settling. The sump drifts a little all the while. */
export function flowTimeline(steps_rpm: readonly number[], temps_C: { from: number; to: number }): readonly Segment[] {
  const speeds = [...steps_rpm, ...steps_rpm.slice(0, -1).reverse()];
  const temp = (i: number): number => temps_C.from + ((temps_C.to - temps_C.from) * (i + 1)) / speeds.length;
  return [
    { length_s: 12, wheel_rpm: 0, temp_C: temps_C.from },
    { length_s: 16, wheel_rpm: 0, temp_C: temps_C.from, event: 'sync' },
    ...speeds.flatMap((rpm, i) => step(rpm, temp(i), 90)),
    { length_s: 6, wheel_rpm: 0, temp_C: temps_C.to },
    { length_s: 600, wheel_rpm: 0, temp_C: temps_C.to - 0.4, event: 'stop' },
  ];
}

const step = (rpm: number, temp_C: number, hold_s: number): Segment[] => [
  { length_s: ramp_s, wheel_rpm: rpm, temp_C },
  { length_s: hold_s, wheel_rpm: rpm, temp_C, event: `step ${rpm}` },
];

/** Where a trial stands at a time. */
export function walk(timeline: readonly Segment[]) {
  const starts_s: number[] = [];
  const events = new Map<number, string>();
  let length_s = 0;
  for (const segment of timeline) {
    starts_s.push(length_s);
    if (segment.event) events.set(length_s / interval_s, segment.event);
    length_s += segment.length_s;
  }
  const at = (t_s: number): { wheel_rpm: number; temp_C: number } => {
    let i = timeline.length - 1;
    while (starts_s[i]! > t_s) i--;
    const now = timeline[i]!;
    const before = timeline[i - 1] ?? now;
    const part = (t_s - starts_s[i]!) / now.length_s;
    return {
      wheel_rpm: before.wheel_rpm + (now.wheel_rpm - before.wheel_rpm) * Math.min(1, part),
      temp_C: before.temp_C + (now.temp_C - before.temp_C) * Math.min(1, part),
    };
  };
  return { at, length_s, events };
}
