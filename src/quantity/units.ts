import type { Dimension } from './quantity.ts';
import { units, type Unit } from './unit-table.ts';

export { units, type Unit };

/** A unit by any of its spellings; with a dimension, only one of that kind (`K` is a temperature and a difference). */
export function unitNamed(name: string, dimension?: Dimension): Unit | null {
  const found = bySpelling.get(spellingKey(name)) ?? [];
  return found.find((unit) => dimension === undefined || unit.dimension === dimension) ?? null;
}

export const unitsOf = (dimension: Dimension): Unit[] => units.filter((unit) => unit.dimension === dimension);

/** What a bare word may mean, as names of units; null when it is not one of the words that mean several. */
export function readingsOf(word: string, dimension: Dimension): readonly string[] | null {
  const key = spellingKey(word).toLowerCase();
  return severalMeanings.find((m) => m.dimension === dimension && m.words.includes(key))?.readings ?? null;
}

export const toSI = (unit: Unit, value: number): number => times(value, unit.factor) + unit.zero;
export const fromSI = (unit: Unit, si: number): number => over(si - unit.zero, unit.factor);

/** A difference and an uncertainty have no zero: 90 °F of difference is 50 K. */
export const differenceToSI = (unit: Unit, value: number): number => times(value, unit.factor);
export const differenceFromSI = (unit: Unit, si: number): number => over(si, unit.factor);

const severalMeanings: readonly { words: readonly string[]; dimension: Dimension; readings: readonly string[] }[] = [
  { words: ['pt', 'pts', 'pint', 'pints'], dimension: 'volume', readings: ['US pt', 'imp pt'] },
  { words: ['qt', 'qts', 'quart', 'quarts'], dimension: 'volume', readings: ['US qt', 'imp qt'] },
  { words: ['gal', 'gals', 'gallon', 'gallons'], dimension: 'volume', readings: ['US gal', 'imp gal'] },
  { words: ['oz', 'fl·oz', 'floz', 'ounce', 'ounces'], dimension: 'volume', readings: ['US fl oz', 'imp fl oz'] },
  {
    words: ['hp', 'bhp', 'whp', 'horsepower'],
    dimension: 'power',
    readings: ['hp (mechanical)', 'hp (metric)', 'hp (electric)'],
  },
  { words: ['°', 'deg', 'degs', 'degree', 'degrees'], dimension: 'temperature', readings: ['°C', '°F'] },
  { words: ['°', 'deg', 'degs', 'degree', 'degrees'], dimension: 'temperature-difference', readings: ['K', 'Δ°F'] },
  {
    words: ['mpg', 'miles/gal', 'mi/gal', 'miles/gallon', 'miles·per·gallon'],
    dimension: 'distance-per-fuel',
    readings: ['mi/US gal', 'mi/imp gal'],
  },
  { words: ['ton', 'tons'], dimension: 'mass', readings: ['t', 'lb'] },
];

/** One key for all the ways of typing one spelling: signs of multiplication, exponents, micro and degree signs, spaces. */
function spellingKey(text: string): string {
  return text
    .trim()
    .replace(/[º˚]/g, '°')
    .replace(/∆/g, 'Δ')
    .normalize('NFKC')
    .replace(/[\u2010-\u2013\u2212]/g, '-')
    .replace(/\^/g, '')
    .replace(/(?<=[\p{L}°])[.-](?=[\p{L}°])/gu, '·')
    .replace(/\.?[\s·⋅∙•×*]+/g, '·')
    .replace(/·?([/()])·?/g, '$1')
    .replace(/°·/g, '°')
    .replace(/\.$/, '');
}

const bySpelling = new Map<string, Unit[]>();
for (const unit of units) {
  for (const key of new Set([unit.name, ...unit.spellings].map(spellingKey))) {
    bySpelling.set(key, [...(bySpelling.get(key) ?? []), unit]);
  }
}

// A factor such as 0.001 is not a binary fraction, its reciprocal is a whole number: dividing by that rounds once,
// so that 2152 g and 2.152 kg are the same number.
function times(value: number, factor: number): number {
  const divisor = wholeReciprocal(factor);
  return divisor === null ? value * factor : value / divisor;
}

function over(value: number, factor: number): number {
  const divisor = wholeReciprocal(factor);
  return divisor === null ? value / factor : value * divisor;
}

function wholeReciprocal(factor: number): number | null {
  const divisor = Math.round(1 / factor);
  return factor < 1 && 1 / divisor === factor ? divisor : null;
}
