import type { Figure } from '../ledger/figure.ts';
import type { BudgetRow, Working } from '../ledger/ledger.ts';
import type { Cell } from '../trial/derived.ts';
import { cellSpans, cited, figureNamed } from './cite.ts';
import { numberText, uncertaintyText } from './digits.ts';
import type { Block, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { facts, listed, prose, row, strong, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** Both sides of a difference, and what their doubts do to it: what both share in the same size falls out. */
export function bothSides(view: View, figure: Figure, { id, unit }: { id: string; unit: string }): Block[] {
  const effect = view.effectOf.get(figure.id);
  if (effect === undefined) return [];
  const ownOf = (cell: Cell): Figure | undefined =>
    figureNamed(view, { subject: { cell }, quantity: effect.quantity, at: effect.at });
  const side = (cell: Cell, runs: readonly string[]): Span[] => {
    const own = ownOf(cell);
    return [
      ...cellSpans(view, cell),
      ...(own ? [': ', cited(view, own)] : []),
      ` (${runs.length === 1 ? 'run' : 'runs'} `,
      ...listed(
        runs.map((run) => [runLink(view, run)]),
        ', ',
      ),
      ')',
    ];
  };
  const [value, less] = [effect.cell, effect.against].map((cell) => workingOf(view, ownOf(cell)));
  return [
    prose(strong('Given')),
    facts([
      ['Value', side(effect.cell, effect.runs)],
      ['Less', side(effect.against, effect.againstRuns)],
    ]),
    ...doubtBlocks(workingOf(view, figure), { value, less }, { id: `both-${id}`, unit }),
  ];
}

const workingOf = (view: View, figure: Figure | undefined): Working | undefined =>
  figure === undefined ? undefined : view.input.ledger.workings.get(figure.id);

function doubtBlocks(
  whole: Working | undefined,
  sides: { readonly value: Working | undefined; readonly less: Working | undefined },
  { id, unit }: { id: string; unit: string },
): Block[] {
  const { value, less } = sides;
  if (whole?.u == null || value?.u == null || less?.u == null) return [];
  const gone = cancelled(whole.budget, value.budget, less.budget);
  const uText = (u: number): string => uncertaintyText(0, u, '1');
  return [
    tableBlock(
      id,
      ['wide', `number one standard uncertainty, ${unit}`],
      [
        row('the value by itself', uText(value.u)),
        row('what it is less, by itself', uText(less.u)),
        row('if the two had nothing in common', uText(Math.hypot(value.u, less.u))),
        row('of the difference', uText(whole.u)),
      ],
      gone.length === 0
        ? 'The two share no cause.'
        : `What both share cancels: ${gone.map(({ name, share }) => `${name} (${numberText(share * 100, 0)} % gone)`).join('; ')}.`,
    ),
  ];
}

/** Causes in both sides, with how much of their two variances does not come into the difference; largest first. */
function cancelled(
  whole: readonly BudgetRow[],
  value: readonly BudgetRow[],
  less: readonly BudgetRow[],
): readonly { readonly name: string; readonly share: number }[] {
  const of = (list: readonly BudgetRow[]) => new Map(list.map((one) => [one.cause, one.u]));
  const [left, other] = [of(whole), of(less)];
  return value
    .flatMap(({ cause, name, u }) => {
      const both = u ** 2 + (other.get(cause) ?? 0) ** 2;
      if (!other.has(cause) || both === 0) return [];
      const gone = both - (left.get(cause) ?? 0) ** 2;
      return [{ name, gone, share: gone / both }];
    })
    .filter(({ share }) => share > 0.05)
    .sort((a, b) => b.gone - a.gone)
    .slice(0, 6);
}
