import { describe, expect, it } from 'vitest';
import { outcome, placed, spoil } from './spoilt.ts';
import { readNotes } from '../../../src/notes/book.ts';
import { asFiles } from './good-book.ts';

const plan = 'hill-bowl/plan.md';
const typed = 'at start, middle and end';
const read = (is: string) => outcome(spoil(plan, `baseline-rerun: ${typed}`, `baseline-rerun: ${is}`));
const rerunOf = (is: string) => read(is).notes.series[0]?.plan?.rerun;
const noticesOf = (is: string) =>
  placed(
    readNotes(asFiles(spoil(plan, `baseline-rerun: ${typed}`, `baseline-rerun: ${is}`)))
      .series.flatMap((s) => s.findings)
      .filter((f) => f.code === 'rerun-uncounted'),
  );

describe('when the baseline comes back', () => {
  it.each([
    { is: '"at start, middle and end"', gives: { start: true, middle: true, end: true, everyN: null } },
    { is: '"at start and end"', gives: { start: true, middle: false, end: true, everyN: null } },
    { is: '"first, and after every 6th run"', gives: { start: true, middle: false, end: false, everyN: 6 } },
    { is: '{ start: true, end: true }', gives: { start: true, middle: false, end: true, everyN: null } },
    { is: '{ start: true, every-n: 4 }', gives: { start: true, middle: false, end: false, everyN: 4 } },
  ])('$is is read', ({ is, gives }) => {
    expect(read(is).loud).toEqual([]);
    expect(rerunOf(is)).toEqual(gives);
    expect(noticesOf(is)).toEqual([]);
  });

  it('stands in words however it was written', () => {
    expect(read('{ start: true, end: true, every-n: 4 }').notes.series[0]?.plan?.baselineRerun).toBe(
      'at start and end, and after every 4 runs',
    );
    expect(read(typed).notes.series[0]?.plan?.baselineRerun).toBe('at start, middle and end');
  });

  it.each(['"as time allows"', '"at start but not at the end"', '"never"'])(
    'in %s no place is counted, and a notice says so',
    (is) => {
      expect(read(is).loud).toEqual([]);
      expect(rerunOf(is)).toEqual({ start: null, middle: null, end: null, everyN: null });
      expect(noticesOf(is)).toHaveLength(1);
    },
  );

  it.each([
    { is: '[start, end]', finds: 'field-shape plan.md:6:17' },
    { is: '{ start: perhaps }', finds: 'word-unknown plan.md:6:26' },
    { is: '{ every-n: 0 }', finds: 'value-impossible plan.md:6:28' },
    { is: '{ strat: true }', finds: 'field-unknown plan.md:6:19' },
  ])('$is is refused at its place, and the runs stand', ({ is, finds }) => {
    const { loud, runs } = read(is);
    expect(placed(loud)).toEqual([finds]);
    expect(runs).toEqual(outcome(spoil(plan, typed, typed)).runs);
  });
});
