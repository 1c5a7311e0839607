import { cellName, sameCell } from '../ledger/ids.ts';
import type { Effect, Split, Standing } from '../trial/compared.ts';
import type { QuantityName } from '../trial/figures.ts';
import { articleSpan, cellDetail, cited, figureNamed } from './cite.ts';
import { relationPath } from './method-path.ts';
import type { Block, PairSide, Section, Span } from './page.ts';
import { facts, link, listOf, prose, row, section, tableBlock } from './spans.ts';
import { effectFigure, shownRows } from './standing-words.ts';
import type { View } from './view.ts';

/** A difference in final rise in its two parts, with the comparison that it belongs to. */
interface Parted {
  readonly split: Split;
  readonly effect: Effect;
}

/** Beside the standing by final rise: how much of each difference is heat not made, and how much is heat shed. */
export function standingSplits(view: View, standing: Standing): Section | null {
  if (standing.quantity !== 'final-rise') return null;
  const parted = shownRows(view, standing).flatMap(({ effect }) => (effect === null ? [] : partedOf(view, effect)));
  const whole = splitSection(view, parted, `split-${standing.oil}`.toLowerCase());
  const oil = standing.oil === view.series.baseline.oil ? '' : ` with ${standing.oil}`;
  return whole === null ? null : { ...whole, inIndex: `Makes less, sheds more${oil}` };
}

/** The same on the sheet of one article, whatever it was compared with. */
export const articleSplits = (view: View, effects: readonly Effect[]): Section | null =>
  splitSection(
    view,
    effects.filter(({ quantity }) => quantity === 'final-rise').flatMap((effect) => partedOf(view, effect)),
    'split',
  );

function splitSection(view: View, parted: readonly Parted[], id: string): Section | null {
  if (parted.length === 0) return null;
  return section(
    id,
    'Makes less, sheds more',
    [
      prose(
        'A set-up stands cooler because it makes less heat, because it sheds more of it for each kelvin, or both. The two parts add up to the whole with nothing left over (',
        link(relationPath('log-mean-rise'), 'the log-mean split'),
        '). Negative is cooler than what it is compared with; ± is half a 95 % interval.',
      ),
      tableBlock(
        `${id}-table`,
        [
          'wide article and fill',
          'against',
          'number final rise',
          'number by heat made',
          'number by shed',
          'number share of heat made',
        ],
        [...parted].sort(byArticle).map((each) => {
          const { split, effect } = each;
          return row(
            [articleSpan(view, split.cell.article), `, ${detail(view, split.cell)} (${effect.basis})`],
            `${split.against.article}, ${detail(view, split.against)}`,
            ...numbers(view, each),
          );
        }),
      ),
      ...coverBlocks(view, parted),
      parted.every(hasShare) ? null : prose('The share is not told where the whole difference is not separated.'),
      ...bothWays(parted).flatMap(([litres, level]) => bothWaysBlocks(view, litres, level, id)),
    ],
    [
      {
        name: 'Not a cover alone.',
        text: ['Shed belongs to the whole axle. A part that changes how oil is thrown changes it too.'],
      },
    ],
  );
}

/** Where a gain by the shed is larger than the surface of the article can account for, or where that is not known. */
function coverBlocks(view: View, parted: readonly Parted[]): Block[] {
  const items = parted.flatMap(({ split }): Span[][] => {
    const start: Span[] = [articleSpan(view, split.cell.article), `, ${detail(view, split.cell)}: `];
    if (split.coverUntold !== null) return [[...start, `${split.coverUntold}.`]];
    const bound = partFigure(view, split, 'cover-share-bound');
    const gain = partFigure(view, split, 'sheds-more');
    if (split.cover === null || bound === undefined || gain === undefined) return [];
    return [
      [
        ...start,
        ...(split.cover.high_K > 0
          ? ['by its outside surface alone it can stand cooler by ', cited(view, bound)]
          : ['its outside surface is no larger, so that alone cools nothing (', cited(view, bound), ')']),
        '; by the shed it is ',
        cited(view, gain),
        split.cover.exceeded
          ? '. The surface does not account for that: look at the level, the air, what throws the oil, and the readings.'
          : ', which the surface may account for.',
      ],
    ];
  });
  return items.length === 0 ? [] : [listOf(items)];
}

