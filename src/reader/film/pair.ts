import { button, make, setText } from '../element.ts';
import type { Clip } from './clip.ts';
import { course, sharedAt, sharedSteps, type SharedStep } from './together.ts';
import { stepButtons } from './step-buttons.ts';

export interface Pair {
  readonly steps: readonly SharedStep[];
  readonly goTo: (step: SharedStep) => void;
}

/** Two clips that run together, step by step; `told` hears of the step that a reader chose. */
export function wirePair(
  place: HTMLElement,
  [first, second]: readonly [Clip, Clip],
  told: (name: string) => void,
): Pair {
  const steps = sharedSteps(first.data.steps, second.data.steps);
  const both = [first.video, second.video] as const;
  let wanted = false;
  let liningUp = false;

  const want = (running: boolean): void => {
    wanted = running;
    setText(play, running ? 'Pause both' : 'Play both');
    for (const video of both)
      if (running)
        void video.play().catch(() => {
          want(false);
        });
      else video.pause();
  };
  const lineUp = async (times: { readonly first_s: number; readonly second_s: number }): Promise<void> => {
    if (liningUp) return;
    liningUp = true;
    for (const video of both) video.pause();
    await Promise.all([sent(both[0], times.first_s), sent(both[1], times.second_s)]);
    liningUp = false;
    if (wanted) want(true);
  };
  const goTo = ({ first_s, second_s }: SharedStep): void => {
    void lineUp({ first_s, second_s });
  };
  let watching = false;
  const watch = (): void => {
    if (watching) return;
    watching = true;
    requestAnimationFrame(run);
  };
  const run = (): void => {
    watching = false;
    if (!wanted) return;
    if (!liningUp) {
      const next = course(steps, both[0].currentTime, both[1].currentTime);
      if (next.kind === 'stop') want(false);
      else if (next.kind === 'line up') void lineUp(next);
    }
    watch();
  };
  const play = button('Play both', () => {
    want(!wanted);
    if (!wanted) return;
    // after the last step it begins again at the first
    if (course(steps, both[0].currentTime, both[1].currentTime).kind === 'stop' && steps[0]) goTo(steps[0]);
    watch();
  });
  for (const video of both)
    video.addEventListener('pause', () => {
      if (wanted && !liningUp && !video.ended) want(false);
    });

  if (steps.length === 0) {
    place.append(make('p', { class: 'clip-now' }, 'These two clips have no step in common.'));
    return { steps, goTo };
  }
  const choose = stepButtons(
    'Both at step',
    steps.map(({ name }) => name),
    (name) => {
      const step = steps.find((each) => each.name === name);
      if (step === undefined) return;
      told(name);
      goTo(step);
    },
  );
  first.onStep(() => {
    choose.mark(sharedAt(steps, first.video.currentTime)?.name ?? '');
  });
  place.append(play, choose.row);
  return { steps, goTo };
}

/** Settled when the player stands where it was sent, or cannot get there. */
function sent(video: HTMLVideoElement, to_s: number): Promise<void> {
  video.currentTime = to_s;
  if (video.readyState === HTMLMediaElement.HAVE_NOTHING && video.error !== null) return Promise.resolve();
  return new Promise((done) => {
    for (const event of ['seeked', 'error'])
      video.addEventListener(
        event,
        () => {
          done();
        },
        { once: true },
      );
    video.preload = 'auto';
  });
}
