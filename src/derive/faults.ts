import type { Finding, Place } from '../finding/finding.ts';
import { channelDimension, type ChannelKind, type ReadingKind } from '../trial/rig.ts';
import type { Log } from '../trial/log.ts';
import { meanOf } from './readings-of.ts';
import { readingOf, type Reading, type Stretch } from './reading.ts';
import * as texts from './texts.ts';

/** What looks wrong in a log once channels are held against each other. The tool suspects; a person decides. */
export interface Suspicion {
  readonly findings: readonly Finding[];
  readonly drop: readonly Stretch[];
  /** Not null when no figure may be made of the run. */
  readonly leftOut: string | null;
}

const readingKinds = Object.keys(channelDimension) as ReadingKind[];

/** Order: unit first (nothing else can be judged then), then loose probe, swap, starts and drifts. */
export function suspect(input: Omit<Parameters<typeof readingOf>[0], 'drop'>): Suspicion {
  const reading = readingOf({ ...input, drop: [] });
  const unit = wrongUnit(reading);
  if (unit !== null) return { findings: [unit], drop: [], leftOut: 'its temperatures look like °F under a °C label' };
  const loose = looseSkin(reading);
  return {
    findings: [
      ...[...loose.findings, ...swapped(reading), ...starts(reading), ...ambientDrift(reading)],
      ...[...beyondRange(reading), ...skinAbove(reading), ...endsEarly(reading)],
    ],
    drop: loose.drop,
    leftOut: null,
  };
}

/** Place of a row of the log, in the column of a channel. */
export const rowPlace = (log: Log, row: number, kind: ChannelKind): Place => ({
  file: log.file,
  line: log.line[row] ?? 1,
  column: 1,
  cell: log.columnOf.get(kind) ?? 1,
});

/** The typed ambient is the witness: the log disagrees with it by more than 10 K, and agrees within 3 K when read as °F. */
function wrongUnit(reading: Reading): Finding | null {
  const { run, log } = reading;
  const ambient = log.channels.get('ambient');
  if (ambient === undefined) return null;
  const start = meanOf(ambient.subarray(0, Math.min(30, ambient.length))).mean;
  const read = start - 273.15;
  const asFahrenheit_K = ((read - 32) * 5) / 9 + 273.15;
  if (!(Math.abs(start - run.ambient.start_K) > 10 && Math.abs(asFahrenheit_K - run.ambient.start_K) < 3)) return null;
  return texts.unitDoubtful({
    place: rowPlace(log, 0, 'ambient'),
    run: run.id,
    read,
    typed: run.ambient.start_K - 273.15,
  });
}

/**
 * Left and right differ by what their kept zeros would give if the two columns were swapped, and by less the other way:
 * suspected only when the zeros differ enough to tell.
 */
function swapped(reading: Reading): Finding[] {
  const { log, run } = reading;
  const [left, right] = [reading.channel('torque-out-left'), reading.channel('torque-out-right')];
  const [li, ri] = [reading.instrument('torque-out-left'), reading.instrument('torque-out-right')];
  if (left === null || right === null || li === null || ri === null) return [];
  const gap = meanOf(left.map((v, i) => v - right[i]!)).mean;
  const ifSwapped = 2 * (ri.zero - li.zero);
  if (Math.abs(ifSwapped) < 1 || !(Math.abs(gap - ifSwapped) < 0.5 * Math.abs(gap))) return [];
  if (Math.abs(gap) < 0.6 * Math.abs(ifSwapped)) return [];
  return [texts.swapDoubtful({ place: rowPlace(log, 0, 'torque-out-left'), run: run.id, gap, ifSwapped })];
}

/** A tenth part in a hundred of the readings lies further outside the range of its instrument than a zero may stand off. */
function beyondRange(reading: Reading): Finding[] {
  const { log, run } = reading;
  return readingKinds.flatMap((kind): Finding[] => {
    const [values, instrument] = [reading.channel(kind), reading.instrument(kind)];
    if (values === null || instrument?.range == null) return [];
    const [low, high] = instrument.range;
    const spare = offRange * (high - low);
    const outside = (value: number): boolean => value < low - spare || value > high + spare;
    const first = values.findIndex(outside);
    if (first < 0 || values.filter(outside).length < 0.01 * values.length) return [];
    const place = rowPlace(log, first, kind);
    return [texts.beyondRange({ place, run: run.id, kind, instrument: instrument.id })];
  });
}