/** One article against one baseline, filled to the same litres and filled to the same level. */
function bothWays(parted: readonly Parted[]): readonly (readonly [Parted, Parted])[] {
  return parted
    .filter(({ effect }) => effect.basis === 'same litres')
    .flatMap((litres): (readonly [Parted, Parted])[] => {
      const level = parted.find(
        ({ effect, split: { cell, against } }) =>
          effect.basis === 'same level' &&
          cell.article === litres.split.cell.article &&
          cell.oil === litres.split.cell.oil &&
          sameCell(against, litres.split.against),
      );
      return level === undefined ? [] : [[litres, level]];
    });
}

function bothWaysBlocks(view: View, litres: Parted, level: Parted, id: string): Block[] {
  const { cell } = litres.split;
  const side = (name: string, one: Parted): PairSide => {
    const [whole, made, shed, share] = numbers(view, one);
    return {
      title: [`${name}, ${detail(view, one.split.cell)}`],
      blocks: [
        facts([
          ['Final rise', whole!],
          ['By heat made', made!],
          ['By shed', shed!],
          ['Share of heat made', share!],
        ]),
      ],
    };
  };
  return [
    prose(articleSpan(view, cell.article), ...bothWaysSpans(view, litres, level)),
    {
      kind: 'pair',
      id: `${id}-${cell.article}`.toLowerCase(),
      sides: [side('Same litres', litres), side('Same level', level)],
    },
  ];
}

/** What a roomier bowl seems to save at the same litres is in part its lower level. */
function bothWaysSpans(view: View, litres: Parted, level: Parted): Span[] {
  const made = ({ split }: Parted): Span => {
    const figure = partFigure(view, split, 'makes-less');
    return figure === undefined ? 'an untold amount' : cited(view, figure);
  };
  const roomier = level.split.cell.fill_m3 > litres.split.cell.fill_m3;
  return [
    roomier ? ' is roomier: at the same litres its oil stands lower.' : ' was filled both ways.',
    ' Of its difference the heat made accounts for ',
    made(litres),
    roomier ? ' there, and for ' : ' at the same litres, and for ',
    made(level),
    ' at the same level.',
  ];
}

const numbers = (view: View, parted: Parted): readonly Span[][] =>
  (['final-rise', 'makes-less', 'sheds-more', 'makes-less-share'] as const).map((quantity) => {
    const told = quantity !== 'makes-less-share' || hasShare(parted);
    const figure = told ? partFigure(view, parted.split, quantity) : undefined;
    const [low, high] = figure?.interval ?? [null, null];
    // A share that may be anything is no share.
    const open = quantity === 'makes-less-share' && low !== null && high !== null && high - low > 100;
    return figure === undefined || open ? ['not told'] : [cited(view, figure)];
  });

/** A share of a difference that the standing does not separate would be a share of nothing. */
const hasShare = ({ split, effect }: Parted): boolean => split.share !== null && effect.separated;

const partFigure = (view: View, { cell, against }: Split, quantity: QuantityName) =>
  figureNamed(view, { subject: { cell, against }, quantity, at: {} });

/** Only with the figure of the whole difference can its parts be read. */
function partedOf(view: View, effect: Effect): Parted[] {
  const split = view.input.compared.splits.find(
    ({ cell, against }) => sameCell(cell, effect.cell) && sameCell(against, effect.against),
  );
  return split === undefined || effectFigure(view, effect) === undefined ? [] : [{ split, effect }];
}

const byArticle = ({ split: a }: Parted, { split: b }: Parted): number => {
  const [left, right] = [a, b].map(({ cell, against }) => `${cellName(cell)} ${cellName(against)}`) as [string, string];
  return left < right ? -1 : left > right ? 1 : 0;
};

/** The oil is named where it is not the baseline's. */
const detail = (view: View, cell: Split['cell']): string =>
  `${cellDetail(cell)}${cell.oil === view.series.baseline.oil ? '' : `, ${cell.oil}`}`;
