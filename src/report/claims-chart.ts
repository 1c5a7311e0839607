import type { JudgedClause } from '../trial/compared.ts';
import { drawn, drawnUnit, endsOf, marksOf } from './claim-ends.ts';
import { askedText, clauseWords, pairWords } from './claim-words.ts';
import { clauseFigure, type HeldClaim } from './claims-view.ts';
import { cited } from './cite.ts';
import type { Block, ClaimsData } from './page.ts';
import { capital, counts, row, table, verdict } from './spans.ts';
import { groupBy, type View } from './view.ts';

interface Drawn {
  readonly held: HeldClaim;
  readonly judged: JudgedClause & { readonly interval: readonly [number, number] };
  readonly value: number;
}

/** One picture a unit: what each claim asked for, and what was found. */
export function claimCharts(view: View, held: readonly HeldClaim[]): Block[] {
  const clauses = held.flatMap((one) =>
    one.judged.clauses.flatMap((judged): Drawn[] =>
      judged.interval === null || judged.estimate === null
        ? []
        : [{ held: one, judged: { ...judged, interval: judged.interval }, value: judged.estimate.value }],
    ),
  );
  return [...groupBy(clauses, ({ judged }) => drawnUnit(judged.clause.quantity))].map(([unit, list], i): Block =>
    chartOf(view, unit, list, `claims_chart-${String(i + 1)}`),
  );
}

const chartOf = (view: View, unit: string, list: readonly Drawn[], id: string): Block => ({
  kind: 'chart',
  chart: {
    id,
    title: `claims in ${unit}: what was asked and what was found, with intervals`,
    alternative: `${capital(counts(list.length, 'difference'))} that claims are about, in ${unit}, as dots with their own 95 % intervals, and a dashed mark where each claim sets its threshold. The table below holds the same numbers.`,
    caption: ['Dashed: the threshold of the claim, or both where it says “within”. Each interval is the claim’s own.'],
    data: dataOf(view, unit, list),
    table: table(
      `${id}-table`,
      ['claim', 'wide difference', 'number found', 'number from, to', 'asked', 'word'],
      list.map(({ held, judged }) => {
        const figure = clauseFigure(view, judged.clause);
        return row(
          held.claim.id,
          clauseWords(view, judged.clause),
          figure === undefined ? '—' : cited(view, figure),
          endsOf(judged.clause, judged.interval).fromTo,
          askedText(judged.clause),
          verdict(judged.word),
        );
      }),
    ),
  },
});

const dataOf = (view: View, unit: string, list: readonly Drawn[]): ClaimsData => ({
  kind: 'claims',
  xTitle: `difference that the claim is about, ${unit}`,
  rows: list.map(({ held, judged, value }) => {
    const { clause, interval, word } = judged;
    const at = (si: number): number => drawn(clause.quantity, si);
    const [threshold, ...others] = marksOf(clause);
    return {
      label: held.claim.id,
      detail: pairWords(view, clause),
      mark: view.marks.get(clause.subject.article) ?? 0,
      value: at(value),
      low: at(interval[0]),
      high: at(interval[1]),
      thresholds: [threshold!, ...(clause.direction === 'within' ? others : [])].map(at),
      word,
    };
  }),
});
