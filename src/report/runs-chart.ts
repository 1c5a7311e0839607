import { articleWords, cellDetail } from './cite.ts';
import { runLink } from './run-parts.ts';
import { listed } from './spans.ts';
import type { Block, TraceData } from './page.ts';
import { pointsOf, traceNamed, traceTable } from './traces.ts';
import { derivedOf, type View } from './view.ts';

/** Sump temperature of some loaded runs in one picture; null unless each of them has one. */
export function runsChart(view: View, ids: readonly string[]): Block | null {
  const runs = ids.flatMap((id) => view.runs.find((run) => run.id === id && run.trial === 'heat-up') ?? []);
  if (runs.length === 0 || runs.length !== ids.length) return null;
  const lines = runs.flatMap((run, i): TraceData['lines'][number][] => {
    const derived = derivedOf(view, run.id);
    const trace = traceNamed(derived, 'sump');
    if (derived === undefined || trace === undefined) return [];
    return [
      {
        label: `${run.article} ${run.id}`,
        mark: view.marks.get(run.article) ?? 0,
        role: i === 0 ? 'main' : run.article === view.series.baseline.article ? 'baseline' : 'second',
        points: pointsOf(trace),
      },
    ];
  });
  if (lines.length !== runs.length) return null;
  const names = runs.map((run) => {
    const cell = derivedOf(view, run.id)!.cell;
    return `${articleWords(view, run.article)}, ${cellDetail(cell)}`;
  });
  return {
    kind: 'chart',
    chart: {
      id: 'sump',
      title: `Sump temperature of ${ids.join(', ')} against time`,
      alternative: `Sump temperature against minutes under load: ${names.join('; ')}. The table below holds points of the same lines.`,
      caption: [...listed(runs.map((run) => [runLink(view, run.id)])), '.'],
      data: {
        kind: 'trace',
        yTitle: 'sump, °C',
        xTitle: 'minutes under load',
        lines,
        limits: [],
        crossings: [],
        excluded: [],
      },
      table: traceTable('sump-table', lines),
    },
  };
}
