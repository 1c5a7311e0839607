import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupsOf } from '../../src/compare/group.ts';
import { repeated } from '../../src/compare/repeated.ts';
import type { Figure } from '../../src/ledger/figure.ts';
import { makeBook } from '../../src/pipeline.ts';
import { difference, standardUncertainty, type Estimate } from '../../src/quantity/estimate.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { houseBook, loudOf, smallDemo, textOf } from '../scenario/small.ts';
import { spinRun } from '../unit/compare/runs.ts';
import { inOtherUnits } from './other-units.ts';

const files = smallDemo().filter(({ path }) => !path.startsWith('where'));
const figuresOf = (book: readonly SourceFile[]): Map<string, Figure> =>
  new Map(makeBook({ files: book, audience: 'house' }).ledgers[0]!.figures.map((f) => [f.id, f]));

/** Sensible for a zero too: a difference of nothing is compared with the size of what it is a difference of. */
const apart = (a: number, b: number, size: number): number => Math.abs(a - b) / Math.max(Math.abs(a), size);

describe('stating every input in other units', () => {
  const other = inOtherUnits(files);

  it('is a restatement: notes and logs say it in US units, and nothing is found in them', () => {
    expect(textOf('hill-bowl/runs/S-07.md', other)).toMatch(/mass-in: 4\.744\d+ lb, temperature: 69\.98\d* °F/);
    expect(textOf('hill-bowl/rig.md', other)).toContain('T_sump: { is: sump, unit: °F');
    const left = other
      .filter(({ path }) => path.endsWith('.md'))
      .flatMap(({ path }) => {
        const text = textOf(path, other);
        return (
          text.slice(0, text.indexOf('\n---\n', 4)).match(/\d (mm|m|°C|N·m|L|g|kg|K|kW|m\/s|rpm|s)(?![\w·/²³])/g) ?? []
        );
      });
    expect(left).toEqual([]);
    expect(loudOf(makeBook({ files: other, audience: 'house' }))).toEqual([]);
  });

  it('changes no figure, and no word about one', () => {
    const [as, us] = [figuresOf(files), figuresOf(other)];
    expect([...us.keys()]).toEqual([...as.keys()]);
    for (const [id, f] of as) {
      const g = us.get(id)!;
      expect([g.unit, g.bound, g.separated, g.relation, g.method], id).toEqual([
        f.unit,
        f.bound,
        f.separated,
        f.relation,
        f.method,
      ]);
      if (f.value === null) continue;
      const half = (f.interval[1]! - f.interval[0]!) / 2;
      // One part in a million: fifteen typed digits, and fits that stop when a step is that small.
      expect(apart(f.value, g.value!, half), id).toBeLessThan(1e-6);
      // A zero typed to 0.001 N·m says how finely it was read; typed with fifteen digits it says so no more.
      // Other files are another seed: an interval by trials has settled to one digit, not to more.
      const byTrials = [f, g].some(({ notes }) => notes.some((note) => note.includes('by trials')));
      expect(apart(half, (g.interval[1]! - g.interval[0]!) / 2, 1e-12), id).toBeLessThan(byTrials ? 0.1 : 0.01);
    }
  });
});

describe('the order in which the disk gives the files', () => {
  it('changes no byte of the ledger and no finding', () => {
    const plain = houseBook(files);
    const check = (order: readonly SourceFile[]): void => {
      const turned = houseBook(order);
      expect(turned.files).toEqual(plain.files);
      expect(turned.findings).toEqual(plain.findings);
      expect(turned.pages.map((p) => p.path)).toEqual(plain.pages.map((p) => p.path));
    };
    const orders = fc.shuffledSubarray([...files], { minLength: files.length, maxLength: files.length });
    fc.assert(fc.property(orders, check), { seed: 20261124, numRuns: 6 });
  });
});

describe('a cell held against itself', () => {
  const three = fc.array(fc.double({ min: 50, max: 900, noNaN: true }), { minLength: 3, maxLength: 3 });

  it('differs by 0 ± 0, and two cells differ as much one way as the other', () => {
    const check = (values: number[][]): void => {
      const runs = values.flatMap((list, c) =>
        list.map((watts, i) =>
          spinRun({ article: `A${c}`, order: 1 + i * values.length + c, watts, calibration_W: 2 }),
        ),
      );
      const [group] = groupsOf(new Map(runs.map((r) => [r.run, r])));
      const celled = repeated(group!, {
        isSeriesCause: (id) => id.startsWith('calibration'),
        isBase: ({ article }) => article === 'A0',
        time: { over: 'order', of: ({ order }) => order },
        lab: null,
      })!;
      const [a, b] = celled.cells.map((c) => c.estimate) as [Estimate, Estimate];
      expect(difference(a, a)).toEqual({ value: 0, parts: [] });
      expect(standardUncertainty(difference(a, a))).toBe(0);
      expect(standardUncertainty(difference(a, b))).toBe(standardUncertainty(difference(b, a)));
      expect(difference(a, b).value).toBe(-difference(b, a).value);
      expect(difference(a, b).parts.some((p) => p.cause.startsWith('calibration'))).toBe(false);
    };
    fc.assert(fc.property(fc.array(three, { minLength: 2, maxLength: 4 }), check), { seed: 20261124, numRuns: 100 });
  });
});
