import { describe, expect, it } from 'vitest';
import { standardUncertainty } from '../../src/quantity/estimate.ts';
import { textsOf } from '../unit/report/reading.ts';
import { demoMade } from './demo.ts';

const made = demoMade();
const { compared, ledger } = made.series.find(({ record }) => record.series.id === 'hill-bowl')!;
const page = made.pages.find(({ path }) => path === 'series/hill-bowl/workings/P4~P0/final-rise/')!;

describe('a difference of two loaded cells beside its two sides', () => {
  const effect = compared.effects.find(
    (e) => e.quantity === 'final-rise' && e.cell.article === 'P4' && e.cell.oil === 'O1' && e.against.article === 'P0',
  )!;
  const cellOf = (of: typeof effect.cell) =>
    compared.cells.find((c) => c.quantity === 'final-rise' && JSON.stringify(c.cell) === JSON.stringify(of))!.estimate!;
  const [own, base] = [cellOf(effect.cell), cellOf(effect.against)];

  it('is surer than two figures without a common cause, as by JCGM 100, 5.2.2', () => {
    const apart = Math.hypot(standardUncertainty(own), standardUncertainty(base));
    expect(standardUncertainty(effect.estimate)).toBeLessThan(0.9 * apart);
  });

  it('has lost the calibration of its two probes, which both sides carry in the same size', () => {
    for (const probe of ['calibration:tc-sump', 'calibration:tc-ambient']) {
      expect(
        own.parts.some(({ cause }) => cause === probe),
        probe,
      ).toBe(true);
      const left = ledger.workings
        .get('P4~P0/final-rise')!
        .budget.filter(({ cause }) => cause === probe)
        .reduce((sum, { share }) => sum + share, 0);
      expect(left, probe).toBeLessThan(1e-3);
    }
  });

  it('says so on its working page, with all four uncertainties', () => {
    const text = textsOf(page);
    expect(text).toMatch(/What both share cancels: calibration of tc-ambient \(100 % gone\)/);
    expect(text).toContain('if the two had nothing in common');
  });
});
