import { decimalsAt, roundedDigits } from './digits.ts';
import { differenceFromSI, fromSI, unitNamed, type Unit } from './units.ts';

/** The one home of digits: core code never formats, and every figure is rounded once, here, from full precision. */

const minus = '\u2212';
const thin = '\u202f';

/** With a true minus, thousands parted from 10 000 on, never −0; half to even on the decimal digits. */
export function writeNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new Error(`a page cannot show ${String(value)}`);
  const digits = roundedDigits(Math.abs(value), decimals);
  const [whole, part] = digits.split('.') as [string, string?];
  const parted = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, thin) : whole;
  const sign = value < 0 && /[1-9]/.test(digits) ? minus : '';
  return sign + parted + (part === undefined ? '' : `.${part}`);
}

/** Decimals that show `digits` significant digits of an uncertainty; negative for tens. 9.96 shows as 10: the place is taken after rounding. */
export const digitsFor = (u: number, digits: 1 | 2 = 2): number => decimalsAt(u, digits);

/** A number and its unit: narrow no-break space before every unit but ° of angle (ISO 80000-1, 7.1.4). */
export const withUnit = (number: string, unit: string): string =>
  unit === '1' ? number : unit === '°' || unit === '″' ? number + unit : number + thin + unit;

/** SI in, text in the named unit out. */
export const writeQuantity = (si: number, unit: string, decimals: number): string =>
  withUnit(writeNumber(fromSI(known(unit), si), decimals), unit);

export interface Measured {
  readonly value: string;
  /** Expanded uncertainty, without the sign ±; '0' when there is none. */
  readonly plusMinus: string;
  readonly unit: string;
  /** `95.7 ± 1.3 °C` */
  readonly text: string;
}

/** `value` and standard uncertainty `u` in `unit`; shown with U = k·u to its significant digits and the value to the same place. */
export function writeMeasured(m: {
  readonly value: number;
  readonly u: number;
  readonly unit: string;
  readonly k?: number;
  readonly digits?: 1 | 2;
}): Measured {
  const U = Math.abs(m.u) * (m.k ?? 2);
  const decimals = U > 0 ? decimalsAt(U, m.digits ?? 2) : decimalsAt(m.value, 4);
  const value = writeNumber(m.value, decimals);
  const plusMinus = U > 0 ? writeNumber(U, decimals) : '0';
  return { value, plusMinus, unit: m.unit, text: withUnit(`${value}${thin}±${thin}${plusMinus}`, m.unit) };
}

/** The short form of tables, standard uncertainty in the last digits: 10.058(27). */
export function writeConcise(m: { readonly value: number; readonly u: number }): string {
  const decimals = m.u > 0 ? decimalsAt(m.u, 2) : decimalsAt(m.value, 4);
  const inLastDigits = roundedDigits(m.u, decimals)
    .replace('.', '')
    .replace(/^0+(?=\d)/, '');
  return m.u > 0 ? `${writeNumber(m.value, decimals)}(${inLastDigits})` : writeNumber(m.value, decimals);
}

/** SI first, US customary in brackets, each rounded from full precision with its own uncertainty. `value` and `u` are SI. */
export function writeWithUS(m: {
  readonly value: number;
  readonly u: number;
  readonly unit: string;
  /** A difference has no zero: 50 K is 90 Δ°F. */
  readonly difference?: boolean;
  readonly k?: number;
  readonly digits?: 1 | 2;
}): string {
  const first = inUnit(m, known(m.unit));
  const us = usFor(m.unit, m.difference === true);
  return us === null ? first : `${first} (${inUnit(m, us)})`;
}

/** The US customary unit shown beside an SI unit; null where the trade uses one unit for both. */
export function usFor(unit: string, difference = false): Unit | null {
  const name = difference && unit === '°C' ? 'Δ°F' : customary[unit];
  return name === undefined ? null : known(name);
}

const customary: Readonly<Record<string, string>> = {
  mm: 'in',
  cm: 'in',
  m: 'ft',
  km: 'mi',
  'cm²': 'in²',
  L: 'US qt',
  mL: 'US fl oz',
  kg: 'lb',
  g: 'oz',
  N: 'lbf',
  'N·m': 'lbf·ft',
  W: 'hp (mechanical)',
  kW: 'hp (mechanical)',
  kPa: 'psi',
  bar: 'psi',
  'm/s': 'ft/min',
  'km/h': 'mph',
  '°C': '°F',
  K: 'Δ°F',
  'K/min': '°F/min',
  'kg/m³': 'lb/US gal',
  'kJ/K': 'Btu/°F',
  'J/K': 'Btu/°F',
  'W/K': 'Btu/(h·°F)',
  'J/(kg·K)': 'Btu/(lb·°F)',
  'W/(m·K)': 'Btu/(h·ft·°F)',
  'kWh/100 km': 'kWh/100 mi',
};

function inUnit(m: { value: number; u: number; difference?: boolean; k?: number; digits?: 1 | 2 }, unit: Unit): string {
  const value = m.difference === true ? differenceFromSI(unit, m.value) : fromSI(unit, m.value);
  return writeMeasured({ ...m, value, u: differenceFromSI(unit, m.u), unit: unit.name }).text;
}

function known(name: string): Unit {
  const unit = unitNamed(name);
  if (unit === null) throw new Error(`no unit is named "${name}"`);
  return unit;
}
