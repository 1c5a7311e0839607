import type { ClaimWord, Clause } from '../trial/claim.ts';
import type { JudgedClause } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import { conditionsOf } from '../ledger/ids.ts';
import { endsOf, thresholdText } from './claim-ends.ts';
import { firstRun, withWord, type HeldClaim } from './claims-view.ts';
import { articleSpan, figureWords, litresWords, tiltWords } from './cite.ts';
import { dateWords } from './dates.ts';
import { numberText } from './digits.ts';
import type { Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { capital, countWord, verdict } from './spans.ts';
import type { View } from './view.ts';

/** "Five of eight claims are shown; two are shown against" */
export function claimsTitle(held: readonly HeldClaim[]): string {
  const [only] = held;
  if (only !== undefined && held.length === 1) return `Its one claim: ${only.judged.word}`;
  const [shown, against] = [withWord(held, 'shown'), withWord(held, 'shown against')];
  const are = (n: number): string => (n === 1 ? 'is' : 'are');
  const head =
    shown === 0
      ? `None of ${countWord(held.length)} claims is shown`
      : shown === held.length
        ? `All ${countWord(held.length)} claims are shown`
        : `${capital(countWord(shown))} of ${countWord(held.length)} claims ${are(shown)} shown`;
  return against === 0 ? head : `${head}; ${countWord(against)} ${are(against)} shown against`;
}

/** "one is leaning, two are not shown and of one it cannot be told": the words that the title leaves out. */
export const otherWords = (held: readonly HeldClaim[]): Span[][] =>
  (['leaning', 'not shown', 'cannot tell'] as const).flatMap((word): Span[][] => {
    const n = withWord(held, word);
    if (n === 0) return [];
    return word === 'cannot tell'
      ? [[`of ${countWord(n)} the runs `, verdict(word)]]
      : [[`${countWord(n)} ${n === 1 ? 'is' : 'are'} `, verdict(word)]];
  });

/** "Put by the supplier on 1 March 2026, before the first run that it rests on (S-01, 4 May 2026)." */
export function putSpans(view: View, held: HeldClaim): Span[] {
  const { claim, judged } = held;
  const run = firstRun(view, held);
  const first: Span[] = run === undefined ? [] : [' (', runLink(view, run.id), `, ${dateWords(run.started)})`];
  return [
    `Put by ${putBy(held)} on ${dateWords(claim.made)}`,
    ...(judged.late
      ? ([
          ': ',
          verdict(lateWords),
          '. It was written down on or after the day of the first run that it rests on',
          ...first,
          '.',
        ] as Span[])
      : run === undefined
        ? ['.']
        : [', before the first run that it rests on', ...first, '.']),
    ...(judged.indicative.length === 0
      ? []
      : ([' The word is ', verdict(indicativeWords), `: ${judged.indicative.join('; ')}.`] as Span[])),
  ];
}

export const lateWords = 'put after its data';
export const indicativeWords = 'indicative only';

export const putBy = ({ claim }: HeldClaim): string =>
  claim.by === null ? 'the house' : `the ${claim.by.replace(/^the /i, '')}`;

/** "Final rise above ambient of P1 deep bowl, 3.59 L, is lower than that of P0 pressed bowl, 2.40 L, by at least 5 K." */
export function saysSpans(view: View, clause: Clause): Span[] {
  const { subject, against, direction, threshold } = clause;
  const at = conditionsOf(clause.at, null, view.naming);
  const own = cellOf(view, subject, against);
  const other = cellOf(view, against, subject);
  if (direction === 'at-least')
    return [
      'Of the difference in final rise of ',
      ...own,
      ' from ',
      ...other,
      ` the heat made accounts for ${thresholdText(clause)} or more.`,
    ];
  const head: Span[] = [`${capital(figureWords({ quantity: clause.quantity, at }))} of `, ...own];
  if (direction === 'within')
    return [...head, ` lies within ${thresholdText(clause)} of that of `, ...other, ' either way.'];
  return [
    ...head,
    ` is ${directionWord(clause)} than that of `,
    ...other,
    threshold === 0 ? ' by whatever it may be.' : ` by at least ${thresholdText(clause)}.`,
  ];
}

/** The oil is named where the two differ in it, or where it is not the baseline's. */
function cellOf(view: View, cell: Cell, other: Cell): Span[] {
  const oil = cell.oil !== other.oil || cell.oil !== view.series.baseline.oil ? ` of ${cell.oil}` : '';
  return [articleSpan(view, cell.article), `, ${litresWords(cell)}${oil}${tiltWords(cell)},`];
}

/** "pinion bearing above sump, P4 less P0, 2.40 L, 12 % nose up": what differs first, what both share behind it. */
export const clauseWords = (view: View, clause: Clause): string =>
  `${figureWords({ quantity: clause.quantity, at: conditionsOf(clause.at, null, view.naming) })}, ${pairWords(view, clause)}`;

export function pairWords(view: View, { subject, against }: Pick<Clause, 'subject' | 'against'>): string {
  const sameFill = litresWords(subject) === litresWords(against);
  const sameOil = subject.oil === against.oil;
  const sameTilt = subject.tilt_ratio === against.tilt_ratio;
  const own = (cell: Cell): string =>
    [
      cell.article,
      sameFill ? '' : ` ${litresWords(cell)}`,
      sameOil ? '' : ` ${cell.oil}`,
      sameTilt ? '' : tiltWords(cell).replace(/^,/, ''),
    ].join('');
  const shared = [
    sameFill ? `, ${litresWords(subject)}` : '',
    sameOil && subject.oil !== view.series.baseline.oil ? `, ${subject.oil}` : '',
    sameTilt ? tiltWords(subject) : '',
  ];
  return `${own(subject)} less ${own(against)}${shared.join('')}`;
}

/** "5 K lower", "any lower", "within 2 K", "50 % or more": for a column. */
export function askedText(clause: Clause): string {
  const t = thresholdText(clause);
  if (clause.direction === 'within') return `within ${t}`;
  if (clause.direction === 'at-least') return `${t} or more`;
  return `${clause.threshold === 0 ? 'any' : t} ${directionWord(clause)}`;
}

/** A time is not low or high. */
function directionWord({ quantity, direction }: Clause): string {
  if (quantity !== 'limit-crossing') return direction;
  return direction === 'lower' ? 'shorter' : 'longer';
}

/** The rule of one clause: when its word would be which, in the signs of the difference. */
export function ruleSpans(view: View, clause: Clause): Span[] {
  const { direction, threshold } = clause;
  const t = thresholdText(clause);
  const whole = `when the whole ${numberText(view.series.coverage * 100, 0)} % interval lies `;
  if (direction === 'within')
    return rule(whole, `inside ±\u202f${t}`, 'all of it lies outside', [
      verdict('leaning'),
      ' when only the value lies inside, ',
      verdict('not shown'),
      ' otherwise.',
    ]);
  const rest: Span[] = [
    verdict('not shown'),
    ' when it holds 0',
    ...(threshold === 0 ? ['.'] : [', ', verdict('leaning'), ' otherwise.']),
  ];
  if (direction === 'at-least') return rule(whole, `at ${t} or above`, `all of it lies below ${t}`, rest);
  const below = direction === 'lower';
  if (threshold === 0)
    return rule(whole, below ? 'below 0' : 'above 0', `all of it lies ${below ? 'above' : 'below'} 0`, rest);
  const edge = `${below ? '\u2212' : '+'}${t}`;
  return rule(whole, `at ${edge} or beyond`, `all of it lies short of ${edge}`, rest);
}

const rule = (whole: string, shown: string, against: string, rest: readonly Span[]): Span[] => [
  ...[verdict('shown'), ` ${whole}${shown}, `],
  ...[verdict('shown against'), ` when ${against}, `],
  ...rest,
];

/** What threshold would have made another word of these runs; empty where nothing was found. */
export function changeSpans({ clause, interval, estimate }: JudgedClause): Span[] {
  if (interval === null || estimate === null) return [];
  const { text } = endsOf(clause, interval);
  const would = (word: ClaimWord, when: string): Span[] => [verdict(word), ` for any ${when}`];
  if (clause.direction === 'within') {
    const [low, high] = interval;
    const [inner, outer] = [Math.max(low, -high), Math.max(-low, high)];
    return [
      'The word would be ',
      ...would('shown', `margin of ${text(outer)} or more`),
      ...(inner > 0 ? [', and ', ...would('shown against', `under ${text(inner)}`)] : []),
      '.',
    ];
  }
  const [low, high] = clause.direction === 'lower' ? [-interval[1], -interval[0]] : interval;
  if (high < 0) return ['The word would be ', verdict('shown against'), ' whatever the threshold.'];
  const over: Span[] = [', and ', ...would('shown against', `over ${text(high)}`), '.'];
  return low > 0
    ? ['The word would be ', ...would('shown', `threshold of ${text(low)} or less`), ...over]
    : [
        'No threshold would make it ',
        verdict('shown'),
        '; it would be ',
        ...would('not shown', `of ${text(high)} or less`),
        ...over,
      ];
}
