import type { Timed } from './clock-text.ts';
import type { Collector } from './collect.ts';
import { lineEnd, placeIn } from './lines.ts';
import type { Block } from './repeats.ts';
import * as say from './row-texts.ts';
import { span_s } from './texts.ts';

/** A step this many times the usual one has rows missing in it; jitter of a logger stays below. Common practice, no source. */
const gapFactor = 1.8;
/** When more than this share of the steps is off, the rate itself changed. */
const offShare = 0.05;
const mostListed = 5;

/** Lists the gaps in time, and says each repeated block with the pause that goes with it. True times stay as they are. */
export function noteGaps(
  log: Timed,
  rows: { readonly kept: number; readonly blocks: readonly Block[] },
  found: Collector,
): void {
  const time = log.table.values[log.clock.number - 1]!.subarray(0, rows.kept);
  const usual_s = usualStep(time);
  const seams = new Map(rows.blocks.flatMap((block, at) => block.seams.map((row) => [row, at] as const)));
  const pauses = new Map<number, number>();
  const gaps: number[] = [];
  let off = 0;
  let firstOff = 0;
  for (let row = 1; row < time.length; row++) {
    const step_s = time[row]! - time[row - 1]!;
    const long = step_s > gapFactor * usual_s;
    if (!long && step_s * gapFactor > usual_s) continue;
    const block = long ? seams.get(row) : undefined;
    if (block !== undefined) {
      pauses.set(block, step_s);
      continue;
    }
    if (off++ === 0) firstOff = row;
    if (long) gaps.push(row);
  }
  for (const [at, block] of rows.blocks.entries()) {
    const place = (): ReturnType<typeof placeIn> =>
      placeIn(log.text, { line: block.from, ...extent(log, block.start) });
    found.add('warning', () => say.rowsRepeated(place(), block, block.of, pauses.get(at) ?? null));
  }
  const placeOf = (row: number): ReturnType<typeof placeIn> =>
    placeIn(log.text, { line: log.table.line[row]!, ...extent(log, log.table.start[row]!) });
  if (off > offShare * time.length && off > 1)
    found.add('warning', () => say.rateChanged(placeOf(firstOff), off, usual_s));
  else if (gaps.length > 0) {
    const listed = gaps
      .slice(0, mostListed)
      .map((row) => `${span_s(time[row]! - time[row - 1]!)} before line ${log.table.line[row]!}`);
    found.add('warning', () => say.timeGap(placeOf(gaps[0]!), listed, gaps.length - listed.length, usual_s));
  }
}

const extent = (log: Timed, from: number): { from: number; to: number } => ({
  from,
  to: lineEnd(log.text.bytes, from),
});

/** Median time between rows, from a thousand steps spread over the log. */
export function usualStep(time: Float64Array): number {
  const stride = Math.max(1, Math.floor(time.length / 1000));
  const steps: number[] = [];
  for (let row = 1; row < time.length; row += stride) steps.push(time[row]! - time[row - 1]!);
  return Float64Array.from(steps).sort()[steps.length >> 1] ?? 0;
}
