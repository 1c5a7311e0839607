import type { Reading } from './reading.ts';
import { outputSpeed, ratioOf } from './reading.ts';

/** A loaded or cooling run on an even grid: means of the readings in each bin; NaN where a bin has none. */
export interface HeatSeries {
  readonly bin_s: number;
  readonly time_s: Float64Array;
  readonly sump_K: Float64Array;
  readonly skin_K: Float64Array;
  readonly ambient_K: Float64Array;
  readonly heat_W: Float64Array;
  /** Readings behind each bin of the sump. */
  readonly count: number;
}

/** `to_s` cuts the run short (stop of the load). Null without sump, ambient or, when loaded, torque and speed. */
export function heatSeries(reading: Reading, input: { bin_s: number; loaded: boolean }): HeatSeries | null {
  const { log } = reading;
  const sump = reading.channel('sump');
  const ambient = reading.channel('ambient');
  const heat = input.loaded ? heatMade(reading) : new Float64Array(log.rows);
  if (sump === null || ambient === null || heat === null) return null;
  const skin = reading.channel('skin') ?? new Float64Array(log.rows).fill(NaN);
  const bins = Math.max(1, Math.floor((log.time_s[log.rows - 1] ?? 0) / input.bin_s));
  const mean = (values: Float64Array): Float64Array => binned(log.time_s, values, bins, input.bin_s);
  return {
    bin_s: input.bin_s,
    time_s: Float64Array.from({ length: bins }, (_, i) => (i + 0.5) * input.bin_s),
    sump_K: mean(sump),
    skin_K: mean(skin),
    ambient_K: filled(mean(ambient)),
    heat_W: mean(heat),
    count: log.rows / bins,
  };
}

/** Loss as heat: shaft power in less shaft power out, W, reading by reading. */
export function heatMade(reading: Reading): Float64Array | null {
  const into = reading.channel('torque-in');
  const left = reading.channel('torque-out-left');
  const right = reading.channel('torque-out-right');
  const speed = outputSpeed(reading);
  if (into === null || speed === null || left === null) return null;
  const ratio = ratioOf(reading.rig);
  return speed.map((w, i) => w * (ratio * into[i]! - left[i]! - (right === null ? 0 : right[i]!)));
}

function binned(time_s: Float64Array, values: Float64Array, bins: number, bin_s: number): Float64Array {
  const sum = new Float64Array(bins);
  const n = new Float64Array(bins);
  for (let i = 0; i < values.length; i++) {
    const bin = Math.floor(time_s[i]! / bin_s);
    const value = values[i]!;
    if (bin >= bins || bin < 0 || Number.isNaN(value)) continue;
    sum[bin]! += value;
    n[bin]! += 1;
  }
  return sum.map((s, i) => (n[i]! === 0 ? NaN : s / n[i]!));
}

/** Ambient drives the model at every step: a missing bin takes the last one before it (the first after, at the start). */
function filled(values: Float64Array): Float64Array {
  const out = Float64Array.from(values);
  let last = out.find((v) => !Number.isNaN(v)) ?? NaN;
  for (let i = 0; i < out.length; i++) {
    if (Number.isNaN(out[i]!)) out[i] = last;
    else last = out[i]!;
  }
  return out;
}
