import { estimate, type Cause } from '../quantity/estimate.ts';
import type { Finding } from '../finding/finding.ts';
import type { ClipPiece, Result, TiedClip } from '../trial/derived.ts';
import type { Clip } from '../trial/flow.ts';
import type { Log } from '../trial/log.ts';
import type { Run } from '../trial/run.ts';
import { gather, type Contribution } from './causes.ts';
import { rowPlace } from './faults.ts';
import * as texts from './texts-flow.ts';

/** The event of the log at which camera and logger see the same thing: the lamp's flash. */
const syncEvent = (log: Log) => log.events.find(({ text }) => /^sync\b/i.test(text.trim()));

/** Farther apart than this, camera and logger are told to differ, s. */
const worthTelling_s = 1;

/**
 * Each clip of a run tied to the logger by the flash that both saw: log time = film time − ahead, and film time from clip
 * time by the pieces of the cut. A clip whose film shows no flash stays untied.
 */
export function tiedClips(
  run: Run,
  log: Log,
): { clips: TiedClip[]; results: Result[]; causes: Cause[]; findings: Finding[] } {
  const event = syncEvent(log);
  const clips: TiedClip[] = [];
  const results: Result[] = [];
  const causes: Cause[] = [];
  const findings: Finding[] = [];
  for (const clip of run.clips) {
    const ahead_s = clip.sync_s === null || event === undefined ? null : clip.sync_s - event.time_s;
    clips.push({ clip, ahead_s, pieces: ahead_s === null ? [] : piecesOf(clip, ahead_s) });
    if (clip.sync_s !== null && event === undefined)
      findings.push(texts.syncNotInLog({ place: clip.place, run: run.id }));
    if (clip.sync_s === null || event === undefined || ahead_s === null) continue;
    if (Math.abs(ahead_s) > worthTelling_s) {
      const row = log.time_s.findIndex((t) => t >= event.time_s);
      const place = { ...rowPlace(log, Math.max(0, row), 'event'), line: event.line };
      findings.push(texts.cameraClock({ place, run: run.id, clip: clip.file, ahead: ahead_s }));
    }
    if (results.length > 0) continue;
    const found = gather([{ of: rowStep(run, log), sensitivity: 1 }]);
    causes.push(...found.causes);
    results.push(aheadResult(clip, event, ahead_s, found.parts, log));
  }
  return { clips, results, causes, findings };
}

/** Where log and clip run together; a piece ends where the next begins, the last with the clip. */
const piecesOf = (clip: Clip, ahead_s: number): ClipPiece[] =>
  clip.pieces.map(({ clip_s, film_s }, i) => ({
    clip_s,
    to_clip_s: clip.pieces[i + 1]?.clip_s ?? clip.length_s ?? Infinity,
    offset_s: film_s - clip_s - ahead_s,
  }));

/** Logger time of a moment of a clip; null when nothing ties them. */
export function logTime_s(tied: TiedClip | undefined, clip_s: number): number | null {
  const piece = tied?.pieces.find((p) => clip_s >= p.clip_s && clip_s < p.to_clip_s);
  return piece === undefined ? null : clip_s + piece.offset_s;
}

/** The event is taken to stand in the row nearest to it: half a row either way is open. */
function rowStep(run: Run, log: Log): Contribution {
  const step_s = (log.time_s[log.rows - 1]! - log.time_s[0]!) / Math.max(1, log.rows - 1);
  return {
    cause: {
      id: `clock:${run.id}`,
      name: `how finely the log of ${run.id} places an event`,
      kind: 'offset',
      distribution: 'rectangular',
      dof: Infinity,
      scope: 'run',
    },
    u: step_s / Math.sqrt(12),
  };
}

const aheadResult = (
  clip: Clip,
  event: Log['events'][number],
  ahead_s: number,
  parts: ReturnType<typeof gather>['parts'],
  log: Log,
): Result => ({
  quantity: 'camera-ahead',
  at: {},
  estimate: estimate(ahead_s, parts),
  bound: null,
  class: 'measured',
  relation: 'camera-less-logger',
  method: 'flow/camera-clock',
  notes: ['the event is taken to stand in the row nearest to it; the time on the film is taken as exact'],
  given: [
    {
      symbol: 't film',
      name: `flash on the film ${clip.file}`,
      value: clip.sync_s ?? NaN,
      u: null,
      unit: 's',
      from: { kind: 'note', place: clip.place, typed: clip.file },
    },
    {
      symbol: 't log',
      name: 'event sync in the log',
      value: event.time_s,
      u: null,
      unit: 's',
      from: {
        ...{ kind: 'log', file: log.file, channel: 'event' },
        ...{ fromLine: event.line, toLine: event.line, from_s: event.time_s, to_s: event.time_s },
      },
    },
  ],
  steps: [],
});
