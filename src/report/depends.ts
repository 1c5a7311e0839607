import type { Depends, Effect } from '../trial/compared.ts';
import { articleSpan, citedValue, inCelsius, litresWords, quantityWords, tiltWords } from './cite.ts';
import { conditionsOf } from '../ledger/ids.ts';
import type { Section, Span } from './page.ts';
import { listOf, prose, section } from './spans.ts';
import { besideAbove, besideId } from './beside-table.ts';
import { effectFigure, mainStanding, standingAnchor } from './standing-words.ts';
import { isLoss } from './supply.ts';
import type { View } from './view.ts';

/** Choices that change what an article comes to against the baseline, as the tool found them; null where none does. */
export function dependsSection(view: View): Section | null {
  const items = view.input.compared.depends.flatMap((one) => {
    const said = dependsSpans(view, one);
    return said === null ? [] : [said];
  });
  if (items.length === 0) return null;
  const main = mainStanding(view);
  return section(
    'depends-on',
    'Depends on',
    [
      prose(
        'What an article comes to against the baseline changes here with a choice that somebody has to make. Whoever quotes one of two has made it.',
      ),
      listOf(items),
    ],
    [
      {
        name: 'Found unasked.',
        text: [
          'Every article at the reference speed is held against the baseline under each limit, at a common temperature and at its own, at each fill, and by spin power and by final rise. Listed is what is separated one way and not the other.',
        ],
      },
      main !== undefined && isLoss(main.quantity) ? besideAbove(besideId(standingAnchor(main))) : null,
    ],
  );
}

/** "P1, by the fill: at the same litres −34.9 W, separated; at the same level −5.9 W, not separated." Null where a figure is held back. */
export function dependsSpans(view: View, one: Depends): Span[] | null {
  const options = one.options.map((effect) => ({ effect, figure: effectFigure(view, effect) }));
  if (options.some(({ figure }) => figure === undefined)) return null;
  const [first] = one.options;
  const oil = one.oil === view.series.baseline.oil ? '' : ` with ${one.oil}`;
  const fixed = one.choice === 'fill' || first === undefined ? '' : `, ${litresWords(first.cell)}`;
  return [
    articleSpan(view, one.article),
    `${fixed}${oil}${first === undefined ? '' : tiltWords(first.cell)}, ${wayOf[one.choice]}: `,
    ...options.flatMap(({ effect, figure }, i): Span[] => [
      i === 0 ? '' : '; ',
      `${labelOf(view, one.choice, effect)} `,
      ...(figure === undefined ? [] : [citedValue(view, figure)]),
      effect.separated ? ', separated' : ', not separated',
    ]),
    one.kind === 'turns' ? '. It turns round.' : '.',
  ].filter((span) => span !== '');
}

const wayOf: Readonly<Record<Depends['choice'], string>> = {
  limit: 'by the limit',
  temperature: 'by the temperature of the oil',
  fill: 'by the fill',
  quantity: 'by what is asked',
};

function labelOf(view: View, choice: Depends['choice'], { quantity, at, basis, cell }: Effect): string {
  const { limit, sump } = conditionsOf(at, null, view.naming);
  if (choice === 'limit') return `to ${inCelsius(limit ?? '')}`;
  if (choice === 'temperature') return sump === 'own' ? 'at its own temperature' : `at ${inCelsius(sump ?? '')}`;
  if (choice === 'fill') return `${quantityWords(quantity)} with ${litresWords(cell)}, ${basis},`;
  return quantityWords(quantity);
}
