import type { DerivedRun, Trace } from '../trial/derived.ts';
import { shown } from '../trial/figures.ts';
import type { Run } from '../trial/run.ts';
import { numberText } from './digits.ts';
import type { Table, TraceData } from './page.ts';
import { row, table } from './spans.ts';

/** Temperatures in °C against minutes: ready to draw. */
export const traceNamed = (derived: DerivedRun | undefined, channel: string): Trace | undefined =>
  derived?.traces.find((trace) => trace.channel === channel);

export const pointsOf = (trace: Trace | null | undefined): readonly (readonly [number, number])[] =>
  trace == null
    ? []
    : trace.time_s.flatMap((t_s, i) => {
        const value = trace.value[i];
        return value === undefined || !Number.isFinite(value) ? [] : [[minutes(t_s), celsius(value)] as const];
      });

export const minutes = (t_s: number): number => t_s / 60;
export const celsius = (t_K: number): number => shown('final-temperature', t_K);

export const excludedIn = (run: Run): TraceData['excluded'] =>
  run.exclude
    .filter(({ channels }) => channels.length === 0 || channels.includes('sump'))
    .map(({ from_s, to_s, reason }) => ({ from: minutes(from_s), to: minutes(to_s), label: reason }));

/** The same numbers as the lines, at some sixteen times of the first; a line without a point there leaves its cell empty. */
export function traceTable(id: string, lines: TraceData['lines']): Table {
  const [first] = lines;
  const points = first?.points ?? [];
  const every = Math.max(1, Math.ceil(points.length / 16));
  const times = points.filter((_, i) => i % every === 0 || i === points.length - 1).map(([x]) => x);
  return table(
    id,
    ['number min', ...lines.map(({ label }) => `number ${label}, °C`)],
    times.map((time) =>
      row(
        numberText(time, 1),
        ...lines.map((line) => {
          const value = near(line.points, time);
          return value === null ? '' : numberText(value, 1);
        }),
      ),
    ),
    'Some of the points that are drawn; all of them are in the raw file.',
  );
}

/** The point nearest in time, if one lies within the spacing of the line. */
function near(points: readonly (readonly [number, number])[], time: number): number | null {
  let nearest: readonly [number, number] | null = null;
  for (const point of points)
    if (nearest === null || Math.abs(point[0] - time) < Math.abs(nearest[0] - time)) nearest = point;
  const spacing = points.length < 2 ? 1 : (points.at(-1)![0] - points[0]![0]) / (points.length - 1);
  return nearest !== null && Math.abs(nearest[0] - time) <= spacing ? nearest[1] : null;
}
