import { describe, expect, it } from 'vitest';
import { cellTruth } from '../../demo-runs/make/cells.ts';
import { joinsOf } from '../../src/compare/bridging.ts';
import type { Bridge } from '../../src/trial/campaign.ts';
import type { ComparedSeries, Standing } from '../../src/trial/compared.ts';
import { makeBook, type Made } from '../../src/pipeline.ts';
import { comparedOf, figuresOf } from './compared.ts';
import { demoMade, filesOf } from './demo.ts';
import { firstBaseline_W, laterBook, scatter_W, type Later } from './later.ts';
import { wordsOf } from './words-of.ts';

/**
 * Expected values: the job's own scenario for a later article (baseline 241 W, re-run 246.9 W), the limit of ISO 5725,
 * r = 2.8·s_r, and what was planted. The figures of a difference are those of `cellTruth`, made without the tool.
 */
const compared = (of: Later): ComparedSeries => comparedOf(laterBook(of), 'hill-bowl');
const main = ({ at }: Pick<Bridge, 'at'>): boolean => Math.abs((at.outputSpeed_rad_s! * 30) / Math.PI - 290) < 0.01;
const bridgeOf = (of: ComparedSeries): Bridge => of.bridges!.find(main)!;
const tablesOf = (of: ComparedSeries): Standing[] => of.standings.filter(main);
const rowsOf = ({ rows }: Standing): string[] =>
  rows.map(
    ({ cell, baseline }) => `${cell.article}${cell.campaign ? ` ${cell.campaign}` : ''}${baseline ? ' baseline' : ''}`,
  );

describe('a later article, its baseline run again first', () => {
  const near = compared({ again_W: 246.9 });
  const far = compared({ again_W: 262.4 });

  it('finds what was planted: refits that scatter by 6 W, a baseline at 241 W, then at 246.9 W', () => {
    expect(firstBaseline_W).toBeCloseTo(240.79, 2);
    const { before, after, scatter, shift } = bridgeOf(near);
    expect(scatter!.s).toBeCloseTo(scatter_W, 3);
    expect(before!.mean).toBeCloseTo(firstBaseline_W, 2);
    expect(after!.mean).toBeCloseTo(246.9, 2);
    expect(shift!).toBeCloseTo(246.9 - firstBaseline_W, 2);
  });

  it('allows the means of three refits each r·√[(1/3 + 1/3)/2], r being 16.8 W for one refit', () => {
    expect(bridgeOf(near).limit!).toBeCloseTo(16.8 * Math.sqrt(1 / 3), 2);
  });

  it('puts 246.9 W into one table, and marks the rows of the later campaign', () => {
    expect(bridgeOf(near).outcome).toBe('joint');
    expect(tablesOf(near).map(rowsOf)).toEqual([['P0 baseline', 'P4', 'P5 U-01']]);
  });

  it('gives two tables for 262.4 W, each with its own baseline', () => {
    expect(bridgeOf(far).outcome).toBe('separate');
    expect(tablesOf(far).map(rowsOf)).toEqual([
      ['P0 baseline', 'P4'],
      ['P0 U-01 baseline', 'P5 U-01'],
    ]);
    expect(tablesOf(far).map(({ campaign }) => campaign)).toEqual([undefined, 'U-01']);
  });

  it('holds the later article to the baseline of its own days, in one table or in two', () => {
    for (const one of [near, far]) {
      const late = tablesOf(one)
        .flatMap(({ rows }) => rows)
        .find(({ cell }) => cell.article === 'P5')!.effect!;
      const inIt = one.effects.filter((e) => e.cell.article === 'P5' && main(e));
      expect(inIt).toEqual([late]);
      // what the rebuilt gears turn harder by is in both, and not in their difference
      expect(late.estimate.value).toBeCloseTo(-3.32, 2);
    }
  });

  it('carries the doubt of both baselines between rows of two campaigns, and not within one', () => {
    const [table] = tablesOf(near);
    const of = (article: string) =>
      near.cells.find((c) => c.cell.article === article && c.quantity === 'spin-power' && main(c))!;
    const variance = (parts: readonly { cause: string; u: number }[]): number =>
      parts.filter(({ cause }) => cause.startsWith('scatter:')).reduce((sum, { u }) => sum + u ** 2, 0);
    const apart = (a: string, b: string) => {
      const all = new Map<string, number>();
      for (const [article, sign] of [
        [a, 1],
        [b, -1],
      ] as const)
        for (const { cause, u } of of(article).estimate!.parts) all.set(cause, (all.get(cause) ?? 0) + sign * u);
      return variance([...all].map(([cause, u]) => ({ cause, u })));
    };
    const one = scatter_W ** 2 / 3;
    expect(table!.repeatability!.s).toBeCloseTo(scatter_W, 3);
    expect(apart('P4', 'P0') / one).toBeCloseTo(2, 4);
    expect(apart('P5', 'P0') / one).toBeCloseTo(2, 4);
    expect(apart('P5', 'P4') / one).toBeCloseTo(4, 4);
  });

  it('leaves every figure of the first campaign as it was, to the last digit, where the tables are separate', () => {
    const old = figuresOf(laterBook({ again_W: 262.4, before: true }), 'hill-bowl');
    const now = new Map(figuresOf(laterBook({ again_W: 262.4 }), 'hill-bowl').map((f) => [f.id, f]));
    const spun = old.filter(({ quantity }) => quantity === 'spin-power');
    expect(spun.length).toBeGreaterThan(10);
    // hours of the oil are summed over all its runs
    for (const figure of old.filter(({ subject }) => subject.run !== undefined || subject.article !== undefined))
      expect(now.get(figure.id), figure.id).toEqual(figure);
  });

  it('takes a greater shift off only where the series said so before the campaign', () => {
    const late = compared({ again_W: 262.4, more: ', bridge: adjust, declared: 2027-05-03' });
    expect(bridgeOf(late)).toMatchObject({ outcome: 'separate' });
    expect(bridgeOf(late).why).toContain('not declared before');
    const early = compared({ again_W: 262.4, more: ', bridge: adjust, declared: 2027-04-20' });
    expect(bridgeOf(early).outcome).toBe('adjusted');
    const [table, ...others] = tablesOf(early);
    expect(others).toEqual([]);
    expect(table!.rows.find(({ cell }) => cell.article === 'P5')!.effect!.estimate.value).toBeCloseTo(-3.32, 2);
  });

  it.each([
    ['not run again', ['P5 0', 'P5 1', 'P5 -1'], 'the baseline was not run again in U-01'],
    [
      'not run first',
      ['P5 0', 'P0 1', 'P5 1', 'P5 -1', 'P0 -1', 'P0 0'],
      'the baseline was not run first in U-01: S-07',
    ],
    ['not run last', ['P0 1', 'P0 -1', 'P5 0', 'P0 0', 'P5 1', 'P5 -1'], 'not run again after S-12'],
  ])('stays apart where the baseline was %s', (_, order, why) => {
    const { outcome, why: said } = bridgeOf(compared({ again_W: 242, order }));
    expect(outcome).toBe('separate');
    expect(said).toContain(why);
  });
});

