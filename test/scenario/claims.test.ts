import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoMade } from './demo.ts';

const page = demoMade().pages.find(({ path }) => path === 'series/hill-bowl/claims/')!;
const said = JSON.stringify(page);
const hill = demoMade().ledgers.find(({ series }) => series === 'hill-bowl')!;
const figure = (id: string) => hill.byId.get(id)!;

/** Verdicts as the maker planted them, first reading of each claim; CL-6 and CL-7 have two. */
const planted = (
  JSON.parse(readFileSync('demo-runs/hill-bowl/truth.json', 'utf8')) as {
    verdicts: { claim: string; says: string; word: string }[];
  }
).verdicts;
/** The first word of a claim's section is its verdict; further ones belong to its rule. */
const wordOf = (id: string): string | undefined =>
  /"kind":"verdict","text":"([^"]+)"/.exec(JSON.stringify(page.sections.find((s) => s.id === id)?.blocks))?.[1];

describe('the claims of the demo', () => {
  it.each([
    ['CL-1', 0],
    ['CL-2', 1],
    ['CL-3', 2],
    ['CL-4', 3],
    ['CL-5', 5],
    ['CL-6', 6],
    ['CL-6b', 7],
    ['CL-7', 8],
    ['CL-7b', 9],
    ['CL-8', 10],
  ] as const)('%s comes out as it was planted, from the runs alone', (id, row) => {
    expect(planted[row]!.claim).toBe(id.replace(/b$/, ''));
    expect(wordOf(id)).toBe(planted[row]!.word);
  });

  it('stamp the one that was put after its data', () => {
    expect(said).toContain('after its data');
  });

  it('have a figure each, also where no standing holds it', () => {
    expect(figure('P0~P4/spin-power@290rpm,60Cel,O2~O1').value).toBeLessThan(0);
    expect(figure('P1~P0/makes-less-share@3.59L~2.40L').interval[1]).toBeLessThan(50);
  });

  it('split a difference in rise without a residue', () => {
    const [by, shed, whole] = ['makes-less', 'sheds-more', 'final-rise'].map(
      (q) => figure(`P1~P0/${q}@3.59L~2.40L`).value!,
    ) as [number, number, number];
    expect(by + shed).toBeCloseTo(whole, 9);
  });

  it('say on the standing page what hangs on a choice, with what reached the pinion beside it', () => {
    const standing = demoMade().pages.find(({ path }) => path === 'series/hill-bowl/standing/')!;
    const section = standing.sections.find(({ id }) => id === 'depends-on')!;
    const text = JSON.stringify(section.blocks);
    expect(text).toContain('P1~P0/spin-power@290rpm,60Cel,3.59L~2.40L');
    expect(text).toContain('at its own temperature');
    expect(section.margin.map(({ name }) => name)).toContain('Beside the loss.');
  });

  it('hang on the fill for the roomier bowl: less at the same litres, not separated at the same level', () => {
    expect(figure('P1~P0/spin-power@290rpm,60Cel').separated).toBe(true);
    expect(figure('P1~P0/spin-power@290rpm,60Cel,3.59L~2.40L').separated).toBe(false);
  });
});
