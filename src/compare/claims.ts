import { difference, effectiveDof, standardUncertainty, type CauseTable, type Estimate } from '../quantity/estimate.ts';
import { holm } from '../statistics/holm.ts';
import { coverageFactor, tTail } from '../statistics/student.ts';
import type { Series } from '../trial/book.ts';
import type { Claim, ClaimWord, Clause } from '../trial/claim.ts';
import type { ByTrials, CellFigure, Effect, JudgedClaim, JudgedClause, Standing } from '../trial/compared.ts';
import type { DerivedRun } from '../trial/derived.ts';
import { quantityKinds } from '../trial/figures.ts';
import { publishedInterval, type SeriesTrials } from './by-trials.ts';
import { conditionsDiffer } from './conditions.ts';
import { refitsNeeded } from './refits-needed.ts';
import { atKey, cellKey } from './group.ts';
import { inCampaign, notBridged } from './claim-campaign.ts';
import { splitOf, splitTrials } from './splits.ts';
import * as pairTexts from './texts.ts';
import * as texts from './texts-claims.ts';
import { ownInterval, wholeWord, wordOf } from './verdict.ts';

interface Known {
  readonly cells: readonly CellFigure[];
  readonly effects: readonly Effect[];
  readonly standings: readonly Standing[];
  readonly runs: ReadonlyMap<string, DerivedRun>;
  readonly causes: CauseTable;
  readonly series: Series;
  readonly trials: SeriesTrials | null;
}

/**
 * Every claim held against the runs: its word by the rule, what it rests on, and what the word would be in the family of all
 * claims that were made before their data. Differences that no standing holds are given as effects of their own.
 */
export function judgeClaims(claims: readonly Claim[], known: Known): { claims: JudgedClaim[]; effects: Effect[] } {
  const judged = claims.map((claim) => {
    const clauses = claim.clauses.map((clause) => judgeClause(inCampaign(clause, known.cells), known));
    return {
      claim: claim.id,
      clauses,
      word: wholeWord(clauses.map(({ word }) => word)),
      late: isLate(claim, clauses, known),
      indicative: [...new Set(clauses.flatMap(({ clause }) => indicativeOf(clause, known)))],
    };
  });
  const early = judged.filter(({ late }) => !late).flatMap(({ clauses }) => clauses);
  const family = inFamily(early, known);
  return {
    claims: judged.map((j) => ({
      ...j,
      clauses: j.clauses.map((c) => ({ ...c, inFamily: family.get(c) ?? null })),
    })),
    effects: judged.flatMap(({ clauses }) => clauses.flatMap((c) => ownEffect(c, known))),
  };
}

const figureOf = (cell: Clause['subject'], { at, quantity }: Clause, { cells }: Known): CellFigure | undefined => {
  const of = quantity === 'makes-less-share' ? 'final-rise' : quantity;
  return cells.find((c) => c.quantity === of && cellKey(c.cell) === cellKey(cell) && atKey(c.at) === atKey(at));
};

const indicativeOf = (clause: Clause, known: Known): readonly string[] =>
  [clause.subject, clause.against].flatMap((cell) => figureOf(cell, clause, known)?.indicative ?? []);

function judgeClause(clause: Clause, known: Known): JudgedClause {
  const { subject, against, quantity } = clause;
  const of = quantity === 'makes-less-share' ? 'final-rise' : quantity;
  const both = [subject, against].map((cell) => ({ cell, figure: figureOf(cell, clause, known) }));
  const words = quantityKinds[of].name;
  const missing = both.flatMap(({ cell, figure: f }) =>
    f?.estimate != null
      ? []
      : [f === undefined ? texts.noFigure({ cell, quantity: words }) : texts.onlyBound({ cell, quantity: words })],
  );
  const runsOf = (f: CellFigure | undefined): DerivedRun[] => (f?.runs ?? []).flatMap((id) => known.runs.get(id) ?? []);
  const [own, other] = both.map(({ figure: f }) => runsOf(f));
  const runs = [...new Set(both.flatMap(({ figure: f }) => f?.runs ?? []))];
  const why = [
    ...missing,
    ...notBridged(both.map(({ figure: f }) => f)),
    ...(missing.length > 0
      ? []
      : conditionsDiffer({ quantity: of, series: known.series, runs: own ?? [], againstRuns: other ?? [] })),
    ...new Set(both.flatMap(({ figure: f }) => (f?.unranked == null ? [] : [unrankedWords(f.unranked)]))),
    ...(quantity === 'makes-less-share' &&
    missing.length === 0 &&
    !wholeApart(clause, both[0]!.figure!, both[1]!.figure!, known)
      ? [texts.shareOfNothing]
      : []),
  ];
  const blank = { clause, inFamily: null, runs, needed: [] };
  const estimate = why.length > 0 ? null : estimateOf(clause, both[0]!.figure!, both[1]!.figure!, known);
  if (estimate === null)
    return {
      ...blank,
      estimate: null,
      interval: null,
      trials: null,
      word: 'cannot tell',
      why: why.length > 0 ? why : [texts.noSplit],
      smallest: null,
    };
  const trials = trialsOf(clause, estimate, known);
  const interval = publishedInterval(ownInterval(estimate, known.causes, known.series.coverage), trials);
  return {
    ...blank,
    estimate,
    interval,
    trials,
    word: wordOf(clause, estimate.value, interval),
    why: [],
    smallest: (interval[1] - interval[0]) / 2,
    needed: refitsNeeded({
      gap: Math.abs(turned(clause, estimate.value) - clause.threshold),
      scatter: known.standings.find(
        (st) => st.quantity === quantity && atKey(st.at) === atKey(clause.at) && st.repeatability !== null,
      )?.repeatability?.s,
      sides: quantity === 'makes-less-share' ? null : both.map(({ figure: f }) => f!),
      ...{ causes: known.causes, coverage: known.series.coverage },
    }),
  };
}

