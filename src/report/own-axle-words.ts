import type { Figure } from '../ledger/figure.ts';
import type { Drive } from '../trial/book.ts';
import { quantityKinds, shown, shownDifference, type QuantityName } from '../trial/figures.ts';
import type { AxleAnswer, AxleAsked, AxleData, AxleRow, Told } from '../trial/own-axle.ts';
import { exactText, quantityText, valueOf, wholeOf } from './digits.ts';
import { withUnit } from '../quantity/write.ts';
import { axleFields, type AxleTyped } from './own-axle-read.ts';

/** What the page says of a reader's own axle: the build and the page in the browser say it with these same words. */

export const costQuantity = (drive: Drive): 'energy-cost' | 'fuel-cost' =>
  drive === 'electric' ? 'energy-cost' : 'fuel-cost';

/** Head of each column of figures, without the article. */
export const axleHeads = (baseline: string): readonly string[] => [
  'spin loss',
  `less ${baseline}`,
  'which costs',
  'final sump',
];

/** One row: what each column says, and what is to be known of it. A reason that holds for a whole row is said once. */
export interface RowWords {
  readonly article: string;
  readonly cells: readonly { readonly text: string; readonly told: boolean }[];
  readonly notes: readonly string[];
}

export function rowWords(row: AxleRow, drive: Drive, withUs: boolean): RowWords {
  const { spin, less, cost, final } = row;
  const told = (what: Told, quantity: QuantityName, difference: boolean) => ({
    text: what.kind === 'none' ? what.why : toldText(what, quantity, difference, withUs),
    told: what.kind !== 'none',
  });
  const cells = [
    told(spin, 'spin-power', false),
    told(less, 'spin-power', true),
    told(cost, costQuantity(drive), true),
    told(final, 'final-temperature', false),
  ];
  return {
    article: row.article,
    cells: cells.map((cell, i) =>
      !cell.told && cells.slice(0, i).some(({ text }) => text === cell.text) ? { text: '—', told: false } : cell,
    ),
    notes: [...(row.indicative && less.kind !== 'none' ? ['The difference is indicative only.'] : []), ...row.notes],
  };
}

/** "−28 ± 7 W", or a band "203 to 231 W". */
export function toldText(
  told: Exclude<Told, { kind: 'none' }>,
  quantity: QuantityName,
  difference: boolean,
  withUs: boolean,
): string {
  const to = difference ? shownDifference : shown;
  const ends =
    told.kind === 'band'
      ? ([told.low, told.high] as const)
      : ([told.value - told.half, told.value + told.half] as const);
  const figure = spoken(quantity, difference, {
    value: told.kind === 'band' ? null : to(quantity, told.value),
    interval: [to(quantity, ends[0]), to(quantity, ends[1])],
  });
  return told.kind === 'band' ? valueOf(figure, withUs) : wholeOf(figure, withUs);
}

/** In the form that digits are written from; it stands in no ledger. */
const spoken = (quantity: QuantityName, difference: boolean, of: Pick<Figure, 'value' | 'interval'>): Figure => ({
  ...{ id: '', kind: difference ? 'difference' : 'value', quantity, subject: {}, at: {}, ...of },
  ...{ unit: quantityKinds[quantity].ucum, bound: null, coverage: 0.95, k: null, dof: null },
  ...{ class: of.value === null ? 'model estimate' : 'derived from measurement', inputs: [] },
  ...{ relation: '', method: '', notes: [] },
});

/** "Wheel 290 rpm, pinion 1321 rpm, 37.0 km/h; oil at 60 °C: 62.3 mm²/s." */
export function speedsText({ road_m_s, pinion_rad_s, nu_m2_s }: AxleAnswer, asked: AxleAsked, withUs: boolean): string {
  const speeds = [
    `wheel ${quantityText(asked.wheel_rad_s, 'rpm', 0)}`,
    `pinion ${quantityText(pinion_rad_s, 'rpm', 0)}`,
    ...(road_m_s === null ? [] : [`road ${quantityText(road_m_s, 'km/h', 1, withUs)}`]),
  ];
  const oil =
    nu_m2_s === null
      ? ''
      : `; oil at ${quantityText(asked.sump_K, '°C', 0, withUs)}: ${quantityText(nu_m2_s, 'mm²/s', 1)}`;
  return `At ${speeds.join(', ')}${oil}.`;
}

/** What stands in the fields when the page is opened: the case of the series. */
export function referenceTyped(data: AxleData, asked: AxleAsked): AxleTyped {
  const typed = (value: number, unit: string): string => withUnit(exactText(value), unit).replaceAll('\u202f', ' ');
  const first = data.oils.find(({ id }) => id === data.baseline.oil);
  const fields: AxleTyped = {
    ratio: exactText(asked.ratio),
    tyre: asked.radius_m === null ? '' : typed(asked.radius_m * 1e3, 'mm'),
    speed: typed((asked.wheel_rad_s * 30) / Math.PI, 'rpm'),
    load: typed(asked.power_W / 1e3, 'kW'),
    ambient: typed(asked.ambient_K - 273.15, '°C'),
    airflow: typed(asked.airflow_m_s, 'm/s'),
    fill: typed(asked.fill_m3 * 1e3, 'L'),
    oil: typeof asked.oil === 'string' ? asked.oil : data.baseline.oil,
    nu40: typed((first?.nu40_m2_s ?? 0) * 1e6, 'mm²/s'),
    nu100: typed((first?.nu100_m2_s ?? 0) * 1e6, 'mm²/s'),
    sump: typed(asked.sump_K - 273.15, '°C'),
    drive: asked.drive,
    efficiency: typed(asked.driveEfficiency * 100, '%'),
  };
  return fields;
}

/** The fields that differ from those of the series, as the address holds them. */
export function typedAddress(typed: AxleTyped, reference: AxleTyped): string {
  const changed = axleFields.filter((field) => typed[field] !== reference[field]);
  return `#${new URLSearchParams(changed.map((field) => [field, typed[field]])).toString()}`;
}

export function typedFrom(hash: string, reference: AxleTyped): AxleTyped {
  const held = new URLSearchParams(hash.replace(/^#/, ''));
  return Object.fromEntries(axleFields.map((field) => [field, held.get(field) ?? reference[field]])) as Record<
    keyof AxleTyped,
    string
  >;
}
