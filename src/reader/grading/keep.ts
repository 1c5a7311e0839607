import { gradeKinds, type Graded } from '../../trial/flow.ts';
import { isGraded, type Marks, noMarks } from './marks.ts';
import type { Sitting } from './sitting.ts';

/** Grades as the browser keeps them between two openings of the page. */
export const keptText = ({ marks }: Sitting): string => JSON.stringify([...marks]);

/** What was kept; whatever is not as it was written is passed over. */
export function keptMarks(text: string | null): ReadonlyMap<string, Marks> {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? '[]');
  } catch {
    return new Map();
  }
  if (!Array.isArray(kept)) return new Map();
  return new Map(
    kept.flatMap((entry: unknown): [string, Marks][] => {
      if (!Array.isArray(entry) || typeof entry[0] !== 'string') return [];
      const marks = marksIn(entry[1]);
      return marks === null ? [] : [[entry[0], marks]];
    }),
  );
}

function marksIn(kept: unknown): Marks | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { view, grades, words } = kept as Partial<Record<keyof Marks, unknown>>;
  if (typeof grades !== 'object' || grades === null || typeof words !== 'string') return null;
  const given = grades as Readonly<Record<string, unknown>>;
  const read = (kind: string): Graded | null => (isGraded(given[kind]) ? given[kind] : null);
  const seen = isGraded(view) && view !== 'ng' && view !== 4 ? view : null;
  return {
    view: seen,
    grades: gradeKinds.reduce((all, kind) => ({ ...all, [kind]: read(kind) }), noMarks.grades),
    words,
  };
}
