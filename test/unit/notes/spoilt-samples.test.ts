import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import type { Oil } from '../../../src/trial/oil.ts';
import { asFiles, type Files, goodBook } from './good-book.ts';
import { outcome, placed } from './spoilt.ts';

const O1 = 'hill-bowl/oils/O1.md';
/** Lines 11 to 29 of the note of O1. */
const samples = `samples:
  - id: O1-new
    point: unused
    batch: B-0311
    taken-on: 2026-03-01
    results:
      - { property: iron, method: ASTM D5185, value: 2 mg/kg, repeatability: 3 mg/kg }
      - { property: viscosity-40, method: ASTM D445, value: 170.2 mm²/s, repeatability: 0.4 % }
  - id: O1-used
    point: drain-mid
    batch: B-0311
    after-run: S-07
    volume: 100 mL
    temperature: 60 °C
    taken-on: 2026-03-17
    results:
      - { property: iron, method: ASTM D5185, value: 20 mg/kg, repeatability: 3 mg/kg }
      - { property: viscosity-index, method: ASTM D2270, value: 92, repeatability: 2 }
      - { property: acid-number, method: ASTM D664, value: 1.42 mg KOH/g, repeatability: 7 % }
`;
const withSamples = (was = '', is = ''): Files => {
  if (!samples.includes(was)) throw new Error(`the samples do not hold ${was}`);
  const text = goodBook[O1]!.replace('hours-used: 0 h\n', () => `hours-used: 0 h\n${samples.replace(was, () => is)}`);
  return { ...goodBook, [O1]: text };
};
const oilOf = (files: Files): Oil => readNotes(asFiles(files)).series[0]!.oils.get('O1')!;
const standing = (files: Files): string[] =>
  oilOf(files).samples.flatMap(({ id, results }) => results.map(({ property }) => `${id} ${property}`));
const all = ['O1-new iron', 'O1-new viscosity-40', 'O1-used iron', 'O1-used viscosity-index', 'O1-used acid-number'];
const unusedOnly = all.slice(0, 2);

describe('samples of an oil', () => {
  it('are read in SI with where and when they were drawn, and with nothing to find', () => {
    const files = withSamples();
    expect(outcome(files).loud).toEqual([]);
    expect(standing(files)).toEqual(all);
    const [unused, used] = oilOf(files).samples;
    expect(unused).toMatchObject({ point: 'unused', afterRun: null, volume_m3: null, takenOn: '2026-03-01' });
    expect(used).toMatchObject({ point: 'drain-mid', afterRun: 'S-07', volume_m3: 1e-4, temperature_K: 333.15 });
    expect(used!.results[1]).toMatchObject({ value: 92, repeatability: { value: 2, relative: false } });
    expect(used!.results[2]!.value).toBeCloseTo(1.42e-3, 12);
    expect(used!.results[2]!.repeatability).toEqual({ value: 0.07, relative: true });
  });
});

interface Row {
  readonly title: string;
  readonly was: string;
  readonly is: string;
  readonly finds: string;
  readonly write: string;
  readonly left: readonly string[];
}

