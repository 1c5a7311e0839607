import type { Result } from '../trial/derived.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { ChannelKind, Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import type { LevelDerived } from './level.ts';
import { overdueAt } from './instruments.ts';
import { offSurvey } from './level-findings.ts';
import * as texts from './texts.ts';

/** Channels whose calibration belongs in the ± of what is made of a log. */
const shaping: ReadonlySet<ChannelKind> = new Set([
  'torque-in',
  'torque-out-left',
  'torque-out-right',
  'sump',
  'ambient',
  'pinion-bearing',
  'level',
]);
const ofTheFill: ReadonlySet<QuantityName> = new Set([
  'fill-volume',
  'static-level',
  'immersion',
  'equal-level-volume',
]);

/** The results of a run, each with a note for an overdue instrument that it rests on, and for a level read off the survey. */
export function flagged(
  results: readonly Result[],
  of: { readonly run: Run; readonly rig: Rig; readonly level: LevelDerived },
): Result[] {
  const overdue = of.rig.instruments.filter((i) => overdueAt(i, of.run));
  const off = offSurvey(of.run, of.level).map(({ side, off_m }) =>
    texts.offSurveyNote({ side, off: Math.abs(off_m) * 1e3 }),
  );
  const unnamed = (of.rig.maps.find((m) => m.id === of.run.log?.map)?.columns ?? [])
    .filter((c) => c.instrument === null && shaping.has(c.is))
    .map((c) => c.is);
  const blindNote = unnamed.length === 0 ? [] : [texts.noInstrumentNote(unnamed)];
  return results.map((r) => {
    const causes = new Set(r.estimate?.parts.map((p) => p.cause));
    const late = overdue
      .filter((i) => causes.has(`calibration:${i.shareGroup}`))
      .map((i) => texts.overdueNote({ instrument: i.id, due: i.nextDue ?? '' }));
    const level = r.quantity === 'static-level' || r.quantity === 'immersion' ? off : [];
    const blind = ofTheFill.has(r.quantity) ? [] : blindNote;
    const more = [...late, ...level, ...blind, ...(of.run.amended ?? [])];
    return more.length === 0 ? r : { ...r, notes: [...r.notes, ...more], flags: late };
  });
}
