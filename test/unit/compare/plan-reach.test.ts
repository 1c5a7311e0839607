import { describe, expect, it } from 'vitest';
import { planReach } from '../../../src/compare/plan-reach.ts';
import type { Plan } from '../../../src/trial/plan.ts';
import type { ReachKind } from '../../../src/trial/plan-reach.ts';
import { planned } from './planned.ts';

/** "yes: why" or "no: why" of each thing that an effect is asked of. */
function told(kind: ReachKind, cells: readonly string[], more: Partial<Plan> = {}): Record<string, string> {
  const items = planReach(planned(cells, more)).items.filter((item) => item.kind === kind);
  return Object.fromEntries(
    items.map(({ of, estimable, why }) => [of, `${estimable ? 'yes' : 'no'}: ${why.replaceAll('\u202f', ' ')}`]),
  );
}

describe('an article against the baseline', () => {
  it('is told apart at the same litres where both are planned at the same litres', () => {
    expect(told('same litres', ['spin P0 2.40 O1', 'spin P1 2.40 O1'])).toEqual({
      'P1 with O1': 'yes: P1 2.40 L beside P0 2.40 L',
    });
  });

  // The table of this bowl is that of the baseline, so that 2.43 L stands 0.78 mm higher: within 3 mm and within 0.05 L.
  it('within the tolerances of the series, and not beyond them', () => {
    expect(told('same litres', ['spin P0 2.40 O1', 'spin P1 2.43 O1'])['P1 with O1']).toMatch(/^yes/);
    expect(told('same level', ['spin P0 2.40 O1', 'spin P1 2.43 O1'])['P1 with O1']).toMatch(/^yes/);
    expect(told('same litres', ['spin P0 2.40 O1', 'spin P1 2.60 O1'])['P1 with O1']).toBe(
      'no: the nearest fills are 0.20 L apart; it cannot be parted from its litres',
    );
  });

  // 2.40 L stands at −53.3 mm and 2.85 L at −42.7 mm, straight between the rows of its table: 10.6 mm apart, by hand.
  it('says how far the nearest level is where none matches', () => {
    expect(told('same level', ['spin P0 2.40 O1', 'spin P1 2.85 O1'])['P1 with O1']).toBe(
      'no: the nearest levels are 10.6 mm apart; it cannot be parted from its litres',
    );
  });

  it('is not told apart at the same level without a level table', () => {
    expect(told('same level', ['spin P0 2.40 O1', 'spin P3 2.40 O1'])['P3 with O1']).toContain(
      'it has no level table, so that its level is not known',
    );
  });

  it('goes with its oil where the baseline was not run in it', () => {
    const cells = ['spin P0 2.40 O1', 'spin P1 2.40 O2'];
    expect(told('same litres', cells)).toEqual({ 'P1 with O2': 'no: the baseline is not run there' });
  });

  it('is a mismatch and no effect where the plan does not name article as its factor', () => {
    expect(told('same litres', ['spin P0 2.40 O1', 'spin P1 2.40 O1'], { factors: ['fill'] })).toEqual({
      'P1 with O1': 'no: article is no factor of the plan, so that a difference in it is a mismatch',
    });
  });

  it('leans on nobody answering alike: with the fill told by the baseline alone the rest is not assumed', () => {
    const cells = ['spin P0 2.40 O1', 'spin P0 3.00 O1', 'spin P1 2.70 O1'];
    expect(told('same litres', cells)['P1 with O1']).toBe(
      'no: the nearest fills are 0.30 L apart; only if every article answered alike to what differs could it be worked out, and that is not assumed here',
    );
  });

  it('counts a clear copy as the article that it stands in for', () => {
    expect(told('same litres', ['flow P0w 2.40 O1', 'flow P1 2.40 O1'])['P1 with O1']).toMatch(/^yes/);
  });

  it('is asked trial by trial: what only the spin trials hold does not help the loaded ones', () => {
    const cells = ['spin P0 2.40 O1', 'spin P1 2.40 O1', 'heat-up P0 2.40 O1', 'heat-up P1 3.59 O1'];
    const items = planReach(planned(cells)).items.filter(({ kind }) => kind === 'same litres');
    expect(items.map(({ trial, estimable }) => [trial, estimable])).toEqual([
      ['spin', true],
      ['heat-up', false],
    ]);
  });
});

