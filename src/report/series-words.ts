import type { Effect } from '../trial/compared.ts';
import { articleSpan, cellDetail, cited } from './cite.ts';
import type { MarginNote, Span } from './page.ts';
import { verdict } from './spans.ts';
import { effectFigure, mainStanding, shownRows, standingTitle, whereWords } from './standing-words.ts';
import { whyNotUsable } from './grade-words.ts';
import { besideTheCells, isLoss, reachSpans } from './supply.ts';
import type { View } from './view.ts';

/** The finding of a series: how many are separated, what the basis of the fill makes of it and of the oil that is carried over, else the largest difference. */
export function standingOneLine(view: View): Span[] {
  const main = mainStanding(view);
  if (main === undefined) return ['Nothing stands side by side yet.'];
  const basis = basisPair(view);
  if (basis !== null)
    return [`${standingTitle(view, main)}. `, ...basisSentence(view, basis), ...carriedSentence(view, basis)];
  const largest = largestEffect(view);
  const figure = largest && effectFigure(view, largest);
  if (largest === undefined || figure === undefined) return [`${standingTitle(view, main)}.`];
  return [
    `${standingTitle(view, main)}; furthest off is `,
    articleSpan(view, largest.cell.article),
    `, ${cellDetail(largest.cell)}, by `,
    cited(view, figure),
    `${whereWords(view, main).startsWith('At ') ? ' of spin power' : ''}.`,
  ];
}

/** Reach and bearing rise of the cells that the line names; null where it tells no loss. */
export function besideTheLead(view: View): MarginNote | null {
  const main = mainStanding(view);
  if (main === undefined || !isLoss(main.quantity)) return null;
  const named = basisPair(view) ?? [largestEffect(view)].filter((effect) => effect !== undefined);
  return besideTheCells(
    view,
    named.flatMap(({ cell, against }) => [against, cell]),
  );
}

function effectsOf(view: View): readonly Effect[] {
  const main = mainStanding(view);
  return main === undefined ? [] : shownRows(view, main).flatMap(({ effect }) => (effect === null ? [] : [effect]));
}

const largestEffect = (view: View): Effect | undefined =>
  effectsOf(view)
    .filter(({ separated }) => separated)
    .sort((a, b) => Math.abs(b.estimate.value) - Math.abs(a.estimate.value))[0];

/** One article at the same litres and at the same level, both with a figure. */
function basisPair(view: View): readonly [Effect, Effect] | null {
  const effects = effectsOf(view);
  for (const litres of effects.filter(({ basis }) => basis === 'same litres')) {
    const level = effects.find(({ basis, cell }) => basis === 'same level' && cell.article === litres.cell.article);
    const both = level !== undefined && [litres, level].every((effect) => effectFigure(view, effect) !== undefined);
    if (both) return [litres, level];
  }
  return null;
}

/** "Filled to the same litres, P1 deep bowl stands −38.7 ± 8.4 W from P0 pressed bowl; filled to the same level, −0.7 ± 8.4 W, not separated." */
function basisSentence(view: View, [litres, level]: readonly [Effect, Effect]): Span[] {
  const figure = (effect: Effect): Span => cited(view, effectFigure(view, effect)!);
  const word = ({ separated }: Effect): Span => verdict(separated ? 'separated' : 'not separated');
  return [
    'Filled to the same litres, ',
    articleSpan(view, litres.cell.article),
    ' stands ',
    figure(litres),
    ' from ',
    articleSpan(view, litres.against.article),
    ', ',
    word(litres),
    '; filled to the same level, ',
    figure(level),
    ', ',
    word(level),
    '.',
  ];
}

/** " Behind the window, oil carried to the pinion is graded 3 with P0, 2 with P1 at the same litres, and 3 at the same level." Empty unless all three may be used. */
function carriedSentence(view: View, [litres, level]: readonly [Effect, Effect]): Span[] {
  if (whyNotUsable(view, 'reach') !== null) return [];
  const graded = [litres.against, litres.cell, level.cell].map((cell) => reachSpans(view, cell));
  if (!graded.every((spans) => spans.every((span) => typeof span !== 'string'))) return [];
  const [own = [], sameLitres = [], sameLevel = []] = graded;
  return [
    ' Behind the window, oil carried to the pinion is graded ',
    ...own,
    ` with ${litres.against.article}, `,
    ...sameLitres,
    ` with ${litres.cell.article} at the same litres, and `,
    ...sameLevel,
    ' at the same level.',
  ];
}
