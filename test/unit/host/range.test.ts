import { describe, expect, it } from 'vitest';
import { rangeOf } from '../../../src/host/terminal/range.ts';

// RFC 9110, section 14.1.2: "examples of byte-ranges-specifier values" for a representation of 10 000 bytes.
const printed = [
  { asked: 'bytes=0-499', as: 'the first 500 bytes', is: { from: 0, to: 499 } },
  { asked: 'bytes=500-999', as: 'the second 500 bytes', is: { from: 500, to: 999 } },
  { asked: 'bytes=-500', as: 'the final 500 bytes', is: { from: 9500, to: 9999 } },
  { asked: 'bytes=9500-', as: 'the final 500 bytes', is: { from: 9500, to: 9999 } },
] as const;

describe('the part of a file that is asked for (RFC 9110)', () => {
  it.each(printed)('$asked is $as', ({ asked, is }) => {
    expect(rangeOf(asked, 10_000)).toEqual(is);
  });

  // Section 14.1.2: a last position beyond the end means the end; a suffix longer than the file means the whole of it.
  it('ends with the file where more was asked', () => {
    expect(rangeOf('bytes=9990-20000', 10_000)).toEqual({ from: 9990, to: 9999 });
    expect(rangeOf('bytes=-20000', 10_000)).toEqual({ from: 0, to: 9999 });
  });

  // Section 14.2: a server may ignore the field; 14.1.1: an int-range whose last position is less than its first is invalid.
  it('is the whole where several parts, another unit or nothing readable was asked', () => {
    for (const asked of [undefined, '', 'bytes=', 'bytes=-', 'bytes=0-0,-1', 'lines=0-4', 'bytes=5-2', 'bytes=a-b'])
      expect(rangeOf(asked, 10_000), String(asked)).toBe('whole');
  });

  // Section 15.5.17: none of the ranges overlaps the current extent.
  it('is none where it begins behind the end or is empty', () => {
    for (const asked of ['bytes=10000-', 'bytes=-0']) expect(rangeOf(asked, 10_000), asked).toBe('none');
    for (const asked of ['bytes=0-', 'bytes=-5']) expect(rangeOf(asked, 0), asked).toBe('none');
  });
});
