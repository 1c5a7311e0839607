import type { Figure } from '../ledger/figure.ts';
import { rpm } from '../ledger/ids.ts';
import { quantityKinds, type QuantityName } from '../trial/figures.ts';
import type { Instrument, Rig } from '../trial/rig.ts';
import { articleSpan, cited, figureNamed } from './cite.ts';
import { dateWords } from './dates.ts';
import { numberText, quantityText, rangeText } from './digits.ts';
import { breakInBlocks } from './break-in.ts';
import { noteSection } from './note-fields.ts';
import type { Block, Page, Section, Span } from './page.ts';
import { capital, code, facts, fold, link, listed, listOf, prose, row, section, tableBlock } from './spans.ts';
import { rigDrawing } from './rig-drawing.ts';
import type { View } from './view.ts';

/** The rig: what lies inside the loss figure, the heights that oil meets, and every instrument. */
export function rigPage(view: View): Page {
  const { rig } = view;
  return {
    kind: 'rig',
    path: `${view.base}rig/`,
    title: rig.name,
    description: `Rig sheet of ${rig.name}: geometry, boundary of the loss figure, instruments and states.`,
    whereabouts: [link(view.base, view.series.title), ` · rig sheet ${rig.id} · ${spaced(rig.kind)}`],
    lead: [`Everything between ${listedText(rig.boundary)} is inside its loss figure; nothing else is.`],
    banners: [],
    series: view.series.id,
    sections: [
      section(
        'geometry',
        'Gears and heights',
        [rigDrawing(view), geometry(view)],
        [
          { name: 'Heights.', text: ['From the axle centreline, negative below it.'] },
          { name: 'Differential.', text: [`${capital(spaced(rig.differential))}.`] },
        ],
      ),
      conversionCard(view),
      section('boundary', 'What the loss figure holds', [
        listOf(rig.boundary.map((part) => [part])),
        facts([
          ['Drive', [rig.drive]],
          ['Absorbers', [rig.absorbers]],
          rig.airflowDevice === null ? null : ['Airflow', [rig.airflowDevice]],
        ]),
      ]),
      rig.window === null
        ? null
        : section('window', 'Windows', [
            prose(
              ...listed(rig.window.usedOn.map((id): Span[] => [articleSpan(view, id)])),
              `: ${rig.window.material}, with a cap on the sump of ${quantityText(rig.window.maxSump_K, '°C', 0, view.withUs)}. `,
              link('cautions/#window', 'Cautions for windows'),
            ),
          ]),
      section(
        'instruments',
        'Instruments',
        [instrumentTable(rig), details(rig)],
        [
          {
            name: 'Limits or k.',
            text: ['An accuracy without a coverage factor is read as limits: equally likely anywhere between them.'],
          },
          {
            name: 'Shared.',
            text: [
              'An instrument shares its calibration error with itself and with those of its group; what is shared cancels in a difference.',
            ],
          },
        ],
      ),
      section('states', 'States of the rig', [
        tableBlock(
          'states-table',
          ['state', 'from', 'number gears run before', 'preload', 'wide note'],
          rig.states.map(({ id, from, gearsetHours, preloadTouched, note }) => ({
            ...row(
              id,
              dateWords(from),
              gearsetHours === null ? 'not known' : `${numberText(gearsetHours, 0)} h`,
              preloadTouched ? 'touched' : 'as before',
              note,
            ),
            anchor: `state-${id}`,
          })),
        ),
        prose('Runs of different states are not compared unless the series says so.'),
        ...breakInBlocks(rig),
      ]),
      mapsSection(rig),
      noteSection(view, rig),
    ].filter((s) => s !== null),
  };
}

/** One planned step of the output shaft as everything else that turns with it. */
function conversionCard(view: View): Section | null {
  const steps = view.plan?.steps_rad_s ?? [];
  const of = (quantity: QuantityName, speed_rad_s?: number): Figure | undefined =>
    figureNamed(view, {
      subject: { rig: view.rig.id },
      quantity,
      at: speed_rad_s === undefined ? {} : { outputSpeed_rad_s: speed_rad_s },
    });
  const ratio = of('gear-ratio');
  if (ratio === undefined || steps.length === 0) return null;
  const columns: readonly QuantityName[] = ['pinion-speed', 'road-speed', 'pitch-line-speed', 'centrifugal-ratio'];
  const shownColumns = columns.filter((quantity) => of(quantity, steps[0]) !== undefined);
  return section(
    'speeds',
    'Speeds that go together',
    [
      prose('Ratio by tooth counts ', cited(view, ratio), '.'),
      tableBlock(
        'speeds-table',
        [`number ${view.speed}`, ...shownColumns.map((quantity) => `number ${quantityKinds[quantity].name}`)],
        steps.map((speed_rad_s) =>
          row(
            rpm(speed_rad_s),
            ...shownColumns.map((quantity) => {
              const figure = of(quantity, speed_rad_s);
              return figure === undefined ? '—' : [cited(view, figure)];
            }),
          ),
        ),
      ),
    ],
    [{ name: 'Centrifugal ratio.', text: ['ω²R/g at the ring gear’s rim: above 1 the rim can throw oil upward.'] }],
  );
}

