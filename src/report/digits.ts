import type { Figure } from '../ledger/figure.ts';
import { differenceFromSI, fromSI, unitNamed } from '../quantity/units.ts';
import {
  digitsFor,
  usFor,
  withUnit,
  writeMeasured,
  writeNumber,
  writeQuantity,
  type Measured,
} from '../quantity/write.ts';
import { quantityKinds, type QuantityName } from '../trial/figures.ts';

/** The only door from a figure to its digits; `quantity/write.ts` says how many. */

/** "95.7 ± 1.3 °C", "> 150 min"; with US units in brackets where the book asks for them. */
export const wholeOf = (figure: Figure, withUs = false): string =>
  spelled(figure, withUs, (m) => signed(figure, m.value, m.text));

/** The value with its unit, for a column whose neighbour holds the ±. */
export const valueOf = (figure: Figure, withUs = false): string =>
  isBand(figure)
    ? bandText(figure, withUs)
    : spelled(figure, withUs, (m) => signed(figure, m.value, withUnit(m.value, m.unit)));

export function plusMinusOf(figure: Figure): string {
  if (isBand(figure)) return 'band';
  if (figure.value === null) return 'bound';
  const uneven = unevenOf(figure);
  if (uneven !== null) return uneven.fromTo;
  const spoken = spokenOf(figure);
  return spoken === null ? '—' : `± ${writeMeasured(spoken).plusMinus}`;
}

/** A half-interval of a quantity, SI in, in the unit that pages show: "± 9.0". */
export function plusMinusText(quantity: QuantityName, half_SI: number): string {
  const u = inDisplay(quantity, half_SI / quantityKinds[quantity].factor);
  return u > 0 && Number.isFinite(u)
    ? `± ${writeMeasured({ value: 0, u, k: 1, unit: displayUnit(quantity) }).plusMinus}`
    : '—';
}

/** Times are logged in seconds and spoken of in minutes, but for those that are over within a few. */
export const displayUnit = (quantity: QuantityName): string =>
  inMinutes(quantity) ? 'min' : quantityKinds[quantity].unit;

/** A value in the unit of its quantity → in the unit that pages show. */
export const inDisplay = (quantity: QuantityName, value: number): number =>
  inMinutes(quantity) ? value / secondsInMinute : value;

const inMinutes = (quantity: QuantityName): boolean =>
  quantityKinds[quantity].unit === 's' && !shortTimes.has(quantity);

const shortTimes: ReadonlySet<QuantityName> = new Set(['level-half-time', 'bubble-clear-time', 'camera-ahead']);

export const halfWidth = ([low, high]: readonly [number, number]): number => (high - low) / 2;

/** A number that could not be formed is a dash, never a word of the machine. */
export const numberText = (value: number, decimals: number): string =>
  Number.isFinite(value) ? writeNumber(value, decimals) : '—';

/** SI in; the US unit follows in brackets where the book asks for it and the trade has one. */
export function quantityText(si: number, unit: string, decimals: number, withUs = false): string {
  if (!Number.isFinite(si)) return '—';
  const other = withUs ? usFor(unit) : null;
  return bracketed(writeQuantity(si, unit, decimals), other === null ? null : writeQuantity(si, other.name, decimals));
}

/** SI in; the bare number in a unit that stands elsewhere, to the place that was typed, `step` being one in it. */
export function typedText(si: number, step: number, unit: string): string {
  const named = unitNamed(unit);
  const [value, one] = named === null ? [si, step] : [differenceFromSI(named, si), differenceFromSI(named, step)];
  return numberText(value, Math.min(20, Math.max(0, Math.ceil(-Math.log10(one) - 1e-9))));
}

/** A value in a named unit, to the place of its standard uncertainty where it has one. */
export const givenText = (value: number, u: number | null, unit: string): string =>
  withUnit(
    isUncertain(u) && Number.isFinite(value) ? writeMeasured({ value, u, k: 1, unit }).value : exactText(value),
    unit,
  );

export function uncertaintyText(value: number, u: number | null, unit: string): string {
  if (u === null) return '—';
  if (u === 0) return 'exact';
  return isUncertain(u) ? writeMeasured({ value, u, k: 1, unit }).plusMinus : '—';
}

/** "from 20 °C to 120 °C"; limits in SI. */
export function rangeText(from: number | null, to: number | null, unit: string): string {
  const named = unitNamed(unit);
  const spell = (si: number): string => withUnit(exactText(named === null ? si : fromSI(named, si)), unit);
  if (from !== null && to !== null) return `from ${spell(from)} to ${spell(to)}`;
  if (from !== null) return `from ${spell(from)}`;
  return to === null ? 'everywhere' : `below ${spell(to)}`;
}

/** Four digits at least, and no zeros that say nothing; for what is exact or has no uncertainty of its own. */
export function exactText(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return numberText(value, 0);
  const decimals = Math.min(20, Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value)))));
  const rounded = value.toFixed(decimals);
  return writeNumber(value, /\./.test(rounded) ? (rounded.replace(/\.?0+$/, '').split('.')[1]?.length ?? 0) : 0);
}

/** Litres are spoken of to the centilitre, as fills are; shares of a count to a tenth of a percent. */
const bareText = (value: number, unit: string): string =>
  unit === 'L'
    ? numberText(value, 2)
    : unit === '%'
      ? numberText(value, Number.isInteger(value) ? 0 : 1)
      : exactText(value);

