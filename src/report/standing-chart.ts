import { conditionsOf } from '../ledger/ids.ts';
import type { Standing, StandingRow } from '../trial/compared.ts';
import { shownDifference, type QuantityName } from '../trial/figures.ts';
import { articleWords, cellDetail, cellSpans, conditionWords, doubtOf, quantityWords, citedValue } from './cite.ts';
import { displayUnit, halfWidth, inDisplay, numberText, plusMinusText } from './digits.ts';
import type { Chart, StandingData, Table, TableRow } from './page.ts';
import { capital, counts, row, table } from './spans.ts';
import { bearingSpans, isLoss, reachHead, reachSpans } from './supply.ts';
import { effectFigure, insteadSpans, rowVerdict, shownRows, whereWords } from './standing-words.ts';
import type { View } from './view.ts';

export function standingChart(view: View, standing: Standing, id: string): Chart {
  const rows = shownRows(view, standing);
  const unit = displayUnit(standing.quantity);
  const noun = quantityWords(standing.quantity);
  const conditions = conditionWords(conditionsOf(standing.at, null, view.naming));
  const runs = new Set(rows.flatMap(({ effect }) => [...(effect?.runs ?? []), ...(effect?.againstRuns ?? [])]));
  const ranked = rows.filter(({ effect }) => effect !== null).length;
  return {
    id,
    title: `${noun} of each article and fill less the baseline, with intervals`,
    alternative: `${capital(counts(ranked, 'difference'))} of ${noun} from ${articleWords(view, standing.against.article)} as dots with intervals, in ${unit}. ${whereWords(view, standing)}. The table below holds the same numbers.`,
    caption: [
      ranked === 0
        ? 'Nothing is ranked here; the table says why.'
        : `Intervals hold for all rows against the baseline together (Dunnett). Groups that share a letter are not separated where all pairs are asked (Tukey–Kramer, a wider factor), so a row can be separated from the baseline and share its letter. Drawn from ${counts(runs.size, 'run')}.`,
      ...rows.flatMap((of) => {
        const instead = insteadSpans(view, standing, of);
        return instead.length === 0 ? [] : [' Not ranked: ', ...cellSpans(view, of.cell), ...instead, '.'];
      }),
    ],
    data: standingData(
      view,
      standing,
      `${noun} less the baseline, ${unit} (${[conditions, `oil ${standing.oil}`].filter((s) => s !== '').join(', ')})`,
    ),
    table: standingTable(view, standing, `${id}-table`),
  };
}

export function standingTable(view: View, standing: Standing, id: string): Table {
  const loss = isLoss(standing.quantity);
  return table(
    id,
    [
      'wide article and fill',
      'number difference',
      'number 95 %',
      'number all together',
      'group',
      'number places from the lowest',
      ...(chances(standing) ? ['number chance of lying lowest'] : []),
      'word',
      'basis',
      ...(loss ? [`number ${reachHead(view)}`, 'number pinion bearing above sump'] : []),
    ],
    shownRows(view, standing).map((of) => standingRow(view, standing, of, loss)),
  );
}

function standingRow(view: View, standing: Standing, of: StandingRow, loss: boolean): TableRow {
  const figure = of.effect ? effectFigure(view, of.effect) : undefined;
  const cells = row(
    cellSpans(view, of.cell),
    figure ? citedValue(view, figure) : of.baseline ? '0' : '—',
    figure ? doubtOf(figure) : '—',
    of.effect ? plusMinusText(standing.quantity, halfWidth(of.effect.simultaneous)) : '—',
    of.letters,
    placesText(of.places),
    ...(chances(standing) ? [of.lowest === null ? '—' : shareText(of.lowest)] : []),
    [...rowVerdict(of), ...insteadSpans(view, standing, of)],
    of.effect?.basis ?? '',
    ...(loss ? [reachSpans(view, of.cell), bearingSpans(view, of)] : []),
  );
  return of.baseline ? { ...cells, role: 'baseline' } : cells;
}

/** Trials were run, and some row has a chance. */
const chances = ({ rows }: Standing): boolean => rows.some(({ lowest }) => lowest !== null);

/** To a whole per cent, and no nearer to nothing or to all than the trials can tell. */
const shareText = (share: number): string =>
  share < 0.005 ? '< 1 %' : share > 0.995 ? '> 99 %' : `${numberText(share * 100, 0)} %`;

/** "1–2": the places that all pairs together leave it. */
const placesText = (places: StandingRow['places']): string =>
  places === null ? '—' : places[0] === places[1] ? String(places[0]) : places.join('–');

function standingData(view: View, standing: Standing, xTitle: string): StandingData {
  const q: QuantityName = standing.quantity;
  const draw = (si: number): number => inDisplay(q, shownDifference(q, si));
  return {
    kind: 'standing',
    xTitle,
    band: standing.smallest === null ? null : [-draw(standing.smallest), draw(standing.smallest)],
    rows: shownRows(view, standing).map(({ cell, effect, baseline, letters }) => ({
      label: articleWords(view, cell.article),
      detail: cellDetail(cell),
      mark: view.marks.get(cell.article) ?? 0,
      value: effect ? draw(effect.estimate.value) : baseline ? 0 : null,
      low: effect ? draw(effect.simultaneous[0]) : null,
      high: effect ? draw(effect.simultaneous[1]) : null,
      letters,
      baseline,
    })),
  };
}
