import { fuelFactors } from '../physics/fuel.ts';
import { referenceCase } from '../compare/own-axle.ts';
import type { Cell } from '../trial/derived.ts';
import { drives, type Drive } from '../trial/book.ts';
import type { AxleData, AxleRow } from '../trial/own-axle.ts';
import { articleSpan, cellFigures, cited, figureNamed } from './cite.ts';
import { numberText, quantityText, rangeText } from './digits.ts';
import { relationPath } from './method-path.ts';
import { loadedFields, otherOil } from './own-axle-read.ts';
import { axleHeads, referenceTyped, rowWords } from './own-axle-words.ts';
import type { OwnAxleView, Page, Section, Span } from './page.ts';
import { link, listOf, prose, row, section, tableBlock } from './spans.ts';
import { besideCells, reachHead } from './supply.ts';
import type { View } from './view.ts';

export const ownAxlePath = (view: View): string => `${view.base}own-axle/`;

/** The series as these readers may see it; null where nothing of it may be scaled, or the rig sheet is held back. */
export function axleOf(view: View): { readonly data: AxleData; readonly rows: readonly AxleRow[] } | null {
  const found = view.input.ownAxle;
  if (found === null || !view.rigShown) return null;
  const seen = ({ article, oil }: { readonly article: string; readonly oil: string }): boolean =>
    view.articles.has(article) && view.oils.has(oil);
  const { data, reference } = found;
  const spun = data.spun.filter(seen);
  if (spun.length === 0 || !seen(data.baseline)) return null;
  return {
    data: {
      ...data,
      ...{ spun, loaded: data.loaded.filter(seen) },
      articles: data.articles.filter(({ id }) => spun.some(({ article }) => article === id)),
      oils: data.oils.filter(({ id }) => view.oils.has(id)),
    },
    rows: reference.rows.filter(({ article }) => view.articles.has(article)),
  };
}

/** A reader's own axle: what the measured set-ups would lose, cost and settle at there. Null where nothing can be scaled. */
export function ownAxlePage(view: View): Page | null {
  const axle = axleOf(view);
  if (axle === null) return null;
  return {
    kind: 'own-axle',
    path: ownAxlePath(view),
    title: 'What these runs say of your own axle',
    description: `What was measured in ${view.series.title}, brought to the reader's own vehicle as far as the runs carry.`,
    whereabouts: [link(view.base, view.series.title), ' · own axle'],
    lead: [
      'Your ratio, tyre, speed, load, weather, fill and oil: what each article of this series would lose there, what that costs along the road and how warm its oil would settle. Nothing is carried beyond what was run; where it would have to be, the reason stands instead of a figure.',
    ],
    banners: [],
    series: view.series.id,
    sections: [yoursSection(view, axle.data), referenceSection(view, axle), rulesSection(axle.data)],
  };
}

const yoursSection = (view: View, data: AxleData): Section =>
  section(
    'yours',
    'Yours',
    [{ kind: 'own-axle', axle: modelOf(view, data) }],
    [
      {
        name: 'How sure.',
        text: [
          'Half of a 95 % interval stands behind ±. At speeds, temperatures and fills that were run these are the published figures. A range without ± holds two ways of scaling, and nothing in it is more likely than the rest. Your axle is another piece than the one on the bench: how far axles differ was not looked at here.',
        ],
      },
      {
        name: 'Your own case.',
        text: ['The address keeps what you typed: copy it to show somebody. It is worked out here, in this page.'],
      },
    ],
  );

function modelOf(view: View, data: AxleData): OwnAxleView {
  const text = (field: OwnAxleView['fields'][number]['field'], label: string, hint: string) => ({ field, label, hint });
  const fields: OwnAxleView['fields'] = [
    text('ratio', 'Ratio', '3.73, or teeth of ring and pinion 41:11'),
    text('tyre', 'Tyre', 'rolling radius 338 mm, or marking 215/65 R16'),
    text('speed', 'Speed', '290 rpm of the wheel, 37 km/h, 23 mph'),
    text('load', 'Load at the wheels', '22 kW, or both wheels together 720 N·m'),
    text('ambient', 'Ambient', '21 °C, 70 °F'),
    text('airflow', 'Air past the axle', '4 m/s'),
    text('fill', 'Fill', '2.4 L, 2.5 US qt'),
    {
      ...text('oil', 'Oil', ''),
      choices: [
        ...data.oils.map(({ id, name }) => ({ value: id, text: `${id} ${name}` })),
        { value: otherOil, text: 'another, by its viscosities' },
      ],
    },
    text('nu40', 'Viscosity at 40 °C', '102 mm²/s'),
    text('nu100', 'Viscosity at 100 °C', '15 cSt'),
    text('sump', 'Sump, for the loss', '60 °C, 140 °F'),
    { ...text('drive', 'Drive', ''), choices: drives.map((value) => ({ value, text: driveName(value) })) },
    text('efficiency', 'Battery to axle', '86 %'),
  ];
  return {
    data,
    typed: referenceTyped(data, referenceCase(data)),
    fields: fields.filter(({ field }) => data.load !== null || !loadedFields.includes(field)),
    heads: axleHeads(data.baseline.article),
    withUs: view.withUs,
  };
}

