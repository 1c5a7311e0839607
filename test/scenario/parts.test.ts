import { describe, expect, it } from 'vitest';
import { pinsText } from '../../src/outlets/pins.ts';
import { makeBook, type Made } from '../../src/pipeline.ts';
import { movedIn } from '../../src/report/part.ts';
import { followed, partsOf, stateOf } from '../../src/report/parts-view.ts';
import { pinsOf } from '../../src/report/pin-rows.ts';
import { plain } from '../../src/report/spans.ts';
import { viewOf } from '../../src/report/view.ts';
import { textsOf } from '../unit/report/reading.ts';
import { demoFiles, demoMade } from './demo.ts';
import { remember, smallDemo, spoilt, withText } from './small.ts';

const made = demoMade();
const view = viewOf(made.series.find(({ record }) => record.series.id === 'hill-bowl')!);
const pageOf = (of: Made, path: string): string =>
  textsOf(of.pages.find((page) => page.path === `series/hill-bowl/${path}`)!);
const moved = (number: number) =>
  movedIn(
    view,
    partsOf(view).find((part) => part.number === number)!,
  ).map(({ id, then, now, why }) => ({
    id,
    then,
    now: now === null ? null : plain([now]),
    why: plain(why),
  }));

describe('the six parts of the demo', () => {
  it('are all out, in their order, and none of their words was touched since', () => {
    expect(partsOf(view).map(({ number, status }) => [number, status])).toEqual(
      [1, 2, 3, 4, 5, 6].map((number) => [number, 'out']),
    );
    const about = made.findings.filter(({ place }) => /\/parts\//.test(place.file));
    expect(about).toEqual([]);
  });

  it('show then and now where the correction reached, which is Part 4, with the reason', () => {
    for (const number of [1, 2, 5]) expect(moved(number), `Part ${String(number)}`).toEqual([]);
    const part4 = moved(4);
    expect(part4.map(({ id }) => id)).toEqual(['P2~P0/final-rise', 'CL-5', 'H-09/final-rise', 'P2~P0/shed']);
    for (const { why } of part4) expect(why).toBe('input: COR-01. ');
    expect(part4.find(({ id }) => id === 'CL-5')).toMatchObject({ then: 'shown', now: 'not shown' });
    const rise = part4.find(({ id }) => id === 'H-09/final-rise')!;
    // what the correction takes off the ambient, to the tenth of a kelvin that the issue of it allows
    expect(Math.abs(parseFloat(rise.now!) - parseFloat(rise.then) - 3.4)).toBeLessThan(0.1);
    expect(pageOf(made, 'parts/4/')).toContain('Four things said here have moved since');
  });

  it('say that runs were made since where the later campaign widened an interval, and move no value by it', () => {
    const part3 = moved(3);
    expect(part3.length).toBeGreaterThan(0);
    for (const { then, now, why } of part3) {
      expect(why).toMatch(/^runs: /);
      expect(now!.split('±')[0]).toBe(then.split('±')[0]);
    }
  });

  it('are pinned by what was known on their day: pinned again today they are the same bytes', () => {
    const files = demoFiles();
    const part = partsOf(view).find((one) => one.number === 4)!;
    const then = makeBook({ files, audience: 'house', asOf: part.published!, remember });
    const input = then.series.find(({ record }) => record.series.id === 'hill-bowl')!;
    const text = pinsText(part.id, pinsOf(viewOf(input), { ...part, published: part.published! }));
    const kept = files.find(({ path }) => path === part.pins!.file)!;
    expect(text).toBe(new TextDecoder().decode(kept.bytes));
  });

  it('carry a question until a part answers it, and end it where the house says so', () => {
    const state = new Map(followed(view).map((one) => [one.question.id, stateOf(one)]));
    expect([...state].filter(([, is]) => is !== 'answered')).toEqual([
      ['Q-10', 'handed on'],
      ['Q-11', 'open'],
      ['Q-12', 'dropped'],
    ]);
    const part4 = pageOf(made, 'parts/4/');
    expect(part4).toContain('Open since earlier parts');
    for (const id of ['Q-2', 'Q-4', 'Q-6', 'Q-9', 'Q-12']) expect(part4.split('\n')).toContain(id);
    const part6 = pageOf(made, 'parts/6/').split('\n');
    for (const id of ['Q-2', 'Q-4', 'Q-9', 'Q-10', 'Q-12']) expect(part6).not.toContain(id);
  });
});

describe('what was not looked at', () => {
  it('is the cell that the plan wants once more, the questions without an answer, and what the series says', () => {
    const page = pageOf(made, 'not-looked-at/');
    expect(page).toContain('P1 deep bowl, 3.20');
    for (const id of ['Q-10', 'Q-11', 'Q-12']) expect(page.split('\n')).toContain(id);
    expect(page).toContain('Wear and life: no run is long enough.');
  });

  it('stands beside the usual objections, of which wear and a swept airflow have no run', () => {
    const page = made.pages.find(({ path }) => path === 'series/hill-bowl/usual-objections/')!;
    const open = page.sections.filter(({ inIndex }) => inIndex?.endsWith(': not tested')).map(({ id }) => id);
    expect(open).toEqual(['airflow', 'durability']);
    const small = made.pages.find(({ path }) => path === 'series/where-the-oil-stands/usual-objections/')!;
    const none = small.sections.filter(({ inIndex }) => inIndex?.endsWith(': not tested')).map(({ id }) => id);
    expect(none).toEqual(expect.arrayContaining(['no-load', 'airflow', 'hill-and-trailer', 'other-oil', 'durability']));
  });
});

describe('what was published and then moved without a word', () => {
  const part3 = 'hill-bowl/parts/3-turning-for-nothing.md';
  const log = demoFiles().find(({ path }) => path === 'hill-bowl/runs/S-07.csv')!;
  const [head = '', ...rows] = new TextDecoder().decode(log.bytes).split('\n');
  const at = head.split(',').indexOf('tq_in');
  const more = rows.map((line) =>
    line
      .split(',')
      .map((cell, i) => (i === at && cell !== '' ? (Number(cell) + 0.3).toFixed(3) : cell))
      .join(','),
  );
  const files = withText(log.path, [head, ...more].join('\n'), demoFiles());
  const words = spoilt(part3, 'still wants to be turned', 'still has to be turned', files);
  const again = makeBook({ files: spoilt(part3, '(claim:CL-8)', '(claim:CL-88)', words), audience: 'house', remember });
  const found = (code: string) => again.findings.filter((f) => f.code === code);

  it('is a warning where it stands in the words: another reading in one file', () => {
    const told = found('moved-untold');
    expect(told.some(({ says }) => says.startsWith('P4 less P0: spin power'))).toBe(true);
    for (const { place, says } of told) {
      expect(place.line).toBeGreaterThan(9);
      expect(says).toMatch(/^\S.* was \S.* in Part \d and is /);
    }
    expect(pageOf(again, 'parts/3/')).toContain('input: S-07.csv is not as on that day, and no correction says why.');
  });

  it('is told also of the words themselves, and of a name that is not there', () => {
    expect(found('part-rewritten').map(({ place }) => place.file)).toEqual([part3]);
    expect(pageOf(again, 'parts/3/')).toContain('Words of this part were changed after it came out.');
    const [told, ...others] = found('ref-unknown');
    expect(others).toEqual([]);
    expect(told).toMatchObject({ level: 'error', write: 'Write  claim:CL-8 .', place: { file: part3 } });
    expect(told!.place.lineText?.slice(told!.place.column - 1)).toMatch(/^claim:CL-88\)/);
  });
});

describe('parts in a public build', () => {
  it('are only those that are out and pinned', () => {
    const parts = demoFiles().filter(({ path }) => /\/parts\/(?!5-nose-up\.pins)/.test(path));
    const files = [...smallDemo(), ...parts];
    const draft = spoilt(
      'hill-bowl/parts/6-the-bill-and-the-list.md',
      'status: out\npublished: 2026-08-11',
      'status: draft',
      files,
    );
    const open = makeBook({ files: draft, audience: 'public', remember });
    const paths = open.pages.filter(({ kind }) => kind === 'part').map(({ path }) => path);
    expect(paths).toEqual([1, 2, 3, 4].map((n) => `series/hill-bowl/parts/${String(n)}/`));
    const all = JSON.stringify([open.pages, open.files, open.frame]);
    for (const word of ['tilted by twelve percent', 'The bill and the list']) expect(all).not.toContain(word);
  });
});
