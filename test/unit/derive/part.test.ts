import { describe, expect, it } from 'vitest';
import { afterStop, underLoad } from '../../../src/derive/part.ts';
import type { Reading } from '../../../src/derive/reading.ts';
import type { Log } from '../../../src/trial/log.ts';
import type { Rig } from '../../../src/trial/rig.ts';
import type { Run } from '../../../src/trial/run.ts';

const sump = Float64Array.from({ length: 11 }, (_, i) => 300 + i);
const logWith = (events: readonly [number, string][]): Log => ({
  file: 'a.csv',
  sha256: '',
  rows: 11,
  time_s: Float64Array.from({ length: 11 }, (_, i) => 10 * i),
  line: Int32Array.from({ length: 11 }, (_, i) => i + 2),
  channels: new Map([['sump', sump]]),
  events: events.map(([time_s, text]) => ({ time_s, text, line: time_s / 10 + 2 })),
  columnOf: new Map([['sump', 2]]),
  findings: [],
  record: [],
});
const readingWith = (events: readonly [number, string][]): Reading => ({
  run: {} as Run,
  rig: {} as Rig,
  log: logWith(events),
  map: {
    id: '',
    delimiter: ',',
    decimal: '.',
    thousands: null,
    header: 1,
    unitsRow: null,
    encoding: null,
    missing: [],
    clock: { column: 't', unit: 's' },
    columns: [],
  },
  channel: (kind) => (kind === 'sump' ? sump : null),
  instrument: () => null,
});

describe('a part of a run', () => {
  it('is the whole run where no event says otherwise', () => {
    const whole = readingWith([]);
    expect(underLoad(whole)).toBe(whole);
    expect(afterStop(whole)).toBe(whole);
  });

  it('starts its own clock at load on, ends at load off, and keeps the lines of the file', () => {
    const part = underLoad(
      readingWith([
        [20, 'load on'],
        [70, 'load off'],
      ]),
    );
    expect([...part.log.time_s]).toEqual([0, 10, 20, 30, 40, 50]);
    expect([...part.log.line]).toEqual([4, 5, 6, 7, 8, 9]);
    expect([...part.channel('sump')!]).toEqual([302, 303, 304, 305, 306, 307]);
    expect(part.channel('skin')).toBeNull();
  });

  it('of a cool-down starts at the stop', () => {
    expect([...afterStop(readingWith([[80, 'stop']])).channel('sump')!]).toEqual([308, 309, 310]);
  });
});
