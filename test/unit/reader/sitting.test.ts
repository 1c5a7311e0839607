import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemsOf, orderFor, orderInAddress } from '../../../src/reader/grading/items.ts';
import { keptMarks, keptText } from '../../../src/reader/grading/keep.ts';
import { begin, codesOf, progress, say, wrote } from '../../../src/reader/grading/sitting.ts';
import { clips, grader, sat, typed } from './grading.ts';

const many = Array.from({ length: 8 }, (_, i) => ({ ...clips[0]!, code: `K${String(i)}` }));
const codes = (order: number): string[] => [...new Set(itemsOf(many, order).map(({ code }) => code))];

describe('the order of clips', () => {
  it('is the same for the same number, and holds every step once', () => {
    expect(codes(4711)).toEqual(codes(4711));
    for (const order of [0, 1, 4711, 999_999_999]) {
      expect([...codes(order)].sort()).toEqual(many.map(({ code }) => code));
      expect(itemsOf(many, order)).toHaveLength(24);
    }
  });

  // 8! orders: thirty numbers that all gave one of two would be no shuffling
  it('is another for another number', () => {
    expect(new Set(Array.from({ length: 30 }, (_, order) => codes(order).join(' '))).size).toBeGreaterThan(25);
  });

  it('leaves the steps of a clip as they were run', () => {
    expect(
      itemsOf(clips, 3)
        .filter(({ code }) => code === 'K7')
        .map(({ step }) => step),
    ).toEqual(clips[0]!.steps.map(({ name }) => name));
  });

  it('is not the same for two observers, and stands in the address', () => {
    expect(orderFor('A', 'first')).not.toBe(orderFor('B', 'first'));
    expect(orderFor('A', 'first')).toBe(orderFor('A', 'first'));
    expect(orderInAddress(`#order=${String(orderFor('A', 'first'))}`)).toBe(orderFor('A', 'first'));
    for (const hash of ['', '#order=', '#order=x', '#order=-3', '#step=60-up']) expect(orderInAddress(hash)).toBeNull();
  });

  it('passes over a step whose name says no speed', () => {
    const odd = [{ ...clips[1]!, steps: [{ name: 'warm-up', from_s: 0, to_s: 9 }] }];
    expect(itemsOf(odd, 1)).toEqual([]);
  });
});

describe('work that is kept', () => {
  const done = say(typed(sat(), '3', '3', '2', '1', '0', 'n', 'Enter', '2', '4'), 'single drops');

  it('comes back as it was left, at the first step that is not whole', () => {
    const again = begin(grader, done.items, keptMarks(keptText(done)));
    expect(again.marks).toEqual(done.marks);
    expect(again.at).toBe(1);
    expect(progress(again)).toEqual({ whole: 1, of: 4 });
    expect([...again.unwritten]).toEqual(['K7']);
  });

  it('is told as not written until its file is', () => {
    expect([...done.unwritten]).toEqual(['K7']);
    expect([...wrote(done, 'K7').unwritten]).toEqual([]);
    expect([...typed(wrote(done, 'K7'), '1').unwritten]).toEqual(['K7']);
    expect([...sat().unwritten]).toEqual([]);
    expect(codesOf(done)).toEqual(['K7', 'R4']);
  });

  it.each([
    [null],
    ['{'],
    ['{}'],
    ['[3]'],
    ['[["K7 60 rpm up",null]]'],
    ['[["K7 60 rpm up",{"view":3,"grades":null,"words":""}]]'],
  ])('is nothing where the browser gives back %s', (text) => {
    expect(keptMarks(text).size).toBe(0);
  });

  it('has no grade that was never one', () => {
    const text = '[["K7 60 rpm up",{"view":4,"grades":{"reach":7,"side":"3","wall":2},"words":"drops"}]]';
    expect(keptMarks(text).get('K7 60 rpm up')).toEqual({
      view: null,
      grades: { reach: null, side: null, wall: 2, bubble: null, tube: null },
      words: 'drops',
    });
  });

  it('never stops the page, whatever stands in its place', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        begin(grader, sat().items, keptMarks(text));
      }),
      { seed: 20260310 },
    );
  });
});
