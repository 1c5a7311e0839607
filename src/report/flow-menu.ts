import { besides } from './view.ts';
import { isGraded, sheetsAmong } from './flow-steps.ts';
import type { SeriesInput } from './input.ts';

/** Which pages the flow trials of a series call for; the line of words at the top goes by the same. */
export interface FlowMenu {
  readonly grades: boolean;
  readonly sideBySide: boolean;
  readonly grading: boolean;
}

export function flowMenu({ record, derived, media, audience }: SeriesInput): FlowMenu {
  const house = audience === 'house';
  const sheets = sheetsAmong(
    record.runs.filter(({ shownTo }) => house || shownTo === 'public'),
    derived,
  );
  const grades = sheets.some(isGraded);
  return {
    grades,
    sideBySide: grades && sheets.length > 1,
    grading:
      house &&
      sheets.some(({ run }) => run.clips.some(({ code, file }) => code !== null && media.has(besides(run.file, file)))),
  };
}
