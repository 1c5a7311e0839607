import type { Effect, Standing } from '../trial/compared.ts';
import type { Cell } from '../trial/derived.ts';
import { factorialNames, type Factorial } from '../trial/factorial.ts';
import { articleSpan, cellDetail, cited, conditionWords, figureNamed, quantityWords } from './cite.ts';
import { conditionsOf } from '../ledger/ids.ts';
import type { Block, Section, Span } from './page.ts';
import { capital, listOf, prose, row, section, tableBlock, verdict } from './spans.ts';
import { besideAbove, besideId } from './beside-table.ts';
import { effectFigure, standingAnchor } from './standing-words.ts';
import { isLoss } from './supply.ts';
import type { View } from './view.ts';

/** Article and fill held apart, beside the standing of the quantity: the same litres and the same level side by side. */
export function factorialSection(view: View, standing: Standing): Section | null {
  const list = view.input.compared.factorials.filter(
    (f) =>
      f.quantity === standing.quantity &&
      f.oil === standing.oil &&
      f.tilt_ratio === standing.against.tilt_ratio &&
      view.articles.has(f.article) &&
      f.run !== 'neither',
  );
  const several = list.filter(({ run }) => run !== 'litres are level');
  if (several.length === 0) return null;
  const [first] = several as [Factorial, ...Factorial[]];
  const at = conditionWords(conditionsOf(first.at, null, view.naming));
  const whole = section(
    `fill-${first.quantity}-${first.oil}`.toLowerCase(),
    'Same litres, same level',
    [
      prose(
        `A roomier article stands lower at the same litres and holds more at the same level. Both are set side by side here, for ${quantityWords(first.quantity)}${at === '' ? '' : ` at ${at}`}.`,
      ),
      listOf(several.flatMap((f) => [levelSpans(view, f), ...slopeSpans(view, f)])),
      tableOf(view, list, first),
    ],
    [
      {
        name: 'Interaction.',
        text: [
          'What the article comes to at the second fill less what it comes to at the first. By level it is the difference of what ten millimetres do in each of the two, where no second level was run with both.',
        ],
      },
      isLoss(first.quantity) ? besideAbove(besideId(standingAnchor(first))) : null,
    ],
  );
  const oil = first.oil === view.series.baseline.oil ? '' : ` with ${first.oil}`;
  return { ...whole, inIndex: `Same litres, same level: ${quantityWords(first.quantity)}${oil}` };
}

/** "P1: of the −34.9 ± 7.1 W at the same litres, −29.1 ± 8.2 W went with the level; −5.9 ± 7.1 W are left at the same level, not separated." */
function levelSpans(view: View, f: Factorial): Span[] {
  const name = articleSpan(view, f.article);
  if (f.levelPart === null)
    return [
      name,
      f.run === 'level only'
        ? ': run at the same level only; what the same litres give is not known.'
        : ': run at the same litres only, so that how much of its difference is level is not known.',
    ];
  const { whole, byLevel, rest } = f.levelPart;
  return [
    name,
    ': of the ',
    number(view, whole),
    ' at the same litres, ',
    number(view, byLevel),
    ' went with the level, and ',
    number(view, rest),
    ' is left at the same level, ',
    verdict(rest.separated ? 'separated' : 'not separated'),
    rest.separated ? '.' : ' from nothing.',
  ];
}

/** "Ten millimetres of level are 11.6 ± 3.2 W in P1 and 13.9 ± 5.9 W in P0: −2 ± 7 W between them, not separated." */
function slopeSpans(view: View, f: Factorial): Span[][] {
  const { slopes } = f;
  if (slopes === null) return [];
  const [own, base] = [slopes.own.cells[0]!.cell, slopes.base.cells[0]!.cell];
  return [
    [
      articleSpan(view, f.article),
      ': more level comes to ',
      named(view, f, 'slope', own, null),
      ', in the baseline article to ',
      named(view, f, 'slope', base, null),
      '; between them ',
      named(view, f, 'slope', own, base),
      ', ',
      verdict(slopes.apart.separated ? 'separated' : 'not separated'),
      '. No level but one was run with both.',
    ],
  ];
}

function named(view: View, f: Factorial, what: 'interaction' | 'slope', own: Cell, base: Cell | null): Span {
  const figure = figureNamed(view, {
    subject: base === null ? { cell: own } : { cell: own, against: base },
    quantity: factorialNames[f.quantity][what],
    at: f.at,
  });
  return figure === undefined ? '—' : cited(view, figure);
}

function number(view: View, effect: Effect): Span {
  const figure = effectFigure(view, effect);
  return figure === undefined ? '—' : cited(view, figure);
}

/** Rows are articles; what was not run is a dash. */
function tableOf(view: View, list: readonly Factorial[], first: Factorial): Block {
  const fill = (place: 0 | 1): string => {
    const found = list.flatMap((f) => f.bases['same litres'].matched[place] ?? [])[0];
    return found === undefined ? 'second fill' : cellDetail(found.base);
  };
  return tableBlock(
    `fill-table-${first.quantity}-${first.oil}`.toLowerCase(),
    [
      'wide article',
      `number same litres, ${fill(0)}`,
      `number same litres, ${fill(1)}`,
      'number interaction',
      'number same level',
    ],
    list.map((f) => {
      const [one, two] = f.bases['same litres'].matched;
      const [square] = f.bases['same litres'].squares;
      const [level] = f.bases['same level'].matched;
      return row(
        articleSpan(view, f.article),
        one === undefined ? '—' : number(view, one.effect),
        two === undefined ? '—' : number(view, two.effect),
        square === undefined ? '—' : named(view, f, 'interaction', square.first.own, square.first.base),
        level === undefined ? '—' : number(view, level.effect),
      );
    }),
    `${capital(quantityWords(first.quantity))} less the baseline; ± is half a 95 % interval.`,
  );
}
