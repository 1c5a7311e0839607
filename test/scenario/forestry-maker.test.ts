import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeForestry } from '../fixtures/make/forestry.ts';
import '../matchers.ts';

const files = makeForestry();

describe('the small forestry book', () => {
  it('lies on disk as its maker makes it, and keeps small', () => {
    const root = join(import.meta.dirname, '../fixtures/forestry');
    for (const [path, text] of files) expect(readFileSync(join(root, path), 'utf8') === text, path).toBe(true);
    expect([...files.values()].reduce((sum, text) => sum + Buffer.byteLength(text), 0)).toBeLessThan(600_000);
  });

  it('writes its logger files another way than the demo: preamble, units row, semicolons, decimal commas, minutes', () => {
    const lines = files.get('drop-box/runs/L-1.csv')!.split('\r\n');
    expect(lines[2]).toBe('Time;In rpm;Out rpm;In torque;Out torque;Oil;Case;Hall;Air;Mark');
    expect(lines[3]!.split(';')[5]).toBe('°F');
    expect(lines[4]).toMatch(/^0,0000;\d+,\d;.*;load on$/);
    expect(lines.at(-2)).toMatch(/^60,0000;/);
  });

  // 40 mechanical horsepower at 800 rpm: T = 5252.11 · hp / rpm, in pound-force feet (common practice, no source).
  it('holds the torque that 40 hp make at 800 rpm', () => {
    const rows = files.get('drop-box/runs/L-2.csv')!.trimEnd().split('\r\n').slice(4);
    const mean = rows.reduce((sum, row) => sum + Number(row.split(';')[4]!.replace(',', '.')), 0) / rows.length;
    expect(mean).toAgreeWithPrinted('262.6');
  });
});
