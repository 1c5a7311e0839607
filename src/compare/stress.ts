import type { Effect, Standing } from '../trial/compared.ts';
import type { QuantityName } from '../trial/figures.ts';
import type { Choice, Step, Stressed, StressInput, StressTable, StressWord, StepWord } from '../trial/stress.ts';
import { celledSeries, isRefitGroup, type CelledSeries } from './celled.ts';
import { judgeClaims } from './claims.ts';
import { atKey, cellKey, type Group } from './group.ts';
import { judge } from './standing.ts';
import {
  choicesOf,
  figureOf,
  seenIn,
  triedWith,
  turnedPair,
  withChoice,
  type Pair,
  type Seen,
} from './stress-choices.ts';
import { opened, type Opened } from './stress-open.ts';

/** What may be put under stress: a claim, or a step of a main standing. */
export type Subject =
  | ({ readonly kind: 'claim'; readonly claim: string } & Rests)
  | ({ readonly kind: 'step'; readonly step: Step } & Rests);

interface Rests {
  readonly pairs: readonly Pair[];
  /** Runs of its cells, and those that the scatter of a refit is taken from. */
  readonly runs: ReadonlySet<string>;
}

/** The words under some choices, and what they came from. */
export interface Told {
  /** Null where the runs that it needs are not there. */
  readonly wordOf: (subject: Subject) => StressWord | null;
  readonly groups: CelledSeries['groups'];
  readonly seen: Seen;
  readonly standings: readonly Standing[];
}

/** Every claim and every step of the main standings under each other choice, one at a time. */
export function stressTable(input: StressInput): StressTable {
  const as = opened(input);
  const base = toldUnder(as, []);
  const subjects = subjectsOf(as, base);
  const rows = new Map<Subject, { choice: Choice; word: StressWord }[]>(subjects.map((subject) => [subject, []]));
  for (const choice of choicesOf(as))
    for (const [subject, word] of triedOne({ as, base, subjects, choice })) rows.get(subject)?.push({ choice, word });
  const stressed = (subject: Subject, otherwise: StressWord): Stressed => {
    const word = base.wordOf(subject) ?? otherwise;
    const list = rows.get(subject) ?? [];
    return { word, holds: list.filter((row) => row.word === word).length, of: list.length, rows: list };
  };
  return {
    claims: subjects.flatMap((s) => (s.kind === 'claim' ? [{ claim: s.claim, ...stressed(s, 'cannot tell') }] : [])),
    steps: subjects.flatMap((s) => (s.kind === 'step' ? [{ step: s.step, ...stressed(s, 'not ranked') }] : [])),
  };
}

/** The words of those subjects that one choice more touches, and that it leaves something to tell of. */
export function triedOne(of: {
  readonly as: Opened;
  readonly base: Told;
  readonly subjects: readonly Subject[];
  readonly choice: Choice;
  /** Choices that are made otherwise already. */
  readonly taken?: readonly Choice[];
}): Map<Subject, StressWord> {
  const { as, base, subjects, choice, taken = [] } = of;
  const touched = subjects.filter((subject) => touches(choice, subject, { as, base }));
  if (touched.length === 0) return new Map();
  const told = toldUnder(as, withChoice(taken, choice));
  const real = choice.kind === 'drift' ? touched.filter((s) => drifts(s, as, base) || drifts(s, as, told)) : touched;
  return new Map(
    real.flatMap((subject) => {
      const word = told.wordOf(subject);
      return word === null ? [] : [[subject, word] as const];
    }),
  );
}

