import type { Figure } from '../ledger/figure.ts';
import { workingPath } from '../ledger/ids.ts';
import type { Part, Question } from '../trial/part.ts';
import type { Reach } from '../trial/reach.ts';
import { correctionLink, shownReaches } from './amended.ts';
import { claimPath, claimsOf } from './claims-view.ts';
import { dateWords } from './dates.ts';
import { wholeOf } from './digits.ts';
import type { SeriesInput } from './input.ts';
import type { Span } from './page.ts';
import { link, verdict } from './spans.ts';
import { besides, type View } from './view.ts';

/** A part is out when it says so and its figures are pinned; until then it is a draft, whatever it says. */
export const isOut = (part: Part): boolean => part.status !== 'draft' && part.pins !== null;

/** In their order, as these readers may see them. */
export const partsAmong = ({ record, audience }: SeriesInput): readonly Part[] =>
  record.parts.filter((part) => audience === 'house' || (isOut(part) && part.shownTo === 'public'));
export const partsOf = (view: View): readonly Part[] => partsAmong(view.input);

export const partPath = (view: View, { number }: Part): string => `${view.base}parts/${number.toFixed(0)}/`;
export const partName = ({ number, title }: Part): string => `Part ${number.toFixed(0)}: ${title}`;
export const partLink = (view: View, part: Part): Span => link(partPath(view, part), `Part ${part.number.toFixed(0)}`);

export const statusWords = (part: Part): string =>
  part.status === 'withdrawn'
    ? 'withdrawn'
    : isOut(part)
      ? `out ${dateWords(part.published!)}`
      : part.status === 'out'
        ? 'out, not pinned'
        : 'draft';

/** What a part showed, and what stands today where it is something else. */
export interface ThenNow {
  readonly what: string;
  readonly id: string;
  readonly then: string;
  /** Null where there is no such figure any more. */
  readonly now: Span | null;
  readonly why: readonly Span[];
  /** Neither a correction, nor the method, nor later runs tell why. */
  readonly untold: boolean;
}

export const textOfFigure = (figure: Figure): string => wholeOf(figure);

export function figureSpan(view: View, figure: Figure, text = wholeOf(figure, view.withUs)): Span {
  const { page, anchor } = workingPath(figure, view.series.id);
  return { kind: 'figure', to: `${page}#${anchor}`, text, id: figure.id };
}

/** Null where the figure stands as it was shown. */
export function movedFigure(view: View, part: Part, id: string): Omit<ThenNow, 'what'> | null {
  const pin = part.pins?.figures.get(id);
  if (pin === undefined) return null;
  const figure = view.figureById.get(id);
  if (figure !== undefined && textOfFigure(figure) === pin.shown) return null;
  return {
    id,
    then: pin.shown,
    now: figure === undefined ? null : figureSpan(view, figure),
    ...whyFigure(view, part, id, figure),
  };
}

type Why = Pick<ThenNow, 'why' | 'untold'>;

/** Corrections published since, then the method; null where neither tells. */
function toldWhy(view: View, part: Part, touches: (reach: Reach<Figure>) => boolean): Why | null {
  const since = laterReaches(view, part).filter(touches);
  if (since.length > 0)
    return {
      why: since.flatMap(({ correction: c }): Span[] => [`${c.kind}: `, correctionLink(view, c.id), '. ']),
      untold: false,
    };
  const then = part.pins!.method;
  const now = view.input.ledger.methodVersion;
  return then === now ? null : { why: [`method: version ${then} then, ${now} now.`], untold: false };
}

const runsSince = (view: View, { published }: Part): View['runs'] =>
  view.runs.filter(({ started }) => published !== null && started.slice(0, 10) > published);

