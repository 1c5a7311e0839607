import { captionsText, cueText } from '../trial/cue.ts';
import type { FlowRun, TiedClip } from '../trial/derived.ts';
import type { Clip, Observation, StepName } from '../trial/flow.ts';
import type { Run } from '../trial/run.ts';

/** Seconds after the hold begins over which a step is graded. */
const window_s = 10;

/**
 * What every observer wrote of a clip, as WebVTT in the time of the clip, in the cue form that notes are read from. An
 * observation without a time of its own stands at the hold of its step, where clip and logger are tied.
 *
 * source             WebVTT: The Web Video Text Tracks Format (W3C)
 */
export function captionsOf(input: {
  readonly run: Run;
  readonly clip: Clip;
  readonly flow: FlowRun | null;
  /** Initials for the house, "1" and "2" for the public. */
  readonly observerAs: (observer: string) => string;
}): string {
  const { run, clip, flow, observerAs } = input;
  const tied = flow?.clips.find((each) => each.clip.file === clip.file) ?? null;
  const own = run.observations.filter((o) => (o.clip ?? run.clips[0]?.file) === clip.file);
  const timed = own.map((observation) => ({ observation, at: timeOf(observation, flow, tied) }));
  const cues = timed.flatMap(({ observation, at }) => {
    if (at === null) return [];
    const place = stepPlace(flow, observation.step);
    const name = { run: run.id, ...(place < 0 ? {} : { step: place + 1 }) };
    return [{ ...at, text: cueText({ ...observation, observer: observerAs(observation.observer) }, name) }];
  });
  const untimed = timed.filter(({ at }) => at === null).length;
  return captionsText(cues) + (untimed === 0 ? '' : `\nNOTE\n${leftOut(untimed)}\n`);
}

const leftOut = (count: number): string =>
  `${count === 1 ? 'One observation has' : `${String(count)} observations have`} no time in this clip and nothing ties the clip to the logger, so that they stand on the run sheet only.`;

function timeOf(
  { from_s, to_s, step }: Observation,
  flow: FlowRun | null,
  tied: TiedClip | null,
): { readonly from_s: number; readonly to_s: number } | null {
  if (from_s !== null) return { from_s, to_s: to_s ?? from_s + window_s };
  const hold = flow?.steps[stepPlace(flow, step)];
  if (hold === undefined || tied === null) return null;
  for (const piece of tied.pieces) {
    const from = hold.from_s - piece.offset_s;
    if (from >= piece.clip_s && from < piece.to_clip_s)
      return { from_s: from, to_s: Math.min(from + window_s, piece.to_clip_s) };
  }
  return null;
}

const stepPlace = (flow: FlowRun | null, step: StepName): number =>
  flow?.steps.findIndex(
    (each) =>
      each.step.direction === step.direction &&
      Math.abs(each.step.outputSpeed_rad_s - step.outputSpeed_rad_s) < 0.01 * step.outputSpeed_rad_s,
  ) ?? -1;
