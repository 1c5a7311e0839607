import { kinds } from './kinds.ts';
import type { Dimension, Trouble } from './quantity.ts';

export { kinds };

/** Where in the text, and how much to underline. */
export interface At {
  readonly offset: number;
  readonly length: number;
}

export interface About {
  readonly field?: string | undefined;
}

const trouble = (code: string, at: At, says: string, why: string, write: string): Trouble => ({
  code,
  ...at,
  says,
  why,
  write,
});
const subject = (about: About): string => (about.field === undefined ? 'This' : `"${about.field}"`);
const entry = (about: About, value: string): string => (about.field === undefined ? value : `${about.field}: ${value}`);
const either = (list: readonly string[]): string =>
  list.length < 2 ? list.join('') : `${list.slice(0, -1).join(',  ')}  or  ${list[list.length - 1]!}`;
const nounOf = (dimensions: readonly Dimension[]): string =>
  either(dimensions.map((d) => kinds[d].noun)).replace(/ {2}/g, ' ');

export const numberMissing = (at: At, text: string): Trouble =>
  trouble(
    'number-missing',
    at,
    text === '' ? 'Nothing is written here.' : `"${text}" does not begin with a number.`,
    'A quantity is a number and its unit.',
    'Write the number first, then the unit, and nothing before them.',
  );

export const numberUnclear = (at: At, text: string): Trouble =>
  trouble(
    'number-unclear',
    at,
    `"${text}" cannot be read as one number.`,
    'Digits are parted in a way that has no single reading.',
    'Write digits with one decimal point or comma, as 2.40 or 2,40, or a fraction as 5 7/16.',
  );

export const numberComma = (at: At, text: string, readings: readonly string[], unit: string): Trouble =>
  trouble(
    'number-ambiguous',
    at,
    `"${text}" has a comma before exactly three digits.`,
    'It may be a decimal comma or part thousands.',
    `Write  ${either(readings.map((reading) => (unit === '' ? reading : spaced(reading, unit))))},  whichever was meant.`,
  );

export const leadingZero = (at: At, text: string): Trouble =>
  trouble(
    'number-leading-zero',
    at,
    `"${text}" begins with a zero.`,
    'It may be a number, an octal number or a label.',
    `Write ${text.replace(/^0+(?=\d)/, '')} without the zero, or 0.${text.replace(/^0+/, '').replace(/\D/g, '') || '0'} if a decimal point was meant.`,
  );

export const numberNotFinite = (at: At): Trouble =>
  trouble(
    'number-not-finite',
    at,
    'This is not a finite number.',
    'Nothing on a bench reads so, and no figure can be made of it.',
    'Write the reading, or leave the field out where there is none.',
  );

export const partsUnclear = (at: At, text: string): Trouble =>
  trouble(
    'parts-unclear',
    at,
    `The parts of "${text}" do not make one quantity.`,
    'Each part has to be less than one of the part before it, and whole but for the last.',
    'Write one number and unit, as 150 min, or parts as 1 h 30 min.',
  );

export const numberRange = (at: At, text: string): Trouble =>
  trouble(
    'number-range',
    at,
    `"${text}" reads as a range.`,
    'A field holds one number.',
    'Write the middle and how far it may be off, as 2.40 L ± 0.02 L, or pick one.',
  );

export const dateNotNumber = (at: At, text: string): Trouble =>
  trouble(
    'number-is-date',
    at,
    `"${text}" reads as a date.`,
    'Its parts may be day, month and year in more than one order.',
    'Write a date as 2025-04-03 (year, month, day), and a quantity as one number with its unit.',
  );

export const clockNotNumber = (at: At, text: string): Trouble =>
  trouble(
    'number-is-clock',
    at,
    `"${text}" may be hours and minutes or minutes and seconds.`,
    'The two differ by a factor of sixty.',
    'Write a time with its units, as 1 h 30 min or 90 s.',
  );

export const unitMissing = (at: At, about: About, number: string, dimension: Dimension): Trouble =>
  trouble(
    'unit-missing',
    at,
    `${subject(about)} is ${kinds[dimension].noun} and has no unit.`,
    'The number alone has more than one reading.',
    dimension === 'ratio'
      ? `Write  ${entry(about, spaced(number, '%'))},  or a hundred times the number with % if a share of one was meant.`
      : `Write  ${either(kinds[dimension].units.map((unit) => entry(about, spaced(number, unit))))},  whichever was meant.`,
  );

