import { estimate, type Cause } from '../quantity/estimate.ts';
import { weightedKappa } from '../statistics/kappa.ts';
import type { Series } from '../trial/book.ts';
import type { Agreement } from '../trial/compared.ts';
import type { DerivedRun, FlowStep } from '../trial/derived.ts';
import { gradeKinds, type Grade, type Graded, type GradeKind } from '../trial/flow.ts';
import * as texts from './texts-agreement.ts';

/** One step of one run that both observers looked at on their own. */
interface Item {
  readonly run: string;
  readonly step: FlowStep;
  readonly grades: readonly [Graded, Graded];
}

/**
 * How far every two observers agree on each kind of grade, over the steps of all runs that count; way up and way down are
 * steps of their own. Two who never looked at the same step are no pair.
 */
export function agreementsOf(given: {
  readonly runs: ReadonlyMap<string, DerivedRun>;
  readonly rule: Series['agreement'];
}): { readonly agreements: readonly Agreement[]; readonly causes: readonly Cause[] } {
  const counted = [...given.runs.values()]
    .filter((run) => run.leftOut === null)
    .sort((a, b) => a.order - b.order || compareText(a.run, b.run));
  const observers = observersOf(counted);
  const found = gradeKinds.flatMap((kind) =>
    pairsOf(observers).flatMap((pair) => {
      const items = itemsOf(counted, kind, pair);
      return items.length === 0 ? [] : [agreementOf({ kind, pair, observers, items, rule: given.rule })];
    }),
  );
  return {
    agreements: found.map(({ agreement }) => agreement),
    causes: found.flatMap(({ cause }) => (cause === null ? [] : [cause])),
  };
}

function agreementOf(of: {
  readonly kind: GradeKind;
  readonly pair: readonly [string, string];
  readonly observers: readonly string[];
  readonly items: readonly Item[];
  readonly rule: Series['agreement'];
}): { readonly agreement: Agreement; readonly cause: Cause | null } {
  const { kind, pair, items } = of;
  const both = items.flatMap(({ run, grades: [a, b] }) => (a === 'ng' || b === 'ng' ? [] : [{ run, a, b }]));
  const table = tableOf(both);
  const found = weightedKappa(table);
  const counts = {
    n: both.length,
    equal: both.filter(({ a, b }) => a === b).length,
    withinOne: both.filter(({ a, b }) => Math.abs(a - b) <= 1).length,
  };
  // Counted, not named: an id may stand where initials may not.
  const cause: Cause = {
    id: `agreement:${kind}:${pair.map((name) => String(of.observers.indexOf(name) + 1)).join('-')}`,
    name: 'spread of the graded steps',
    kind: 'scatter',
    distribution: 'normal',
    dof: Infinity,
    scope: 'series',
  };
  return {
    cause: found === null ? null : cause,
    agreement: {
      grade: kind,
      observers: pair,
      ...counts,
      notGraded: items.length - both.length,
      kappa: found === null ? null : estimate(found.kappa, [{ cause: cause.id, u: found.standardError }]),
      leavingOneRunOut: leavingOneRunOut(both),
      ...judged({ ...counts, kappa: found?.kappa ?? null, table, rule: of.rule, restsOn: restsOn(both) }),
      table,
      differ: differing(items, kind, pair),
    },
  };
}

interface Pair {
  readonly run: string;
  readonly a: Grade;
  readonly b: Grade;
}

function tableOf(pairs: readonly Pair[]): readonly (readonly number[])[] {
  const table = grades.map(() => grades.map(() => 0));
  for (const { a, b } of pairs) table[a]![b]! += 1;
  return table;
}

/** Null with fewer than three runs, and when what is left of one of them has no kappa: then the rest says nothing either. */
function leavingOneRunOut(pairs: readonly Pair[]): readonly [number, number] | null {
  const runs = [...new Set(pairs.map(({ run }) => run))];
  const left = runs.map((out) => weightedKappa(tableOf(pairs.filter(({ run }) => run !== out)))?.kappa ?? null);
  const known = left.filter((kappa) => kappa !== null);
  return runs.length < 3 || known.length < left.length ? null : [Math.min(...known), Math.max(...known)];
}

/** The one run without which no spread is left to agree on; null when there is none, or nothing besides it. */
function restsOn(pairs: readonly Pair[]): string | null {
  const runs = [...new Set(pairs.map(({ run }) => run))];
  const bare = runs.filter((out) => weightedKappa(tableOf(pairs.filter(({ run }) => run !== out))) === null);
  return runs.length > 1 && bare.length === 1 ? bare[0]! : null;
}

