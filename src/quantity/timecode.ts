import { roundedDigits } from './digits.ts';
import type { ReadText } from './quantity.ts';
import { timecodeUnclear } from './texts-time.ts';

/** A time on a film or a clip, counted from its beginning. */
export interface Timecode {
  readonly asWritten: string;
  readonly value_s: number;
}

/**
 * `HH:MM:SS` or `HH:MM:SS.mmm`, as WebVTT writes its times, hours always. `1:30` and `00:36` have two readings and are refused;
 * so is a fourth part, since frames are no time without a frame rate.
 */
export function readTimecode(text: string): ReadText<Timecode> {
  const asWritten = text.trim();
  const parts = /^(\d{2,4}):([0-5]\d):([0-5]\d)(?:\.(\d{3}))?$/.exec(asWritten);
  if (parts) {
    const [, hours, minutes, seconds, thousandths = '0'] = parts;
    return { ok: true, value: { asWritten, value_s: seconds_s(hours!, minutes!, seconds!, thousandths) } };
  }
  const place = { offset: Math.max(0, text.indexOf(asWritten)), length: asWritten.length };
  return { ok: false, trouble: timecodeUnclear(place, asWritten, whyNot(asWritten)) };
}

/** Seconds from typed digits: one sum in thousandths, so that 00:00:10.100 is the number 10.1. */
export const seconds_s = (hours: string, minutes: string, seconds: string, thousandths: string): number =>
  (((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000 + Number(thousandths)) / 1000;

/** `HH:MM:SS.mmm`, hours always; rounded to a thousandth of a second. Times before 0 are written as 0. */
export function writeTimecode(time_s: number): string {
  const [whole = '0', thousandths = '000'] = roundedDigits(Math.max(0, time_s), 3).split('.');
  const all = Number(whole);
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${two(Math.floor(all / 3600))}:${two(Math.floor(all / 60) % 60)}:${two(all % 60)}.${thousandths}`;
}

function whyNot(text: string): string {
  if (/^\d+:\d+([.,]\d+)?$/.test(text)) return 'It may be hours and minutes or minutes and seconds.';
  if (/^\d+:\d+:\d+[:;]\d+$/.test(text)) return 'A fourth part counts frames, and says no time without the frame rate.';
  if (/^\d+:\d+:\d+,\d+$/.test(text)) return 'Parts of a second stand after a point.';
  if (/^\d+:\d+:\d+\.\d*$/.test(text)) return 'Parts of a second are three digits; fewer may count frames.';
  if (/^\d{2,}:\d{2}:\d{2}/.test(text)) return 'Minutes and seconds go from 00 to 59.';
  return 'It is not written as hours, minutes and seconds.';
}
