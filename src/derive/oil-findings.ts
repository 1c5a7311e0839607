import type { Finding } from '../finding/finding.ts';
import { gradeLimits, readGrade } from '../physics/grades.ts';
import type { SeriesRecord } from '../trial/series.ts';
import * as texts from './texts.ts';

/** An oil whose viscosity lies outside the band its grade promises: one of the two is typed wrong, or the grade is of another edition. */
export function oilFindings(record: SeriesRecord): Finding[] {
  return [...record.oils.values()].flatMap((oil) => {
    const grade = readGrade(oil.grade);
    const off = grade === null ? undefined : gradeLimits({ ...oil, grade }).find((limit) => !limit.holds);
    if (off === undefined) return [];
    const path = off.of === 'nu40' ? 'viscosity.at-40' : 'viscosity.at-100';
    return [
      texts.gradeOff({
        place: oil.places.get(path) ?? { file: oil.file, line: 1, column: 1 },
        grade: off.grade,
        reads: (off.of === 'nu40' ? oil.nu40_m2_s : oil.nu100_m2_s) * 1e6,
        from: off.from_m2_s * 1e6,
        to: off.to_m2_s * 1e6,
      }),
    ];
  });
}
