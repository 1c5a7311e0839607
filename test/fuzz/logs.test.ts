import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/finding/finding.ts';
import { readLog } from '../../src/logs/log.ts';
import { column, plainMap, sheet, steadyRows } from '../unit/logs/sheets.ts';
import { everyCase, turns } from './turns.ts';

const map = {
  ...plainMap,
  columns: [
    column('n', 'pinion-speed', 'rpm', { stuck_s: 5 }),
    column('T', 'sump', '°C', { maxStep: 2, plausible: [233.15, 473.15] }),
    column('e', 'event', null),
  ],
  missing: ['-999'],
};
const whole = new TextEncoder().encode(
  sheet(
    ['s,rpm,°C,', ...steadyRows(40).map((row, at) => `${row},${at % 9 === 0 ? '"µ, ""x"""' : ''}`)],
    '\r\n',
  ).replace('t,n,T', 't,n,T,e'),
);

type Spoil = (bytes: number[], at: number, to: number, odd: number) => number[];
const spoils: readonly Spoil[] = [
  (bytes, at) => bytes.slice(0, at),
  (bytes, at) => bytes.slice(at),
  (bytes, at, to) => [...bytes.slice(0, to), ...bytes.slice(Math.min(at, to))],
  (bytes, at, to) => [...bytes.slice(0, Math.min(at, to)), ...bytes.slice(Math.max(at, to))],
  (bytes, at, _to, odd) => bytes.with(at % bytes.length, odd),
  (bytes, at, _to, odd) => [...bytes.slice(0, at), odd, ...bytes.slice(at)],
  (bytes) => bytes.flatMap((byte) => [byte, 0]),
  (bytes) => bytes.filter((byte) => byte !== 13),
  (bytes) => bytes.map((byte) => (byte === 10 ? 32 : byte)),
  (bytes) => [0xef, 0xbb, 0xbf, ...bytes],
  (bytes) => [0xff, 0xfe, ...bytes],
];
const spoiled = fc
  .array(
    fc.record({
      spoil: fc.constantFrom(...spoils),
      at: fc.nat(whole.length),
      to: fc.nat(whole.length),
      odd: fc.oneof(fc.nat(255), fc.constantFrom(...[0, 9, 10, 13, 34, 44, 45, 46, 59, 176])),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((steps) =>
    steps.reduce((bytes, s) => (bytes.length === 0 ? bytes : s.spoil(bytes, s.at, s.to, s.odd)), [...whole]),
  );

/** The lines that an editor shows: two readings, because after some spoiling nobody knows which encoding it was. */
const readingsOf = (bytes: readonly number[]): string[][] =>
  ['utf-8', 'utf-16le'].map((label) => new TextDecoder(label).decode(Uint8Array.from(bytes)).split(/\r\n|\n|\r/u));

const liesIn = (lines: readonly string[], place: Place): boolean => {
  const line = lines[place.line - 1];
  return line !== undefined && place.line >= 1 && place.column >= 1 && place.column <= line.length + 1;
};

describe('a spoilt log', () => {
  it('never throws, and each place lies in its text', () => {
    const check = (bytes: number[]): void => {
      const reading = readLog({ file: 'a.csv', bytes: Uint8Array.from(bytes), sha256: '', map });
      const readings = readingsOf(bytes);
      for (const { place, says, why, write } of reading.findings) {
        expect(readings.some((lines) => liesIn(lines, place))).toBe(true);
        expect([says, why, write].every((text) => text.length > 0 && !/undefined|NaN|\[object/u.test(text))).toBe(true);
      }
      if (!reading.ok) {
        expect(reading.findings.some((f) => f.level === 'error')).toBe(true);
        return;
      }
      const { time_s, line, rows } = reading.value;
      expect([time_s.length, line.length]).toEqual([rows, rows]);
      expect(time_s.every((t, at) => Number.isFinite(t) && (at === 0 || t > time_s[at - 1]!))).toBe(true);
      expect(line.every((l) => l >= 2 && readings.some((lines) => l <= lines.length))).toBe(true);
    };
    everyCase('spoilt logs', spoiled, check, { seed: 20260302, numRuns: 4000 * turns });
  });

  it('of any bytes never throws', () => {
    const check = (bytes: Uint8Array): boolean =>
      readLog({ file: 'a.csv', bytes, sha256: '', map }).findings.length > 0;
    everyCase('logs of any bytes', fc.uint8Array({ maxLength: 200 }), check, { seed: 20260302, numRuns: 3000 * turns });
  });
});
