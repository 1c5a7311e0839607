import { gradeKinds } from '../../trial/flow.ts';
import type { FindClaim, FindRun, FindSeries } from '../../trial/find.ts';
import type { Ask } from './ask.ts';
import { bitOf, cellDiffers, conditionDiffers, runDiffers, type Differs } from './differs.ts';
import { nearestOf, type Near, type Offered } from './nearest.ts';

export interface FoundRun {
  readonly series: FindSeries;
  readonly run: FindRun;
}

/** A figure by its place in the columns of its series. */
export interface FoundFigure {
  readonly series: FindSeries;
  readonly at: number;
}

export interface FoundClaim {
  readonly series: FindSeries;
  readonly claim: FindClaim;
}

export interface Answer {
  /** Null: nothing was asked about what was run. */
  readonly tested: boolean | null;
  readonly runs: readonly FoundRun[];
  /** Run under these conditions, and no figure made of them. */
  readonly out: readonly FoundRun[];
  readonly figures: readonly FoundFigure[];
  readonly claims: readonly FoundClaim[];
  /** Only where it was not tested. */
  readonly nearest: readonly Near[];
}

/** Whether what words were found on allows for it; null: no words were asked. */
export interface WordsFound {
  readonly run: (of: FoundRun) => boolean;
  readonly claim: (of: FoundClaim) => boolean;
}

const mostNear = 8;

/**
 * What was run as it is asked, and what came of it. Whether it was tested is judged by conditions alone, never by words, a
 * grade given or a verdict: these only narrow what is shown.
 */
export function answerOf(all: readonly FindSeries[], ask: Ask, words: WordsFound | null = null): Answer {
  const asked = asksConditions(ask);
  const near = nearestOf();
  const found = all.map((series) => ofSeries(series, ask, words, near.offer));
  const tested = found.some((one) => one.tested);
  const shown = asked || ask.word !== '' || ask.value !== '' || words !== null;
  return {
    tested: asked ? tested : null,
    runs: shown ? found.flatMap(({ runs }) => runs) : [],
    out: shown ? found.flatMap(({ out }) => out) : [],
    figures: asked || ask.word !== '' || ask.value !== '' ? byKind(found.flatMap(({ figures }) => figures)) : [],
    claims: shown ? found.flatMap(({ claims }) => claims) : [],
    nearest: asked && !tested ? near.found(mostNear) : [],
  };
}

export const asksConditions = (ask: Ask): boolean =>
  [ask.trial, ask.kind, ask.article, ask.oil, ask.basis, ask.grade].some((text) => text !== '') ||
  [ask.fill_L, ask.speed_rpm, ask.sump].some((value) => value !== null);

type Offer = (of: Offered) => void;

function ofSeries(series: FindSeries, ask: Ask, words: WordsFound | null, offer: Offer) {
  const { figures, runs, subjects, quantities, conditions } = series;
  const byRun = runs.map((run) => runDiffers(series, run, ask));
  const byCell = series.cells.map((cell) => cellDiffers(series, cell, ask));
  const byCondition = conditions.map((condition) => conditionDiffers(series, condition, ask));
  const graded = quantities.map(([name]) => ask.grade === '' || name === ask.grade);
  const atOnce = ask.speed_rpm !== null || ask.sump !== null || ask.grade !== '';
  const tested = runs.map((run, i) => !atOnce && run[5] === null && byRun[i]!.mask === 0);
  if (!atOnce)
    runs.forEach((run, i) => {
      if (run[5] === null) offer({ ...byRun[i]!, series, run, condition: null });
    });
  else
    figures.subject.forEach((place, row) => {
      const run = subjects[place]![2];
      if (run < 0) return;
      const condition = figures.condition[row]!;
      const at = both(byRun[run]!, byCondition[condition]!);
      const mask = at.mask | (graded[figures.quantity[row]!] === true ? 0 : bitOf('grade'));
      if (mask === 0) tested[run] = true;
      offer({ mask, distance: at.distance, series, run: runs[run]!, condition: conditions[condition]! });
    });
  const cells = new Set(runs.flatMap((run, i) => (tested[i] === true ? [run[2]] : [])));
  const allows = (run: FindRun): boolean => words === null || words.run({ series, run });
  const narrowed = ask.word !== '' || ask.value !== '';
  const shownRuns = new Set<number>();
  const rows = figures.subject.flatMap((place, row): FoundFigure[] => {
    const [, , run, cell] = subjects[place]!;
    const quantity = figures.quantity[row]!;
    const [name, , trial] = quantities[quantity]!;
    if (byCondition[figures.condition[row]!]!.mask !== 0 || graded[quantity] !== true) return [];
    if (run >= 0 ? tested[run] !== true || !allows(runs[run]!) : !cells.has(cell) || words !== null) return [];
    if (ask.trial !== '' && trial !== ask.trial) return [];
    if (ask.value !== '' && !(isGrade(name) && figures.text[row] === ask.value)) return [];
    if (ask.word !== '' && !verdictHas(series, figures.verdict[row]!, ask.word)) return [];
    if (run >= 0) shownRuns.add(run);
    return [{ series, at: row }];
  });
  return {
    tested: tested.includes(true),
    runs: runs.flatMap((run, i): FoundRun[] =>
      tested[i] === true && allows(run) && (!narrowed || shownRuns.has(i)) ? [{ series, run }] : [],
    ),
    out: runs.flatMap((run, i): FoundRun[] =>
      run[5] !== null && !narrowed && byRun[i]!.mask === 0 && allows(run) ? [{ series, run }] : [],
    ),
    figures: rows,
    claims: series.claims.flatMap((claim): FoundClaim[] =>
      claimFits(claim) && (words === null || words.claim({ series, claim })) ? [{ series, claim }] : [],
    ),
  };

  function claimFits([, , word, clauses]: FindClaim): boolean {
    if (ask.word !== '' && word !== ask.word) return false;
    if (ask.grade !== '' || ask.value !== '') return false;
    return clauses.some(
      ([cell, against, quantity, condition]) =>
        byCondition[condition]!.mask === 0 &&
        (ask.trial === '' || quantities[quantity]![2] === ask.trial) &&
        [cell, against].some((each) => byCell[each]!.mask === 0) &&
        (ask.basis === '' || [cell, against].some((each) => cells.has(each))),
    );
  }
}

/** What was compared first, then what was found of a set-up, then of each run. */
const byKind = (figures: readonly FoundFigure[]): readonly FoundFigure[] => {
  const kind = ({ series, at }: FoundFigure): number => {
    const [, , run, , against] = series.subjects[series.figures.subject[at]!]!;
    return against >= 0 ? 0 : run < 0 ? 1 : 2;
  };
  return [0, 1, 2].flatMap((each) => figures.filter((figure) => kind(figure) === each));
};

const both = (a: Differs, b: Differs): Differs => ({ mask: a.mask | b.mask, distance: a.distance + b.distance });

const grades: ReadonlySet<string> = new Set(gradeKinds);
const isGrade = (quantity: string): boolean => grades.has(quantity);

const verdictHas = ({ verdicts }: FindSeries, place: number, word: string): boolean =>
  (verdicts[place] ?? '').split(', ').includes(word);
