/**
 * Grade names of axle and gear oils and the viscosities they promise. A grade is a band, so it never stands in for
 * the two viscosities: "90" spans 37 % at 100 °C.
 *
 * Axle grades: SAE J306 (2019, 2005), as reproduced in two places. ν100 from, up to but not including, mm²/s.
 * Limits of recent editions apply after a shear test (from memory); low-temperature limits need a test we do not see.
 */
const upward: readonly (readonly [string, readonly [number, number]])[] = [
  ['85', [11, 13.5]],
  ['90', [13.5, 18.5]],
  ['110', [18.5, 24]],
  ['140', [24, 32.5]],
  ['190', [32.5, 41]],
  ['250', [41, Infinity]],
];
const axleGrades: Readonly<Record<Edition, ReadonlyMap<string, readonly [number, number]>>> = {
  2019: new Map([['65', [3.8, 5]], ['70', [5, 6.5]], ['75', [6.5, 8.5]], ['80', [8.5, 11]], ...upward]),
  2005: new Map([['80', [7, 11]], ...upward]),
};
/** Least ν100 of the winter grades, mm²/s. */
const winterGrades: Readonly<Record<Edition, ReadonlyMap<string, number>>> = {
  2019: new Map([
    ['70W', 3.8],
    ['75W', 3.8],
    ['80W', 8.5],
    ['85W', 11],
  ]),
  2005: new Map([
    ['70W', 4.1],
    ['75W', 4.1],
    ['80W', 7],
    ['85W', 11],
  ]),
};
/** A winter grade reaches this viscosity no warmer than at its temperature below; the same in both editions. */
export const winterTestViscosity_Pa_s = 150;
const winterTemps_K: ReadonlyMap<string, number> = new Map([
  ['70W', 218.15],
  ['75W', 233.15],
  ['80W', 247.15],
  ['85W', 261.15],
]);

/** Warmest temperature at which an oil of a winter grade may reach 150 Pa·s; null for what is no winter grade. */
export const winterTemp_K = (grade: string): number | null => winterTemps_K.get(grade) ?? null;

/** Middle of each ISO 3448 class at 40 °C, mm²/s; limits ± 10 %. 220 seen in a chart, the others from memory. */
const isoMiddles: ReadonlyMap<number, number> = new Map([
  ...([
    [2, 2.2],
    [3, 3.2],
    [5, 4.6],
    [7, 6.8],
  ] as const),
  ...[10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200].map((vg) => [vg, vg] as const),
]);

export type Edition = 2019 | 2005;
export type Grade =
  | { readonly kind: 'axle'; readonly winter: string | null; readonly summer: string | null }
  | { readonly kind: 'iso'; readonly vg: number };

/** What a grade promises of one viscosity. `to` is outside for axle grades, inside for ISO classes. */
export interface GradeLimit {
  readonly of: 'nu40' | 'nu100';
  /** "SAE 90", "SAE 85W", "ISO VG 220" */
  readonly grade: string;
  readonly from_m2_s: number;
  readonly to_m2_s: number;
  readonly holds: boolean;
}

/**
 * Reads a grade as people write it: "85W-90", "SAE 75W-80", "80W90", "SAE 90", "ISO VG 46", "VG220".
 * Null for what is no axle grade of SAE J306 and no class of ISO 3448, such as an engine oil's "10W-40".
 */
export function readGrade(text: string): Grade | null {
  const plain = text.trim().toUpperCase().replace(/\s+/g, ' ');
  const iso = /^(?:ISO[ -]?)?VG[ -]?(\d+)$/.exec(plain);
  if (iso) return isoMiddles.has(Number(iso[1])) ? { kind: 'iso', vg: Number(iso[1]) } : null;
  const axle = /^(?:SAE )?(?:(\d+W)(?: ?[-–/]? ?(\d+))?|(\d+))$/.exec(plain);
  if (!axle) return null;
  const winter = axle[1] ?? null;
  const summer = axle[2] ?? axle[3] ?? null;
  const known =
    (winter === null || winterGrades[2019].has(winter)) && (summer === null || axleGrades[2019].has(summer));
  return known ? { kind: 'axle', winter, summer } : null;
}

/** The axle grade whose band holds a ν100; null below the lowest band and for no number. */
export function axleGradeOf(oil: { nu100_m2_s: number; edition?: Edition }): string | null {
  const Y = oil.nu100_m2_s * 1e6;
  const found = [...axleGrades[oil.edition ?? 2019]].find(([, [from, to]]) => reaches(Y, from) && !reaches(Y, to));
  return found?.[0] ?? null;
}

/**
 * Every promise of the grade, with whether this oil keeps it; none for a grade its edition does not have. A winter grade's test in the cold is not among them.
 */
export function gradeLimits(oil: {
  grade: Grade;
  nu40_m2_s: number;
  nu100_m2_s: number;
  edition?: Edition;
}): readonly GradeLimit[] {
  const edition = oil.edition ?? 2019;
  if (oil.grade.kind === 'iso') {
    const limits = isoLimits_m2_s(oil.grade.vg);
    const U = oil.nu40_m2_s * 1e6;
    const holds = limits !== null && reaches(U, limits.from_m2_s * 1e6) && reaches(limits.to_m2_s * 1e6, U);
    return limits === null ? [] : [{ of: 'nu40', grade: `ISO VG ${oil.grade.vg}`, ...limits, holds }];
  }
  const Y = oil.nu100_m2_s * 1e6;
  const limit = (grade: string, from: number, to: number): GradeLimit => ({
    of: 'nu100',
    grade: `SAE ${grade}`,
    from_m2_s: from * 1e-6,
    to_m2_s: to * 1e-6,
    holds: reaches(Y, from) && !reaches(Y, to),
  });
  const { winter, summer } = oil.grade;
  const least = winter === null ? undefined : winterGrades[edition].get(winter);
  const band = summer === null ? undefined : axleGrades[edition].get(summer);
  return [
    ...(winter !== null && least !== undefined ? [limit(winter, least, Infinity)] : []),
    ...(summer !== null && band !== undefined ? [limit(summer, ...band)] : []),
  ];
}

/** Limits of an ISO 3448 class at 40 °C: its middle ± 10 %; null for a number that is no class. Check: VG 220, 198 to 242. */
export function isoLimits_m2_s(vg: number): { readonly from_m2_s: number; readonly to_m2_s: number } | null {
  const middle = isoMiddles.get(vg);
  return middle === undefined ? null : { from_m2_s: middle * 0.9e-6, to_m2_s: middle * 1.1e-6 };
}

/** Not below, with room for the rounding of m²/s against mm²/s: 13.5 mm²/s written as 1.35e-5 is 13.5. */
const reaches = (value: number, limit: number): boolean => value >= limit * (1 - 1e-12);
