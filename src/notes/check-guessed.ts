import type { Finding } from '../finding/finding.ts';
import { nearest } from '../finding/nearest.ts';
import type { NoteHead } from '../trial/note.ts';
import type { Run } from '../trial/run.ts';
import { foundAt } from './gather.ts';
import * as say from './texts-guessed.ts';

/** Fields of a note that hold a guess so far, by their names. */
export const guessesOf = ({ typed }: NoteHead): readonly string[] =>
  [...typed].flatMap(([path, name]) => (/^guessed\.\d+$/.test(path) ? [name] : []));

/** A note and the runs whose figures would rest on it. */
interface Leaned {
  readonly note: NoteHead;
  readonly runs: readonly Run[];
}

/**
 * Runs as they count: one that rests on a guess, of its own note or of any that it leans on, makes no figure and stays a
 * draft until the value is looked up. Each note says once which runs wait for it.
 */
export function checkGuessed(
  runs: readonly Run[],
  of: {
    readonly everywhere: readonly (NoteHead | null)[];
    readonly articles: ReadonlyMap<string, NoteHead>;
    readonly oils: ReadonlyMap<string, NoteHead>;
  },
): { readonly runs: readonly Run[]; readonly findings: readonly Finding[] } {
  const leaned: readonly Leaned[] = [
    ...of.everywhere.flatMap((note) => (note === null ? [] : [{ note, runs }])),
    ...[...of.oils].map(([id, note]) => ({ note, runs: runs.filter(({ oil }) => oil === id) })),
    ...[...of.articles].map(([id, note]) => ({ note, runs: runs.filter(({ article }) => article === id) })),
    ...runs.map((run) => ({ note: run, runs: [run] })),
  ];
  const guessed = leaned.filter(({ note }) => guessesOf(note).length > 0);
  const waiting = new Set(guessed.flatMap((one) => one.runs.map(({ id }) => id)));
  return {
    runs: runs.map((run) => (waiting.has(run.id) && run.status !== 'draft' ? { ...run, ...asDraft } : run)),
    findings: guessed.flatMap(({ note, runs: its }) => [
      foundAt(
        note,
        'guessed',
        say.stillGuessed(
          guessesOf(note),
          its.filter(({ status }) => status !== 'draft').map(({ id }) => id),
        ),
      ),
      ...strangers(note),
    ]),
  };
}

const asDraft = { status: 'draft', statusReason: 'it rests on a value that is still a guess' } as const;

/** A name that no field of the note has would hide which one is meant. */
function strangers(note: NoteHead): Finding[] {
  const fields = [...note.typed.keys()].filter((path) => !path.startsWith('guessed'));
  return guessesOf(note).flatMap((name, i) =>
    fields.some((path) => path === name || path.startsWith(`${name}.`))
      ? []
      : [foundAt(note, `guessed.${i.toFixed(0)}`, say.guessedStranger(name, nearest(name, fields)))],
  );
}
