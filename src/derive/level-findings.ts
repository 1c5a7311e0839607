import type { Finding } from '../finding/finding.ts';
import type { LevelTable } from '../trial/article.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import type { LevelDerived } from './level.ts';
import * as texts from './texts.ts';

/** A dipped level more than 3 mm off the survey is flagged (our rule); litres outside the table have no level. */
export function levelFindings(input: { run: Run; rig: Rig; table: LevelTable | null; level: LevelDerived }): Finding[] {
  const { run, table, level } = input;
  const place = (path: string) => run.places.get(path) ?? { file: run.file, line: 1, column: 1 };
  if (table === null) return [];
  if (level.level_z_m === null) {
    const path = run.fill.mass_kg === null ? 'fill.volume' : 'fill.mass-in';
    const [low, high] = [table.rows[0]!.volume_m3 * 1e3, table.rows.at(-1)!.volume_m3 * 1e3];
    return [texts.fillOutside({ place: place(path), run: run.id, litres: level.volume20_m3 * 1e3, low, high })];
  }
  const surveyed = level.level_z_m * 1e3;
  return offSurvey(run, level).map(({ side, path, off_m }) =>
    texts.levelOff({ place: place(path), run: run.id, side, surveyed, dipped: surveyed + off_m * 1e3 }),
  );
}

/** Sides on which the dipped level is more than 3 mm off the survey. On a tilted axle neither is the level at its centre. */
export function offSurvey(run: Run, level: LevelDerived): { side: string; path: string; off_m: number }[] {
  const surveyed = level.level_z_m;
  if (surveyed === null || run.tilt_ratio !== 0) return [];
  const sides = [
    { side: 'left', at: run.fill.levelLeft_z_m, path: 'fill.level-left' },
    { side: 'right', at: run.fill.levelRight_z_m, path: 'fill.level-right' },
  ];
  return sides.flatMap(({ side, at, path }) =>
    at !== null && Math.abs(at - surveyed) > 3e-3 ? [{ side, path, off_m: at - surveyed }] : [],
  );
}
