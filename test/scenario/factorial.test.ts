import { describe, expect, it } from 'vitest';
import { demoMade } from './demo.ts';

const made = demoMade().series.find(({ record }) => record.series.id === 'hill-bowl')!;
const of = (article: string, quantity: string, oil = 'O1') =>
  made.compared.factorials.find(
    (f) => f.article === article && f.quantity === quantity && f.oil === oil && f.tilt_ratio === 0,
  )!;
const inside = ([low, high]: readonly [number, number], planted: number): void => {
  expect(low).toBeLessThan(planted);
  expect(high).toBeGreaterThan(planted);
};

/**
 * Planted by the maker of the demo at 290 rpm and 60 °C: P0 241 W with 2.40 L and 263 W with 3.20 L; P1 208, 227 and 237 W
 * with 2.40, 3.20 and 3.59 L, of which the last stands at the level of the baseline.
 */
describe('article and fill of the demo, held apart', () => {
  const spin = of('P1', 'spin-power');

  it('finds the deep bowl 33 W lower at the same litres, 4 W lower at the same level, and 29 W of level between them', () => {
    const { whole, byLevel, rest } = spin.levelPart!;
    inside(whole.interval, 208 - 241);
    inside(rest.interval, 237 - 241);
    inside(byLevel.interval, 208 - 237);
    expect(whole.separated).toBe(true);
    expect(rest.separated).toBe(false);
    expect(byLevel.estimate.value + rest.estimate.value).toBeCloseTo(whole.estimate.value, 9);
  });

  it('finds no interaction with the litres where 3 W is planted, and the planted number inside', () => {
    const [square] = spin.bases['same litres'].squares;
    inside(square!.interaction.interval, 227 - 263 - (208 - 241));
    expect(square!.interaction.separated).toBe(false);
  });

  it('has what the level does in each of the two, and no more between them than the runs tell', () => {
    const { own, base, apart } = spin.slopes!;
    // planted, W a metre: P0 22 W over 16.9 mm; P1 29 W over 25.2 mm
    inside(base.slope.interval, 22 / 0.0169);
    inside(own.slope.interval, 29 / 0.0252);
    expect(apart.separated).toBe(false);
    expect(own.cells.map(({ level_z_m }) => level_z_m)).toEqual(
      [...own.cells.map(({ level_z_m }) => level_z_m)].sort((a, b) => a - b),
    );
  });

  it('says where only one basis was run, and does not split what was not', () => {
    expect(of('P1', 'spin-power', 'O2').levelPart).toBeNull();
    expect(of('P1', 'spin-power', 'O2').run).toBe('level only');
    expect(of('P2', 'spin-power').run).toBe('litres are level');
  });

  it('has its figures in the ledger, each with a working', () => {
    for (const f of made.ledger.figures.filter(({ quantity }) => /-(?:interaction|by-level)$/.test(quantity))) {
      expect(f.value, f.id).not.toBeNull();
      expect(made.ledger.workings.get(f.id)!.budget.length, f.id).toBeGreaterThan(0);
    }
    expect(made.ledger.byId.has('P1~P0/spin-power-interaction@290rpm,60Cel')).toBe(true);
  });

  it('prints both bases side by side', () => {
    const page =
      made.compared.factorials.length > 0 &&
      demoMade().pages.find(({ kind, series }) => kind === 'standing' && series === 'hill-bowl');
    const section = page && page.sections.find(({ id }) => id === 'fill-spin-power-o1');
    expect(JSON.stringify(section)).toMatch(/went with the level/);
  });
});
