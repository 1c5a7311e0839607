import { describe, expect, it } from 'vitest';
import { bookPages, seriesPages } from '../../../src/report/pages.ts';
import { book, findingOf, input } from './fixture.ts';
import { textsOf } from './reading.ts';

const findings = [findingOf('sump-odd', { run: 'S-99' }), findingOf('sump-odd', { run: 'S-01' })];
const of = (audience: 'house' | 'public') => {
  const series = input({ audience, findings });
  return [...bookPages({ book, series: [series], findings, audience }), ...seriesPages(series)];
};

describe('what the public sees', () => {
  const pages = of('public');
  const bytes = JSON.stringify(pages);

  it('makes no page of a house run, and says how many are held back', () => {
    expect(pages.map(({ path }) => path)).not.toContain('series/pan/runs/S-99/');
    expect(textsOf(pages.find(({ path }) => path === 'series/pan/')!)).toContain('One run is not shown to the public.');
  });

  it.each(['S-99', 'HIDDENCLIENT', 'KZQ', 'RZQ', 'XZQ', 'Longname'])('holds %s in no byte', (word) => {
    expect(bytes).not.toContain(word);
  });

  it('shows the same words to the house', () => {
    const house = JSON.stringify(of('house'));
    for (const word of ['S-99', 'HIDDENCLIENT', 'KZQ', 'RZQ', 'XZQ']) expect(house).toContain(word);
  });

  it('gives no page at all of a series that is for the house', () => {
    const series = input({ audience: 'public' });
    const closed = {
      ...series,
      record: { ...series.record, series: { ...series.record.series, shownTo: 'house' as const } },
    };
    expect(seriesPages(closed)).toEqual([]);
    expect(JSON.stringify(bookPages({ book, series: [closed], findings: [], audience: 'public' }))).not.toContain(
      'Shroud or none',
    );
  });

  it('makes no rig sheet of a rig that is for the house, and links to none', () => {
    const closed = JSON.stringify(seriesPages(input({ audience: 'public', rig: { shownTo: 'house' } })));
    expect(closed).not.toContain('series/pan/rig/');
  });
});