describe('what one article does when only one thing is changed', () => {
  it('the fill, where it is run at two fills in one oil and tilt', () => {
    const cells = ['spin P0 2.40 O1', 'spin P0 3.00 O1', 'spin P1 2.40 O1', 'spin P1 3.00 O2'];
    const { P0, P1 } = told('fill', cells);
    expect(P0).toBe('yes: P0 2.40 L beside P0 3.00 L');
    expect(P1).toBe('no: it changes only together with the oil');
  });

  it('the oil and the tilt alike', () => {
    const cells = ['spin P0 2.40 O1', 'spin P0 2.40 O2', 'spin P0 2.40 O1 12 %'];
    expect(told('oil', cells)['P0']).toBe('yes: P0 2.40 L with O1 and with O2');
    expect(told('tilt', cells)['P0']).toBe('yes: P0 2.40 L level and 12 % nose up');
  });

  it('and says so in one row where the whole trial has one oil, one tilt, one fill', () => {
    const cells = ['spin P0 2.40 O1', 'spin P1 2.40 O1'];
    for (const [kind, why] of [
      ['fill', 'run at one fill only'],
      ['oil', 'run with one oil only'],
      ['tilt', 'run at one tilt only'],
    ] as const)
      expect(told(kind, cells)).toEqual({ '': `no: ${why}` });
  });
});

describe('whether an effect changes', () => {
  const square = ['spin P0 2.40 O1', 'spin P0 3.00 O1', 'spin P1 2.40 O1', 'spin P1 3.00 O1'];
  it('with the litres: it takes both articles at the same two fills', () => {
    expect(told('article by fill', square)['P1 with O1']).toBe('yes: both are run with 2.40 L and 3.00 L');
    expect(told('article by fill', square.slice(0, 3))['P1 with O1']).toBe(
      'no: one fill only is shared with the baseline',
    );
    expect(told('article by fill', square, { factors: ['article'] })['P1 with O1']).toContain('fill is no factor');
  });

  it('with the oil: it takes both articles in both oils', () => {
    const both = ['spin P0 2.40 O1', 'spin P1 2.40 O1', 'spin P0 2.40 O2', 'spin P1 2.40 O2'];
    expect(told('article by oil', both)['P1']).toBe('yes: P1 2.40 L beside P0 2.40 L, each with O1 and O2');
    expect(told('article by oil', both.slice(0, 3))['P1']).toContain('both oils');
    expect(told('article by oil', both.slice(0, 2))).toEqual({});
  });
});

describe('what the trial as a whole can tell', () => {
  const three = ['spin P0 2.40 O1 x3', 'spin P1 2.40 O1 x3'];
  const rerun = (of: Partial<Plan['rerun']>) => ({
    rerun: { start: true, middle: true, end: true, everyN: null, ...of },
  });

  it('scatter, from runs beyond the first of each cell', () => {
    expect(told('scatter', three)['']).toBe('yes: 4 repeats beyond the first run of 2 cells');
    expect(told('scatter', ['spin P0 2.40 O1', 'spin P1 2.40 O1'])['']).toMatch(/^no: one run a cell/);
    expect(told('scatter', three, { repeatUnit: 'rerun' })['']).toMatch(/^no: a repeat is a rerun/);
  });

  it('a steady drift, where the baseline comes back last and cells are repeated', () => {
    expect(told('steady drift', three, rerun({}))['']).toMatch(/^yes/);
    expect(told('steady drift', three, rerun({ end: false }))['']).toContain('not run again at the end');
    expect(told('steady drift', ['spin P0 2.40 O1', 'spin P1 2.40 O1'])['']).toContain('the baseline is run once');
    expect(told('steady drift', ['spin P1 2.40 O1 x3', 'spin P2 2.40 O1 x3'])['']).toContain('is not planned');
  });

  it('a drift that bends, only with the baseline in the middle too', () => {
    expect(told('bent drift', three, rerun({}))['']).toMatch(/^yes: 3 runs of the baseline/);
    expect(told('bent drift', three, rerun({ middle: false }))['']).toMatch(/^no: two points make a straight line/);
    expect(told('bent drift', ['spin P0 2.40 O1 x2', 'spin P1 2.40 O1 x3'], rerun({}))['']).toMatch(/^no/);
  });

  it('whether the order hangs on the limit, from three limits; how the loss answers to temperature, from three', () => {
    const heat = ['heat-up P0 2.40 O1', 'heat-up P1 2.40 O1'];
    expect(told('limit', heat)['']).toBe('yes: 3 limits are timed');
    expect(told('limit', heat, { limits_K: [368.15] })['']).toMatch(/^no: one limit is timed/);
    expect(told('temperature', three)['']).toBe('yes: steps are run at 3 temperatures');
    expect(told('temperature', three, { temperatures_K: [333.15] })['']).toMatch(/^no: steps are run at one/);
  });

  it('airflow never: no cell of a plan names another', () => {
    expect(told('airflow', ['heat-up P0 2.40 O1'])['']).toMatch(/^no: airflow is held/);
  });
});
