import { guessesOf } from '../../notes/check-guessed.ts';
import type { SeriesInput } from '../../report/input.ts';
import type { NoteHead } from '../../trial/note.ts';

/** What the figures of each series still wait for, the widest first: lines for a terminal, '' where nothing is missing. */
export const missingText = (series: readonly SeriesInput[]): string =>
  series
    .map(ofSeries)
    .filter((text) => text !== '')
    .join('\n');

function ofSeries({ record }: SeriesInput): string {
  const { series, rig, plan, articles, oils, runs } = record;
  const waits = [
    ['every figure', [series, rig, ...(plan === null ? [] : [plan])]],
    ...[...oils.values()].map((oil) => [`runs with ${oil.id}`, [oil]] as const),
    ...[...articles.values()].map((article) => [`runs of ${article.id}`, [article]] as const),
    ...runs.map((run) => [run.id, [run]] as const),
  ] as const;
  const rows = waits.flatMap(([who, notes]) => {
    const guessed = notes
      .filter((note) => guessesOf(note).length > 0)
      .map((note) => `${inside(note)}: ${guessesOf(note).join(', ')}`);
    const draft = runs.find(({ id, status }) => id === who && status === 'draft');
    const more =
      draft === undefined || draft.statusReason !== null
        ? []
        : [`${guessed.length === 0 ? `${inside(draft)}: ` : ''}status, a draft so far`];
    return guessed.length + more.length === 0 ? [] : [[who, [...guessed, ...more].join('; ')] as const];
  });
  const width = Math.max(0, ...rows.map(([who]) => who.length));
  return rows.length === 0
    ? ''
    : [
        `${series.id}  still missing, in the order of what waits for it`,
        ...rows.map(([who, what]) => `  ${who.padEnd(width)}  ${what}`),
        '',
      ].join('\n');
}

/** The note as one finds it inside its series. */
const inside = ({ file }: NoteHead): string => file.slice(file.indexOf('/') + 1);
