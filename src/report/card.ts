import type { RunCard } from '../trial/run-card.ts';
import { cautionsFor } from './cautions.ts';
import { articleMark, articleWords, litresWords, tiltWords } from './cite.ts';
import { cardNote } from './card-note.ts';
import { readingsSection } from './card-readings.ts';
import { dateWords } from './dates.ts';
import { numberText, quantityText } from './digits.ts';
import type { MarginNote, Section, Span } from './page.ts';
import { blank, facts, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** What stands on a card, in the order of the work: set up, before and after, readings, the note to write. */
export function cardSections(view: View, card: RunCard, { id, heading }: CardPlace): Section[] {
  return [
    {
      ...section(
        `${id}set-up`,
        heading,
        [facts(setUp(view, card))],
        [release, probes(view, card), ...cautions(view, card)],
      ),
    },
    section(`${id}before-and-after`, 'Before and after', [beforeAndAfter(card, id)]),
    readingsSection(view, card, id),
    section(`${id}note`, 'The note to write', [{ kind: 'code', language: 'yaml', text: cardNote(card) }]),
  ];
}

/** Several cards share a page when they are printed together: ids differ, and each has its name as a heading. */
export interface CardPlace {
  readonly id: string;
  readonly heading: string | null;
}

/** "P4 shroud, 2.40 L of O1, 12 % nose up" */
export const cardTitle = (view: View, { cell }: RunCard): string =>
  `${articleWords(view, cell.article)}, ${litresWords(cell)} of ${cell.oil}${tiltWords(cell)}`;

/** "spin · card 12 of 63 · run 2 of 3 of its cell · the baseline" */
export const cardWhere = ({ cell, position, of, time, baseline, done }: RunCard): string =>
  [
    cell.trial,
    `card ${numberText(position, 0)} of ${numberText(of, 0)}`,
    `run ${numberText(time, 0)} of ${numberText(cell.wanted, 0)} of its cell`,
    ...(baseline ? ['the baseline'] : []),
    ...(done ? ['run already'] : []),
  ].join(' · ');

/** Of a cool-down the oil is in already: it follows its heat-up. */
function pouring(view: View, card: RunCard): (readonly [string, readonly Span[]])[] {
  const { cell, mass_kg, massTolerance_kg, wait_s, level_z_m } = card;
  const litres = quantityText(cell.fill_m3, 'L', 2, view.withUs);
  const within = quantityText(view.series.tolerance.level_m, 'mm', 0);
  return [
    [
      'Pour in',
      [
        `${quantityText(mass_kg, 'g', 0)} ± ${quantityText(massTolerance_kg, 'g', 0)}, which is ${litres} at 20\u202f°C`,
      ],
    ],
    ['Then wait', wait_s === null ? [blank('minutes waited'), ' min'] : [quantityText(wait_s, 'min', 0)]],
    [
      cell.tilt_ratio === 0 ? 'Static level to expect' : 'Static level to expect before it is tilted',
      level_z_m === null
        ? ['not in the level table of this article; read it and write it down']
        : [`${quantityText(level_z_m, 'mm', 1, view.withUs)} ± ${within}; farther off, look for why`],
    ],
  ];
}

function setUp(view: View, card: RunCard): (readonly [string, readonly Span[]] | null)[] {
  const { cell, load } = card;
  return [
    ['Run, day', [blank('id of the run'), ' on ', blank('day')]],
    ['Article', [articleMark(view, cell.article)]],
    ['Oil', [`${cell.oil} ${view.oils.get(cell.oil)?.name ?? ''}`.trim()]],
    ...(cell.trial === 'cool-down' ? [] : pouring(view, card)),
    cell.tilt_ratio === 0 ? null : ['Tilt', [tiltWords(cell).slice(2)]],
    load === null
      ? null
      : [
          'Load',
          [
            `${quantityText(load.powerOut_W, 'kW', 1, view.withUs)} out at ${quantityText(load.output_rad_s, 'rpm', 0)} of the ${view.naming.speed === 'wheel-speed' ? 'wheels' : 'output'}${load.road_m_s === null ? '' : ` (${quantityText(load.road_m_s, 'km/h', 1, view.withUs)})`}, pinion ${quantityText(load.pinion_rad_s, 'rpm', 0)}`,
          ],
        ],
    card.airflow_m_s === null ? null : ['Airflow', [quantityText(card.airflow_m_s, 'm/s', 1)]],
    [
      'Rig state, refit, order',
      [
        card.rigState ?? blank('rig state'),
        ', refit ',
        card.refit === null ? blank('refit') : numberText(card.refit, 0),
        ', run ',
        card.order === null ? blank('order') : numberText(card.order, 0),
        ' of the series',
      ],
    ],
    card.caps.length === 0
      ? null
      : [
          'Sump stays under',
          [card.caps.map(({ what, limit_K }) => `${quantityText(limit_K, '°C', 0, view.withUs)} (${what})`).join(', ')],
        ],
  ];
}

/** Room for what is read at rest on either side of the run. */
function beforeAndAfter({ zeros, airflow_m_s }: RunCard, id: string) {
  const line = (what: string, unit: string) => row(what, unit, blank(`${what}, before`), blank(`${what}, after`));
  return tableBlock(
    `${id}at-rest`,
    ['wide read at rest', 'unit', 'before', 'after'],
    [
      ...zeros.map((zero) => line(`zero of ${zero}`, 'N·m')),
      line('oil weighed: poured in, drained', 'g'),
      row('oil as poured', '°C', blank('oil as poured'), '—'),
      line('level left', 'mm'),
      line('level right', 'mm'),
      line('ambient', '°C'),
      ...(airflow_m_s === null ? [] : [line('air speed', 'm/s')]),
    ],
  );
}

const release: MarginNote = {
  name: 'Before power.',
  text: ['Released to run by ', blank('who released it'), ' at ', blank('time of release')],
};

/** What is looked at before power: the tip in the oil, each instrument in its place and in date. */
function probes(view: View, { instruments, tip_z_m, level_z_m }: RunCard): MarginNote {
  const deep = tip_z_m === null || level_z_m === null ? null : level_z_m - tip_z_m;
  const known = instruments.flatMap((id) => view.rig.instruments.filter((one) => one.id === id));
  return {
    name: 'Probes.',
    text: [],
    list: [
      ...(deep === null || tip_z_m === null
        ? [['Tip of the sump probe under the oil.']]
        : [
            [
              deep > 0
                ? `Sump probe tip at ${quantityText(tip_z_m, 'mm', 0)}, ${quantityText(deep, 'mm', 0)} under the level at rest; running, the level falls.`
                : `Sump probe tip at ${quantityText(tip_z_m, 'mm', 0)} stands over the level at rest: it would read air.`,
            ],
          ]),
      ...known
        .filter(({ position, measures }) => position !== null && measures !== 'mass')
        .map(({ id, position }) => [`${id}: ${position ?? ''}.`]),
      ...dueWords(known),
      ['Breather looked at and open.'],
    ],
  };
}

function dueWords(known: readonly { readonly id: string; readonly nextDue: string | null }[]): string[][] {
  const dated = known.flatMap(({ id, nextDue }) => (nextDue === null ? [] : [{ id, nextDue }]));
  const first = [...dated].sort((a, b) => (a.nextDue < b.nextDue ? -1 : 1))[0];
  return first === undefined ? [] : [[`In date until ${dateWords(first.nextDue)}, ${first.id} first.`]];
}

/** The rows of this kind of trial; the fan counts where there is one. */
const cautions = (view: View, { cell }: RunCard): MarginNote[] =>
  cautionsFor(
    {
      ...{ trial: cell.trial, article: cell.article, tilt_ratio: cell.tilt_ratio, gearState: null },
      airflow_m_s: view.rig.airflowDevice !== null && cell.trial !== 'flow' && cell.trial !== 'spin' ? 1 : 0,
    },
    view.articles.get(cell.article),
    view.rig,
  ).map(({ stage, name, short }) => ({ name: `${name}.`, text: [short], code: `caution-${stage}` }));
