import { describe, expect, it } from 'vitest';
import type { Figure } from '../../src/ledger/figure.ts';
import type { Made } from '../../src/pipeline.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { textsOf } from '../unit/report/reading.ts';
import { houseBook, loudOf, smallDemo, spoilt, textOf, withText } from './small.ts';

const O1 = 'hill-bowl/oils/O1.md';
/** The drum of the demo with another oil in it, under a designation that fits. */
const withOil = (grade: string, at40: string, at100: string): SourceFile[] =>
  spoilt(
    ...[O1, 'at-40: 170 mm²/s, at-100: 15.6 mm²/s', `at-40: ${at40}, at-100: ${at100}`],
    spoilt(O1, 'grade: SAE 85W-90', `grade: ${grade}`),
  );

/** The level table of the pressed bowl, 250 mm higher, and the level read on its runs with it. */
function bathOverTheGear(): SourceFile[] {
  const raised = (text: string): string => text.replace(/-(\d+)(?= mm)/g, (_, mm: string) => String(250 - Number(mm)));
  const bowl = 'hill-bowl/articles/P0.md';
  const table = withText(bowl, textOf(bowl).replace(/\{ z: -\d+ mm/g, raised));
  return ['S-01', 'S-08', 'S-15', 'H-01'].reduce<SourceFile[]>((files, run) => {
    const path = `hill-bowl/runs/${run}.md`;
    return withText(path, textOf(path).replace(/level-(?:left|right): -\d+ mm/g, raised), files);
  }, table);
}

const figuresOf = (made: Made): readonly Figure[] => made.ledgers.flatMap(({ figures }) => figures);
const noted = (made: Made, quantity: string, words: RegExp): readonly Figure[] =>
  figuresOf(made).filter((f) => f.quantity === quantity && f.notes.some((note) => words.test(note)));
const pageOf = (made: Made, path: string): string => textsOf(made.pages.find((page) => page.path === path)!);

/** No figure without a finite number or a bound, and no page that prints what is none. */
function onlyNumbers(made: Made): void {
  for (const f of figuresOf(made))
    for (const x of [f.value, ...f.interval]) if (x !== null) expect(Number.isFinite(x), f.id).toBe(true);
  for (const page of made.pages) expect(textsOf(page), page.path).not.toMatch(/\b(?:NaN|Infinity|undefined)\b/);
}

describe('what lies outside the range of a relation', () => {
  it('an oil thinner than the line through its two viscosities holds for has its figures, with that note in ledger and page', () => {
    const made = houseBook(withOil('ISO VG 2', '2.1 mm²/s', '0.9 mm²/s'));
    const words = /holds above 2 mm²\/s/;
    expect(noted(made, 'viscosity', words).length).toBeGreaterThan(0);
    expect(pageOf(made, 'series/hill-bowl/runs/S-01/')).toMatch(words);
    expect(pageOf(made, 'series/hill-bowl/oils/O1/')).toMatch(words);
    onlyNumbers(made);
  });

  it('one below 0.3 mm²/s is refused where it is written, and its series has no figure that rests on it', () => {
    const made = houseBook(withOil('ISO VG 2', '0.5 mm²/s', '0.25 mm²/s'));
    const refused = loudOf(made).filter(({ code }) => code === 'value-impossible');
    expect(refused.map(({ place }) => [place.file, place.line])).toEqual([
      [O1, 6],
      [O1, 6],
    ]);
    const ledger = made.ledgers.find(({ series }) => series === 'hill-bowl')!;
    const rests = ledger.figures.filter(({ subject }) => subject.oil === 'O1' || subject.run !== undefined);
    expect(rests.map(({ id }) => id)).toEqual([]);
    onlyNumbers(made);
  });

  it('a gear under oil whole has its dip with the note that more level is no more dip, and no band by models behind its loss', () => {
    const made = houseBook(bathOverTheGear());
    const words = /under oil whole/;
    expect(noted(made, 'immersion', words).map(({ subject }) => subject.run)).toContain('S-01');
    expect(pageOf(made, 'series/hill-bowl/runs/S-01/')).toMatch(words);
    expect(figuresOf(made).some((f) => f.quantity === 'loss-estimate' && f.subject.run === 'S-01')).toBe(false);
    expect(figuresOf(made).some((f) => f.quantity === 'loss-estimate' && f.subject.run === 'S-07')).toBe(true);
    onlyNumbers(made);
  });

  it('a bath thinner than a churning law was measured in has its band, with the range beside it in ledger and page', () => {
    const made = houseBook(smallDemo());
    const words = /measured between 33 and 320 mm²\/s/;
    expect(noted(made, 'loss-estimate', words).length).toBeGreaterThan(0);
    expect(pageOf(made, 'series/hill-bowl/runs/S-01/')).toMatch(words);
    onlyNumbers(made);
  });
});