export const unitAmbiguous = (
  at: At,
  about: About,
  number: string,
  word: string,
  readings: readonly string[],
): Trouble =>
  trouble(
    'unit-ambiguous',
    at,
    `"${word}" is the name of more than one unit.`,
    `It may be ${either(readings).replace(/ {2}/g, ' ')}.`,
    `Write  ${either(readings.map((unit) => entry(about, spaced(number, unit))))},  whichever was meant.`,
  );

export const unitUnknown = (
  at: At,
  about: About,
  number: string,
  word: string,
  near: string | null,
  dimensions: readonly Dimension[],
): Trouble =>
  trouble(
    'unit-unknown',
    at,
    `"${word}" is not a unit that is known here.`,
    `${subject(about)} is ${nounOf(dimensions)}.`,
    near === null
      ? `Write  ${either(kinds[dimensions[0]!].units.map((unit) => entry(about, spaced(number, unit))))}.`
      : `Did you mean  ${entry(about, spaced(number, near))} ?`,
  );

export const unitOfOtherKind = (
  at: At,
  about: About,
  word: string,
  is: Dimension,
  dimensions: readonly Dimension[],
): Trouble =>
  trouble(
    'unit-of-other-kind',
    at,
    `"${word}" is the unit of ${kinds[is].noun}.`,
    `${subject(about)} is ${nounOf(dimensions)}.`,
    `Write it in ${either(kinds[dimensions[0]!].units)}, as  ${entry(about, spaced('…', kinds[dimensions[0]!].units[0]))}.`,
  );

export const temperatureForDifference = (at: At, about: About, number: string, fahrenheit: boolean): Trouble =>
  trouble(
    'difference-in-degrees',
    at,
    `${subject(about)} is a temperature difference, and ${fahrenheit ? '°F' : '°C'} is written for a temperature.`,
    'A difference has no zero point to add: one and the same text would give two numbers.',
    `Write  ${entry(about, spaced(number, fahrenheit ? 'Δ°F' : 'K'))}.`,
  );

export const differenceForTemperature = (at: At, about: About, number: string, unit: string): Trouble =>
  trouble(
    'temperature-as-difference',
    at,
    `${unit} is the unit of a temperature difference.`,
    `${subject(about)} is a temperature.`,
    `Write  ${either([entry(about, spaced(number, '°C')), entry(about, spaced(number, '°F'))])},  whichever was meant.`,
  );

export const belowAbsoluteZero = (at: At, text: string): Trouble =>
  trouble(
    'below-absolute-zero',
    at,
    `${text} is below absolute zero.`,
    'Nothing is colder than −273.15 °C.',
    'Look at the sign and the unit.',
  );

export const plusMinusUnclear = (at: At, text: string, why: string): Trouble =>
  trouble(
    'plus-minus-unclear',
    at,
    `"${text}" does not say how far the value may be off.`,
    why,
    'Write a positive amount with its unit and, if it is known, its coverage factor: ± 0.02 L (k=2).',
  );

export const numberHasMore = (at: At, text: string): Trouble =>
  trouble(
    'number-has-more',
    at,
    `"${text}" stands after the number.`,
    'This field is a plain number without a unit.',
    'Write the number alone.',
  );

export const rateMissing = (at: At, text: string): Trouble =>
  trouble(
    'rate-without-time',
    at,
    `"${text}" does not say in what time.`,
    'This field is a change in a time.',
    `Write  ${text}/s  or  ${text}/min,  whichever was meant.`,
  );

export const accuracyBase = (at: At): Trouble =>
  trouble(
    'accuracy-of-what',
    at,
    'The percentage does not say of what.',
    'A percentage of range and a percentage of reading differ by the part of the range in use.',
    'Write  ± 0.05 % of range  or  ± 0.05 % of reading.',
  );

export const instantUnclear = (at: At, text: string, why: string): Trouble =>
  trouble(
    'time-unclear',
    at,
    `"${text}" is not a date and time that has one reading.`,
    why,
    'Write date, T, time and offset from UTC: 2026-03-17T10:05:00+01:00.',
  );

export const offsetMissing = (at: At, text: string): Trouble =>
  trouble(
    'time-offset-missing',
    at,
    `"${text}" has no offset from UTC.`,
    'Without it the order of runs, logs and clips is open when clocks change.',
    `Write  ${text}+01:00  with the bench's own offset, or  ${text}Z  for UTC.`,
  );

export const dayUnclear = (at: At, text: string, why: string): Trouble =>
  trouble(
    'date-unclear',
    at,
    `"${text}" is not a date that has one reading.`,
    why,
    'Write year-month-day: 2026-03-17.',
  );

const spaced = (number: string, unit: string): string => (unit === '°' ? number + unit : `${number} ${unit}`);
