import { describe, expect, it } from 'vitest';
import { demoMade } from './demo.ts';

const { ledger } = demoMade().series[0]!;
const cells = ledger.figures.filter(({ quantity, subject }) => quantity === 'shed' && subject.article !== undefined);

describe('the shed of each set-up of the demo', () => {
  it('lies inside the band of its bare surface by the laws, which has no mark in its middle', () => {
    const values = cells.filter(({ kind }) => kind === 'value');
    for (const { id, value } of values) {
      const band = ledger.byId.get(id.replace('/shed', '/surface-shed'))!;
      expect(band.class).toBe('model estimate');
      expect(band.value).toBeNull();
      expect(band.interval[0]).toBeLessThan(value!);
      expect(band.interval[1]).toBeGreaterThan(value!);
    }
    expect(values.length).toBeGreaterThan(10);
  });

  it('leaves an article of a tenth of a square metre no more than a third of it', () => {
    const share = ledger.byId.get('P0/article-shed-share')!;
    expect(share.interval[1]).toBeLessThan(33);
    expect(share.notes.join(' ')).toContain('emissivity');
  });
});
