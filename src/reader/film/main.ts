import { wireClip, type Clip } from './clip.ts';
import { wirePair } from './pair.ts';
import { stepButtons } from './step-buttons.ts';
import { addressOfStep, stepInAddress } from './steps.ts';

/** What an address can name: a step of a clip or of a pair, and how to get there. */
interface Goal {
  readonly place: HTMLElement;
  readonly open: (hash: string) => boolean;
}

const clips = new Map([...document.querySelectorAll<HTMLElement>('figure.clip')].map((each) => [each, wireClip(each)]));
const pairs = [...document.querySelectorAll<HTMLElement>('.two-clips')].flatMap(pairGoal);
const alone = [...clips.values()].flatMap((clip) =>
  clip === null || clip.figure.closest('.two-clips') !== null ? [] : clipGoal(clip),
);
const goals = [...pairs, ...alone];
openAddress(true);
addEventListener('hashchange', () => {
  openAddress(false);
});

function openAddress(atFirst: boolean): void {
  const reached = goals.filter((goal) => goal.open(location.hash));
  if (atFirst) reached[0]?.place.scrollIntoView();
}

function pairGoal(block: HTMLElement): Goal[] {
  const [first, second] = [...block.querySelectorAll<HTMLElement>('figure.clip')].map((each) => clips.get(each));
  const place = block.querySelector<HTMLElement>('.together');
  if (!first || !second || place === null) return [];
  const pair = wirePair(place, [first, second], remember);
  return [{ place: block, open: opens(pair.steps, pair.goTo) }];
}

function clipGoal(clip: Clip): Goal[] {
  const { steps } = clip.data;
  if (steps.length === 0) return [];
  const goTo = ({ from_s }: { readonly from_s: number }): void => {
    clip.video.currentTime = from_s;
  };
  const choose = stepButtons(
    'To step',
    steps.map(({ name }) => name),
    (name) => {
      const step = steps.find((each) => each.name === name);
      if (step === undefined) return;
      remember(name);
      goTo(step);
    },
  );
  clip.onStep(choose.mark);
  clip.figure.querySelector('.clip-said')?.after(choose.row);
  return [{ place: clip.figure, open: opens(steps, goTo) }];
}

function opens<T extends { readonly name: string }>(steps: readonly T[], goTo: (step: T) => void): Goal['open'] {
  return (hash) => {
    const step = stepInAddress(hash, steps);
    if (step !== null) goTo(step);
    return step !== null;
  };
}

/** The step stands in the address, so that what is seen can be linked; some browsers refuse this for files from the disk. */
function remember(name: string): void {
  try {
    history.replaceState(null, '', addressOfStep(name));
  } catch {
    // the page works without
  }
}