function geometry(view: View): Block {
  const { rig } = view;
  const mm = (z_m: number): Span[] => [quantityText(z_m, 'mm', 0, view.withUs)];
  return facts([
    [
      'Gears',
      [`${spaced(rig.gearKind)}, ${numberText(rig.teethPinion, 0)} teeth into ${numberText(rig.teethRing, 0)}`],
    ],
    rig.hubReduction === 1 ? null : ['Hub reduction', [numberText(rig.hubReduction, 3)]],
    ['Ring gear radius', mm(rig.ringRadius_m)],
    rig.ringFace_m === null ? null : ['Ring gear face', mm(rig.ringFace_m)],
    ['Pinion offset', mm(rig.offset_m)],
    rig.rollingRadius_m === null ? null : ['Rolling radius', [quantityText(rig.rollingRadius_m, 'm', 3)]],
    rig.tubeLip_z_m === null ? null : ['Tube lip', mm(rig.tubeLip_z_m)],
    rig.fillerLip_z_m === null ? null : ['Filler lip', mm(rig.fillerLip_z_m)],
    rig.floor_z_m === null ? null : ['Floor', mm(rig.floor_z_m)],
    rig.pinionFront === null
      ? null
      : [
          'Pinion front bearing',
          [
            `${quantityText(rig.pinionFront.ahead_m, 'mm', 0)} ahead, ${quantityText(rig.pinionFront.below_m, 'mm', 0)} below, race radius ${quantityText(rig.pinionFront.raceRadius_m, 'mm', 0)}`,
          ],
        ],
    rig.bearings.length === 0 ? null : ['Bearings', [rig.bearings.map(bearingWords).join('; ')]],
    rig.seals.length === 0
      ? null
      : ['Lip seals', [rig.seals.map(({ at, shaft_m }) => `${at} ${quantityText(shaft_m, 'mm', 0)}`).join('; ')]],
  ]);
}

/** "pinion 45 mm by 90 mm, turning torque 0.4 N·m" */
const bearingWords = ({ at, bore_m, outside_m, turning_Nm }: Rig['bearings'][number]): string =>
  `${at} ${quantityText(bore_m, 'mm', 0)} by ${quantityText(outside_m, 'mm', 0)}${turning_Nm === null ? '' : `, turning torque ${quantityText(turning_Nm, 'N·m', 2)}`}`;

const unitFor: Readonly<Partial<Record<Instrument['measures'], string>>> = {
  torque: 'N·m',
  speed: 'rpm',
  temperature: '°C',
  airflow: 'm/s',
  level: 'mm',
  mass: 'g',
  time: 's',
  pressure: 'kPa',
  voltage: 'V',
};

/** The group is a column only where some instruments share one. */
function instrumentTable({ instruments }: Rig): Block {
  const shares = instruments.some(({ id, shareGroup }) => shareGroup !== id);
  return tableBlock(
    'instruments-table',
    [
      'instrument',
      'wide what it measures',
      'range',
      'accuracy',
      'calibrated',
      'next due',
      ...(shares ? ['group'] : []),
    ],
    instruments.map(({ id, what, measures, range, accuracy, calibratedOn, nextDue, shareGroup }) => ({
      ...row(
        id,
        what,
        range === null ? 'not stated' : rangeText(range[0], range[1], unitFor[measures] ?? '1').replace('from ', ''),
        accuracy.asWritten,
        calibratedOn === null ? 'not stated' : dateWords(calibratedOn),
        nextDue === null ? 'not stated' : dateWords(nextDue),
        ...(shares ? [shareGroup] : []),
      ),
      anchor: `instrument-${id}`,
    })),
  );
}

/** What else is known of an instrument, a row each; one that says no more has none. */
function details(rig: Rig): Block | null {
  const rows = rig.instruments
    .map((instrument) => ({ id: instrument.id, place: instrument.position, more: remarks(instrument) }))
    .filter(({ place, more }) => place !== null || more.length > 0);
  if (rows.length === 0) return null;
  return fold(
    'Place, certificate, zero and repeat of each',
    tableBlock(
      'instrument-details',
      ['instrument', 'wide place', 'wide what else is known'],
      rows.map(({ id, place, more }) => row(id, place ?? 'not stated', capital(more.join('; ')))),
    ),
  );
}

function remarks(of: Instrument): string[] {
  const unit = unitFor[of.measures] ?? '1';
  const tips = [...of.tip_z_m].map(
    ([article, z_m]) => `${quantityText(z_m, 'mm', 0)} in ${article === 'other' ? 'the others' : article}`,
  );
  return [
    of.certificate === null ? '' : `certificate ${of.certificate}`,
    of.checkedOn === null ? '' : `checked in place ${dateWords(of.checkedOn)}`,
    of.repeat === null ? '' : `repeats within ${repeatText(of.repeat, of.measures, unit)}, one standard deviation`,
    of.zero === 0 ? '' : `a kept zero of ${quantityText(of.zero, unit, 2)} is taken off every reading`,
    of.zeroPolicy === 'none'
      ? ''
      : of.zeroPolicy === 'kept'
        ? 'zero kept from the rig sheet'
        : 'zero read before and after each run',
    tips.length === 0 ? '' : `tip at ${tips.join(', ')}`,
  ].filter((remark) => remark !== '');
}

/** A spread of temperatures is a difference. */
const repeatText = (repeat: number, measures: string, unit: string): string =>
  quantityText(repeat, measures === 'temperature' ? 'K' : unit, 3);

const mapsSection = (rig: Rig) =>
  section(
    'columns',
    'How the logger’s columns are read',
    rig.maps.map((map) =>
      fold(
        map.id,
        tableBlock(
          `map-${map.id}`,
          ['column', 'is', 'unit', 'sign', 'instrument'],
          map.columns.map(({ header, is, unit, sign, instrument }) =>
            row(code(header), spaced(is), unit ?? '', sign === -1 ? 'turned' : 'as read', instrument ?? ''),
          ),
        ),
      ),
    ),
  );

const spaced = (word: string): string => word.replaceAll('_', ' ').replaceAll('-', ' ');
const listedText = (items: readonly string[]): string =>
  items.length <= 1 ? (items[0] ?? 'input and output') : `${items[0]!} and ${items.at(-1)!}`;
