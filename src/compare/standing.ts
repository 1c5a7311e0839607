import { difference, effectiveDof, standardUncertainty, type CauseTable } from '../quantity/estimate.ts';
import { compactLetters } from '../statistics/letters.ts';
import { rankIntervals } from '../statistics/rank-intervals.ts';
import { coverageFactor } from '../statistics/student.ts';
import type { Series } from '../trial/book.ts';
import type { CellFigure, Effect, Refusal, Standing, StandingRow } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import { wanderFromCauses } from './baseline.ts';
import { publishedInterval, type SeriesTrials } from './by-trials.ts';
import { boundedCells, cellFigures } from './cell-figures.ts';
import { againstBaseline, apart, beyondBaseline } from './family.ts';
import { atKey, byArticle, cellKey, type Group } from './group.ts';
import { againstMargin } from './margin.ts';
import { pairing } from './pair.ts';
import type { Celled } from './repeated.ts';
import * as texts from './texts.ts';

export interface Judged {
  readonly cells: readonly CellFigure[];
  readonly effects: readonly Effect[];
  readonly refusals: readonly Refusal[];
  readonly standings: readonly Standing[];
}

type Row = Celled['cells'][number];

/** One standing an oil and tilt, each against the baseline article at the reference fill in that oil and tilt. */
export function judge(input: {
  group: Group;
  celled: Celled;
  causes: CauseTable;
  series: Series;
  plan: Pick<Plan, 'factors'> | null;
  /** Null where none are run, as when a choice is only tried. */
  trials: SeriesTrials | null;
  /** Only words are asked, as when a choice is tried: no letters, no places, and intervals of each one's own. */
  wordsOnly?: boolean;
}): Judged {
  const { group, celled: asFound, causes, series, plan, trials, wordsOnly = false } = input;
  const isBase = (cell: Cell): boolean =>
    cell.article === series.baseline.article &&
    Math.abs(cell.fill_m3 - series.baseline.fill_m3) <= series.tolerance.fill_m3;
  const celled = withWander(asFound, { isBase, causes });
  const { quantity, at, trial } = group;
  const effects: Effect[] = [];
  const refusals: Refusal[] = [];
  const pairOf = (row: Row, base: Row) =>
    pairing({
      cell: row.cell,
      against: base.cell,
      runs: row.runs.map((r) => r.run),
      againstRuns: base.runs.map((r) => r.run),
      quantity,
      series,
      plan,
    });
  const compare = (row: Row, base: Row, rivals: readonly Row[]): Effect | null => {
    const pair = pairOf(row, base);
    if (!pair.ok || celled.unranked !== null) {
      const reasons = [...(pair.ok ? [] : pair.reasons), ...(celled.unranked === null ? [] : [celled.unranked])];
      refusals.push({ cell: row.cell, against: base.cell, quantity, reasons });
      return null;
    }
    const estimate = difference(row.estimate, base.estimate);
    const u = standardUncertainty(estimate);
    const dof = effectiveDof(estimate, causes);
    const k = coverageFactor(series.coverage, dof);
    const family = { row, base, rivals, celled, series, dof };
    const wide = wordsOnly ? k : againstBaseline(family);
    const around = (half: number): readonly [number, number] => [estimate.value - half, estimate.value + half];
    const drawn = trials?.ofSum(estimate) ?? null;
    const both = [...row.runs, ...base.runs].map((r) => r.run);
    return {
      cell: row.cell,
      against: base.cell,
      quantity,
      at,
      estimate,
      interval: publishedInterval(around(k * u), drawn),
      trials: drawn,
      margin: againstMargin({ estimate, quantity, runs: both, series, causes }),
      indicative: celled.indicative,
      simultaneous: around(wide * u),
      k,
      dof,
      separated:
        celled.indicative.length === 0 &&
        (wordsOnly ? beyondBaseline(family, Math.abs(estimate.value) / u) : Math.abs(estimate.value) > wide * u),
      basis: pair.basis,
      runs: row.runs.map((r) => r.run.run),
      againstRuns: base.runs.map((r) => r.run.run),
      ...movedOf(row, base),
      notes: [...celled.notes, ...inherited([...row.runs, ...base.runs], quantity)],
    };
  };

  const refuse = (cell: Cell, reasons: readonly string[]): void => {
    const { article, fill_m3 } = series.baseline;
    refusals.push({ cell, against: { ...cell, article, fill_m3 }, quantity, reasons });
  };
  for (const m of group.mixed) if (!isBase(m.cell)) refuse(m.cell, m.reasons);

  const standings = tables(celled.cells).map(({ oil, tilt_ratio, rows }): Standing | null => {
    const base = rows.find((r) => isBase(r.cell));
    const inTable = (cell: Cell): boolean => cell.oil === oil && cell.tilt_ratio === tilt_ratio;
    const mixed = group.mixed.filter((m) => inTable(m.cell));
    if (base === undefined) {
      const broken = mixed.find((m) => isBase(m.cell));
      const reached = group.bounded.find((b) => inTable(b.run.cell) && isBase(b.run.cell));
      const why =
        broken !== undefined
          ? texts.mixedBaseline(broken.reasons)
          : reached === undefined
            ? texts.noBaseline(oil, tilt_ratio)
            : texts.baselineNotReached(reached.at / 60);
      for (const r of rows) refuse(r.cell, [why]);
      return null;
    }
    if (rows.length < 2) return null;
    const rivals = rows.filter((r) => r === base || pairOf(r, base).ok);
    const family = rivals.length;
    const judged = new Map(rows.map((r) => [cellKey(r.cell), r === base ? null : compare(r, base, rivals)]));
    const ranked = rows.filter((r) => r === base || judged.get(cellKey(r.cell)) !== null);
    const separated = (a: string, b: string): boolean => apart({ ranked, family, celled, causes, series }, a, b);
    const firm = !wordsOnly && celled.unranked === null && celled.indicative.length === 0;
    const places = rankIntervals({
      values: new Map(firm ? ranked.map((r) => [cellKey(r.cell), r.estimate.value]) : []),
      separated,
    });
    const chances = trials?.lowest(ranked.map((r) => r.estimate)) ?? null;
    const lowest = new Map(ranked.map((r, i) => [cellKey(r.cell), chances?.[i] ?? null]));
    const letters = compactLetters({
      order: (firm ? [...ranked] : []).sort((a, b) => a.estimate.value - b.estimate.value).map((r) => cellKey(r.cell)),
      separated,
    });
    for (const e of judged.values()) if (e !== null) effects.push(e);
    const list: StandingRow[] = [
      ...rows.map((r): StandingRow => {
        const key = cellKey(r.cell);
        const refused = refusals.find((x) => cellKey(x.cell) === key && cellKey(x.against) === cellKey(base.cell));
        return {
          cell: r.cell,
          effect: judged.get(key) ?? null,
          baseline: r === base,
          letters: firm ? (letters.get(key) ?? '') : '',
          places: firm ? (places.get(key) ?? null) : null,
          lowest: celled.unranked === null ? (lowest.get(key) ?? null) : null,
          refused: refused?.reasons ?? [],
        };
      }),
      ...[
        ...boundedCells(group)
          .filter((b) => inTable(b.cell))
          .map((b) => ({ cell: b.cell, refused: [texts.notReached(b.at / 60)] })),
        ...mixed.map((m) => ({ cell: m.cell, refused: m.reasons })),
      ].map((row): StandingRow => ({ ...row, effect: null, baseline: false, letters: '', places: null, lowest: null })),
    ];
    const shown = [...judged.values()].filter((e): e is Effect => e !== null);
    return {
      id: [quantity, atKey(at), oil, tilt_ratio, ...(group.campaign === undefined ? [] : [group.campaign])].join('|'),
      ...(group.campaign === undefined ? {} : { campaign: group.campaign }),
      trial,
      quantity,
      at,
      oil,
      against: base.cell,
      rows: list.sort((a, b) => byArticle(a.cell, b.cell)),
      repeatability: celled.repeatability,
      drift: celled.drift,
      // Told of the table whose baseline it is; it withholds the others all the same.
      wander:
        cellKey(base.cell) === cellKey({ ...base.cell, ...series.baseline, tilt_ratio: 0 }) ? celled.wander : null,
      days: celled.days,
      indicative: celled.indicative,
      smallest: shown.length === 0 ? null : Math.min(...shown.map((e) => (e.simultaneous[1] - e.simultaneous[0]) / 2)),
      notes: celled.notes,
    };
  });
  besides(celled.cells, series, (row, base) => {
    const e = compare(row, base, [row, base]);
    if (e !== null) effects.push(e);
  });
  return {
    cells: cellFigures(group, celled),
    effects,
    refusals,
    standings: standings.filter((s): s is Standing => s !== null),
  };
}