/** A difference says its direction, a share of one has none; none has a sign when it rounds to nothing. */
const signed = (figure: Figure, value: string, text: string): string =>
  figure.kind === 'difference' && figure.quantity !== 'makes-less-share' && /^\d/.test(value) && /[1-9]/.test(value)
    ? `+${text}`
    : text;

interface Spoken {
  readonly value: number;
  readonly u: number;
  readonly k: number;
  readonly unit: string;
}

const secondsInMinute = 60;
const isUncertain = (u: number | null): u is number => u !== null && u > 0 && Number.isFinite(u);

function spelled(figure: Figure, withUs: boolean, spell: (written: Measured) => string): string {
  if (isBand(figure)) return `${bandText(figure, withUs)} (${figure.class})`;
  if (figure.value === null) return boundText(figure, withUs);
  const uneven = unevenOf(figure);
  if (uneven !== null) return spell(uneven.written);
  const spoken = spokenOf(figure) ?? { value: figure.value, u: 0, k: 1, unit: unitOf(figure) };
  if (spoken.u === 0) return withUnit(bareText(toDisplay(figure, figure.value), unitOf(figure)), unitOf(figure));
  const us = withUs ? inUs(figure, spoken) : null;
  return bracketed(spell(writeMeasured(spoken)), us === null ? null : spell(writeMeasured(us)));
}

/** The ± of a page is half its interval, so that value and interval cannot part. */
function spokenOf(figure: Figure): Spoken | null {
  const [low, high] = figure.interval;
  if (figure.value === null || low === null || high === null || !(high > low) || !Number.isFinite(high - low))
    return null;
  const k = figure.k ?? 2;
  return {
    value: toDisplay(figure, figure.value),
    u: toDisplay(figure, halfWidth([low, high])) / k,
    k,
    unit: unitOf(figure),
  };
}

/** An interval that a natural end cuts off is no ±: "0.93 (0.81 to 1.00)". */
function unevenOf(figure: Figure): { readonly fromTo: string; readonly written: Measured } | null {
  const [low, high] = figure.interval;
  if (figure.value === null || low === null || high === null || !(high > low)) return null;
  const value = toDisplay(figure, figure.value);
  const [from, to] = [toDisplay(figure, low), toDisplay(figure, high)];
  const wider = Math.max(to - value, value - from);
  if (!Number.isFinite(wider) || Math.abs(to - value - (value - from)) <= 1e-6 * wider) return null;
  const decimals = digitsFor(wider);
  const fromTo = `${numberText(from, decimals)} to ${numberText(to, decimals)}`;
  const unit = unitOf(figure);
  const [own, text] = [numberText(value, decimals), `${numberText(value, decimals)} (${fromTo})`];
  return { fromTo, written: { value: own, plusMinus: fromTo, unit, text: withUnit(text, unit) } };
}

/** A model estimate that has no mark in its middle. */
const isBand = ({ value, bound, interval: [low, high] }: Figure): boolean =>
  value === null && bound === null && low !== null && high !== null;

/** "3 to 18 W", to the place that tells its ends apart; a sentence adds its class. */
function bandText(figure: Figure, withUs: boolean): string {
  const [low, high] = figure.interval as readonly [number, number];
  const spell = (from: number, to: number, unit: string): string => {
    const decimals = to > from ? digitsFor(to - from) : 0;
    return withUnit(`${numberText(from, decimals)} to ${numberText(to, decimals)}`, unit);
  };
  const us = withUs
    ? [low, high].map((value) => inUs({ ...figure, value }, { value: 0, u: 0, k: 1, unit: unitOf(figure) }))
    : [];
  const [from, to] = us;
  const other = from == null || to == null ? null : spell(from.value, to.value, to.unit);
  return bracketed(spell(toDisplay(figure, low), toDisplay(figure, high), unitOf(figure)), other);
}

function boundText(figure: Figure, withUs: boolean): string {
  const [low, high] = figure.interval;
  const at = figure.bound === 'below' ? high : low;
  if (at === null || figure.bound === null) return 'no value';
  const spell = (value: number, unit: string): string =>
    `${figure.bound === 'above' ? '>' : '<'} ${withUnit(exactText(value), unit)}`;
  const spoken = { value: toDisplay(figure, at), u: 0, k: 1, unit: unitOf(figure) };
  const us = withUs ? inUs({ ...figure, value: at }, spoken) : null;
  return bracketed(spell(spoken.value, spoken.unit), us === null ? null : spell(us.value, us.unit));
}

/** The same figure in US customary units, or null where the trade has none for it. */
function inUs(figure: Figure, { u, k, unit }: Spoken): Spoken | null {
  const quantity = named(figure);
  const difference = figure.kind === 'difference';
  const target = usFor(unit, difference);
  if (quantity === null || target === null || figure.value === null) return null;
  const { factor, zero } = quantityKinds[quantity];
  const value = difference
    ? differenceFromSI(target, figure.value * factor)
    : fromSI(target, figure.value * factor + zero);
  return { value, u: differenceFromSI(target, u * factor), k, unit: target.name };
}

const named = ({ quantity }: Figure): QuantityName | null =>
  quantity in quantityKinds ? (quantity as QuantityName) : null;

function toDisplay(figure: Figure, value: number): number {
  const quantity = named(figure);
  return quantity === null ? value : inDisplay(quantity, value);
}

/** A difference of temperatures is in kelvin. */
function unitOf(figure: Figure): string {
  const quantity = named(figure);
  const unit = quantity === null ? figure.unit : displayUnit(quantity);
  return figure.kind === 'difference' && unit === '°C' ? 'K' : unit;
}

const bracketed = (si: string, other: string | null): string => (other === null ? si : `${si} (${other})`);
