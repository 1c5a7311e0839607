import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { textsOf } from '../unit/report/reading.ts';
import { demoMade } from './demo.ts';

interface Planted {
  readonly oil: string;
  readonly sample: string;
  readonly property: string;
  readonly change: number;
  readonly repeatability: number;
  readonly sameMethod: boolean;
}
const truth = JSON.parse(readFileSync('demo-runs/hill-bowl/truth.json', 'utf8')) as {
  readonly samples: readonly Planted[];
  readonly faults: readonly { readonly fault: string; readonly run: string }[];
};

const made = demoMade();
const ledger = made.ledgers.find(({ series }) => series === 'hill-bowl')!;
const valueOf = (id: string): number => ledger.byId.get(id)!.value!;
const doses = (subject: string) =>
  ledger.figures.filter(({ id, quantity }) => quantity === 'thermal-dose' && id.startsWith(`${subject}/`));
const bandsOf = (subject: string, charge?: string) =>
  doses(subject).filter(({ at }) => at.band !== undefined && at.charge === charge);
const sum = (list: readonly { readonly value: number | null }[]) => list.reduce((total, f) => total + f.value!, 0);
const pageOf = (path: string) => made.pages.find((page) => page.path === `series/hill-bowl/${path}`)!;
const sectionText = (path: string, id: string): string => {
  const page = pageOf(path);
  return textsOf({ ...page, sections: page.sections.filter((section) => section.id === id) });
};

/** Rows of a raw log counted into bands, two seconds each: another way to the same hours, without any line between rows. */
function countedHours(run: string): ReadonlyMap<string, number> {
  const [head, ...rows] = readFileSync(`demo-runs/hill-bowl/runs/${run}.csv`, 'utf8').trim().split('\n');
  const column = head!.split(',').indexOf('T_sump');
  const hours = new Map<string, number>();
  for (const line of rows) {
    const from = Math.floor((Number(line.split(',')[column]) + 5) / 10) * 10 - 5;
    const band = `${from} to ${from + 10} Cel`;
    hours.set(band, (hours.get(band) ?? 0) + 2 / 3600);
  }
  return hours;
}

describe('the thermal dose of the demo', () => {
  it.each(['H-01', 'C-01'])('of %s agrees with its raw rows counted by hand', (run) => {
    const counted = countedHours(run);
    const bands = bandsOf(run);
    expect(bands.map(({ at }) => at.band).sort()).toEqual([...counted.keys()].sort());
    for (const { at, value } of bands) expect(Math.abs(value! - counted.get(at.band!)!)).toBeLessThan(0.01);
  });

  it('comes to the length of the log, band by band, run by run and over the series', () => {
    expect(sum(bandsOf('H-01'))).toBeCloseTo(2.5, 9);
    expect(sum(bandsOf('O1'))).toBeCloseTo(valueOf('O1/thermal-dose'), 9);
    const runs = ledger.figures.filter(({ id, subject }) => id === `${subject.run ?? ''}/thermal-dose`);
    const oils = valueOf('O1/thermal-dose') + valueOf('O2/thermal-dose');
    expect(sum(runs)).toBeCloseTo(oils, 9);
  });

  it('is summed over a charge that saw a heat-up and its cool-down, and over nothing else by charge', () => {
    expect(valueOf('O1/thermal-dose@P0-1')).toBeCloseTo(valueOf('H-01/thermal-dose') + valueOf('C-01/thermal-dose'), 9);
    const charges = new Set(doses('O1').flatMap(({ at }) => at.charge ?? []));
    expect([...charges].sort()).toEqual(['P0-1', 'P1-3', 'P3-2', 'P4-6']);
  });

  it('has no interval that begins below no time at all', () => {
    const lowest = ledger.figures
      .filter(({ quantity }) => quantity === 'thermal-dose')
      .flatMap(({ interval: [low] }) => low ?? []);
    expect(lowest.length).toBeGreaterThan(100);
    expect(Math.min(...lowest)).toBe(0);
  });

  it('says what it sums over, never a life, and stands on the sheets of the oil and of its runs', () => {
    expect(ledger.byId.get('O1/thermal-dose')!.notes[0]).toMatch(/^sums over \d+ runs of \d+ charges/);
    const text = sectionText('oils/O1/', 'thermal-dose');
    expect(text).toContain('no drop of oil saw the whole of this');
    expect(text).toContain('95 to 105\u202f°C');
    expect(text).toContain('S-17');
    expect(text).not.toMatch(/life (left|lost|used)|\d+ ?% of its life/i);
    expect(sectionText('runs/H-01/', 'thermal-dose')).toContain('at 95 to 105\u202f°C');
    expect(bandsOf('S-17')).toEqual([]);
  });

  it('says where the probe hung in the air, on the run and in the sum', () => {
    expect(ledger.byId.get('S-02/thermal-dose')!.notes.join()).toContain('hung above the oil');
    const note = ledger.byId.get('O1/thermal-dose')!.notes.find((text) => text.includes('hung above the oil'))!;
    const told = new Set(truth.faults.filter(({ fault }) => fault === 'probe above running level').map((f) => f.run));
    expect(/^in (.*?):/.exec(note)![1]!.split(', ')).toEqual([...told].sort());
  });
});

describe('the samples of the demo', () => {
  it.each(truth.samples)('$sample: $property', ({ oil, sample, property, change, repeatability, sameMethod }) => {
    const figure = ledger.byId.get(`${oil}/${property}-change@${sample}`);
    if (!sameMethod) {
      expect(figure).toBeUndefined();
      expect(sectionText(`oils/${oil}/`, 'samples')).toContain('by another method than on the unused sample');
      return;
    }
    const [low, high] = figure!.interval as readonly [number, number];
    const scale = figure!.unit === 's' ? 60 : 1;
    // what was planted lies in the interval, half of which is the repeatability
    expect(low / scale).toBeLessThanOrEqual(change);
    expect(high / scale).toBeGreaterThanOrEqual(change);
    // a share is one of what was read, not of what was planted
    expect((high - low) / 2 / scale / repeatability).toBeCloseTo(1, 1);
    const word = Math.abs(change) > 1.5 * repeatability ? 'changed' : 'within the method’s repeatability';
    expect(figure!.notes[0]).toBe(word);
  });

  it('stand on the oil sheet with the run and what its charge had seen', () => {
    const text = sectionText('oils/O1/', 'samples');
    expect(text).toContain('drawn from the middle of the drain');
    expect(text).toContain('its charge had seen');
    expect(text).toContain('Held against O1-new, unused, of batch B-0311');
  });
});