/** Runs whose scatter comes from causes: whether the baseline's own lie apart further than those allow. */
function withWander(celled: Celled, of: { isBase: (cell: Cell) => boolean; causes: CauseTable }): Celled {
  if (celled.repeatability !== null || celled.unranked !== null) return celled;
  const list = celled.cells.filter(({ cell }) => of.isBase(cell)).map(({ runs }) => wanderFromCauses(runs, of.causes));
  const wander = list.find((w) => w?.wandered === true) ?? list.find((w) => w !== null) ?? null;
  if (wander?.wandered !== true) return { ...celled, wander };
  const unranked = texts.baselineWandered({ runs: wander.runs, times: wander.s / wander.against });
  return { ...celled, wander, unranked };
}

function tables(cells: readonly Row[]): { oil: string; tilt_ratio: number; rows: Row[] }[] {
  const found = new Map<string, { oil: string; tilt_ratio: number; rows: Row[] }>();
  for (const row of cells) {
    const { oil, tilt_ratio } = row.cell;
    const key = `${oil}|${tilt_ratio}`;
    const table = found.get(key) ?? { oil, tilt_ratio, rows: [] };
    table.rows.push(row);
    found.set(key, table);
  }
  return [...found.values()].sort((a, b) => (a.oil < b.oil ? -1 : a.oil > b.oil ? 1 : a.tilt_ratio - b.tilt_ratio));
}

