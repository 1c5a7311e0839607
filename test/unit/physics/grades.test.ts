import { describe, expect, it } from 'vitest';
import { axleGradeOf, gradeLimits, isoLimits_m2_s, readGrade } from '../../../src/physics/grades.ts';

describe('grade names', () => {
  it.each([
    ['85W-90', { kind: 'axle', winter: '85W', summer: '90' }],
    ['SAE 75W-80', { kind: 'axle', winter: '75W', summer: '80' }],
    ['sae 80w90', { kind: 'axle', winter: '80W', summer: '90' }],
    ['SAE 75W – 140', { kind: 'axle', winter: '75W', summer: '140' }],
    ['75W', { kind: 'axle', winter: '75W', summer: null }],
    ['SAE 90', { kind: 'axle', winter: null, summer: '90' }],
    ['ISO VG 46', { kind: 'iso', vg: 46 }],
    ['VG220', { kind: 'iso', vg: 220 }],
    ['ISO-VG 68', { kind: 'iso', vg: 68 }],
  ])('%s is read', (text, grade) => {
    expect(readGrade(text)).toEqual(grade);
  });

  it.each(['', '10W-40', 'SAE 91', 'ISO VG 47', 'GL-5', '85W-90 mineral', '90W', 'W-90', 'W'])(
    '"%s" is no axle or gear grade',
    (text) => {
      expect(readGrade(text)).toBeNull();
    },
  );

  it('each half of a multigrade is held against its own limit', () => {
    const oil = { grade: readGrade('80W-90')!, nu40_m2_s: 120e-6, nu100_m2_s: 13.2e-6 };
    expect(gradeLimits(oil).map((l) => [l.grade, l.of, l.holds])).toEqual([
      ['SAE 80W', 'nu100', true],
      ['SAE 90', 'nu100', false],
    ]);
  });

  it('an ISO class is held against 40 °C, its limits included', () => {
    const grade = readGrade('ISO VG 46')!;
    const holds = (nu40: number) => gradeLimits({ grade, nu40_m2_s: nu40 * 1e-6, nu100_m2_s: 7e-6 })[0]!.holds;
    expect([41.39, 41.4, 46, 50.6, 50.61].map(holds)).toEqual([false, true, true, true, false]);
  });

  it('a grade that its edition does not have promises nothing', () => {
    const oil = { grade: readGrade('SAE 75')!, nu40_m2_s: 40e-6, nu100_m2_s: 7e-6 };
    expect(gradeLimits({ ...oil, edition: 2005 })).toEqual([]);
    expect(isoLimits_m2_s(47)).toBeNull();
  });

  it('an oil below the lowest band, or of no viscosity, has no grade', () => {
    expect(axleGradeOf({ nu100_m2_s: 3.7e-6 })).toBeNull();
    expect(axleGradeOf({ nu100_m2_s: 6.9e-6, edition: 2005 })).toBeNull();
    expect(axleGradeOf({ nu100_m2_s: NaN })).toBeNull();
    expect(axleGradeOf({ nu100_m2_s: 60e-6 })).toBe('250');
  });
});