/** Share of a range that a zero may stand off. Common practice, no source. */
const offRange = 0.03;

/** By its note the run went on for longer than the log does: the file may be cut off, even where its last line is whole. */
function endsEarly(reading: Reading): Finding[] {
  const { log, run } = reading;
  const noted_s = (Date.parse(run.ended) - Date.parse(run.started)) / 1e3;
  const logged_s = log.rows === 0 ? 0 : log.time_s[log.rows - 1]! - log.time_s[0]!;
  if (!(noted_s - logged_s > Math.max(spareTime_s, 0.1 * noted_s))) return [];
  const place = rowPlace(log, Math.max(log.rows - 1, 0), 'pinion-speed');
  return [texts.endsEarly({ place, run: run.id, logged: logged_s / 60, noted: noted_s / 60 })];
}

/** What setting up and taking down may add to the times of a note. Common practice, no source. */
const spareTime_s = 300;

/** Heat is made inside: an outside that is warmer than the oil all the time is another column. */
function skinAbove(reading: Reading): Finding[] {
  const { log, run } = reading;
  const [skin, sump] = [reading.channel('skin'), reading.channel('sump')];
  if (skin === null || sump === null || (run.trial !== 'spin' && run.trial !== 'heat-up')) return [];
  const gap = skin.map((v, i) => v - sump[i]!).filter((v) => !Number.isNaN(v));
  const { mean } = meanOf(gap);
  if (!(mean > 1) || gap.filter((v) => v > 0).length < 0.95 * gap.length) return [];
  return [texts.skinAbove({ place: rowPlace(log, 0, 'skin'), run: run.id, above: mean })];
}

/** The skin falls by more than 4 K within a minute while the sump does not, and stays down. */
function looseSkin(reading: Reading): Pick<Suspicion, 'findings' | 'drop'> {
  const { log, run } = reading;
  const [skin, sump] = [reading.channel('skin'), reading.channel('sump')];
  if (skin === null || sump === null || run.trial !== 'heat-up') return { findings: [], drop: [] };
  const gap = sump.map((v, i) => v - skin[i]!);
  const n = Math.max(5, Math.round(60 / stepOf(log)));
  for (let i = 2 * n; i + n < gap.length; i += Math.ceil(n / 4)) {
    const jump = meanOf(gap.subarray(i, i + n)).mean - meanOf(gap.subarray(i - n, i)).mean;
    if (!(jump > 4)) continue;
    const from = sharpest(gap, i - n, i + n);
    const stays = meanOf(gap.subarray(from)).mean - meanOf(gap.subarray(Math.max(0, from - n), from)).mean;
    if (!(stays > 3)) continue;
    return {
      findings: [
        texts.probeLoose({
          place: rowPlace(log, from, 'skin'),
          run: run.id,
          minutes: log.time_s[from]! / 60,
          fell: stays,
        }),
      ],
      drop: [{ kind: 'skin', from, to: log.rows - 1 }],
    };
  }
  return { findings: [], drop: [] };
}

/** A cold start in which sump, skin and ambient are more than 2 K apart. */
function starts(reading: Reading): Finding[] {
  const { log, run } = reading;
  if (run.trial !== 'heat-up') return [];
  const at = (kind: ChannelKind): number => {
    const values = reading.channel(kind);
    return values === null ? NaN : meanOf(values.subarray(0, 5)).mean;
  };
  const apart = at('ambient') - at('sump');
  return Math.abs(apart) > 2 ? [texts.startSpread({ place: rowPlace(log, 0, 'ambient'), run: run.id, apart })] : [];
}

function ambientDrift(reading: Reading): Finding[] {
  const { run } = reading;
  const drift = run.ambient.end_K - run.ambient.start_K;
  const place = run.places.get('ambient.end') ?? { file: run.file, line: 1, column: 1 };
  return Math.abs(drift) > 3 ? [texts.ambientMoved({ place, run: run.id, drift })] : [];
}

/** Row of the largest single rise of the gap in [from, to). */
function sharpest(gap: Float64Array, from: number, to: number): number {
  let best = from + 1;
  for (let i = from + 1; i < to; i++) if (gap[i]! - gap[i - 1]! > gap[best]! - gap[best - 1]!) best = i;
  return best;
}

const stepOf = (log: Log): number => (log.rows > 1 ? (log.time_s[log.rows - 1]! - log.time_s[0]!) / (log.rows - 1) : 1);