/** Pairs outside the tables that change one thing only: the oil, the tilt, or the article at a fill the baseline has too. */
function besides(cells: readonly Row[], series: Series, compare: (row: Row, base: Row) => void): void {
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= series.tolerance.fill_m3;
  for (const row of cells) {
    for (const base of cells) {
      if (row === base) continue;
      const [c, b] = [row.cell, base.cell];
      const sameFill = near(c.fill_m3, b.fill_m3);
      const otherOil = c.article === b.article && sameFill && c.tilt_ratio === b.tilt_ratio && c.oil !== b.oil;
      const otherTilt =
        c.article === b.article && sameFill && c.oil === b.oil && c.tilt_ratio !== 0 && b.tilt_ratio === 0;
      const otherFill =
        c.oil === b.oil &&
        c.tilt_ratio === b.tilt_ratio &&
        c.article !== b.article &&
        sameFill &&
        b.article === series.baseline.article &&
        !near(b.fill_m3, series.baseline.fill_m3);
      const fromReference = otherOil && b.oil === series.baseline.oil;
      if (fromReference || otherTilt || otherFill) compare(row, base);
    }
  }
}

const movedOf = (row: Row, base: Row): Pick<Effect, 'moved'> => {
  const moved = [...(row.moved ?? []), ...(base.moved ?? [])];
  return moved.length === 0 ? {} : { moved };
};

/** Flags of the runs behind a figure, each once. */
const inherited = (runs: Row['runs'], quantity: Group['quantity']): string[] => [
  ...new Set(runs.flatMap((r) => r.run.results.filter((x) => x.quantity === quantity).flatMap((x) => x.flags ?? []))),
];
