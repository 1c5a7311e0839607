import type { ReadText } from './quantity.ts';
import * as texts from './texts.ts';

export interface Instant {
  readonly asWritten: string;
  /** Seconds since 1970-01-01T00:00:00Z. */
  readonly epoch_s: number;
}

/** A date, a time and an offset from UTC: 2026-03-17T10:05:00+01:00 (ISO 8601-1, the profile of RFC 3339; seconds may be left out). */
export function readInstant(text: string): ReadText<Instant> {
  const asWritten = text.trim();
  const place = { offset: text.indexOf(asWritten), length: asWritten.length };
  const refuse = (why: string): ReadText<Instant> => ({
    ok: false,
    trouble: texts.instantUnclear(place, asWritten, why),
  });
  const parts = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}):(\d{2})(?::(\d{2})([.,]\d+)?)?(?:(Z)|([+-])(\d{2}):(\d{2}))?$/.exec(
    asWritten,
  );
  if (!parts) return refuse('It is not written as year-month-day, T, hours:minutes:seconds and offset.');
  const midnight_s = midnight(parts[1]!);
  if (midnight_s === null) return refuse('The calendar has no such day.');
  const [hours, minutes, seconds] = [Number(parts[2]), Number(parts[3]), Number(parts[4] ?? 0)];
  if (hours > 23 || minutes > 59 || seconds > 59) return refuse('A clock does not show such a time.');
  if (!parts[6] && !parts[7]) return { ok: false, trouble: texts.offsetMissing(place, asWritten) };
  const offset_min = Number(parts[8] ?? 0) * 60 + Number(parts[9] ?? 0);
  if (offset_min > 14 * 60 || Number(parts[9] ?? 0) > 59) return refuse('No place on earth has this offset from UTC.');
  const part_s = Number(`0${(parts[5] ?? '').replace(',', '.')}`);
  const local_s = midnight_s + hours * 3600 + minutes * 60 + seconds + part_s;
  return { ok: true, value: { asWritten, epoch_s: local_s - (parts[7] === '-' ? -1 : 1) * offset_min * 60 } };
}

export interface Day {
  readonly asWritten: string;
  /** Midnight UTC at its beginning, seconds since 1970-01-01. */
  readonly epoch_s: number;
}

/** A calendar day, year first: 2026-03-17. */
export function readDay(text: string): ReadText<Day> {
  const asWritten = text.trim();
  const place = { offset: text.indexOf(asWritten), length: asWritten.length };
  const refuse = (why: string): ReadText<Day> => ({ ok: false, trouble: texts.dayUnclear(place, asWritten, why) });
  if (/^\d{1,4}([/. -])\d{1,2}\1\d{1,4}\.?$/.test(asWritten) && !/^\d{4}-\d{2}-\d{2}$/.test(asWritten))
    return refuse('Day, month and year may stand in more than one order.');
  if (!/^\d{4}-\d{2}-\d{2}$/.test(asWritten)) return refuse('It is not written as year-month-day.');
  const epoch_s = midnight(asWritten);
  return epoch_s === null ? refuse('The calendar has no such day.') : { ok: true, value: { asWritten, epoch_s } };
}

/** Seconds since 1970 at the beginning of a day in UTC; null for a day such as 2026-02-30. */
function midnight(day: string): number | null {
  const ms = Date.parse(`${day}T00:00:00Z`);
  return Number.isNaN(ms) || new Date(ms).toISOString().slice(0, 10) !== day ? null : ms / 1000;
}
