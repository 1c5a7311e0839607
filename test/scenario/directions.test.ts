import { describe, expect, it } from 'vitest';
import type { Figure } from '../../src/ledger/figure.ts';
import { aeratedDensity_kg_m3 } from '../../src/physics/aeration.ts';
import { demoMade } from './demo.ts';

/*
 * Directions that a practitioner expects (common practice, no source). The demo shows them as separated and with that
 * sign, or says that these runs cannot tell; it never shows the other direction as separated.
 */
const ledger = () => demoMade().ledgers.find((l) => l.series === 'hill-bowl')!;
const figure = (id: string): Figure => {
  const found = ledger().byId.get(id);
  if (found === undefined) throw new Error(`no figure ${id}`);
  return found;
};
const valueOf = (id: string): number => figure(id).value!;

/** The word of the ledger agrees with its own interval, and the sign is the expected one wherever it says separated. */
function holdsOrCannotTell(list: readonly Figure[], sign: 1 | -1): void {
  expect(list.length).toBeGreaterThan(0);
  for (const f of list) {
    const [low, high] = f.interval as [number, number];
    if (f.separated === true) {
      expect(Math.sign(f.value!), f.id).toBe(sign);
      expect(low * high, f.id).toBeGreaterThan(0);
    } else if (f.value! * sign < 0) {
      expect(low * high, f.id).toBeLessThan(0);
    }
  }
}
const effects = (pattern: RegExp): Figure[] => ledger().figures.filter((f) => pattern.test(f.id));
const running = (run: string): number[] =>
  [60, 120, 200, 290, 390, 520].map((step) => valueOf(`${run}/running-level@${step}rpm`));

describe('directions of the trade hold on the demo, or are reported as not separated', () => {
  it('more litres stand higher in the same bowl', () => {
    // 2.40 L, 3.20 L in P0; 2.40 L, 3.20 L, 3.59 L in P1
    for (const runs of [
      ['S-01', 'S-05'],
      ['S-09', 'S-04', 'S-12'],
    ]) {
      const levels = runs.map((run) => figure(`${run}/static-level`));
      levels.slice(1).forEach((f, i) => {
        expect(f.interval[0]!, f.id).toBeGreaterThan(levels[i]!.interval[1]!);
      });
    }
  });

  it('a higher level asks for more spin torque and power, at every speed and temperature', () => {
    const list = effects(/^P0~P0\/spin-power@.*,3\.20L~2\.40L$/);
    holdsOrCannotTell(list, 1);
    expect(list.filter((f) => f.separated === true).length).toBeGreaterThan(list.length / 2);
    expect(figure('P0~P0/spin-power@290rpm,60Cel,3.20L~2.40L').separated).toBe(true);
    expect(valueOf('S-05/spin-torque@290rpm,60Cel')).toBeGreaterThan(valueOf('S-01/spin-torque@290rpm,60Cel'));
  });

  it.each(['O1', 'O2'])('%s is thinner and lighter when it is warmer', (oil) => {
    for (const quantity of ['viscosity', 'density']) {
      const values = [40, 60, 80, 100].map((c) => valueOf(`${oil}/${quantity}@${c}Cel`));
      expect(values).toEqual([...values].sort((a, b) => b - a));
      expect(new Set(values).size).toBe(4);
    }
  });

  it('spin power falls from 40 to 60 to 80 °C, in every cell at every speed', () => {
    const cold = ledger().figures.filter((f) => f.kind === 'value' && /\/spin-power@\d+rpm,40Cel/.test(f.id));
    expect(cold.length).toBeGreaterThan(100);
    for (const f of cold) {
      const [warm, hot] = ['60Cel', '80Cel'].map((t) => ledger().byId.get(f.id.replace('40Cel', t)));
      if (warm === undefined || hot === undefined) continue;
      expect(f.value!, f.id).toBeGreaterThan(warm.value!);
      expect(warm.value!, f.id).toBeGreaterThan(hot.value!);
    }
  });

  it.each(['F-01', 'F-02', 'F-03', 'F-04', 'F-05', 'F-06'])('the running level of %s falls with speed', (run) => {
    const levels = running(run);
    expect(levels[0]!).toBeLessThan(valueOf(`${run}/static-level`));
    levels.slice(1).forEach((z, i) => {
      expect(z).toBeLessThan(levels[i]!);
    });
  });

  it('the finned aluminium bowl sheds more in moving air than the plastic one', () => {
    holdsOrCannotTell(effects(/^P1~P0\/shed(?:@|$)/), 1);
    holdsOrCannotTell(effects(/^P3~P0\/shed(?:@|$)/), -1);
    // What both share with the baseline cancels: their differences from it do not touch.
    expect(figure('P1~P0/shed').interval[0]!).toBeGreaterThan(figure('P3~P0/shed').interval[1]!);
  });

  it('entrained air lowers density: the more of it, the lighter', () => {
    const oil_kg_m3 = valueOf('O1/density@60Cel');
    const densities = [0, 0.02, 0.05, 0.1].map((airShare) =>
      aeratedDensity_kg_m3({ oil_kg_m3, air_kg_m3: 1.06, airShare }),
    );
    expect(densities[0]).toBe(oil_kg_m3);
    densities.slice(1).forEach((rho, i) => {
      expect(rho).toBeLessThan(densities[i]!);
    });
  });
});