export function toldUnder(as: Opened, choices: readonly Choice[]): Told {
  const { opened: now, drift, wider } = triedWith(as, choices);
  const { series, plan, runs } = now;
  const seen = seenIn(runs);
  const turned = <P extends Pair>(pair: P): P => turnedPair(pair, choices, seen, now);
  const claims = now.claims.map((claim) => ({ ...claim, clauses: claim.clauses.map(turned) }));
  const only = askedGroups(now, claims, choices);
  const { groups, causes } = celledSeries(now, runs, { drift, wider, only });
  const judged = groups.map((of) => judge({ ...of, causes, series, plan, trials: null, wordsOnly: true }));
  const effects = judged.flatMap((j) => j.effects);
  const standings = judged.flatMap((j) => j.standings);
  const words = judgeClaims(claims, {
    ...{ cells: judged.flatMap((j) => j.cells), effects, standings: [], runs, causes, series, trials: null },
  });
  const byClaim = new Map(
    words.claims.map(({ claim, word, indicative }): [string, StressWord] => [
      claim,
      indicative.length > 0 && word !== 'cannot tell' ? 'indicative' : word,
    ]),
  );
  const steps = new Map(
    standings.flatMap(({ rows }) => rows.flatMap(({ effect }) => (effect ? [[keyOf(effect), effect]] : []))),
  );
  return {
    groups,
    seen,
    standings,
    wordOf: (subject) => {
      const pairs = subject.pairs.map(turned);
      if (!pairs.every((pair) => canBeTold(pair, seen))) {
        // What every run would tell, and these do not, is a word that was lost; what was never run is none.
        const all = seenIn(as.runs);
        const lost = subject.pairs.every((pair) => canBeTold(turnedPair(pair, choices, all, as), all));
        return lost ? (subject.kind === 'claim' ? 'cannot tell' : 'not ranked') : null;
      }
      if (subject.kind === 'claim') return byClaim.get(subject.claim) ?? null;
      const [pair] = pairs;
      const { quantity, at, subject: cell } = pair!;
      return stepWord(steps.get(keyOf({ quantity, at, cell })));
    },
  };
}

export function stepWord(effect: Effect | undefined): StepWord {
  if (effect === undefined) return 'not ranked';
  if (effect.indicative.length > 0) return 'indicative';
  if (!effect.separated) return 'not separated';
  return effect.estimate.value < 0 ? 'separated below' : 'separated above';
}

const keyOf = ({ quantity, at, cell }: Step): string => `${quantity}|${atKey(at)}|${cellKey(cell)}`;

const canBeTold = ({ quantity, at, subject, against }: Pair, seen: Seen): boolean =>
  [subject, against].every((cell) => seen.runs(quantity, at, cell).length > 0);

/** Quantities whose order is the answer to a question of the trade; the claims name others. */
const ranked: readonly QuantityName[] = ['spin-power', 'final-rise', 'heat-made', 'shed', 'limit-crossing', 'bearing-rise']; // prettier-ignore

/** Groups that a claim or a step asks for under these choices; a share is made of rise and heat. */
function askedGroups(as: Opened, claims: Opened['claims'], choices: readonly Choice[]): (group: Group) => boolean {
  const claimed = new Set(
    claims.flatMap(({ clauses }) => clauses.map(({ quantity, at }) => `${figureOf(quantity)}|${atKey(at)}`)),
  );
  const { reference } = as.series;
  const asked = { sump_K: reference.mainSump_K, limit_K: reference.mainLimit_K, ...conditionsIn(choices) };
  return (group) =>
    claimed.has(`${group.quantity}|${atKey(group.at)}`) ||
    (ranked.includes(group.quantity) && isAt(group, as, asked)) ||
    isRefitGroup(group, as);
}

function conditionsIn(choices: readonly Choice[]): Partial<MainAt> {
  const sump = choices.find((c) => c.kind === 'sump');
  const limit = choices.find((c) => c.kind === 'limit');
  return {
    ...(sump === undefined ? {} : { sump_K: sump.sump_K }),
    ...(limit === undefined ? {} : { limit_K: limit.limit_K }),
  };
}