const driveName = (drive: Drive): string => (drive === 'electric' ? 'electric' : fuelFactors[drive].name);

/** The series' own case, from the ledger; what each loss is read with stands beside it. */
function referenceSection(view: View, { data, rows }: { data: AxleData; rows: readonly AxleRow[] }): Section {
  const asked = referenceCase(data);
  const at = { outputSpeed_rad_s: asked.wheel_rad_s, sump_K: asked.sump_K };
  const under =
    data.load === null
      ? ''
      : `; loaded with ${quantityText(data.load.power_W, 'kW', 0, view.withUs)}, ambient ${quantityText(data.load.ambient_K, '°C', 0, view.withUs)}, air ${quantityText(data.load.airflow_m_s, 'm/s', 1, view.withUs)}`;
  return section('reference', 'The case of the series', [
    prose(
      `${quantityText(asked.wheel_rad_s, 'rpm', 0)} of the wheel, ratio ${numberText(data.ratio, 2)}, ${quantityText(asked.fill_m3, 'L', 2, view.withUs)} of ${data.baseline.oil}, spin loss with the sump at ${quantityText(asked.sump_K, '°C', 0, view.withUs)}${under}.`,
    ),
    tableBlock(
      'own-axle-reference',
      [
        'wide article',
        ...axleHeads(data.baseline.article).map((head) => `number ${head}`),
        'Reach',
        'number pinion bearing',
      ],
      rows.map((own) => {
        const cell: Cell = {
          ...{ article: own.article, oil: data.baseline.oil, fill_m3: data.baseline.fill_m3, tilt_ratio: 0 },
        };
        const base = { ...cell, article: data.baseline.article };
        const { cells } = rowWords(own, data.drive, view.withUs);
        const spin = figureNamed(view, { subject: { cell }, quantity: 'spin-power', at });
        const less = figureNamed(view, { subject: { cell, against: base }, quantity: 'spin-power', at });
        const [final] = cellFigures(view, cell, 'final-temperature');
        const figures = [spin, less, undefined, final];
        const told = cells.map(({ text, told: is }, i): Span => {
          const figure = figures[i];
          return is && figure !== undefined ? cited(view, figure) : text;
        });
        const built = row([articleSpan(view, own.article)], ...told, ...besideCells(view, cell));
        return own.article === data.baseline.article ? { ...built, role: 'baseline' as const } : built;
      }),
      `${reachHead(view)}, graded behind the window without load; pinion bearing above sump, under load.`,
    ),
  ]);
}

/** How figures are brought to another axle, and where they are not. */
function rulesSection(data: AxleData): Section {
  const speeds = data.spun.flatMap(({ points }) => points.map((p) => p.speed_rad_s));
  const sumps = data.spun.flatMap(({ points }) => points.map((p) => p.sump_K));
  return section(
    'rules',
    'How it is scaled, and where it is refused',
    [
      listOf([
        [
          `Spin loss goes along a power law between the speeds and viscosities that were run (${rangeText(Math.min(...speeds), Math.max(...speeds), 'rpm')} of the wheel, sump ${rangeText(Math.min(...sumps), Math.max(...sumps), '°C')}) and along a straight line between fills. Nothing was run between: what a curve through the next point would part from that law is added to the interval.`,
        ],
        [
          'An oil that was not run stands by its ',
          link(relationPath('viscosity-log-log'), 'viscosity'),
          `, in the runs with ${data.baseline.oil}; what its additives and density do was not looked at. Its final temperature is not told.`,
        ],
        [
          'With another ratio than the bench the pinion turns faster or slower at the same wheel speed. Then a range is given: from loss that goes with the ring gear alone to loss that goes with the pinion alone. More than a quarter off, nothing is told.',
        ],
        [
          'Final temperatures are brought to your load, speed and ambient by what the runs themselves measured: heat made, spin loss, shed and how heat goes with temperature. No further than a tenth in speed and torque and 10 K in temperature, and only with the airflow and the oils that were run (common practice, no source).',
        ],
        [
          'Cost is the ',
          link(relationPath('energy-per-distance'), 'difference in spin loss over road speed'),
          ', through the drive that you name; the factors of engines stand with ',
          link(relationPath('fuel-per-distance'), 'their relation'),
          '. It is at one steady speed and one sump temperature, not over a day.',
        ],
      ]),
    ],
    [
      {
        name: 'Not in it.',
        text: [
          'Less loss may mean less oil at the pinion. Reach and pinion bearing stand in the table of the series; neither is scaled. Follow what the maker of your vehicle says of oil, fill and temperature.',
        ],
      },
    ],
  );
}
