import { make, setText } from '../element.ts';
import { giveCaptions, nowLine, observationsUnder } from './captions.ts';
import { readClipData, type ClipData } from './clip-data.ts';
import { clipTime_s, clockText, logTime_s } from './clocks.ts';
import { fieldOver } from './field.ts';
import { follow } from './follow.ts';
import { clockOf, markOn } from './mark.ts';
import { stepAt, stepFrom } from './steps.ts';

export interface Clip {
  readonly figure: HTMLElement;
  readonly video: HTMLVideoElement;
  readonly data: ClipData;
  /** Calls with every change of the step that is seen; '' between steps. */
  readonly onStep: (tell: (step: string) => void) => void;
}

/** A clip with its captions, the step beside it, and its mark on the traces. Null when there is nothing to go by. */
export function wireClip(figure: HTMLElement): Clip | null {
  const video = figure.querySelector('video');
  const data = readClipData(figure.querySelector('.clip-data')?.textContent ?? '');
  if (video === null || data === null) return null;
  giveCaptions(video, data);

  const now = nowLine();
  const observations = observationsUnder(data);
  video.after(now.line, observations.place);
  // Until the clip is first run or sent somewhere nothing can be said of it, and an empty place would be a hole in the page.
  for (const begin of ['play', 'seeking'])
    video.addEventListener(
      begin,
      () => {
        observations.place.setAttribute('data-begun', '');
      },
      { once: true },
    );
  const listeners: ((step: string) => void)[] = [];
  const send = (clip_s: number): void => {
    const end = Number.isFinite(video.duration) ? video.duration : Infinity;
    video.currentTime = Math.min(Math.max(0, clip_s), end);
  };
  const traces = tracesOf(figure, data, {
    goTo: (log_s) => {
      const clip_s = clipTime_s(data.pieces, log_s);
      if (clip_s === null) setText(now.step, `no film at ${clockText(log_s)}`);
      else send(clip_s);
    },
    move: (by) => {
      const at = video.currentTime;
      if (typeof by === 'number') send(at + by);
      else if (by === 'beginning') send(0);
      else if (by === 'end') send(video.duration);
      else send(stepFrom(data.steps, at, by === 'next step' ? 1 : -1)?.from_s ?? at);
    },
  });

  let step: string | null = null;
  follow(video, (clip_s) => {
    const log_s = logTime_s(data.pieces, clip_s);
    const seen = stepAt(data.steps, clip_s)?.name ?? '';
    for (const { mark, field } of traces) {
      mark.show(log_s);
      // while it runs, a value that changes all the time would only be read out all the time
      if (video.paused || seen !== step) field.tell(log_s, seen);
    }
    setText(now.clock, clockWords(data, log_s));
    observations.show(clip_s);
    if (seen === step) return;
    step = seen;
    setText(now.step, seen === '' && data.steps.length > 0 ? 'between steps' : seen);
    for (const tell of listeners) tell(seen);
  });
  return { figure, video, data, onStep: (tell) => listeners.push(tell) };
}

const clockWords = ({ pieces }: ClipData, log_s: number | null): string =>
  pieces.length === 0 ? 'the clip is not tied to the log' : log_s === null ? 'no log here' : `log ${clockText(log_s)}`;

/** The film chart is drawn twice, for much room and for little; both are marked. */
function tracesOf(figure: HTMLElement, data: ClipData, use: Parameters<typeof fieldOver>[2]) {
  const id = figure.dataset['traces'] ?? '';
  const chart =
    id === '' || data.pieces.length === 0
      ? null
      : (document.getElementById(`picture-${id}`) ?? document.getElementById(id));
  const caption = chart?.querySelector('figcaption');
  caption?.insertBefore(make('span', { class: 'film-hint' }, filmHint), caption.querySelector('details'));
  return [...(chart?.querySelectorAll('svg') ?? [])].flatMap((svg) => {
    const clock = clockOf(svg);
    return clock === null ? [] : [{ mark: markOn(svg, clock, data.pieces), field: fieldOver(svg, clock, use) }];
  });
}

const filmHint = ' Thick along the axis: there is film of it. Point at it, or use the arrow keys, to see it.';
