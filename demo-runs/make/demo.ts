import { olderSeries } from './older.ts';
import { bookText } from './book.ts';
import { captionsText } from './captions.ts';
import { chooseDraw } from './choose.ts';
import { drawCalibration, instruments } from './instruments.ts';
import { filmOf, flash_s } from './film.ts';
import { clipLines, observationLines, settleLines } from './flow-note.ts';
import { observed } from './observers.ts';
import { stillLines, stillsOf } from './stills.ts';
import type { LoadedEnd } from './trials.ts';
import { makeRun, type MadeRun } from './run.ts';
import { noteText } from './note.ts';
import { firstDay, runOrder } from './order.ts';
import { hillGear } from './law.ts';
import { hillSpin } from './timeline.ts';
import { laterCampaign, laterRuns } from './later.ts';
import { laterWords } from './words-later.ts';
import { loadWords } from './words-load.ts';
import { spinWords } from './words-spin.ts';
import { windowWords } from './words-window.ts';
import { digitsOf, type Recorder } from './readings.ts';
import { logText } from './recording.ts';
import { seriesTexts } from './series.ts';
import { still, stream } from './random.ts';
import { truthText } from './truth.ts';

export interface Wanted {
  readonly seed: number;
  /** No noise, drift, calibration error, refit effect or fault; ambient 21 °C, airflow 4.0 m/s. */
  readonly quiet: boolean;
  /** Draw refits and airflows again until the eight claims come out as the story tells them. */
  readonly select: boolean;
}

const hillWords = { ...windowWords, ...spinWords, ...loadWords };

/** The whole demo book, path → text. Same seed, same text. */
export function makeDemo(wanted: Wanted): ReadonlyMap<string, string> {
  const { seed, quiet } = wanted;
  const { plans, choice, making } = drawn(wanted);
  const { calibration } = making;
  const files = new Map<string, string>([
    ['book.md', bookText],
    ...seriesTexts({ seed, quiet, draws: choice.draws, select: wanted.select }),
  ]);
  const ends = new Map<string, LoadedEnd>();
  const made: MadeRun[] = [];
  for (const plan of plans) {
    const run = makeRun(plan, choice.drawn.get(plan.id)!, making, plan.fromRun ? ends.get(plan.fromRun)! : null);
    if (run.end) ends.set(plan.id, run.end);
    made.push(run);
    const path = `hill-bowl/runs/${plan.id}`;
    const flow = plan.trial === 'flow' ? flowTexts(run, wanted) : undefined;
    files.set(`${path}.md`, noteText(run, { rigState: 'Q1-a', firstDay, words: hillWords, quiet }, flow));
    if (flow?.captions) files.set(`${path}.vtt`, flow.captions);
    files.set(`${path}.csv`, logText(run.recording, digitsOf(inputOf(run), quiet)));
  }
  for (const run of laterRuns(plans, firstDay, making)) {
    made.push(run);
    const path = `hill-bowl/runs/${run.plan.id}`;
    const lab = { rigState: laterCampaign.rigState, firstDay, words: laterWords, quiet };
    files.set(`${path}.md`, noteText(run, lab));
    files.set(`${path}.csv`, logText(run.recording, digitsOf('low', quiet)));
  }
  files.set('hill-bowl/truth.json', truthText({ seed, quiet, choice, calibration, made }));
  for (const [path, text] of olderSeries({ seed, quiet })) files.set(path, text);
  return files;
}

/** The flow runs alone, for those who draw what was seen in them. */
export function flownRuns(wanted: Wanted): readonly MadeRun[] {
  const { plans, choice, making } = drawn(wanted);
  return plans.filter((p) => p.trial === 'flow').map((p) => makeRun(p, choice.drawn.get(p.id)!, making, null));
}

function drawn({ seed, quiet, select }: Wanted) {
  const calibration = drawCalibration(instruments, quiet ? still : stream(seed, 0, 1));
  const making = { seed, quiet, calibration, gear: hillGear, spin: hillSpin };
  const plans = runOrder();
  return { plans, making, choice: chooseDraw(plans, making, select) };
}

/** What a flow note says beside the log, and the captions of its clip. */
function flowTexts(run: MadeRun, wanted: Wanted) {
  const film = filmOf(run, wanted.quiet);
  const blocks = observed(run, wanted);
  const { id } = run.plan;
  return {
    film: clipLines(film, flash_s),
    graded: [
      ...settleLines(run, wanted),
      ...(film.captions === null ? observationLines(id, film, blocks) : []),
      ...stillLines(stillsOf(run), film),
    ],
    captions: film.captions === null ? null : captionsText(id, film, blocks),
  };
}

const inputOf = (run: MadeRun): Recorder => (run.plan.trial === 'spin' ? 'low' : 'high');
