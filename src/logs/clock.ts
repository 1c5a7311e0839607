import type { Timed } from './clock-text.ts';
import type { Collector } from './collect.ts';
import { noteGaps, usualStep } from './gaps.ts';
import { lineEnd, placeIn } from './lines.ts';
import { dropRepeats } from './repeats.ts';
import * as say from './row-texts.ts';
import type { Table } from './rows.ts';
import { span_s } from './texts.ts';

const day_s = 86400;
/** Longest pause over midnight, s: a longer step back is a clock that was changed. */
const longestNight_s = 3600;

/**
 * Puts the rows on one clock in seconds that rises strictly, in place, and returns how many are kept. Repeated rows are used once,
 * one midnight is passed; any other step back is refused. Gaps are listed, never filled.
 */
export function settleClock(log: Timed, found: Collector): number {
  const { table, map, clock } = log;
  const time = table.values[clock.number - 1]!.subarray(0, table.rows);
  if (map.clock.unit === 'h:mm:ss') fromTimeOfDay(time, table, found);
  else if (isDayNumber(time)) {
    const line = { line: table.line[0]!, from: table.start[0]!, to: lineEnd(log.text.bytes, table.start[0]!) };
    found.add('error', () => say.clockSerial(placeIn(log.text, line), clock, `${time[0]!}`));
    return 0;
  }
  if (map.clock.unit === 'min') for (let row = 0; row < time.length; row++) time[row] = toMicrosecond(time[row]! * 60);
  const { kept, blocks } = dropRepeats(log, found);
  if (found.errors() === 0) noteGaps(log, { kept, blocks }, found);
  return kept;
}

/** One instant is one number, whatever unit it was typed in: a window of 60 s holds the same rows. Finer clocks are read in s. */
const toMicrosecond = (t_s: number): number => Math.round(t_s * 1e6) / 1e6;

/** The time of day, counted from the first row, with one midnight passed. */
function fromTimeOfDay(time: Float64Array, table: Table, found: Collector): void {
  const origin_s = time[0] ?? 0;
  let midnight_s = 0;
  let before = -Infinity;
  for (let row = 0; row < time.length; row++) {
    let now = time[row]! + midnight_s;
    if (now < before && midnight_s === 0 && now + day_s - before < longestNight_s) {
      midnight_s = day_s;
      now += day_s;
      found.note(`the clock passes midnight at line ${table.line[row]!}`);
    }
    time[row] = toMicrosecond(now - origin_s);
    before = now;
  }
  if (origin_s > 0)
    found.note(`the clock gives the time of day; counted from its first row, ${span_s(origin_s)} after midnight`);
}

/** Days since 1899-12-30, as spreadsheets count: tens of thousands, and hardly rising. */
const isDayNumber = (time: Float64Array): boolean =>
  time.length > 2 && time[0]! > 20_000 && time[0]! < 80_000 && usualStep(time) < 0.001;
