import { describe, expect, it } from 'vitest';
import type { SourceFile } from '../../src/trial/series.ts';
import type { Made } from '../../src/pipeline.ts';
import { demoFiles } from './demo.ts';
import { fileOf, houseBook, loudOf } from './small.ts';
import { wordsOf } from './words-of.ts';

/** The demo with some of its spin runs: P0 first, between and last, P4 between. */
const whole = ['S-01', 'S-07', 'S-08', 'S-18', 'S-15', 'S-30', 'S-36'];
const changed = (runs: readonly string[], change: (path: string, text: string) => string = (_, text) => text) =>
  demoFiles()
    .filter(({ path }) => {
      const run = /hill-bowl\/runs\/([^.]+)\./.exec(path)?.[1];
      return !path.endsWith('.json') && (run === undefined || runs.includes(run));
    })
    .map((file): SourceFile => {
      if (!path(file).endsWith('.md')) return file;
      const text = new TextDecoder().decode(file.bytes);
      const other = change(file.path, text);
      return other === text ? file : fileOf(file.path, other);
    });
const path = ({ path: p }: SourceFile): string => p;
const noRule = (text: string): string => text.replace(/^repeat-rule: .*\n/m, '');

const series = (made: Made) => made.series.find(({ record }) => record.series.id === 'hill-bowl')!;
const standing = (made: Made) =>
  series(made).compared.standings.find(
    ({ quantity, at, oil }) =>
      quantity === 'spin-power' &&
      at.sump_K === 333.15 &&
      Math.abs(at.outputSpeed_rad_s! - 30.3687) < 1e-3 &&
      oil === 'O1',
  )!;
const rowOf = (made: Made, article: string) => standing(made).rows.find(({ cell }) => cell.article === article)!;
const claim = (made: Made, id: string) => series(made).compared.claims.find((c) => c.claim === id)!;
const pageText = (made: Made, kind: string): string =>
  made.pages
    .filter((p) => p.kind === kind && p.series === 'hill-bowl')
    .map((p) => wordsOf(p))
    .join(' ');

describe('what a comparison cannot carry gets its name and its reason', () => {
  it('whole, it is ranked: the others are held against this', () => {
    const made = houseBook(changed(whole));
    expect(rowOf(made, 'P4').effect!.separated).toBe(true);
    expect(standing(made).indicative).toEqual([]);
    expect(claim(made, 'CL-3').word).toBe('shown');
  });

  it('one run each: not ranked, and the claim cannot be told', () => {
    const made = houseBook(changed(['S-01', 'S-07'], (p, text) => (p.endsWith('series.md') ? noRule(text) : text)));
    const row = rowOf(made, 'P4');
    expect(row.effect).toBeNull();
    expect(row.places).toBeNull();
    expect(row.letters).toBe('');
    expect(row.refused.join()).toContain('too few repeats');
    expect(claim(made, 'CL-3').word).toBe('cannot tell');
    expect(claim(made, 'CL-3').clauses[0]!.interval).toBeNull();
    expect(pageText(made, 'standing')).toMatch(/not ranked/);
    expect(pageText(made, 'claims')).toMatch(/no repeat says how far one run scatters/);
  });

  it('all repeats on one day: indicative, without letters or places, and the claim says so', () => {
    const made = houseBook(
      changed(whole, (p, text) =>
        /runs\/S-/.test(p) ? text.replace(/(started|ended|released-on): 2026-\d\d-\d\d/g, '$1: 2026-03-17') : text,
      ),
    );
    const row = rowOf(made, 'P4');
    expect(standing(made).indicative.join()).toContain('of one day');
    expect(row.effect!.separated).toBe(false);
    expect([row.letters, row.places]).toEqual(['', null]);
    expect(claim(made, 'CL-3').indicative.join()).toContain('of one day');
    expect(pageText(made, 'standing')).toMatch(/indicative/i);
    expect(pageText(made, 'claims')).toMatch(/indicative only/);
  });

  it('the baseline missing at the end: indicative, with the run after which it is not known', () => {
    const made = houseBook(changed(whole.filter((run) => run !== 'S-36')));
    expect(standing(made).indicative.join()).toMatch(/baseline was not run again after S-30/);
    expect(rowOf(made, 'P4').effect!.separated).toBe(false);
    expect(pageText(made, 'standing')).toContain('not run again after S-30');
  });

  it('an instrument without its accuracy: one error at its place, and nothing is compared', () => {
    const made = houseBook(
      changed(whole, (p, text) =>
        p.endsWith('hill-bowl/rig.md') ? text.replace(/(id: torque-low[^]*?)\n +accuracy: [^\n]*/, '$1') : text,
      ),
    );
    const found = loudOf(made).filter(({ place }) => place.file === 'hill-bowl/rig.md');
    expect(found.map(({ level }) => level)).toEqual(['error']);
    expect(found[0]!.says + found[0]!.write).toContain('accuracy');
    expect(made.series.some(({ record }) => record.series.id === 'hill-bowl')).toBe(false);
  });

  it('three conditions apart: not ranked with each of them named, and the claim cannot be told', () => {
    const made = houseBook(
      changed(whole, (p, text) =>
        /runs\/S-(?:07|18|30)\.md$/.test(p)
          ? text.replace('oil: O1', 'oil: O2').replace('rotation: forward', 'rotation: reverse\ntilt: 12 %')
          : text,
      ),
    );
    const refusals = series(made).compared.refusals.filter(({ cell }) => cell.article === 'P4');
    expect(refusals.length).toBeGreaterThan(0);
    expect(series(made).compared.effects.filter(({ cell }) => cell.article === 'P4')).toEqual([]);
    expect(refusals[0]!.reasons.join()).toMatch(/baseline was not run with O2 at this tilt/);
    expect(claim(made, 'CL-3').word).toBe('cannot tell');
    expect(claim(made, 'CL-3').clauses[0]!.why.length).toBeGreaterThan(0);
    expect(pageText(made, 'standing')).toMatch(/not ranked/i);
  });

  it('a baseline that wanders: nothing is ranked against it, and it says how far', () => {
    const made = houseBook(
      changed([...whole, 'S-02', 'S-03', 'S-04', 'S-05'], (p, text) =>
        // 1.5 N·m of zero on one refit of the baseline, as if it had not been taken
        p.endsWith('runs/S-08.md')
          ? text.replace(/zeros: .*/, 'zeros: { torque-low: { before: -0.6 N·m, after: -0.6 N·m } }')
          : text,
      ),
    );
    expect(standing(made).wander!.wandered).toBe(true);
    expect(rowOf(made, 'P4').effect).toBeNull();
    expect(rowOf(made, 'P4').refused.join()).toContain('baseline wandered');
    expect(claim(made, 'CL-3').word).toBe('cannot tell');
  });
});