/** Then the runs that were made since, and the files; and where none of them tells, that. */
function whyFigure(view: View, part: Part, id: string, figure: Figure | undefined): Why {
  const told = toldWhy(
    view,
    part,
    ({ figures, intervals }) => figures.some((f) => f.id === id) || intervals.includes(id),
  );
  if (told !== null) return told;
  const runs = runsSince(view, part);
  const own = new Set(runs.flatMap(({ file, log }) => [file, ...(log === null ? [] : [besides(file, log.file)])]));
  const inputs = figure?.inputs ?? [];
  const other = inputs
    .filter(({ file, sha256 }) => !own.has(file) && part.pins!.inputs.get(file) !== sumOfFile(sha256))
    .map(({ file }) => file.slice(file.lastIndexOf('/') + 1));
  if (runs.length > 0 && other.every((name) => setUp.has(name)))
    return {
      why: [
        inputs.some(({ file }) => own.has(file))
          ? `runs: ${runs.map((run) => run.id).join(', ')} ${runs.length === 1 ? 'was' : 'were'} made since.`
          : 'runs: others were made since, and their scatter is part of the ± here.',
      ],
      untold: false,
    };
  return {
    why: [
      other.length > 0
        ? `input: ${other.join(', ')} ${other.length === 1 ? 'is' : 'are'} not as on that day, and no correction says why.`
        : 'input: the series was set up otherwise then, and no correction says why.',
    ],
    untold: true,
  };
}

/** Notes that are written on as a series grows: a state of the rig, a campaign, a question. */
const setUp: ReadonlySet<string> = new Set(['series.md', 'rig.md', 'plan.md', 'claims.md']);

export const sumOfFile = (sha256: string): string => sha256.slice(0, 16);

export const laterReaches = (view: View, part: Part) =>
  shownReaches(view).filter(({ correction }) => part.published !== null && correction.publishedOn > part.published);

/** Null where the claim has the word that was shown. */
export function movedClaim(view: View, part: Part, id: string): Omit<ThenNow, 'what'> | null {
  const then = part.pins?.claims.get(id);
  if (then === undefined) return null;
  const held = claimsOf(view).find(({ claim }) => claim.id === id);
  if (held?.judged.word === then) return null;
  const told = toldWhy(view, part, ({ claims }) => claims.some((c) => c.id === id));
  const later = runsSince(view, part).length > 0;
  return {
    ...{ id, then, now: held === undefined ? null : verdict(held.judged.word) },
    ...(told ?? {
      why: [
        later
          ? 'runs: others were made since.'
          : 'input: the files or the rule of the claim are others than then, and no correction says why.',
      ],
      untold: !later,
    }),
  };
}

/** A question with the parts that put it and that answer it; parts that are not out count for nobody. */
export interface Followed {
  readonly question: Question;
  readonly asked: Part | null;
  readonly answered: { readonly part: Part; readonly by: readonly string[] } | null;
}

export function followed(view: View): readonly Followed[] {
  const out = partsOf(view).filter((part) => isOut(part) && part.status !== 'withdrawn');
  return view.input.record.questions.map((question) => {
    const answering = out.find((part) => part.answers.some((a) => a.question === question.id));
    return {
      question,
      asked: out.find((part) => part.asks.includes(question.id)) ?? null,
      answered:
        answering === undefined
          ? null
          : { part: answering, by: answering.answers.find((a) => a.question === question.id)!.by },
    };
  });
}

export const stateOf = ({ question, answered }: Followed): 'answered' | 'dropped' | 'handed on' | 'open' =>
  answered !== null
    ? 'answered'
    : question.dropped !== null
      ? 'dropped'
      : question.handedOn !== null
        ? 'handed on'
        : 'open';

/** Questions that earlier parts put and that were open when this one came out: they are carried on by themselves. */
export const carriedTo = (view: View, part: Part): readonly Followed[] =>
  followed(view).filter(
    ({ question, asked, answered }) =>
      asked !== null &&
      asked.number < part.number &&
      (answered === null || answered.part.number >= part.number) &&
      ![question.dropped, question.handedOn].some(
        (end) => end !== null && part.published !== null && end.on <= part.published,
      ),
  );

export const claimSpan = (view: View, id: string): Span | null => {
  const held = claimsOf(view).find(({ claim }) => claim.id === id);
  return held === undefined ? null : link(claimPath(view, held), id);
};