describe('what a reader is told of a later campaign', () => {
  const built = (of: Later): Made => makeBook({ files: filesOf(laterBook(of)), audience: 'public' });
  const page = (made: Made): string =>
    wordsOf(made.pages.find(({ path }) => path.endsWith('hill-bowl/standing/'))!).join('\n');

  it('names table, shift and limit', () => {
    const words = page(built({ again_W: 246.9 }));
    expect(words).toContain('Later campaigns');
    expect(words).toContain('U-01, from 3 May 2027: gears rebuilt');
    expect(words).toMatch(/joint table[^\n]*the baseline lies within what it repeats/);
    expect(words).toMatch(/\+6\.1\sW\s+9\.7\sW/);
  });

  it('says of two tables that there are two, and why', () => {
    const words = page(built({ again_W: 262.4 }));
    expect(words).toMatch(/separate tables[^\n]*the baseline moved by more than it repeats/);
    expect(words).toMatch(/in U-01/);
  });

  it('tells the writer of an adjustment that came late, of a name given twice, and of days out of order', () => {
    const codes = (more: string): string[] =>
      makeBook({ files: filesOf(laterBook({ again_W: 246.9, more })), audience: 'house' }).findings.map((f) => f.code);
    expect(codes(', bridge: adjust')).toContain('bridge-chosen-late');
    const twice = codes(' }\n  - { id: U-01, from: 2027-05-01, why: again');
    expect(twice).toContain('campaign-twice');
    expect(twice).toContain('campaign-not-later');
  });
});

describe('the later campaign of the demo', () => {
  const { compared } = demoMade().series.find(({ record }) => record.series.id === 'hill-bowl')!;

  it('joins every table at 60 °C, and none of those that it did not run', () => {
    expect(compared.bridges!.map(({ outcome }) => outcome)).toEqual(Array(6).fill('joint'));
    const joined = compared.standings.filter((one) => joinsOf(one, compared.bridges!).length > 0);
    expect(joined.map(({ quantity, at, oil }) => `${quantity} ${String(at.sump_K)} ${oil}`)).toEqual(
      Array(6).fill('spin-power 333.15 O1'),
    );
  });

  it('holds the thin bowl to its own baseline: what was planted lies inside the interval', () => {
    const [thin, pressed] = ['P5', 'P0'].map((article) => cellTruth({ article, oil: 'O1', fill_L: 2.4 }).spin60_W[3]!);
    const [low, high] = compared.effects.find((e) => e.cell.article === 'P5' && main(e))!.interval;
    expect(thin! - pressed!).toBeGreaterThan(low);
    expect(thin! - pressed!).toBeLessThan(high);
  });
});
