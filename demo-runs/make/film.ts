import { cameraClock_s, cameraClockRun } from './faults.ts';
import { flowCourse } from './flow-truth.ts';
import type { MadeRun } from './run.ts';

/** A film of a flow run, whole on the lab's shelf or cut for the book. */
export interface Film {
  readonly file: string;
  /** What a grader sees instead of the run; handed out by drawing slips from a tin. */
  readonly code: string;
  /** Film time less log time. */
  readonly ahead_s: number;
  readonly length_s: number;
  /** Null: not cut. */
  readonly pieces: readonly Piece[] | null;
  readonly captions: string | null;
}

export interface Piece {
  readonly clip_s: number;
  readonly film_s: number;
  readonly length_s: number;
}

const codes: Readonly<Record<string, string>> = {
  ...{ 'F-01': 'R4', 'F-02': 'K7', 'F-03': 'D9', 'F-04': 'M2', 'F-05': 'W6', 'F-06': 'H3' },
  ...{ 'T-01': 'B8', 'T-02': 'Z5', 'T-03': 'G1' },
};
/** Drawn clips come with the book; the other films do not. */
export const drawnRuns: readonly string[] = ['F-01', 'F-02'];
/** Graded in captions; the grades of the others stand in their notes. */
const captioned: readonly string[] = ['F-01', 'F-02', 'F-06'];
/** The sync lamp goes off with the event of the log. */
export const flash_s = 12;

export function filmOf(made: Pick<MadeRun, 'plan' | 'spin'>, quiet: boolean): Film {
  const { id, length_s } = made.plan;
  const pieces = drawnRuns.includes(id) ? cut(made) : null;
  const ahead_s = id === cameraClockRun && !quiet ? cameraClock_s : 0;
  const last = pieces?.at(-1);
  return {
    file: `${id}.${pieces ? 'webm' : 'mp4'}`,
    ...{ code: codes[id]!, ahead_s, pieces },
    length_s: last ? last.clip_s + last.length_s : length_s + ahead_s + 8,
    captions: captioned.includes(id) ? `${id}.vtt` : null,
  };
}

/** The flash, the beginning of every hold, the stop. */
function cut(made: Pick<MadeRun, 'spin'>): readonly Piece[] {
  const { holds_s, stop_s } = flowCourse(made);
  const pieces: Piece[] = [];
  for (const from_s of [flash_s - 3, ...holds_s.map((hold) => hold - 1), stop_s - 2]) {
    const before = pieces.at(-1);
    const clip_s = before ? before.clip_s + before.length_s : 0;
    pieces.push({ clip_s, film_s: from_s, length_s: from_s < flash_s ? 10 : 12 });
  }
  return pieces;
}

/** Where in the clip a moment of the log is seen. */
export function clipTime_s(film: Film, log_s: number): number {
  const film_s = log_s + film.ahead_s;
  const piece = film.pieces?.findLast((p) => p.film_s <= film_s);
  return piece ? film_s - piece.film_s + piece.clip_s : film_s;
}

/** HH:MM:SS.mmm */
export function timecode(seconds: number): string {
  const whole = Math.round(seconds * 1000);
  const two = (value: number): string => String(Math.floor(value)).padStart(2, '0');
  const ms = String(whole % 1000).padStart(3, '0');
  return `${two(whole / 3_600_000)}:${two((whole / 60_000) % 60)}:${two((whole / 1000) % 60)}.${ms}`;
}
