import { joinsOf } from '../compare/bridging.ts';
import { atKey } from '../compare/group.ts';
import type { Bridge, Campaign } from '../trial/campaign.ts';
import type { Standing } from '../trial/compared.ts';
import { shownDifference, type QuantityName } from '../trial/figures.ts';
import { articleSpan, citedValue, figureNamed, litresWords } from './cite.ts';
import { dateWords } from './dates.ts';
import { displayUnit, inDisplay, numberText } from './digits.ts';
import type { Block, MarginNote, Section, Span } from './page.ts';
import { counts, prose, row, section, tableBlock, verdict } from './spans.ts';
import { isMain, whereWords } from './standing-words.ts';
import { derivedOf, type View } from './view.ts';

/** How runs of later campaigns stand to those of the first: what the baseline did in between, and what follows. */
export function campaignsSection(view: View): Section | null {
  const told = (view.series.campaigns ?? []).map((campaign) => ({ campaign, bridges: bridgesOf(view, campaign.id) }));
  const shown = told.filter(({ bridges }) => bridges.length > 0);
  if (shown.length === 0) return null;
  return section(
    'campaigns',
    'Later campaigns',
    shown.flatMap(({ campaign, bridges }, i): Block[] => [
      prose(...campaignSpans(view, campaign, bridges)),
      bridgeTable(view, bridges, `campaigns-${String(i + 1)}`),
    ]),
    [
      {
        name: 'The limit.',
        text: [
          'Two results of one refit differ by 2.8 times its standard deviation at most in 19 of 20 cases; two means by less, as there are more runs behind each (ISO 5725-6).',
        ],
      },
      {
        name: 'What is taken off.',
        text: [
          'In one table the runs of a campaign are lessened by what the baseline moved by, whose own doubt they carry. The baseline of the table, and every row of the first campaign, stay as they were measured.',
        ],
      },
    ],
  );
}

/** "U-01, from 3 May 2027: a thin bowl arrived. The baseline was run again first, 3 runs. In all 2 tables it lies within …" */
function campaignSpans(view: View, { id, from, why }: Campaign, bridges: readonly Bridge[]): Span[] {
  const runs = new Set(bridges.flatMap(({ after }) => after?.runs ?? []));
  const { article, fill_m3 } = view.series.baseline;
  const counted = (['joint', 'adjusted', 'separate'] as const).flatMap((outcome) => {
    const n = bridges.filter((b) => b.outcome === outcome).length;
    return n === 0
      ? []
      : [`${n === bridges.length ? (n === 1 ? 'the one' : 'all') : numberText(n, 0)} ${words[outcome]}`];
  });
  return [
    `${id}, from ${dateWords(from)}${why === '' ? '' : `: ${why.replace(/\.$/, '')}`}. The baseline, `,
    articleSpan(view, article),
    `, ${litresWords({ fill_m3 })}, ${runs.size === 0 ? 'was not run again' : `was run again ${counts(runs.size, 'time')}`}. `,
    `Of ${counts(bridges.length, 'comparison')}: ${counted.join(', ')}. Figures of its runs carry the mark ${id}.`,
  ];
}

const words = { joint: 'in one joint table', adjusted: 'adjusted', separate: 'in separate tables' } as const;

const bridgeTable = (view: View, bridges: readonly Bridge[], id: string): Block =>
  tableBlock(
    id,
    [
      'wide compared',
      'number baseline before',
      'number baseline again',
      'number moved by',
      'number limit',
      'wide follows',
    ],
    bridges.map((bridge) => {
      const cell = { ...view.series.baseline, tilt_ratio: 0 };
      const figure = (campaign?: string): Span => {
        const subject = { cell: campaign === undefined ? cell : { ...cell, campaign } };
        const found = figureNamed(view, { subject, quantity: bridge.quantity, at: bridge.at });
        return found === undefined ? '—' : citedValue(view, found);
      };
      return row(
        whereWords(view, { quantity: bridge.quantity, at: bridge.at, oil: cell.oil }),
        bridge.before === null ? '—' : figure(),
        bridge.after === null ? '—' : figure(bridge.campaign),
        bridge.shift === null ? '—' : changeText(bridge.quantity, bridge.shift),
        bridge.limit === null ? '—' : sizeText(bridge.quantity, bridge.limit),
        [verdict(outcomes[bridge.outcome]), `: ${bridge.why}`],
      );
    }),
    'Baseline as its figures have it, with the drift taken out of them; moved by and limit from its runs as they are.',
  );

const outcomes = { joint: 'joint table', adjusted: 'adjusted', separate: 'separate tables' } as const;

/** In the margin of one standing: why rows of a later campaign stand in it, or why it is a table of its own. */
export function campaignNote(view: View, standing: Standing): MarginNote | null {
  const own = bridgesFor(view, standing);
  if (own.length === 0) return null;
  return {
    name: 'Campaigns.',
    text: own.map(
      ({ campaign, outcome, shift, limit, quantity, why }, i) =>
        `${i === 0 ? '' : ' '}${campaign}: ${outcomes[outcome]}, since ${why}${
          shift === null || limit === null
            ? ''
            : ` (${changeText(quantity, shift)} against ${sizeText(quantity, limit)})`
        }.`,
    ),
  };
}

/** What joined this table, and what would have: told where the baseline is that of the series. */
const bridgesFor = (view: View, standing: Standing): readonly Bridge[] => {
  const all = view.input.compared.bridges ?? [];
  const { quantity, at, oil, against, campaign } = standing;
  const apart = all.filter(
    (b) =>
      b.outcome === 'separate' &&
      b.quantity === quantity &&
      atKey(b.at) === atKey(at) &&
      (campaign === undefined ? oil === view.series.baseline.oil && against.tilt_ratio === 0 : b.campaign === campaign),
  );
  return [...joinsOf(standing, all), ...apart];
};

/** The main condition first; runs that a reader may not see are told of nowhere. */
const bridgesOf = (view: View, campaign: string): readonly Bridge[] =>
  (view.input.compared.bridges ?? [])
    .filter(
      (b) =>
        b.campaign === campaign &&
        b.quantity !== 'spin-torque' &&
        (b.after?.runs ?? []).every((run) => derivedOf(view, run) !== undefined),
    )
    .map((b, i) => ({ b, i, main: isMain(view, b) }))
    .sort((a, b) => Number(b.main) - Number(a.main) || speedOf(a.b) - speedOf(b.b) || a.i - b.i)
    .map(({ b }) => b);

const speedOf = ({ at }: Bridge): number => at.outputSpeed_rad_s ?? 0;

const changeText = (quantity: QuantityName, si: number): string =>
  `${si < 0 ? '−' : '+'}${sizeText(quantity, Math.abs(si))}`;

function sizeText(quantity: QuantityName, si: number): string {
  const value = inDisplay(quantity, shownDifference(quantity, si));
  const unit = displayUnit(quantity);
  return `${numberText(value, value < 9.95 ? 1 : 0)} ${unit === '°C' ? 'K' : unit}`;
}
