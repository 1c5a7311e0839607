import { describe, expect, it } from 'vitest';
import { oilFindings } from '../../../src/derive/oil-findings.ts';
import type { Oil } from '../../../src/trial/oil.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';

// SAE J306 (2019): grade 90 is 13.5 to below 18.5 mm²/s at 100 °C, 85W at least 11.0. ISO 3448: VG 220 is 198 to 242 at 40 °C.
const found = (grade: string, nu40: number, nu100: number) =>
  oilFindings({
    oils: new Map([
      [
        'O1',
        {
          file: 'oils/O1.md',
          places: new Map([['viscosity.at-100', { file: 'oils/O1.md', line: 6, column: 40 }]]),
          grade,
          nu40_m2_s: nu40 * 1e-6,
          nu100_m2_s: nu100 * 1e-6,
        } as unknown as Oil,
      ],
    ]),
  } as unknown as SeriesRecord);

describe('an oil held against its grade', () => {
  it('inside its bands is not spoken of', () => {
    expect(found('SAE 85W-90', 170, 15.6)).toEqual([]);
    expect(found('ISO VG 220', 220, 19)).toEqual([]);
  });

  it('outside a band is told at its viscosity with grade-off', () => {
    const [finding, ...more] = found('SAE 85W-90', 170, 12.9);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ code: 'grade-off', level: 'warning', place: { line: 6, column: 40 } });
    expect(finding!.says).toMatch(/12\.9.*SAE 90.*13\.5.*18\.5/u);
  });

  it('of no known grade is left alone', () => {
    expect(found('house mixture', 170, 12.9)).toEqual([]);
  });
});
