/** A line to be drawn: times and values of one channel; a missing value is NaN. */
export interface Trace {
  readonly time_s: ArrayLike<number>;
  readonly value: ArrayLike<number>;
}

interface Points {
  readonly time_s: number[];
  readonly value: number[];
}

/**
 * At most `n` points of a trace for drawing: its first and last reading, and the least and greatest of equal spans of time between,
 * so that no spike is lost. Missing readings are left out; none at all gives no points.
 */
export function thin(trace: Trace, n: number): Points {
  const read = readings(trace);
  if (read.length <= n) return points(trace, read);
  if (n < 4) return points(trace, read.slice(0, Math.max(0, n)));
  const kept = [read[0]!];
  for (const bucket of buckets(trace, read.slice(1, -1), Math.floor((n - 2) / 2))) {
    let [least, greatest] = [bucket[0]!, bucket[0]!];
    for (const at of bucket) {
      if (trace.value[at]! < trace.value[least]!) least = at;
      if (trace.value[at]! > trace.value[greatest]!) greatest = at;
    }
    kept.push(Math.min(least, greatest));
    if (least !== greatest) kept.push(Math.max(least, greatest));
  }
  return points(trace, [...kept, read.at(-1)!]);
}

/** Mean time and mean value of at most `n` equal spans of time; spans without a reading give no point. */
export function meanBuckets(trace: Trace, n: number): Points & { readonly count: number[] } {
  const held = buckets(trace, readings(trace), n);
  const mean = (bucket: readonly number[], of: ArrayLike<number>): number =>
    bucket.reduce((sum, at) => sum + of[at]!, 0) / bucket.length;
  return {
    time_s: held.map((bucket) => mean(bucket, trace.time_s)),
    value: held.map((bucket) => mean(bucket, trace.value)),
    count: held.map((bucket) => bucket.length),
  };
}

function readings(trace: Trace): number[] {
  const read: number[] = [];
  for (let at = 0; at < trace.value.length; at++) if (!Number.isNaN(trace.value[at]!)) read.push(at);
  return read;
}

/** Readings sorted into at most `n` equal spans of time; empty spans are left out. */
function buckets(trace: Trace, read: readonly number[], n: number): number[][] {
  if (read.length === 0 || n < 1) return [];
  const from_s = trace.time_s[read[0]!]!;
  const span_s = (trace.time_s[read.at(-1)!]! - from_s) / n;
  const held: number[][] = Array.from({ length: n }, () => []);
  for (const at of read) {
    const bucket = span_s > 0 ? Math.floor((trace.time_s[at]! - from_s) / span_s) : 0;
    held[Math.min(bucket, n - 1)]!.push(at);
  }
  return held.filter((bucket) => bucket.length > 0);
}

const points = (trace: Trace, kept: readonly number[]): Points => ({
  time_s: kept.map((at) => trace.time_s[at]!),
  value: kept.map((at) => trace.value[at]!),
});
