import { describe, expect, it } from 'vitest';
import { answerOf } from '../../../src/reader/find/answer.ts';
import type { AskTyped } from '../../../src/reader/find/ask.ts';
import { figureWords, hrefOf } from '../../../src/reader/find/shown.ts';
import { ask, smallSeries } from './find-book.ts';

const answer = (of: Partial<AskTyped>) => answerOf([smallSeries()], ask(of));
const runs = (of: Partial<AskTyped>): string[] => answer(of).runs.map(({ run }) => run[0]);
const near = (of: Partial<AskTyped>): string[] =>
  answer(of).nearest.map(({ runs: own, condition, differs }) =>
    [own.map(([id]) => id).join(' '), condition?.[0] ?? '', differs.join(' ')].join('|'),
  );

describe('what was run', () => {
  it('is found by each condition, and by all of them together', () => {
    expect(runs({ trial: 'spin' })).toEqual(['S-1', 'S-2', 'S-3', 'S-4']);
    expect(runs({ article: 'A0 flat pan' })).toEqual(['S-1', 'S-2', 'S-3']);
    expect(runs({ oil: 'SAE 75W-80' })).toEqual(['S-3']);
    expect(runs({ basis: 'level' })).toEqual(['S-2']);
    expect(runs({ fill: '3 L' })).toEqual(['S-2']);
    expect(runs({ fill: '2.04 L', speed: '101 rpm' })).toEqual(['S-1', 'S-4']);
    expect(runs({ sump: '80 °C' })).toEqual(['S-3']);
    expect(runs({ grade: 'reach' })).toEqual(['F-1']);
  });

  it('counts a window copy as the article behind it', () => {
    expect(runs({ kind: 'insert' })).toEqual(['S-4', 'F-1']);
    expect(runs({ trial: 'flow', article: 'A1 baffle' })).toEqual(['F-1']);
  });

  it('leaves out a run that gives no figure, and says that it is there', () => {
    expect(answer({ article: 'A1 baffle' }).out.map(({ run }) => run[0])).toEqual(['S-5']);
  });

  it('comes with what was found, differences first, each with the address of its working', () => {
    const found = answer({ article: 'A1 baffle', trial: 'spin', speed: '300 rpm' });
    const words = found.figures.map(figureWords);
    expect(words.map(({ text }) => text)).toEqual(['−5 W', '25 W', '25 W']);
    expect(words[0]).toMatchObject({
      verdict: 'separated',
      where: 'A1 baffle, 2.00 L of L1, less A0 flat pan, 2.00 L of L1',
    });
    expect(hrefOf(words[0]!.path)).toBe('../series/pan-depth/workings/A1~A0/spin-power/index.html#300rpm%2C40Cel');
    expect(found.claims.map(({ claim }) => claim[0])).toEqual(['CL-1']);
  });

  it('is narrowed by a word of claim or comparison, and by a grade', () => {
    expect(answer({ word: 'leaning' }).claims).toHaveLength(1);
    expect(answer({ word: 'equal within the margin' }).figures.map((f) => figureWords(f).text)).toEqual(['−2 W']);
    expect(runs({ value: '3' })).toEqual(['F-1']);
    expect(answer({ grade: 'reach', value: '2' })).toMatchObject({ tested: true, runs: [], figures: [] });
  });

  it('is not asked for by nothing at all', () => {
    expect(answer({})).toMatchObject({ tested: null, runs: [], figures: [], claims: [], nearest: [] });
  });
});

describe('what was never run', () => {
  it('is answered "not tested", with what differs in one thing only, each as little as there is', () => {
    const found = answer({ oil: 'SAE 75W-80', fill: '3 L' });
    expect(found).toMatchObject({ tested: false, runs: [], figures: [] });
    expect(near({ oil: 'SAE 75W-80', fill: '3 L' })).toEqual(['S-2||oil', 'S-3||fill']);
  });

  it('takes the speed that is nearest by its ratio, and the temperature that is nearest', () => {
    // 100 rpm lies 1.8 times below 180 rpm, 300 rpm 1.67 times above
    expect(near({ trial: 'spin', article: 'A1 baffle', speed: '180 rpm' })).toEqual(['S-4|300rpm,40Cel|speed']);
    expect(near({ oil: 'SAE 90', sump: '70 °C' })[0]).toBe('S-1|100rpm,40Cel|sump');
    const [first, ...alike] = near({ trial: 'spin', oil: 'SAE 90', sump: '80 °C' });
    expect(first).toBe('S-3|300rpm,80Cel|oil');
    // these come equally near
    expect([...alike].sort()).toEqual(['S-1|100rpm,40Cel|sump', 'S-2|300rpm,40Cel|sump', 'S-4|100rpm,40Cel|sump']);
  });

  it('passes over what differs in more of the same things', () => {
    for (const line of near({ kind: 'insert', oil: 'SAE 75W-80', speed: '300 rpm' }))
      expect(line.split('|')[2]!.split(' ').length, line).toBe(1);
  });

  it('is not tested by a run that was set aside', () => {
    const series = smallSeries();
    const only = { ...series, runs: series.runs.map((r) => [...r.slice(0, 5), 'left out'] as unknown as typeof r) };
    const found = answerOf([only], ask({ trial: 'spin' }));
    expect(found.tested).toBe(false);
    expect(found.out).toHaveLength(5);
  });

  it('is answered where the book holds no series', () => {
    expect(answerOf([], ask({ trial: 'spin' }))).toMatchObject({ tested: false, nearest: [] });
  });
});
