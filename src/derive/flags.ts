import type { Result } from '../trial/derived.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import type { LevelDerived } from './level.ts';
import { overdueAt } from './instruments.ts';
import { offSurvey } from './level-findings.ts';
import * as texts from './texts.ts';

/** The results of a run, each with a note for an overdue instrument that it rests on, and for a level read off the survey. */
export function flagged(
  results: readonly Result[],
  of: { readonly run: Run; readonly rig: Rig; readonly level: LevelDerived },
): Result[] {
  const overdue = of.rig.instruments.filter((i) => overdueAt(i, of.run));
  const off = offSurvey(of.run, of.level).map(({ side, off_m }) =>
    texts.offSurveyNote({ side, off: Math.abs(off_m) * 1e3 }),
  );
  return results.map((r) => {
    const causes = new Set(r.estimate?.parts.map((p) => p.cause));
    const late = overdue
      .filter((i) => causes.has(`calibration:${i.shareGroup}`))
      .map((i) => texts.overdueNote({ instrument: i.id, due: i.nextDue ?? '' }));
    const level = r.quantity === 'static-level' || r.quantity === 'immersion' ? off : [];
    return late.length + level.length === 0 ? r : { ...r, notes: [...r.notes, ...late, ...level], flags: late };
  });
}
