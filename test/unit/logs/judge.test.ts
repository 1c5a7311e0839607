import { describe, expect, it } from 'vitest';
import { channelOf, column, foundIn, plainMap, read, recordOf, sheet, steadyRows, withColumn } from './sheets.ts';

const stepping = withColumn(1, { maxStep: 2 });
const sumpRows = (sump: (at: number) => string, count = 30): string[] =>
  Array.from({ length: count }, (_, at) => `${at},${100 + (at % 7)}.5,${sump(at)}`);
const missingAt = (values: readonly number[]): number[] =>
  values.flatMap((value, at) => (Number.isNaN(value) ? [at] : []));
const wave = (at: number): number => 40 + (at % 5) / 10;

// Expected values follow from the rows written here; what is judged how is common practice, no source.
describe('a channel of a log', () => {
  it('without a reading for three rows is a gap, with its first line and its span', () => {
    const reading = read(sheet(sumpRows((at) => (at >= 10 && at < 22 ? '' : `${wave(at)}`))));
    expect(foundIn(reading)).toEqual(['warning channel-gap 12:10']);
    expect(reading.findings[0]?.says).toContain('no reading for 12 s (lines 12 to 23): the cells are empty');
    expect(missingAt(channelOf(reading, 'sump'))).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21]);
  });

  it('without a reading for two rows is in the record only', () => {
    const reading = read(sheet(sumpRows((at) => (at === 3 || at === 4 ? '' : `${wave(at)}`))));
    expect(foundIn(reading)).toEqual([]);
    expect(recordOf(reading)).toContain('2 single readings missing');
  });

  it('that is empty throughout was not fitted and says nothing', () => {
    const reading = read(sheet(sumpRows(() => '')));
    expect(foundIn(reading)).toEqual([]);
    expect(reading.ok && reading.value.channels.has('sump')).toBe(false);
    expect(recordOf(reading)).toContain('not fitted in this trial: sump');
  });

  it('that is slower than the others is in the record only', () => {
    const reading = read(sheet(sumpRows((at) => (at % 5 === 0 ? `${wave(at / 5)}` : ''), 200)));
    expect(foundIn(reading)).toEqual([]);
    expect(recordOf(reading)).toContain('is written in every 5th row');
  });

  it('that leaves its range loses those readings, one warning a stretch', () => {
    const map = withColumn(1, { plausible: [233.15, 473.15] });
    const reading = read(sheet(sumpRows((at) => (at === 5 || at === 6 || at === 20 ? '1372' : `${wave(at)}`))), map);
    expect(foundIn(reading)).toEqual(['warning channel-gap 7:9', 'warning channel-gap 22:10']);
    expect(missingAt(channelOf(reading, 'sump'))).toEqual([5, 6, 20]);
  });

  it('that spikes loses the spike', () => {
    const reading = read(sheet(sumpRows((at) => (at === 12 ? '55' : `${wave(at)}`))), stepping);
    expect(foundIn(reading)).toEqual(['warning channel-step 14:10']);
    expect(missingAt(channelOf(reading, 'sump'))).toEqual([12]);
  });

  it('that steps and does not come back loses all that follows', () => {
    const reading = read(sheet(sumpRows((at) => `${wave(at) - (at >= 20 ? 9 : 0)}`)), stepping);
    expect(foundIn(reading)).toEqual(['warning channel-step 22:10']);
    expect(reading.findings[0]?.says).toMatch(
      /steps by −9(\.4)? K within 1 s and does not come back \(lines 22 to 31\)/u,
    );
    expect(missingAt(channelOf(reading, 'sump'))).toHaveLength(10);
  });

  it('that begins with an odd reading loses that one, not the rest', () => {
    const reading = read(sheet(sumpRows((at) => (at === 0 ? '99' : `${wave(at)}`))), stepping);
    expect(missingAt(channelOf(reading, 'sump'))).toEqual([0]);
  });

  it('may change fast across a gap: the rate counts over the true time', () => {
    const reading = read(
      sheet(sumpRows((at) => (at >= 10 && at < 14 ? '' : `${wave(at) + (at >= 14 ? 8 : 0)}`))),
      stepping,
    );
    expect(foundIn(reading)).toEqual(['warning channel-gap 12:10']);
  });

  it('at rest is not stuck', () => {
    const rows = Array.from({ length: 30 }, (_, at) => `${at},0,${wave(at)}`);
    expect(foundIn(read(sheet(rows), withColumn(0, { stuck_s: 5 })))).toEqual([]);
  });

  it('is read with the sign of the map', () => {
    const reading = read('t,n,T\n0,30,40\n1,60,41\n', withColumn(0, { sign: -1 }));
    expect(channelOf(reading, 'pinion-speed')).toEqual([-Math.PI, -2 * Math.PI]);
  });

  it('missing from the header is refused at the header with the nearest name', () => {
    const reading = read(sheet(steadyRows(4)).replace('T', 'T_smp'), withColumn(1, { header: 'T_sump' }));
    expect(foundIn(reading)).toEqual(['error column-missing 1:1']);
    expect(reading.findings[0]?.write).toContain('"T_smp"');
  });
});

describe('an event of a log', () => {
  it('stands at its time and line, also in rows that follow a repeat', () => {
    const map = { ...plainMap, columns: [...plainMap.columns, column('e', 'event', null)] };
    const rows = steadyRows(8).map((row, at) => `${row},${at === 2 ? '"load on, 22 kW"' : at === 6 ? 'stop' : ''}`);
    const reading = read(['t,n,T,e', ...rows.slice(0, 5), ...rows.slice(2, 5), ...rows.slice(5)].join('\n'), map);
    expect(foundIn(reading)).toEqual(['warning rows-repeated 7:1']);
    expect(reading.ok && reading.value.events).toEqual([
      { time_s: 2, line: 4, text: 'load on, 22 kW' },
      { time_s: 6, line: 11, text: 'stop' },
    ]);
  });
});
