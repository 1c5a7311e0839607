import { describe, expect, it } from 'vitest';
import { readTimecode, writeTimecode } from '../../../src/quantity/timecode.ts';

const read = (text: string): number | string => {
  const result = readTimecode(text);
  return result.ok ? result.value.value_s : result.trouble.code;
};

describe('a timecode', () => {
  // WebVTT (W3C), "WebVTT timestamp": hours, minutes and seconds as base ten integers, and thousandths of a second
  it.each([
    ['00:00:36', 36],
    ['00:00:36.500', 36.5],
    ['00:02:10.000', 130],
    ['01:00:00.001', 3600.001],
    ['100:00:00', 360000],
    ['00:00:10.100', 10.1],
  ])('%s is %d s', (text, seconds) => {
    expect(read(text)).toBe(seconds);
  });

  it.each([
    '1:30',
    '00:36',
    '00:00:12:05',
    '00:00:12;05',
    '00:00:12,000',
    '00:00:12.5',
    '00:60:00',
    '00:00:75',
    '12 s',
    '',
  ])('"%s" is refused as timecode-unclear', (text) => {
    expect(read(text)).toBe('timecode-unclear');
  });

  it.each([0, 0.001, 59.999, 60, 3599.9994, 360000.5])(
    'written from %d s it is read as the same to a thousandth',
    (s) => {
      expect(read(writeTimecode(s))).toBeCloseTo(s, 3);
    },
  );

  it('does not write sixty seconds when it rounds', () => {
    expect(writeTimecode(59.9996)).toBe('00:01:00.000');
  });
});
