import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoMade } from './demo.ts';

const made = demoMade();
const { ledger } = made.series[0]!;
const chartOf = (path: string) =>
  made.pages
    .find((page) => page.path === `series/hill-bowl/workings/${path}/`)!
    .sections.flatMap(({ blocks }) => blocks.flatMap((b) => (b.kind === 'chart' ? [b.chart] : [])))
    .find(({ data }) => data.kind === 'marked');

describe('the stretch of raw log behind a figure', () => {
  it('is the lines of the file whose mean is the torque that was given', () => {
    const given = ledger.workings.get('S-07/spin-power@290rpm,60Cel')!.given.find(({ symbol }) => symbol === 'T_raw')!;
    if (given.from.kind !== 'log') throw new Error(given.from.kind);
    const { file, fromLine, toLine } = given.from;
    const lines = readFileSync(`demo-runs/${file}`, 'utf8').split(/\r?\n/);
    const head = lines.findIndex((line) => line.includes('tq_in'));
    const column = lines[head]!.split(/[,;]/).indexOf('tq_in');
    const read = lines.slice(fromLine - 1, toLine).map((line) => Number(line.split(/[,;]/)[column]));
    expect(read.length).toBeGreaterThan(20);
    expect(read.reduce((sum, v) => sum + v, 0) / read.length).toBeCloseTo(given.value, 6);
    const table = chartOf('S-07/spin-power')!.table;
    expect(table.rows.map(({ cells }) => cells.slice(1, 3).flat())).toContainEqual([String(fromLine), String(toLine)]);
  });

  it('is marked in the trace of the whole run at the times of those lines', () => {
    const { data } = chartOf('S-07/spin-power')!;
    if (data.kind !== 'marked') throw new Error(data.kind);
    const time = (line: number): number =>
      Number(readFileSync('demo-runs/hill-bowl/runs/S-07.csv', 'utf8').split(/\r?\n/)[line - 1]!.split(',')[0]) / 60;
    const given = ledger.workings.get('S-07/spin-power@290rpm,60Cel')!.given[0]!.from;
    if (given.kind !== 'log') throw new Error(given.kind);
    expect(data.marks.map(({ from, to }) => [from.toFixed(6), to.toFixed(6)])).toContainEqual([
      time(given.fromLine).toFixed(6),
      time(given.toLine).toFixed(6),
    ]);
    expect(data.marks).toHaveLength(18);
    expect(Math.max(...data.points.map(([t]) => t))).toBeGreaterThan(50);
  });

  it('stands on no page of a difference or of an oil, and once on the page of a run', () => {
    for (const path of ['P4~P0/spin-power', 'O1/viscosity', 'P4/spin-power']) expect(chartOf(path)).toBeUndefined();
    expect(chartOf('H-03/final-temperature')!.data.kind).toBe('marked');
  });
});