/** Claims in the order of the house, then the steps of the main standings that have a difference. */
export function subjectsOf(as: Opened, base: Told): readonly Subject[] {
  const rests = (pairs: readonly Pair[]): Rests => ({
    pairs,
    runs: new Set(pairs.flatMap((pair) => restsOn(pair, as, base))),
  });
  const steps = base.standings
    .filter((s) => ranked.includes(s.quantity) && isMain(s, as))
    .flatMap(({ quantity, at, against, rows }) =>
      rows.flatMap(({ cell, effect }) => (effect === null ? [] : [{ quantity, at, against, cell }])),
    );
  return [
    ...as.claims.map((claim): Subject => ({ kind: 'claim', claim: claim.id, ...rests(claim.clauses) })),
    ...steps.map(({ against, ...step }): Subject => ({
      ...{ kind: 'step', step },
      ...rests([{ quantity: step.quantity, at: step.at, subject: step.cell, against }]),
    })),
  ];
}

interface MainAt {
  readonly sump_K: number | 'own';
  /** Null where every limit is as good as the others. */
  readonly limit_K: number | null;
}

const isMain = (standing: Standing, as: Opened): boolean => {
  const { mainSump_K, mainLimit_K } = as.series.reference;
  return isAt(standing, as, { sump_K: mainSump_K, limit_K: mainLimit_K });
};

/** At the reference speed, at this temperature, to this limit, where the quantity has them. */
function isAt({ at }: Pick<Group, 'at'>, { series }: Opened, main: MainAt): boolean {
  const { outputSpeed_rad_s: speed, sump_K: sump, limit_K: limit } = at;
  return (
    (speed === undefined || Math.abs(speed - series.reference.outputSpeed_rad_s) < 1e-6) &&
    (sump === undefined || atKey({ sump_K: sump }) === atKey({ sump_K: main.sump_K })) &&
    (limit === undefined || main.limit_K === null || atKey({ limit_K: limit }) === atKey({ limit_K: main.limit_K }))
  );
}

/** Whether a choice has anything to do with what the subject rests on. */
function touches(
  choice: Choice,
  { pairs, runs }: Subject,
  { as, base }: { readonly as: Opened; readonly base: Told },
): boolean {
  switch (choice.kind) {
    case 'causes':
    case 'drift':
      return true;
    case 'ambient':
    case 'airflow':
      return pairs.some(({ quantity }) => quantity !== 'spin-power');
    case 'without':
    case 'put-back':
      return runs.has(choice.run);
    case 'sump':
    case 'limit':
    case 'fill':
      return pairs.some((pair) => {
        const turned = turnedPair(pair, [choice], base.seen, as);
        return (
          atKey(turned.at) !== atKey(pair.at) || turned.subject !== pair.subject || turned.against !== pair.against
        );
      });
  }
}

function restsOn(pair: Pair, as: Opened, base: Told): readonly string[] {
  const own = [pair.subject, pair.against].flatMap((cell) => base.seen.runs(pair.quantity, pair.at, cell));
  const pooled = scatterGroup(pair, as, base)?.group.reduced.map(({ run }) => run) ?? [];
  return [...own, ...pooled].map(({ run }) => run);
}

/** The group that the scatter behind a difference was measured in; undefined where none was. */
function scatterGroup({ quantity, at }: Pair, as: Opened, { groups }: Told): Told['groups'][number] | undefined {
  const of = figureOf(quantity);
  const own = groups.find(({ group }) => group.quantity === of && atKey(group.at) === atKey(at));
  if (own === undefined || own.celled.repeatability !== null) return own;
  const refit = own.celled.causes.some(({ family }) => family === 'refit:loaded');
  return refit
    ? groups.find(({ group, celled }) => isRefitGroup(group, as) && celled.repeatability !== null)
    : undefined;
}

const drifts = ({ pairs }: Subject, as: Opened, told: Told): boolean =>
  pairs.some((pair) => scatterGroup(pair, as, told)?.celled.drift != null);
