import { expect, it } from 'vitest';
import { makeDemo } from '../../demo-runs/make/demo.ts';
import { makeBook } from '../../src/pipeline.ts';
import { filesOf, insideRates, type Truth } from '../scenario/demo.ts';

/**
 * The demo remade with twenty other seeds, nothing selected: a 95 % interval should hold its truth in 90–99 % of runs.
 * Runs of one series share the calibration of their instruments, so one remake is nearly one draw; twenty are twenty.
 */
it('holds the truth in 90–99 % of the runs of twenty remakes, quantity by quantity', () => {
  const inside = new Map<string, { inside: number; of: number }>();
  for (let seed = 1; seed <= 20; seed++) {
    const texts = makeDemo({ seed, quiet: false, select: false });
    const made = makeBook({ files: filesOf(texts), audience: 'house' });
    const truth = JSON.parse(texts.get('hill-bowl/truth.json')!) as Truth;
    const figures = made.ledgers.find((l) => l.series === 'hill-bowl')!.figures;
    for (const r of insideRates(figures, truth)) {
      const sum = inside.get(r.quantity) ?? { inside: 0, of: 0 };
      inside.set(r.quantity, { inside: sum.inside + r.inside, of: sum.of + r.of });
    }
  }
  for (const [quantity, r] of inside)
    console.log(`inside ${quantity}: ${r.inside} of ${r.of} (${((100 * r.inside) / r.of).toFixed(1)} %)`);
  for (const [quantity, r] of inside) {
    expect(r.inside / r.of, quantity).toBeGreaterThanOrEqual(0.9);
    expect(r.inside / r.of, quantity).toBeLessThanOrEqual(0.99);
  }
});
