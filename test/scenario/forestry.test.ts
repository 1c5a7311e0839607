import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readFolder } from '../../src/host/disk/book.ts';
import { makeBook, type Made } from '../../src/pipeline.ts';
import { holds, type Truth } from './demo.ts';
import { wordsOf } from './words-of.ts';

let built: Made | null = null;
const made = (): Made => (built ??= makeBook({ files: readFolder('test/fixtures/forestry'), audience: 'house' }));
const truth = JSON.parse(readFileSync('test/fixtures/forestry/drop-box/truth.json', 'utf8')) as Truth;
const figures = () => made().ledgers[0]!.figures;

/** "37.78 Cel" and "37.8 Cel" are one limit: 100 °F. */
const sameAt = (told: string | undefined, shown: string | undefined): boolean =>
  told === shown || Math.abs(Number.parseFloat(told ?? 'x') - Number.parseFloat(shown ?? 'y')) < 0.06;

describe('a drop box of another lab, in US units with semicolons and decimal commas', () => {
  it('goes through whole with nothing found above notice', () => {
    expect(made().findings.filter((f) => f.level !== 'notice')).toEqual([]);
    expect(made().ledgers).toHaveLength(1);
    expect(made().pages.filter((p) => p.kind === 'run')).toHaveLength(truth.runs.length);
  });

  it('has a figure for each truth planted in it, and at least 80 % of them lie inside their intervals', () => {
    const judged = truth.runs.flatMap((run) =>
      run.truth.map((t) => {
        const keys = Object.keys(t.at) as ('sump' | 'limit' | 'output-speed')[];
        const f = figures().find(
          (x) => x.subject.run === run.run && x.quantity === t.quantity && keys.every((k) => sameAt(t.at[k], x.at[k])),
        );
        return {
          id: `${run.run} ${t.quantity} ${JSON.stringify(t.at)}`,
          f,
          inside: f !== undefined && holds(f, t.value),
        };
      }),
    );
    expect(judged.filter((j) => j.f === undefined).map((j) => j.id)).toEqual([]);
    const inside = judged.filter((j) => j.inside).length;
    console.log(`forestry: ${inside} of ${judged.length} inside`);
    expect(inside / judged.length).toBeGreaterThanOrEqual(0.8);
  });

  it('finds that the baffle cuts spin power, as planted', () => {
    const planted = (article: string): number => {
      const of = truth.runs.filter((r) => r.run.startsWith('S') && articleOf(r.run) === article);
      const values = of.flatMap((r) =>
        r.truth.filter(
          (t) => t.quantity === 'spin-power' && t.at['output-speed'] === '800 rpm' && t.at['sump'] === '60 Cel',
        ),
      );
      return values.reduce((sum, t) => sum + t.value!, 0) / values.length;
    };
    const effect = figures().find((f) => f.id === 'D1~D0/spin-power@800rpm,60Cel')!;
    expect(effect.interval[0]!).toBeLessThanOrEqual(planted('D1') - planted('D0'));
    expect(effect.interval[1]!).toBeGreaterThanOrEqual(planted('D1') - planted('D0'));
    expect(effect.separated).toBe(true);
  });

  it('bounds the limit that an hour did not reach', () => {
    const open = figures().filter((f) => f.quantity === 'limit-crossing' && f.value === null && f.subject.run);
    expect(open.map((f) => [f.bound, f.interval[1]])).toEqual(open.map(() => ['above', null]));
    expect(open.length).toBeGreaterThan(0);
    for (const f of open) expect(f.interval[0]!).toBeGreaterThanOrEqual(3590);
  });

  it('speaks of its output shaft, not of wheels, and shows US units in brackets', () => {
    const ids = figures().map((f) => f.id);
    expect(figures().some((f) => f.at['output-speed'] === '800 rpm')).toBe(true);
    expect(figures().every((f) => f.at['wheel-speed'] === undefined)).toBe(true);
    const own = made().pages.filter((p) => p.series !== null);
    const text = own.flatMap(wordsOf).join('\n');
    expect(text).toMatch(/\d output rpm/);
    expect(text).not.toMatch(/\bwheels?\b/i);
    for (const bracket of [
      /\s°C \([^)]*°F\)/,
      /\smm \([^)]*\sin\)/,
      /\sL \([^)]*US qt\)/,
      /\sW \([^)]*hp \(mechanical\)\)/,
    ])
      expect(text).toMatch(bracket);
    expect(ids.length).toBe(new Set(ids).size);
  });

  it('holds nothing of the first book', () => {
    const own = made().pages.filter((p) => p.series !== null);
    for (const word of [
      /\bP[0-4]w?\b/,
      /\bO[12]\b/,
      /\bbowl\b/i,
      /Quillstone|Osmerfell|hill-bowl/i,
      /\bhub\b/i,
      /minibus/i,
    ])
      for (const page of own)
        expect(
          wordsOf(page).filter((t) => word.test(t)),
          `${page.path} ${String(word)}`,
        ).toEqual([]);
  });
});

const articleOf = (run: string): string =>
  /^article: (.*)$/m.exec(readFileSync(`test/fixtures/forestry/drop-box/runs/${run}.md`, 'utf8'))![1]!;