const unrankedWords = (why: string): string => (why === pairTexts.noRepeat ? texts.noScatter : why);

function trialsOf(clause: Clause, estimate: Estimate, { trials, cells }: Known): ByTrials | null {
  if (trials === null) return null;
  if (clause.quantity !== 'makes-less-share') return trials.ofSum(estimate);
  const found = splitOf(clause.subject, clause.against, cells);
  return found === null ? null : splitTrials(found, trials, true).share;
}

/** Whether the whole difference in rise is separated: by the standing where one holds it, else by its own interval. */
function wholeApart(clause: Clause, own: CellFigure, other: CellFigure, known: Known): boolean {
  const held = known.effects.find(
    (e) =>
      e.quantity === 'final-rise' &&
      cellKey(e.cell) === cellKey(clause.subject) &&
      cellKey(e.against) === cellKey(clause.against),
  );
  if (held !== undefined) return held.separated;
  const [low, high] = ownInterval(difference(own.estimate!, other.estimate!), known.causes, known.series.coverage);
  return low > 0 || high < 0;
}

const estimateOf = (clause: Clause, own: CellFigure, other: CellFigure, known: Known): Estimate | null =>
  clause.quantity === 'makes-less-share'
    ? (splitOf(clause.subject, clause.against, known.cells)?.share ?? null)
    : own.estimate === null || other.estimate === null
      ? null
      : difference(own.estimate, other.estimate);

const turned = ({ direction }: Clause, value: number): number =>
  direction === 'lower' ? -value : direction === 'within' ? Math.abs(value) : value;

function isLate(claim: Claim, clauses: readonly JudgedClause[], { runs }: Known): boolean {
  const days = clauses.flatMap((c) => c.runs.flatMap((id) => runs.get(id)?.startedDay ?? [])).sort();
  const [first] = days;
  return first !== undefined && claim.made >= first;
}

/**
 * The words when all claims that were made before their data share one error rate: one-sided tails adjusted by Holm, at half
 * of what the interval leaves out. A word that does not survive falls to what an interval just wide enough would say.
 */
function inFamily(clauses: readonly JudgedClause[], { causes, series }: Known): Map<JudgedClause, ClaimWord> {
  const held = clauses.filter(({ word }) => word === 'shown' || word === 'shown against');
  const level = (1 - series.coverage) / 2;
  const adjusted = holm(held.map((c) => tailOf(c, causes)));
  return new Map(held.flatMap((c, i): [JudgedClause, ClaimWord][] => (adjusted[i]! <= level ? [] : [[c, weaker(c)]])));
}

/** One-sided tail of what the word denies. */
function tailOf({ clause, estimate, word }: JudgedClause, causes: CauseTable): number {
  if (estimate === null) return 1;
  const u = standardUncertainty(estimate);
  const beyond = (turned(clause, estimate.value) - clause.threshold) / u;
  const sign = (clause.direction === 'within') === (word === 'shown') ? -1 : 1;
  const t = sign * beyond;
  const both = tTail(t, effectiveDof(estimate, causes));
  return t > 0 ? both / 2 : 1 - both / 2;
}

const weaker = ({ clause, estimate }: JudgedClause): ClaimWord =>
  clause.threshold === 0 || estimate === null || turned(clause, estimate.value) <= 0 ? 'not shown' : 'leaning';

/** A difference that the claim names and no standing holds, so that it has a figure like any other. */
function ownEffect(judged: JudgedClause, all: Known): Effect[] {
  const { effects, causes, cells, series } = all;
  const { clause, estimate, interval, trials } = judged;
  if (estimate === null || interval === null || clause.quantity === 'makes-less-share') return [];
  const { subject: cell, against, quantity, at } = clause;
  const known = effects.some(
    (e) =>
      e.quantity === quantity &&
      atKey(e.at) === atKey(at) &&
      cellKey(e.cell) === cellKey(cell) &&
      cellKey(e.against) === cellKey(against),
  );
  if (known) return [];
  const dof = effectiveDof(estimate, causes);
  const indicative = [...new Set(indicativeOf(clause, all))];
  const runsOf = (of: Clause['subject']): readonly string[] =>
    cells.find((c) => c.quantity === quantity && cellKey(c.cell) === cellKey(of) && atKey(c.at) === atKey(at))?.runs ??
    [];
  return [
    {
      ...{ cell, against, quantity, at, estimate, interval, trials, simultaneous: interval, dof },
      margin: null,
      indicative,
      k: coverageFactor(series.coverage, dof),
      separated: indicative.length === 0 && (interval[0] > 0 || interval[1] < 0),
      basis: 'named by the claim',
      runs: runsOf(cell),
      againstRuns: runsOf(against),
      notes: [],
    },
  ];
}
