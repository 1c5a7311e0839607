import type { RunCard } from '../trial/run-card.ts';
import { cardSections, cardTitle, cardWhere } from './card.ts';
import { articleMark, litresWords, tiltWords } from './cite.ts';
import { numberText } from './digits.ts';
import type { SeriesInput } from './input.ts';
import type { Page, Section, Span } from './page.ts';
import { capital, counts, link, listOf, prose, row, section, tableBlock } from './spans.ts';
import { viewOf, type View } from './view.ts';

/** Which cards are wanted: of the runs still to be run, or of every planned run. */
export interface Wanted {
  readonly all: boolean;
}

/** A list of the cards of a series, one page a card, and one page with all of them for the printer. For the house only. */
export function cardPages(view: View, { all }: Wanted): Page[] {
  const cards = wantedCards(view, { all });
  if (!view.house || cards.length === 0) return [];
  return [
    listPage(view, cards),
    ...(cards.length === 1 ? [] : [allPage(view, cards)]),
    ...cards.map((card) => cardPage(view, card)),
  ];
}

/** Everything that is printed of a book's cards: an index before the cards of each series. */
export function printedCards(series: readonly SeriesInput[], wanted: Wanted): Page[] {
  const views = series.map(viewOf).filter((view) => wantedCards(view, wanted).length > 0);
  const count = views.reduce((sum, view) => sum + wantedCards(view, wanted).length, 0);
  if (count === 0) return [];
  return [
    {
      ...shared,
      kind: 'cards',
      path: '',
      title: capital(counts(count, 'run card')),
      description: 'Run cards, one a planned run.',
      whereabouts: ['Run cards'],
      lead: [listLead],
      series: null,
      sections: views.map((view) => ({
        ...listSection(view, wantedCards(view, wanted)),
        id: view.series.id,
        heading: view.series.title,
      })),
    },
    ...views.flatMap((view) => cardPages(view, wanted)),
  ];
}

const shared = { banners: [] } as const;
const listLead = 'Runs of the plan, one card each, in the order that it draws; one that was run already says so.';
const cardLead = 'Set up, read and write down by hand, then copied into the note.';

export const wantedCards = ({ input }: View, { all }: Wanted): readonly RunCard[] =>
  input.outlook.cards.filter(({ done }) => all || !done);

const folder = (view: View): string => `${view.base}cards/`;
const pathOf = (view: View, { position, of }: RunCard): string =>
  `${folder(view)}${String(position).padStart(String(of).length, '0')}/`;

function listPage(view: View, cards: readonly RunCard[]): Page {
  return {
    ...shared,
    kind: 'cards',
    path: folder(view),
    title: capital(counts(cards.length, 'run card')),
    description: `Run cards of ${view.series.title}, one a planned run.`,
    whereabouts: [`${view.series.title} · run cards`],
    lead: [listLead],
    series: view.series.id,
    sections: [listSection(view, cards)],
  };
}

function listSection(view: View, cards: readonly RunCard[]): Section {
  const [first] = cards;
  return section(
    'cards',
    null,
    [
      prose(orderWords(view)),
      listOf([
        cards.length > 1
          ? [link(`${folder(view)}all/`, 'All of them on one page'), ', for the printer: each begins a new sheet.']
          : [link(first === undefined ? folder(view) : pathOf(view, first), 'The card'), '.'],
      ]),
      tableBlock(
        `${view.series.id}-cards`,
        ['number card', 'trial', 'wide article and fill', 'oil', 'number run of its cell'],
        cards.map((card) => {
          const cells = row(
            link(pathOf(view, card), numberText(card.position, 0)),
            card.cell.trial,
            cellSpans(view, card),
            card.cell.oil,
            `${numberText(card.time, 0)} of ${numberText(card.cell.wanted, 0)}`,
          );
          return card.baseline ? { ...cells, role: 'baseline' as const } : cells;
        }),
      ),
    ],
    [
      {
        name: 'Nothing is released.',
        text: ['A card is a prompt. Who releases a run to power writes it on the card and in the note.'],
      },
    ],
  );
}

const cellSpans = (view: View, { cell, done }: RunCard): Span[] => [
  articleMark(view, cell.article),
  `, ${litresWords(cell)}${tiltWords(cell)}${done ? ', run already' : ''}`,
];

/** How the order came about, so that somebody else can draw it again. */
function orderWords({ plan, input }: View): string {
  const { seed } = input.outlook;
  const how =
    plan?.order === 'fixed'
      ? 'In the order of the plan, round by round'
      : plan?.order === 'latin'
        ? 'Round by round, each beginning one cell later than the last'
        : `Shuffled within rounds of all cells, from seed ${String(seed ?? 1)}${plan?.seed == null ? ', since the plan names none' : ''}`;
  return `${how}; the baseline ${plan?.baselineRerun ?? ''}. A cool-down follows the heat-up of its cell.`;
}

const cardPage = (view: View, card: RunCard): Page => ({
  ...shared,
  kind: 'card',
  path: pathOf(view, card),
  title: cardTitle(view, card),
  description: `Run card: ${cardTitle(view, card)}.`,
  whereabouts: [`${view.series.title} · run card · ${cardWhere(card)}`],
  lead: [cardLead],
  series: view.series.id,
  sections: cardSections(view, card, { id: '', heading: null }),
});

const allPage = (view: View, cards: readonly RunCard[]): Page => ({
  ...shared,
  kind: 'card',
  path: `${folder(view)}all/`,
  title: `${capital(counts(cards.length, 'run card'))} to print`,
  description: `All run cards of ${view.series.title} on one page.`,
  whereabouts: [`${view.series.title} · run cards`],
  lead: [cardLead],
  series: view.series.id,
  sections: cards.flatMap((card) => {
    const [first, ...rest] = cardSections(view, card, {
      id: `card-${String(card.position)}-`,
      heading: `${cardTitle(view, card)} (${cardWhere(card)})`,
    });
    return [first!, ...rest.map((one) => ({ ...one, inIndex: null }))];
  }),
});
