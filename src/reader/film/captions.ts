import { escaped } from '../../trial/cue.ts';
import { make } from '../element.ts';
import type { ClipData } from './clip-data.ts';
import { saidAt, said } from './said.ts';

/**
 * Gives the player its captions. They stay out of the picture until a reader asks for them there, since they would cover the
 * oil; the page says them under it. Where the captions cannot be loaded, as from a file beside a page that was opened from the
 * disk, the cues come from the page itself.
 */
export function giveCaptions(video: HTMLVideoElement, data: ClipData): void {
  const tracks = [...video.querySelectorAll('track')];
  let taken = false;
  const takeFromPage = (): void => {
    if (taken || data.cues.length === 0) return;
    taken = true;
    const language = tracks[0]?.srclang ?? document.documentElement.lang;
    for (const track of tracks) track.remove();
    const track = video.addTextTrack('captions', data.captionsLabel, language);
    for (const { from_s, to_s, text } of data.cues) track.addCue(new VTTCue(from_s, to_s, escaped(text)));
    track.mode = 'hidden';
  };
  if (tracks.length === 0 || tracks.some(({ readyState }) => readyState === HTMLTrackElement.ERROR)) takeFromPage();
  else
    for (const element of tracks) {
      element.addEventListener('error', takeFromPage);
      element.track.mode = 'hidden';
    }
}

/** What the mark cannot say by its place: the step, for the ear as well, and the time in the log. */
export function nowLine(): { readonly line: HTMLElement; readonly step: HTMLElement; readonly clock: HTMLElement } {
  const step = make('span', { class: 'clip-step', role: 'status' });
  const clock = make('span', { class: 'clip-clock' });
  return { line: make('p', { class: 'clip-now' }, step, clock), step, clock };
}

/** What observers said of the moment. All of it lies in one place, so that nothing below moves while the clip runs. */
export function observationsUnder({ cues }: ClipData): {
  readonly place: HTMLElement;
  readonly show: (clip_s: number) => void;
} {
  const moments = said(cues).map((moment) => ({
    ...moment,
    lines: make('div', { class: 'clip-said-of' }, ...moment.texts.map((text) => make('p', {}, text))),
  }));
  return {
    place: make('div', { class: 'clip-said' }, ...moments.map(({ lines }) => lines)),
    show: (clip_s) => {
      const now = saidAt(moments, clip_s);
      for (const moment of moments) moment.lines.toggleAttribute('data-here', moment === now);
    },
  };
}
