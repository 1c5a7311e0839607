import { roundedDigits } from '../quantity/digits.ts';
import { writeTimecode } from '../quantity/timecode.ts';
import { type Graded, type GradeKind, gradeKinds, type Observation, type View } from './flow.ts';

/** What one cue of a captions file says of one step; its times stand on the time line of the cue. */
export type Noted = Omit<Observation, 'clip' | 'from_s' | 'to_s' | 'place'>;

/** Words of a cue that are followed by a number: factor to SI, and between what it lies as it is written. */
export const measures = {
  level: { to: 'level_z_m', factor: 1e-3, low: -2000, high: 2000 },
  swing: { to: 'swing_m', factor: 1e-3, low: 0, high: 1000 },
  foam: { to: 'foam_m', factor: 1e-3, low: 0, high: 1000 },
  detach: { to: 'detach_rad', factor: Math.PI / 180, low: 0, high: 360 },
} as const;
export type Measure = keyof typeof measures;
export const measureNames = ['level', 'swing', 'foam', 'detach'] as const satisfies readonly Measure[];

export const rpm_rad_s = Math.PI / 30;

/** With View 0 or 1 nothing is graded, whatever was typed. */
export const seenGrades = (grades: Noted['grades'], view: View): Noted['grades'] =>
  view > 1 ? pick((kind) => grades[kind]) : pick(() => 'ng');

const pick = (of: (kind: GradeKind) => Graded): Noted['grades'] => ({
  reach: of('reach'),
  side: of('side'),
  wall: of('wall'),
  bubble: of('bubble'),
  tube: of('tube'),
});

/**
 * The text of a cue, as `readCue` reads it: `run F-01 step 1 rpm 60 up | observer A | reach 1 … view 3 | level -57 | words: …`.
 * `run` is the id of the run, or the code of the clip where the grader does not know the run; `step` counts from 1.
 * Speeds are written to 0.001 rpm, heights to 0.1 mm, angles to 1°.
 */
export function cueText(noted: Noted, name: { readonly run: string; readonly step?: number }): string {
  const { step, observer, pass, blind, grades, view, words } = noted;
  const counted = name.step === undefined ? '' : ` step ${String(name.step)}`;
  const read = measureNames.flatMap((of) => {
    const si = noted[measures[of].to];
    return si === null ? [] : [`${of} ${decimal(si / measures[of].factor, of === 'detach' ? 0 : 1)}`];
  });
  const said = words === null ? '' : oneLine(words);
  return [
    `run ${escaped(name.run)}${counted} rpm ${rpmText(step.outputSpeed_rad_s)} ${step.direction}`,
    `observer ${escaped(oneLine(observer).replaceAll('|', '/'))}${pass === 'joint' ? ' pass joint' : ''}${blind.length > 0 ? ` blind ${blind.join(' ')}` : ''}`,
    `${gradeKinds.map((kind) => `${kind} ${String(grades[kind])}`).join(' ')} view ${String(view)}`,
    ...(read.length > 0 ? [read.join(' ')] : []),
    ...(said === '' ? [] : [`words: ${escaped(said)}`]),
  ].join(' | ');
}

/** A whole captions file; cues in order of their start, times of the clip. */
export const captionsText = (
  cues: readonly { readonly from_s: number; readonly to_s: number; readonly text: string }[],
): string =>
  [
    'WEBVTT',
    ...[...cues]
      .sort((a, b) => a.from_s - b.from_s)
      .map(({ from_s, to_s, text }) => `${writeTimecode(from_s)} --> ${writeTimecode(to_s)}\n${text}`),
  ].join('\n\n') + '\n';

/** The number of a speed in rpm, to 0.001 rpm. */
export const rpmText = (speed_rad_s: number): string => decimal(speed_rad_s / rpm_rad_s, 3);

/** Plain digits with a point and a hyphen: a cue is read by people and by programs that know no other minus. */
function decimal(value: number, decimals: number): string {
  const digits = roundedDigits(Math.abs(value), decimals).replace(/(\.\d*?)0+$/, (_, part: string) =>
    part === '.' ? '' : part,
  );
  return value < 0 && /[1-9]/.test(digits) ? `-${digits}` : digits;
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Cue text is markup: these three signs stand for themselves only when written so. */
export const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
export const unescaped = (text: string): string =>
  text.replace(/&(amp|lt|gt|nbsp);/g, (_, name: keyof typeof signs) => signs[name]);
const signs = { amp: '&', lt: '<', gt: '>', nbsp: '\u00a0' } as const;
