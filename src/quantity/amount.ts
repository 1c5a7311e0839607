import { nearest } from '../finding/nearest.ts';
import { scanNumber } from './number.ts';
import type { Dimension, Trouble } from './quantity.ts';
import * as texts from './texts.ts';
import { differenceToSI, readingsOf, toSI, unitNamed, unitsOf, type Unit } from './units.ts';

/** A number with its unit: the piece that every quantity, tolerance and accuracy is made of. */
export interface Amount {
  readonly number: number;
  readonly step: number;
  readonly unit: Unit;
  /** SI of what follows in smaller units: the minutes of 1 h 30 min. */
  readonly more: number;
  readonly at: texts.At;
}

interface Wanted {
  readonly dimensions: readonly Dimension[];
  readonly field?: string | undefined;
}

/** A number and its unit from `from` to the end of `line`. */
export function readAmount(line: string, from: number, wanted: Wanted): Amount | Trouble {
  const scanned = scanNumber(line, from);
  if ('code' in scanned) return scanned;
  const at = trimmed(line, from, line.length);
  const place = trimmed(line, scanned.end, line.length);
  const word = line.slice(place.offset, place.offset + place.length);
  const number = line.slice(at.offset, scanned.end);
  if (word === '') return texts.unitMissing(at, wanted, number, wanted.dimensions[0]!);
  const unit = wanted.dimensions.map((d) => unitNamed(word, d)).find((u) => u !== null);
  if (unit) return { number: scanned.value, step: scanned.step, unit, more: 0, at };
  return readParts(line, from, wanted, at) ?? explainUnit(place, word, number, wanted);
}

/** How far a value of this kind may be off. A spread is a difference, so degrees have one reading after ±. */
export function readSpread(line: string, from: number, of: Dimension): Amount | Trouble {
  if (of === 'temperature' || of === 'temperature-difference') {
    const either: readonly Dimension[] = ['temperature-difference', 'temperature'];
    return readAmount(line, from, { dimensions: either });
  }
  return readAmount(line, from, { dimensions: of === 'ratio' ? ['ratio'] : [of, 'ratio'] });
}

/** Takes `(k=2)` off the end; the rest keeps its places. k is null when nothing is stated. */
export function coverage(line: string, from: number): { readonly body: string; readonly k: number | null | 'unclear' } {
  const bracket = /\(([^()]*[=%\d][^()]*)\)\s*$/.exec(line.slice(from));
  if (!bracket) return { body: line, k: null };
  const k = /^\s*k\s*=\s*(\d+(?:[.,]\d+)?)\s*$/i.exec(bracket[1]!);
  const factor = k ? Number(k[1]!.replace(',', '.')) : 0;
  return { body: line.slice(0, from + bracket.index), k: factor > 0 ? factor : 'unclear' };
}

export function trimmed(line: string, from: number, to: number): texts.At {
  const part = line.slice(from, to);
  const text = part.trim();
  return { offset: text === '' ? from : from + part.indexOf(text), length: Math.max(text.length, 0) };
}

function explainUnit(place: texts.At, word: string, number: string, wanted: Wanted): Trouble {
  const { dimensions } = wanted;
  for (const d of dimensions) {
    const readings = readingsOf(word, d);
    if (readings) return texts.unitAmbiguous(place, wanted, number, word, readings);
  }
  const degrees = unitNamed(word, 'temperature');
  if (degrees && dimensions.includes('temperature-difference'))
    return texts.temperatureForDifference(place, wanted, number, degrees.name === '°F');
  if (dimensions.includes('temperature') && unitNamed(word, 'temperature-difference'))
    return texts.differenceForTemperature(place, wanted, number, word);
  const other = unitNamed(word);
  if (other) return texts.unitOfOtherKind(place, wanted, word, other.dimension, dimensions);
  return texts.unitUnknown(place, wanted, number, word, nearestUnit(word, dimensions), dimensions);
}

function nearestUnit(word: string, dimensions: readonly Dimension[]): string | null {
  const known = dimensions.flatMap(unitsOf);
  const spelled = known.flatMap((unit) => [unit.name, ...unit.spellings]);
  const same = known.find((u) => [u.name, ...u.spellings].some((s) => s.toLowerCase() === word.toLowerCase()));
  const near = same?.name ?? nearest(word, spelled);
  return near === null ? null : (dimensions.map((d) => unitNamed(near, d)).find((u) => u !== null)?.name ?? null);
}

/** What is counted in whole larger units and a rest: 1 h 30 min, 5 ft 7 in, 4 lb 3 oz. */
const inParts: readonly (readonly string[])[] = [
  ['d', 'h', 'min', 's'],
  ['ft', 'in'],
  ['lb', 'oz'],
];

function readParts(line: string, from: number, wanted: Wanted, at: texts.At): Amount | Trouble | null {
  const pieces = [...line.slice(from).matchAll(/\s*([\d.,]+(?: \d+\/\d+)?)\s*([^\d\s]+)/g)].map((p) => p[0]);
  if (pieces.length < 2 || pieces.join('') !== line.slice(from).trimEnd()) return null;
  const parts: Amount[] = [];
  for (const piece of pieces) {
    const scanned = scanNumber(piece, 0);
    if ('code' in scanned) return null;
    const unit = wanted.dimensions.map((d) => unitNamed(piece.slice(scanned.end), d)).find((u) => u !== null);
    if (!unit) return null;
    parts.push({ number: scanned.value, step: scanned.step, unit, more: 0, at });
  }
  const [first, last] = [parts[0]!, parts[parts.length - 1]!];
  const ladder = inParts.find((names) => names.includes(first.unit.name)) ?? [];
  const inOrder = parts.every((part, i) => {
    const before = parts[i - 1];
    const fits = !before || toSI(part.unit, part.number) < before.unit.factor;
    return fits && ladder.includes(part.unit.name) && (part === last || Number.isInteger(part.number));
  });
  if (!inOrder) return texts.partsUnclear(at, line.slice(at.offset, at.offset + at.length));
  const more = parts.slice(1).reduce((sum, part) => sum + toSI(part.unit, part.number), 0);
  return { ...first, more, step: differenceToSI(last.unit, last.step) / first.unit.factor };
}
