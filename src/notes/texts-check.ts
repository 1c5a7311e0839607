import { writeNumber } from '../quantity/write.ts';
import type { Dimension } from '../quantity/quantity.ts';
import { unitsOf } from '../quantity/units.ts';
import type { Told } from './note.ts';
import { fieldOf } from './texts-fields.ts';

/** What is said when fields of one note do not go together. */
const error = (code: string, says: string, why: string, write: string): Told => ({
  code,
  level: 'error',
  says,
  why,
  write,
});
const warning = (code: string, says: string, why: string, write: string): Told => ({
  code,
  level: 'warning',
  says,
  why,
  write,
});

export const viscosityOrder = (): Told =>
  error(
    'viscosity-order',
    'The viscosity at 40 °C is not above the one at 100 °C.',
    'Every oil is thinner when it is hotter.',
    'Look whether at-40 and at-100 are exchanged, and at their units.',
  );

export const copyOfWhat = (): Told =>
  error(
    'field-missing',
    'A window copy has no "stands-in-for".',
    'A window copy shows the flow of the article it stands in for.',
    'Write  stands-in-for: [P1].',
  );

export const twoLevelTables = (): Told =>
  error(
    'field-one-too-many',
    '"level-table" and "level-table-of" stand together.',
    'It cannot be told which of the two holds.',
    'Keep one of "level-table" and "level-table-of".',
  );

export const rowNotRising = (column: string, typed: string, before: string): Told =>
  error(
    'level-table-order',
    `"${column}" is ${typed} after ${before}.`,
    'In a level table both columns rise from row to row; otherwise one level has two volumes.',
    `Write the rows from the floor upwards, and look at this ${column}.`,
  );

export const notRising = (path: string, typed: string, before: string): Told =>
  error(
    'not-rising',
    `${typed} stands after ${before}.`,
    `"${fieldOf(path)}" rises from one to the next.`,
    `Write them in rising order, each once.`,
  );

export const fewLimits = (count: number): Told =>
  warning(
    'limits-few',
    `The plan has ${count === 1 ? 'one limit' : `${count} limits`}.`,
    'The order of articles can change with the limit; three show it.',
    'Write three limits or more, as  limits: [80 °C, 90 °C, 95 °C].',
  );

export const rerunUncounted = (typed: string): Told => ({
  code: 'rerun-uncounted',
  level: 'notice',
  says: `"baseline-rerun" is "${typed}".`,
  why: 'It names no place that can be counted, so that nobody can tell before testing whether a drift would show.',
  write: 'Write  baseline-rerun: { start: true, middle: true, end: true }  or  { start: true, every-n: 6 }.',
});

export const rerunShape = (): Told =>
  error(
    'field-shape',
    '"baseline-rerun" is a list.',
    'It says when the baseline comes back.',
    'Write  baseline-rerun: { start: true, middle: true, end: true }.',
  );

export const windowLongerThanHold = (hold: string): Told =>
  error(
    'window-longer-than-hold',
    'The steady window is longer than the hold.',
    `A step is held ${hold}.`,
    `Write a window within ${hold}.`,
  );

export const formatLater = (typed: string): Told =>
  error(
    'format-later',
    `This series is of format ${typed}, and this version of dipmark reads format 1.`,
    'A folder that is read by other rules than it was written for would give figures that nobody meant.',
    'Install the version of dipmark that the series was written for, or a later one; its list of changes says what a format changed. Where it was a slip, write  format: 1',
  );

export const mainSumpNotListed = (typed: string): Told =>
  error(
    'main-sump-not-listed',
    `${typed} is not one of the reference sump temperatures.`,
    'The standing is made at one of them.',
    'Write one of those under sump, or add this one to sump.',
  );

export const dutyShares = (whole: number): Told =>
  error(
    'duty-shares',
    `The shares of the duty are ${writeNumber(whole * 100, 1)} % in all.`,
    'Each speed has its share of the time, and together they are the whole of it.',
    'Write shares that come to 100 %.',
  );

export const noDriveEfficiency = (): Told =>
  error(
    'duty-efficiency',
    'An electric drive is named without its efficiency.',
    'Watts at the axle take more than that from the battery.',
    'Write drive-efficiency, such as 88 %, from the battery to the axle.',
  );

