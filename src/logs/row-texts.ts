import type { Finding, Place } from '../finding/finding.ts';
import type { Refusal } from './odd-cell.ts';
import { columnName, counted, error, quoted, span_s, warning, type Named } from './texts.ts';

const refusals: Readonly<Record<Refusal, readonly [code: string, why: string, write: string]>> = {
  ambiguous: ['number-ambiguous', '', 'Declare  decimal:  and  thousands:  in the map, as the logger writes them.'],
  thousands: [
    'thousands-undeclared',
    'Digits in groups are read only when the map declares the separator.',
    'Write  thousands:  with that sign in the map, or switch the grouping off in the logger.',
  ],
  decimal: [
    'decimal-mixed',
    'It is not the decimal mark that the map declares.',
    'Write  decimal: ","  in the map if the file has it throughout; otherwise export it with one decimal mark.',
  ],
  digits: [
    'digits-unknown',
    'These digits are not 0 to 9, however alike they look.',
    'Export the log again with plain digits.',
  ],
  notation: [
    'number-notation',
    'A number is sign, digits, decimal mark, digits, exponent with E; nothing else is read.',
    'Change the number format in the logger and export again.',
  ],
  word: [
    'cell-unknown',
    'It is neither a number nor a word for a missing reading.',
    'If it stands for no reading, add it to  missing:  in the map; otherwise correct the export.',
  ],
};
export function cellRefused(place: Place, c: Named, text: string, refusal: Refusal, decimal: '.' | ','): Finding {
  const [code, why, asComma] = refusals[refusal];
  const write = decimal === ',' ? asComma.replace('decimal: ","', 'decimal: "."') : asComma;
  const bare = text.trim().replace(/[.,]/u, '');
  const both = `It may be ${bare} or ${text.trim().replace(',', '.')}; the difference is a factor of a thousand.`;
  return error(
    code,
    place,
    `${columnName(c)} holds ${quoted(text)}.`.replace(/^c/u, 'C'),
    why === '' ? both : why,
    write,
  );
}
export const rowRagged = (place: Place, found: number, expected: number): Finding =>
  error(
    'row-ragged',
    place,
    `The row has ${counted(found, 'cell')}; the header has ${expected}.`,
    'It cannot be told which cell is missing or too many.',
    'Export the log again; a delimiter inside a cell needs quotes round the cell.',
  );
export const decimalDelimiter = (place: Place, found: number, expected: number): Finding =>
  error(
    'decimal-comma',
    place,
    `The row has ${counted(found, 'cell')}; the header has ${expected}. All are whole numbers.`,
    'The comma seems to be decimal mark and delimiter at once; which is which is not guessed.',
    'Export with semicolons, and write  delimiter: semicolon  and  decimal: ","  in the map.',
  );
export const quoteOpen = (place: Place): Finding =>
  error(
    'quote-open',
    place,
    'A quote opens here and does not close on this line.',
    'A quoted cell keeps to one line; otherwise it would swallow the rows below.',
    'Close the quote, or write it twice where it belongs to the text.',
  );
export const quoteMisplaced = (place: Place, after: string): Finding =>
  error(
    'quote-misplaced',
    place,
    `After the closing quote stands ${quoted(after)}.`,
    'A quoted cell ends with its quote.',
    'Write a quote that belongs to the text twice.',
  );
export const lastRowCut = (place: Place, text: string): Finding =>
  warning(
    'last-row-cut',
    place,
    `The last row is cut: ${quoted(text)}.`,
    'The logger stopped while writing it.',
    'Nothing, if the trial was over by then.',
    'The row is not used.',
  );
export const headerAgain = (place: Place, first: number): Finding =>
  warning(
    'header-repeated',
    place,
    `The header of line ${first} stands here again.`,
    'The logger was started again, or files were joined.',
    'Say in the note what happened.',
    'The readings on both sides are kept.',
  );
export const headerChanged = (place: Place, first: number): Finding =>
  error(
    'header-changed',
    place,
    `A second header stands here, and its columns are not those of line ${first}.`,
    'Cells below it belong to other columns.',
    'Split the file at this line.',
  );

// The clock
export const clockMissing = (place: Place, c: Named): Finding =>
  error(
    'clock-missing',
    place,
    `The clock, ${columnName(c)}, has no reading in this row.`,
    'A reading without a time cannot be placed.',
    'Correct the export.',
  );
export const clockForm = (place: Place, c: Named, text: string, unit: string): Finding =>
  error(
    'clock-form',
    place,
    `The clock, ${columnName(c)}, holds ${quoted(text)}; the map declares ${unit}.`,
    'The form of the clock is declared, not guessed.',
    'Set  clock: { unit: … }  to s, min or h:mm:ss, as the file has it.',
  );
export const clockDate = (place: Place, c: Named, text: string): Finding =>
  error(
    'clock-date',
    place,
    `The clock, ${columnName(c)}, holds the date ${quoted(text)}.`,
    'The order of day and month and the time zone are not guessed.',
    'Have the logger write elapsed seconds, and name that column in the map.',
  );
export const clockSerial = (place: Place, c: Named, text: string): Finding =>
  error(
    'clock-serial',
    place,
    `The clock, ${columnName(c)}, reads ${quoted(text)} and rises by less than 0.001 a row.`,
    'That is a day number of a spreadsheet, not seconds.',
    'Export elapsed seconds.',
  );
export const clockBack = (
  place: Place,
  at: { line: number; text: string },
  before: { line: number; text: string },
): Finding =>
  error(
    'clock-not-rising',
    place,
    `The clock reads ${quoted(at.text)} in line ${at.line} after ${quoted(before.text)} in line ${before.line}.`,
    'Time stands still or runs back: a restart, a changed clock, daylight saving or joined files.',
    'Split the file there, or export it with a clock that keeps rising.',
  );
export const rowsRepeated = (
  place: Place,
  at: { from: number; to: number },
  of: { from: number; to: number },
  pause_s: number | null,
): Finding =>
  warning(
    'rows-repeated',
    place,
    `Lines ${at.from} to ${at.to} repeat lines ${of.from} to ${of.to}${pause_s === null ? '' : `, with a pause of ${span_s(pause_s)}`}.`,
    'The logger wrote the block twice.',
    'Nothing, if the logger paused there.',
    'The block is used once.',
  );
export const timeGap = (place: Place, gaps: readonly string[], rest: number, usual_s: number): Finding =>
  warning(
    'time-gap',
    place,
    `Rows are missing: ${gaps.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}.`,
    `The usual time between rows is ${span_s(usual_s)}.`,
    'Say in the note why the logger paused.',
    'True times are used; nothing is filled in.',
  );
export const rateChanged = (place: Place, off: number, usual_s: number): Finding =>
  warning(
    'rate-changed',
    place,
    `From here ${counted(off, 'row')} in all follow the row before at another interval than the usual ${span_s(usual_s)}.`,
    'The logging rate changed, or the logger wrote in bursts.',
    'Log at one rate, or say in the note why not.',
    'True times are used.',
  );
