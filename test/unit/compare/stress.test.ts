import { describe, expect, it } from 'vitest';
import { stressInput } from '../../../src/compare/stress-input.ts';
import { stressTable } from '../../../src/compare/stress.ts';
import type { DerivedRun } from '../../../src/trial/derived.ts';
import { record, spinRun } from './runs.ts';

/** P0 and P1 by turns, three refits each, the baseline once more at the end. */
const runsOf = (p0: readonly number[], p1: readonly number[]): Map<string, DerivedRun> => {
  const list = [
    ...p0.map((watts, i) => spinRun({ article: 'P0', order: 1 + 2 * i, watts })),
    ...p1.map((watts, i) => spinRun({ article: 'P1', order: 2 + 2 * i, watts })),
  ];
  return new Map(list.map((run) => [run.run, run]));
};
const tableOf = (runs: ReadonlyMap<string, DerivedRun>, putBack: ReadonlyMap<string, DerivedRun> = new Map()) =>
  stressTable(stressInput({ ...record, claims: [] }, runs, putBack));
const stepOf = (of: ReturnType<typeof tableOf>) => of.steps.find(({ step }) => step.cell.article === 'P1')!;
const wordsBy = (step: ReturnType<typeof stepOf>, kind: string) =>
  step.rows.filter(({ choice }) => choice.kind === kind).map(({ word }) => word);

describe('a step of the standing under every other choice', () => {
  const firm = runsOf([240, 241, 239, 240], [200, 201, 199]);

  it('holds in all of them where the difference is forty times the scatter', () => {
    const step = stepOf(tableOf(firm));
    expect(step.word).toBe('separated below');
    // The baseline at the end may not be left out: then the table is not bracketed, and says so.
    expect(step.rows.filter(({ word }) => word !== step.word)).toEqual([
      { choice: { kind: 'without', run: 'P0-7' }, word: 'indicative' },
    ]);
    expect(step.holds).toBe(step.of - 1);
  });

  it('tries each run that it rests on, once, and the causes both ways', () => {
    const step = stepOf(tableOf(firm));
    const left = step.rows.flatMap(({ choice }) => (choice.kind === 'without' ? [choice.run] : []));
    expect([...left].sort()).toEqual([...firm.keys()].sort());
    expect(wordsBy(step, 'causes')).toHaveLength(2);
  });

  it('gives without a run what the others give alone', () => {
    const thin = runsOf([240, 241, 239, 240], [237, 236.5, 239]);
    const step = stepOf(tableOf(thin));
    const left = step.rows.flatMap(({ choice, word }) =>
      choice.kind === 'without' ? [{ run: choice.run, word }] : [],
    );
    for (const { run, word } of left)
      expect(word, run).toBe(stepOf(tableOf(new Map([...thin].filter(([id]) => id !== run)))).word);
    expect(new Set(left.map(({ word }) => word)).size).toBeGreaterThan(1);
  });

  it('does not count what was not run: no other temperature, limit or fill', () => {
    const step = stepOf(tableOf(firm));
    for (const kind of ['sump', 'limit', 'fill', 'put-back', 'ambient', 'airflow'])
      expect(wordsBy(step, kind), kind).toEqual([]);
  });

  it('tries what was excluded with it put back', () => {
    const back = spinRun({ article: 'P1', order: 4, watts: 260 });
    const step = stepOf(tableOf(firm, new Map([[back.run, back]])));
    expect(wordsBy(step, 'put-back')).toEqual(['not separated']);
  });

  it('carries nothing of people or notes', () => {
    const input = JSON.stringify(stressInput(record, firm, new Map()));
    expect(input).not.toMatch(/operators|released|remarks|"says"|\.md/);
  });
});