export const oneOutput = (): Told =>
  warning(
    'one-output',
    'Only one output of an open differential is used.',
    'The differential turns inside itself, and its loss is in every figure.',
    'Lock the differential or use both outputs; leave it when that is what was run.',
  );

export const idTwice = (id: string): Told =>
  error(
    'id-twice',
    `"${id}" stands for two things here.`,
    'An id names one thing.',
    `Give the second "${id}" another id.`,
  );

export const bearingTurnedRound = (): Told =>
  error(
    'bearing-turned-round',
    'The outside of this bearing is no larger than its bore.',
    'Its drag is estimated from the mean of both.',
    'Write the larger diameter as "outside" and the smaller as "bore".',
  );

export const signTwice = (sign: string): Told =>
  error(
    'sign-twice',
    `"${sign}" is both the decimal sign and the delimiter.`,
    'A line of the file could be cut in several ways.',
    'Write the delimiter that the file has, such as  delimiter: ";".',
  );

export const unknownName = (what: string, name: string, near: string | null, known: readonly string[]): Told =>
  error(
    `${what.replace(' ', '-')}-unknown`,
    `There is no ${what} "${name}".`,
    known.length === 0
      ? `This series has no ${what} yet.`
      : `Known here: ${known.slice(0, 20).join(' · ')}${known.length > 20 ? ' …' : ''}.`,
    near === null ? `Write the id of one that is known, or add the ${what} "${name}".` : `Did you mean "${near}"?`,
  );

export const rangeNeeded = (typed: string): Told =>
  error(
    'range-needed',
    `"${typed}" is said without a range.`,
    'A per cent of range needs the range.',
    'Write  range: [0 N·m, 50 N·m]  with the range of this instrument.',
  );

export const accuracyShape = (): Told =>
  error(
    'field-shape',
    '"accuracy" is not one value.',
    'It is read as one text.',
    'Write  accuracy: "± 0.05 % of range".',
  );

export const pairShape = (path: string): Told =>
  error(
    'field-shape',
    `"${fieldOf(path)}" is not a list of two.`,
    'It is a lowest and a highest value.',
    `Write  ${fieldOf(path)}: [lowest, highest]  with units.`,
  );

export const stepShape = (): Told =>
  error(
    'unit-missing',
    '"max-step" is not a change a second.',
    'The step allowed depends on the time between two readings.',
    'Write a change and /s:  max-step: 2 K/s.',
  );

export const channelTwice = (channel: string, other: string): Told =>
  error(
    'channel-twice',
    `Two columns are ${channel}; the other is "${other}".`,
    'It cannot be told which of the two is read.',
    'Keep one of them, or say what the other holds.',
  );

export const instrumentMissing = (header: string): Told =>
  error(
    'field-missing',
    `Column "${header}" names no instrument.`,
    'Accuracy comes from the instrument.',
    'Write  instrument: tc-1  with the id of the instrument.',
  );

export const columnUnitMissing = (header: string, dimension: Dimension): Told =>
  error(
    'unit-missing',
    `Column "${header}" has no unit.`,
    'The number alone has more than one reading.',
    `Write  unit: ${unitsOf(dimension)[0]?.name ?? ''}  or whatever unit the logger wrote.`,
  );

export const columnUnit = (header: string, name: string, dimension: Dimension): Told =>
  error(
    'unit-unknown',
    `"${name}" is not a unit for column "${header}".`,
    `It holds ${dimension.replace('-', ' ')}.`,
    `Write one of: ${unitsOf(dimension)
      .map((u) => u.name)
      .join(' · ')}.`,
  );

export const neededFor = (field: string, what: string, write: string): Told =>
  error('field-missing', `"${field}" is missing.`, `It is needed for ${what}.`, `Write  ${write}.`);

export const endedBeforeStarted = (started: string): Told =>
  error(
    'ended-before-started',
    'The run ended before it started.',
    `It started ${started}.`,
    'Look at the day, the time and the offset of started and ended.',
  );

export const setAsideReason = (): Told =>
  error(
    'field-missing',
    'The run is set aside without a reason.',
    'Setting aside without a reason is choosing a result.',
    'Write  status-reason: belt slip  with what happened.',
  );
