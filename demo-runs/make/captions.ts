import { clipTime_s, type Film, timecode } from './film.ts';
import { window_s } from './flow-truth.ts';
import { wordsOf } from './flow-words.ts';
import { type Block, gradeKinds, type Row } from './observers.ts';

/** Grades as open captions beside the clip, in clip time. */
export function captionsText(run: string, film: Film, blocks: readonly Block[]): string {
  const cues = blocks.flatMap((block) => block.rows.map((row, i) => ({ block, row, words: wordsOf(run, block, i) })));
  cues.sort((a, b) => a.row.step.n - b.row.step.n);
  const seen = run === coded ? film.code : run;
  return `WEBVTT\n\nNOTE Flow trial, graded from the clip. Times are those of the clip.\n\n${cues
    .map(({ block, row, words }) => `${spanOf(film, row)}\n${cueText(seen, block, row, words)}\n`)
    .join('\n')}`;
}

/** Graded under the clip's code and left so. */
const coded = 'F-02';

function spanOf(film: Film, { step }: Row): string {
  const from_s = clipTime_s(film, step.hold_s);
  return `${timecode(from_s)} --> ${timecode(from_s + window_s)}`;
}

function cueText(run: string, { observer, pass, blind }: Block, row: Row, words: string | null): string {
  const { step } = row;
  return [
    `run ${run} step ${step.n} rpm ${step.wheel_rpm} ${step.direction}`,
    [`observer ${observer}`, pass === 'joint' ? 'pass joint' : '', blind.length > 0 ? `blind ${blind.join(' ')}` : '']
      .filter((part) => part !== '')
      .join(' '),
    [...gradeKinds.map((kind) => `${kind} ${row.grades[kind]}`), `view ${row.view}`].join(' '),
    numbers(row),
    words === null ? '' : `words: ${words}`,
  ]
    .filter((part) => part !== '')
    .join(' | ');
}

const numbers = (row: Row): string =>
  [
    row.level_mm === null ? '' : `level ${row.level_mm}`,
    row.swing_mm === null ? '' : `swing ${row.swing_mm}`,
    row.foam_mm === null ? '' : `foam ${row.foam_mm}`,
    row.detach_deg === null ? '' : `detach ${row.detach_deg}`,
  ]
    .filter((part) => part !== '')
    .join(' ');
