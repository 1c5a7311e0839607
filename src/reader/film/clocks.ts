import type { Clock } from '../../charts/clock.ts';
import { roundedDigits } from '../../quantity/digits.ts';
import type { ClipPiece } from '../../trial/derived.ts';

type Across = Omit<Clock, 'top' | 'bottom'>;

/** Log time, s, of a time in the clip; null between pieces. A time on the joint of two pieces belongs to the later one. */
export function logTime_s(pieces: readonly ClipPiece[], clip_s: number): number | null {
  const piece = pieces.findLast((each) => each.clip_s <= clip_s && clip_s <= each.to_clip_s);
  return piece === undefined ? null : clip_s + piece.offset_s;
}

/** Clip time, s, at which a log time is seen; null where no piece holds it. */
export function clipTime_s(pieces: readonly ClipPiece[], log_s: number): number | null {
  const piece = pieces.find(
    ({ clip_s, to_clip_s, offset_s }) => clip_s <= log_s - offset_s && log_s - offset_s <= to_clip_s,
  );
  return piece === undefined ? null : log_s - piece.offset_s;
}

/** Where film and logger ran together, in log time, s; pieces that follow each other without a gap are one stretch. */
export function filmed(pieces: readonly ClipPiece[]): readonly { readonly from_s: number; readonly to_s: number }[] {
  const stretches = pieces
    .map(({ clip_s, to_clip_s, offset_s }) => ({ from_s: clip_s + offset_s, to_s: to_clip_s + offset_s }))
    .sort((a, b) => a.from_s - b.from_s);
  return stretches.reduce<{ readonly from_s: number; readonly to_s: number }[]>((done, next) => {
    const last = done.at(-1);
    if (last === undefined || next.from_s > last.to_s + 1e-6) return [...done, next];
    return [...done.slice(0, -1), { from_s: last.from_s, to_s: Math.max(last.to_s, next.to_s) }];
  }, []);
}

/** Log time, s, at a place on the chart, in units of its viewBox. The axis is in minutes. */
export const timeAt_s = ({ from, to, left, right }: Across, x: number): number =>
  (from + ((x - left) / (right - left)) * (to - from)) * 60;

/** `4:21.3`: minutes, seconds and tenths. */
export function clockText(time_s: number): string {
  const tenths = Number(roundedDigits(Math.abs(time_s) * 10, 0));
  const sign = time_s < 0 && tenths > 0 ? '−' : '';
  const seconds = roundedDigits((tenths % 600) / 10, 1).padStart(4, '0');
  return `${sign}${Math.floor(tenths / 600)}:${seconds}`;
}
