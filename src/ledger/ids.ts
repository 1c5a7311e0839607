import { quantityKinds, type QuantityName } from '../trial/figures.ts';
import type { At, Cell } from '../trial/derived.ts';
import type { Conditions, Figure, Subject } from './figure.ts';

/**
 * Names of figures are permanent: subject/quantity@condition,… — `S-07/spin-power@290rpm,60Cel`, `P4~P0/spin-power@290rpm,60Cel`.
 * Fill, oil, tilt and a later campaign stand among the conditions only where they differ from the reference cell of the series.
 */
export interface Naming {
  readonly reference: { readonly fill_m3: number; readonly oil: string };
  /** Axle benches speak of wheels, gear boxes of their output shaft. */
  readonly speed: 'wheel-speed' | 'output-speed';
}

export type FigureSubject =
  | { readonly run: string }
  | { readonly cell: Cell; readonly against?: Cell }
  | { readonly oil: string }
  | { readonly rig: string }
  | { readonly series: string };

export interface FigureName {
  readonly subject: FigureSubject;
  readonly quantity: QuantityName;
  readonly at: At;
}

export const litres = (volume_m3: number): string => (volume_m3 * 1000).toFixed(2);
const celsius = (t_K: number): string => String(Math.round((t_K - 273.15) * 10) / 10);
export const rpm = (speed_rad_s: number): string => String(Math.round(((speed_rad_s * 30) / Math.PI) * 10) / 10);
const percent = (ratio: number): string => String(Math.round(ratio * 1000) / 10);

/** "P4", "S-07", "P4~P0", "O1": the first half of an id, and the folder of its working. */
export function subjectId(subject: FigureSubject): string {
  if ('run' in subject) return subject.run;
  if ('oil' in subject) return subject.oil;
  if ('rig' in subject) return subject.rig;
  if ('series' in subject) return subject.series;
  return subject.against ? `${subject.cell.article}~${subject.against.article}` : subject.cell.article;
}

/** "290rpm,60Cel"; empty when the quantity stands without conditions. */
export function conditionId(name: Omit<FigureName, 'quantity'>, naming: Naming): string {
  const { at, subject } = name;
  return [
    at.outputSpeed_rad_s === undefined ? '' : `${rpm(at.outputSpeed_rad_s)}rpm`,
    at.sump_K === undefined ? '' : at.sump_K === 'own' ? 'own' : `${celsius(at.sump_K)}Cel`,
    at.limit_K === undefined ? '' : `${celsius(at.limit_K)}Cel`,
    at.basis ?? '',
    at.direction ?? '',
    at.grade ?? '',
    at.observers ?? '',
    at.band_K === undefined ? '' : `${at.band_K.map(celsius).join('to')}Cel`,
    at.charge ?? '',
    at.sample ?? '',
    ...('cell' in subject ? cellConditions(subject.cell, subject.against, naming) : []),
  ]
    .filter((part) => part !== '')
    .join(',');
}

export function figureId(name: FigureName, naming: Naming): string {
  const conditions = conditionId(name, naming);
  return `${subjectId(name.subject)}/${name.quantity}${conditions === '' ? '' : `@${conditions}`}`;
}

/** "P1 3.59 L O1", "P0 2.40 L O1 +12 %": one cell in words, for tables and findings. */
export function cellName(cell: Cell): string {
  const tilt =
    cell.tilt_ratio === 0 ? '' : ` ${cell.tilt_ratio > 0 ? '+' : '−'}${percent(Math.abs(cell.tilt_ratio))} %`;
  const later = cell.campaign === undefined ? '' : ` in ${cell.campaign}`;
  return `${cell.article} ${litres(cell.fill_m3)} L ${cell.oil}${tilt}${later}`;
}

export const sameCell = (a: Cell, b: Cell): boolean => cellName(a) === cellName(b);

/** Address of the working of a figure, below the site's root: one page a subject and quantity, one anchor a condition. */
export function workingPath(
  figure: Pick<Figure, 'id'>,
  series: string,
): { readonly page: string; readonly anchor: string } {
  const [subject = '', rest = ''] = figure.id.split('/');
  const [quantity = '', conditions = 'value'] = rest.split('@');
  return { page: `series/${series}/workings/${subject}/${quantity}/`, anchor: conditions };
}

export function subjectOf(subject: FigureSubject): Subject {
  if ('run' in subject) return { run: subject.run };
  if ('oil' in subject) return { oil: subject.oil };
  if ('rig' in subject) return { rig: subject.rig };
  if ('series' in subject) return { series: subject.series };
  const { cell, against } = subject;
  const spelled = (c: Cell) => ({ article: c.article, oil: c.oil, fill: `${litres(c.fill_m3)} L`, ...inCampaign(c) });
  return against ? { ...spelled(cell), against: spelled(against) } : spelled(cell);
}

const inCampaign = ({ campaign }: Cell): { readonly campaign?: string } => (campaign === undefined ? {} : { campaign });

export function conditionsOf(at: At, cell: Cell | null, naming: Naming): Conditions {
  return {
    ...(at.outputSpeed_rad_s === undefined ? {} : { [naming.speed]: `${rpm(at.outputSpeed_rad_s)} rpm` }),
    ...(at.sump_K === undefined ? {} : { sump: at.sump_K === 'own' ? 'own' : `${celsius(at.sump_K)} Cel` }),
    ...(at.limit_K === undefined ? {} : { limit: `${celsius(at.limit_K)} Cel` }),
    ...(at.basis === undefined ? {} : { basis: at.basis }),
    ...(at.direction === undefined ? {} : { direction: at.direction }),
    ...(at.grade === undefined ? {} : { grade: at.grade }),
    ...(at.observers === undefined ? {} : { observers: at.observers }),
    ...(at.band_K === undefined ? {} : { band: `${at.band_K.map(celsius).join(' to ')} Cel` }),
    ...(at.charge === undefined ? {} : { charge: at.charge }),
    ...(at.sample === undefined ? {} : { sample: at.sample }),
    ...(cell === null || cell.tilt_ratio === 0 ? {} : { tilt: `${percent(cell.tilt_ratio)} %` }),
  };
}

export const ucumOf = (quantity: QuantityName): string => quantityKinds[quantity].ucum;

function cellConditions(cell: Cell, against: Cell | undefined, { reference }: Naming): string[] {
  const pair = (of: (c: Cell) => string, plain: string): string => {
    const own = of(cell);
    const other = against === undefined ? null : of(against);
    if (other === null) return own === plain ? '' : own;
    return own === plain && other === plain ? '' : `${own}~${other}`;
  };
  return [
    pair((c) => `${litres(c.fill_m3)}L`, `${litres(reference.fill_m3)}L`),
    pair((c) => c.oil, reference.oil),
    pair((c) => `${percent(c.tilt_ratio)}pct`, '0pct'),
    // Held against all campaigns together it is another figure than held against its own.
    pair((c) => c.campaign ?? '', ''),
  ];
}