/** Both conditions of the series must hold; without a kappa the second one does not. */
function judged(of: {
  readonly n: number;
  readonly equal: number;
  readonly withinOne: number;
  readonly kappa: number | null;
  readonly table: Agreement['table'];
  readonly rule: Series['agreement'];
  readonly restsOn: string | null;
}): Pick<Agreement, 'usable' | 'why'> {
  if (of.n === 0) return { usable: false, why: texts.nothingGraded };
  const within = { of: of.withinOne / of.n, limit: of.rule.withinOne_ratio };
  const failed = within.of < within.limit - rounding ? [texts.fewWithinOne(within)] : [];
  if (of.kappa === null) return { usable: false, why: [noSpread(of), ...failed].join('; ') };
  const kappa = { of: of.kappa, limit: of.rule.kappa };
  const pairs = Math.max(...of.table.map((row, i) => row[i]!));
  // A kappa of little spread is told to be one whichever way it falls.
  const mostly = pairs >= mostly_ratio * of.n ? [texts.mostlyOne({ pairs, n: of.n })] : [];
  const one = of.restsOn === null ? [] : [texts.restsOnOneRun(of.restsOn)];
  if (kappa.of < kappa.limit - rounding) failed.unshift(texts.kappaUnder(kappa), ...mostly);
  return failed.length === 0
    ? {
        usable: true,
        why: [texts.agreed({ kappa, within, allEqual: of.equal === of.n }), ...mostly, ...one].join('; '),
      }
    : { usable: false, why: [...failed, ...one].join('; ') };
}

/** Limits are typed as decimals: 0.9 of 10 pairs is 9. */
const rounding = 1e-9;

/** From this share on in one grade, a kappa is said to have little spread to go by (our rule). */
const mostly_ratio = 0.8;

function noSpread({ n, table }: { readonly n: number; readonly table: Agreement['table'] }): string {
  if (n === 1) return texts.onePair;
  if (table.some((row, i) => row[i] === n)) return texts.oneGrade;
  return table.some((row) => row.some((count) => count === n)) ? texts.oneGradeEach : texts.oneSided;
}

/** What is worth a joint look, largest difference first; a step that one could grade and the other could not comes last. */
function differing(items: readonly Item[], kind: GradeKind, pair: readonly [string, string]): Agreement['differ'] {
  return items
    .filter(({ grades: [a, b] }) => a !== b)
    .map((item, place) => ({ item, place, size: sizeOf(item.grades) }))
    .sort((a, b) => b.size - a.size || a.place - b.place)
    .map(({ item: { run, step, grades: both } }) => {
      const own = pair.flatMap((name) => step.observations.filter((o) => o.observer === name && o.pass === 'first'));
      const seen = own.find((o) => o.clip !== null && o.from_s !== null) ?? own.find((o) => o.clip !== null);
      return {
        run,
        step: step.step,
        grades: both,
        joint: step.observations.find((o) => o.pass === 'joint')?.grades[kind] ?? null,
        clip: seen?.clip ?? null,
        from_s: seen?.from_s ?? null,
      };
    });
}

const sizeOf = ([a, b]: readonly [Graded, Graded]): number => (a === 'ng' || b === 'ng' ? 0 : Math.abs(a - b));

const grades: readonly Grade[] = [0, 1, 2, 3, 4];

const stepsOf = (run: DerivedRun): readonly FlowStep[] => run.flow?.steps ?? [];

/** Everybody who graded on their own in these runs, in order of their names. */
const observersOf = (runs: readonly DerivedRun[]): readonly string[] =>
  [
    ...new Set(
      runs
        .flatMap(stepsOf)
        .flatMap((step) => gradeKinds.flatMap((kind) => step.grades?.[kind].first.map((f) => f.observer) ?? [])),
    ),
  ].sort(compareText);

const pairsOf = (names: readonly string[]): readonly (readonly [string, string])[] =>
  names.flatMap((first, i) => names.slice(i + 1).map((second) => [first, second] as const));

function itemsOf(runs: readonly DerivedRun[], kind: GradeKind, pair: readonly [string, string]): readonly Item[] {
  return runs.flatMap((run) =>
    stepsOf(run).flatMap((step): Item[] => {
      const [a, b] = pair.map((name) => step.grades?.[kind].first.find((f) => f.observer === name)?.grade);
      return a === undefined || b === undefined ? [] : [{ run: run.run, step, grades: [a, b] }];
    }),
  );
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
