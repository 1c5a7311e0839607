import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstNotUtf8 } from '../../../src/logs/survey.ts';
import { channelOf, column, plainMap, read } from './sheets.ts';

const map = {
  ...plainMap,
  columns: [column('a', 'torque-in', 'N·m'), column('b', 'torque-out-left', 'N·m'), column('e', 'event', null)],
};
const reading = fc.oneof(
  fc.double({ min: -1e4, max: 1e4, noNaN: true }).map(String),
  fc.integer({ min: -999, max: 999 }).map((n) => (n / 100).toFixed(2)),
  fc.constant(''),
);
const words = fc.string({ maxLength: 12, unit: fc.constantFrom('a', 'b', ',', ' ', '"', ';', 'ä', 'µ', '℃') });
const quotedCell = (text: string): string => `"${text.replaceAll('"', '""')}"`;
const row = fc.tuple(reading, reading, words);
const sheet = fc.record({
  rows: fc.array(row, { minLength: 2, maxLength: 40 }),
  end: fc.constantFrom('\n', '\r\n', '\r'),
  closed: fc.boolean(),
  shift: fc.integer({ min: 0, max: 1e6 }),
});

// The oracle is csv-parse in its strict mode, a general-purpose reader of RFC 4180 text.
describe('a well-formed log', () => {
  it('is read cell by cell as csv-parse reads it', () => {
    const check = ({ rows, end, closed, shift }: typeof sheet extends fc.Arbitrary<infer T> ? T : never): void => {
      const lines = ['t,a,b,e', ...rows.map(([a, b, e], at) => `${shift + at / 4},${a},${b},${quotedCell(e)}`)];
      const text = lines.join(end) + (closed ? end : '');
      const [, ...expected] = parse(text, { record_delimiter: end });
      const ours = read(text, map);
      expect(ours.ok).toBe(true);
      if (!ours.ok) return;
      const number = (cell = ''): number => (cell === '' ? NaN : Number(cell));
      expect([...ours.value.time_s]).toEqual(expected.map((cells) => Number(cells[0])));
      for (const [is, at] of [
        ['torque-in', 1],
        ['torque-out-left', 2],
      ] as const) {
        const wanted = expected.map((cells) => number(cells[at]));
        expect(channelOf(ours, is)).toEqual(wanted.every(Number.isNaN) ? [] : wanted);
      }
      const events = expected.map((cells) => cells[3]!.trim()).filter((said) => said !== '');
      expect(ours.value.events.map((event) => event.text)).toEqual(events);
      expect([...ours.value.line]).toEqual(expected.map((_, at) => at + 2));
    };
    fc.assert(fc.property(sheet, check), { seed: 20260302, numRuns: 300 });
  });
});

// The oracle is the fatal mode of TextDecoder (WHATWG Encoding).
describe('the first byte that is not UTF-8', () => {
  const accepts = (bytes: Uint8Array): boolean => {
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(bytes);
      return true;
    } catch {
      return false;
    }
  };
  const nearText = fc
    .tuple(fc.string({ unit: 'grapheme', maxLength: 8 }), fc.uint8Array({ maxLength: 3 }), fc.nat(20))
    .map(([text, odd, at]) => {
      const bytes = [...new TextEncoder().encode(text)];
      bytes.splice(Math.min(at, bytes.length), 1, ...odd);
      return Uint8Array.from(bytes);
    });

  it('is there exactly when the decoder refuses the bytes', () => {
    fc.assert(
      fc.property(nearText, (bytes) => firstNotUtf8(bytes) < 0 === accepts(bytes)),
      { seed: 20260302, numRuns: 20_000 },
    );
  });

  it('has only text before it', () => {
    fc.assert(
      fc.property(nearText, (bytes) => {
        const at = firstNotUtf8(bytes);
        return at < 0 || accepts(bytes.subarray(0, at));
      }),
      { seed: 20260302, numRuns: 5000 },
    );
  });
});
