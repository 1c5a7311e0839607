import { describe, expect, it } from 'vitest';
import { readDay, readInstant } from '../../../src/quantity/time.ts';

const codeOf = (result: ReturnType<typeof readInstant>): string => (result.ok ? 'read' : result.trouble.code);

describe('dates and times', () => {
  // RFC 3339, 5.8: the examples are equal instants in two offsets.
  it('reads 1996-12-19T16:39:57-08:00 as the same instant as 1996-12-20T00:39:57Z', () => {
    const west = readInstant('1996-12-19T16:39:57-08:00');
    const utc = readInstant('1996-12-20T00:39:57Z');
    expect(west.ok && utc.ok && west.value.epoch_s - utc.value.epoch_s).toBe(0);
  });

  // POSIX.1-2017, 4.16: 2004-09-16T00:00:00Z has 12677 days since the Epoch (from memory).
  it('counts seconds from 1970', () => {
    const read = readInstant('2004-09-16T00:00:00Z');
    expect(read.ok && read.value.epoch_s).toBe(12677 * 86400);
  });

  it('reads parts of a second and leaves seconds out', () => {
    const [whole, part] = [readInstant('2026-03-17T10:05+01:00'), readInstant('2026-03-17T10:05:00,250+01:00')];
    expect(whole.ok && part.ok && part.value.epoch_s - whole.value.epoch_s).toBe(0.25);
  });

  it.each([
    ['2026-03-17T10:05:00', 'time-offset-missing'],
    ['2026-03-17', 'time-unclear'],
    ['17.03.2026 10:05', 'time-unclear'],
    ['2026-02-29T10:05:00Z', 'time-unclear'],
    ['2026-03-17T24:05:00Z', 'time-unclear'],
    ['2026-03-17T10:65:00Z', 'time-unclear'],
    ['2026-03-17T10:05:00+15:00', 'time-unclear'],
    ['2026-03-17T10:05:00+0100', 'time-unclear'],
    ['today', 'time-unclear'],
    ['', 'time-unclear'],
  ])('refuses "%s": %s', (text, code) => {
    expect(codeOf(readInstant(text))).toBe(code);
  });

  it('knows leap years', () => {
    expect(['2024-02-29', '2000-02-29', '2026-02-29', '1900-02-29'].map((day) => readDay(day).ok)).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  it.each(['03/04/25', '3.4.2025', '2025/04/03', '2025-4-3', '2025-04-03T10:00:00Z', '20250403'])(
    'refuses the day "%s"',
    (text) => {
      const read = readDay(text);
      expect(read.ok ? 'read' : read.trouble.code).toBe('date-unclear');
    },
  );
});