const rows: readonly Row[] = [
  {
    title: 'a used sample without an unused one of its batch',
    was: '    point: drain-mid\n    batch: B-0311',
    is: '    point: drain-mid\n    batch: B-0400',
    finds: 'sample-without-unused O1.md:21:12',
    write: 'point: unused',
    left: all,
  },
  {
    title: 'a unit that is none of the property',
    was: 'value: 20 mg/kg',
    is: 'value: 20 mm²/s',
    finds: 'unit-of-other-kind O1.md:27:57',
    write: 'mg/kg',
    left: all.filter((name) => name !== 'O1-used iron'),
  },
  {
    title: 'parts per million of nobody knows what',
    was: 'value: 20 mg/kg',
    is: 'value: 20 ppm',
    finds: 'unit-unknown O1.md:27:57',
    write: '20 mg/kg',
    left: all.filter((name) => name !== 'O1-used iron'),
  },
  {
    title: 'a number with a unit where the property has none',
    was: 'value: 92',
    is: 'value: 92 mm²/s',
    finds: 'number-has-more O1.md:28:68',
    write: 'the number alone',
    left: all.filter((name) => name !== 'O1-used viscosity-index'),
  },
  {
    title: 'a repeatability that is missing',
    was: 'value: 20 mg/kg, repeatability: 3 mg/kg',
    is: 'value: 20 mg/kg',
    finds: 'field-missing O1.md:27:9',
    write: 'repeatability: 0.4 %',
    left: all.filter((name) => name !== 'O1-used iron'),
  },
  {
    title: 'a repeatability of nought',
    was: 'value: 20 mg/kg, repeatability: 3 mg/kg',
    is: 'value: 20 mg/kg, repeatability: 0 %',
    finds: 'repeatability-none O1.md:27:79',
    write: 'repeatability: 0.4 %',
    left: all.filter((name) => name !== 'O1-used iron'),
  },
  {
    title: 'a sample of a run that does not exist',
    was: 'after-run: S-07',
    is: 'after-run: S-99',
    finds: 'run-unknown O1.md:22:16',
    write: 'S-99',
    left: unusedOnly,
  },
  {
    title: 'the first gush of a drain',
    was: 'point: drain-mid',
    is: 'point: first-gush',
    finds: 'word-unknown O1.md:20:12',
    write: 'drain-mid',
    left: unusedOnly,
  },
  {
    title: 'an unused sample that was drawn after a run',
    was: 'point: drain-mid',
    is: 'point: unused',
    finds: 'sample-unused-after-run O1.md:22:16',
    write: 'Take out after-run',
    left: unusedOnly,
  },
  {
    title: 'a used sample that names no run',
    was: '    after-run: S-07\n',
    is: '',
    finds: 'sample-run-missing O1.md:20:12',
    write: 'after-run: H-03',
    left: unusedOnly,
  },
  {
    title: 'a sample drawn before the run that it was drawn after',
    was: 'taken-on: 2026-03-17',
    is: 'taken-on: 2026-03-16',
    finds: 'sample-before-run O1.md:25:15',
    write: 'taken-on',
    left: unusedOnly,
  },
  {
    title: 'two samples of one name',
    was: 'id: O1-used',
    is: 'id: O1-new',
    finds: 'id-twice O1.md:19:9',
    write: 'another id',
    left: unusedOnly,
  },
  {
    title: 'a property that stands twice in a sample',
    was: 'property: viscosity-40, method: ASTM D445, value: 170.2 mm²/s, repeatability: 0.4 %',
    is: 'property: iron, method: ASTM D5185, value: 3 mg/kg, repeatability: 3 mg/kg',
    finds: 'sample-property-twice O1.md:18:21',
    write: 'Keep one of the two',
    left: [],
  },
];

describe('one thing spoilt in a sample is one finding at its place, and the oil stays', () => {
  it.each(rows)('for $title', ({ was, is, finds, write, left }) => {
    const files = withSamples(was, is);
    const { loud, runs } = outcome(files);
    const own = loud.filter(({ code }) => left.length > 0 || code !== 'sample-without-unused');
    expect(placed(own)).toEqual([finds]);
    expect(own[0]!.write).toContain(write);
    expect(runs).toEqual(['S-07', 'S-08']);
    if (left.length > 0) expect(standing(files)).toEqual(left);
  });

  it('for a sample of a run that used another oil', () => {
    const O2 = 'hill-bowl/oils/O2.md';
    const text = goodBook[O1]!.replace('id: O1', 'id: O2').replace('hours-used: 0 h\n', `hours-used: 0 h\n${samples}`);
    const { loud } = outcome({ ...goodBook, [O2]: text });
    expect(placed(loud)).toEqual(['sample-of-other-oil O2.md:22:16']);
    expect(loud[0]!.effect).toBe('This sample is left out.');
  });
});
