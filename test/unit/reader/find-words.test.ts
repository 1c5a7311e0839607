import { describe, expect, it } from 'vitest';
import { askAddress, askFrom, nothingAsked, readAsk, type AskTyped } from '../../../src/reader/find/ask.ts';
import { bookOf } from '../../../src/reader/find/book.ts';
import { saidOf } from '../../../src/reader/find/said.ts';
import { tokensOf } from '../../../src/reader/find/words.ts';
import { ask, smallPart, smallSeries } from './find-book.ts';

const book = bookOf([smallPart()]);
const paths = (of: Partial<AskTyped>): string[] => book.ask(ask(of)).texts.map(({ path }) => path);
const said = (of: Partial<AskTyped>, of2 = book): string =>
  saidOf(of2.ask(ask(of)), { ...nothingAsked, ...of }, of2.heldRuns);

describe('words', () => {
  it('are found however they are written: capitals, accents, the beginning of a word, one wrong letter', () => {
    expect(paths({ words: 'GASKET paste' })).toEqual(['series/pan-depth/runs/S-4/']);
    expect(paths({ words: 'creme' })).toEqual(['series/pan-depth/oils/L2/']);
    expect(paths({ words: 'synth' })).toEqual(['series/pan-depth/oils/L2/']);
    expect(paths({ words: 'gaskat paste' })).toEqual(['series/pan-depth/runs/S-4/']);
  });

  it('hold a name with a hyphen whole, and by its parts; a name with a digit is no other', () => {
    expect(tokensOf('SAE 85W-90, S-07.')).toEqual(['SAE', '85W-90', '85W', '90', 'S-07', 'S', '07']);
    expect(paths({ words: '75W-80' })).toEqual(['series/pan-depth/oils/L2/']);
    expect(paths({ words: 'A1' })).not.toContain('series/pan-depth/runs/S-1/');
  });

  it('narrow what was run, and are narrowed by it', () => {
    const found = book.ask(ask({ words: 'gasket', article: 'A1 baffle' }));
    expect(found.answer.runs.map(({ run }) => run[0])).toEqual(['S-4']);
    expect(found.texts.map(({ path }) => path)).toEqual(['series/pan-depth/runs/S-4/']);
  });

  it('may be asked before all were read, and find all the same', () => {
    const fresh = bookOf([smallPart()]);
    expect(fresh.read(2)).toBe(false);
    expect(fresh.ask(ask({ words: 'folder' })).texts).toHaveLength(1);
    expect(fresh.read(2)).toBe(true);
  });
});

describe('what is said of an answer', () => {
  it('counts what was found', () => {
    expect(said({ article: 'A1 baffle', trial: 'spin' })).toBe(
      'Tested: 1 run, 5 figures, 1 claim. 1 more run of this kind gives no figure.',
    );
  });

  it('says "not tested", what was asked, and what comes nearest in each thing', () => {
    expect(said({ oil: 'SAE 75W-80', fill: '3 L' })).toBe(
      'Not tested: SAE 75W-80, 3 L. Nearest: A0 flat pan, 3.00 L of L1 (differs in the oil); A0 flat pan, 2.00 L of L2 (differs in the fill).',
    );
  });

  it('says that runs are held back, where it could not look through them', () => {
    const held = bookOf([{ texts: [], series: smallSeries('pan-depth', 2) }]);
    expect(said({ fill: '9 L' }, held)).toMatch(/2 runs are held back and not looked through\.$/);
  });

  it('tells tested without the word from not tested', () => {
    expect(said({ grade: 'reach', value: '2' })).toBe('Tested: graded for reach; nothing of it has the grade 2.');
  });
});

describe('what is typed', () => {
  it('is taken in any unit, and the word "own" as a temperature', () => {
    // 1 US quart is 0.946352946 L (NIST SP 811)
    expect(ask({ fill: '3 US qt' }).fill_L).toBeCloseTo(3 * 0.946352946, 9);
    expect(ask({ sump: '140 °F' }).sump).toBeCloseTo(60, 9);
    expect(ask({ sump: 'own' }).sump).toBe('own');
    expect(ask({ speed: '10 rad/s' }).speed_rpm).toBeCloseTo(300 / Math.PI, 9);
  });

  it('is refused beside its field where it could mean two things', () => {
    const read = readAsk({ ...nothingAsked, fill: '3.2', speed: 'fast' });
    expect(read.ok ? [] : [...read.wrong.keys()]).toEqual(['fill', 'speed']);
    expect(read.ok ? '' : read.wrong.get('fill')).toContain('3.2 L');
  });

  it('stands in the address, and comes back from it', () => {
    const typed = { ...nothingAsked, words: 'gasket & paste', fill: '3.20 L', word: 'not shown' };
    expect(askFrom(askAddress(typed))).toEqual(typed);
    expect(askFrom('#unknown=1&fill=2+L')).toEqual({ ...nothingAsked, fill: '2 L' });
  });

  it('is chosen from lists of what the book holds', () => {
    expect(book.choices('oil')).toEqual([
      { value: 'SAE 75W-80', text: 'SAE 75W-80 (L2)' },
      { value: 'SAE 90', text: 'SAE 90 (L1)' },
    ]);
    expect(book.choices('word')?.map(({ value }) => value)).toEqual([
      'leaning',
      'equal within the margin',
      'not separated',
      'separated',
    ]);
    expect(book.choices('fill')).toBeNull();
  });
});
