import { button, make, setText } from '../element.ts';
import type { Item } from './items.ts';

export interface Player {
  readonly place: HTMLElement;
  /** Shows a step from the beginning of its hold; it starts by itself only where movement is welcome. */
  readonly show: (item: Item) => void;
  readonly again: () => void;
  readonly pause: () => void;
  readonly slow: () => void;
  readonly stop: () => void;
}

/** Plays the stretch of a step that is graded, and stops at its end. It has no sound: a voice on a film would tell what is hidden. */
export function player(): Player {
  const video = make('video', { muted: true, playsinline: true, controls: true, preload: 'auto' });
  video.muted = true;
  const trouble = make('p', { class: 'player-trouble', role: 'status' });
  const stretch = make('span', { class: 'hint' });
  let item: Item | null = null;

  const run = (): void => {
    if (item === null || video.paused) return;
    if (video.currentTime >= item.to_s && video.currentTime < item.to_s + 1) video.pause();
    else requestAnimationFrame(run);
  };
  const play = (): void => {
    void video.play().catch(() => {
      // a browser that wants to be asked first leaves the clip at its beginning
    });
  };
  const again = (): void => {
    if (item === null) return;
    video.currentTime = item.from_s;
    play();
  };
  const slow = (): void => {
    const slower = video.playbackRate === 1;
    video.playbackRate = slower ? 0.25 : 1;
    slowly.setAttribute('aria-pressed', String(slower));
  };
  const slowly = button('Quarter speed', slow, { 'aria-pressed': 'false' });
  video.addEventListener('play', () => requestAnimationFrame(run));
  video.addEventListener('error', () => {
    setText(trouble, 'This browser cannot play this clip: it is not there, or of a kind that it does not know.');
  });
  return {
    place: make(
      'div',
      { class: 'player' },
      video,
      trouble,
      make('p', { class: 'player-line' }, button('The ten seconds again', again), slowly, stretch),
    ),
    show: (next) => {
      const rate = video.playbackRate;
      if (item?.address !== next.address) {
        setText(trouble, '');
        video.src = next.address;
        video.playbackRate = rate;
      }
      item = next;
      setText(stretch, `seconds ${seconds(next.from_s)} to ${seconds(next.to_s)} of the clip`);
      video.setAttribute('aria-label', `Clip ${next.code}, ${next.step}`);
      if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
        video.pause();
        video.currentTime = next.from_s;
      } else again();
    },
    again,
    pause: () => {
      if (video.paused) play();
      else video.pause();
    },
    slow,
    stop: () => {
      video.pause();
    },
  };
}

const seconds = (time_s: number): string => String(Math.round(time_s * 10) / 10);
