import type { Finding, Level, Place } from '../finding/finding.ts';

/** A column as findings name it. */
export interface Named {
  readonly number: number;
  readonly header: string;
}

const notRead = 'This log is not read; the run has no figures.';
export const error = (code: string, place: Place, says: string, why: string, write: string): Finding => ({
  ...{ code, level: 'error', place, says, why, write, effect: notRead },
});
export const warning = (
  code: string,
  place: Place,
  says: string,
  why: string,
  write: string,
  effect: string,
): Finding => ({
  ...{ code, level: 'warning', place, says, why, write, effect },
});

/** Text found, in quotes: control codes and spaces that look like others escaped, at most forty characters. */
export function quoted(text: string): string {
  const cut = Array.from(text).slice(0, 41);
  const shown = cut.slice(0, cut.length > 40 ? 39 : 40).map((c) => (hidden.test(c) ? escaped(c) : c));
  return `"${shown.join('')}${cut.length > 40 ? '…' : ''}"`;
}
const hidden = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]|[^\P{Zs} ]/u;
const escaped = (c: string): string => `\\u{${c.codePointAt(0)!.toString(16)}}`;

export const columnName = (c: Named): string => `column ${c.number} ${quoted(c.header)}`;
export const span_s = (span: number): string => `${Number(span.toPrecision(4))} s`;
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
export const linesText = (from: number, to: number): string =>
  from === to ? `line ${from}` : `lines ${from} to ${to}`;
// The file as a whole
export const notText = (place: Place, looksLike: string): Finding =>
  error(
    'not-text',
    place,
    `The file looks like ${looksLike}.`,
    'A log is read as text, cell by cell; this is not text.',
    'Export the log as delimited text and name that file in the run note.',
  );
export const tooLarge = (place: Place, megabytes: number, most: number): Finding =>
  error(
    'log-too-large',
    place,
    `The file has ${megabytes} MB.`,
    `Logs are read whole, up to ${most} MB.`,
    'Export the trial alone, or at a lower rate.',
  );
export const encodingUnknown = (place: Place, label: string): Finding =>
  error(
    'encoding-unknown',
    place,
    `The map declares the encoding ${quoted(label)}.`,
    'No encoding has this name.',
    'Write  encoding: utf-8  or, for older loggers,  encoding: windows-1252.',
  );
export const notInEncoding = (place: Place, label: string, offset: number | null): Finding =>
  error(
    'encoding-wrong',
    place,
    offset === null ? `The file is not ${label}.` : `The byte at offset ${offset} is not ${label}.`,
    'A replaced character may be a digit or a unit; nothing is replaced.',
    'Declare what the logger writes in the map, such as  encoding: windows-1252,  or export as UTF-8.',
  );
export const utf16Unmarked = (place: Place, label: string): Finding =>
  warning(
    'utf16-unmarked',
    place,
    `Every second byte is zero and no byte order mark says so; read as ${label}.`,
    'The order of the bytes is taken from their pattern.',
    `Write  encoding: ${label}  in the map.`,
    'The log is read.',
  );
export const nulBytes = (place: Place, offset: number, tail: boolean): Finding =>
  error(
    'nul-bytes',
    place,
    tail ? `The file ends in zero bytes, from offset ${offset} on.` : `A zero byte stands at offset ${offset}.`,
    'The logger laid the file out beforehand or lost power; readings may be lost with it.',
    'Cut the zero bytes off in a copy, name the copy in the run note, and say so in its body.',
  );
export const controlByte = (place: Place, offset: number, byte: number): Finding =>
  error(
    'control-byte',
    place,
    `The byte at offset ${offset} is the control code 0x${byte.toString(16).padStart(2, '0')}.`,
    'Text has no such code: part of the file is binary or damaged.',
    'Export the log again as delimited text.',
  );
export const tooShort = (place: Place, rows: number, least: number): Finding =>
  error(
    'log-too-short',
    place,
    `The file has ${counted(rows, 'usable row')}.`,
    `At least ${least} are needed.`,
    'Check the export, or take the log line out of the run note.',
  );

// The head
export const headerNotFound = (place: Place, wanted: readonly string[], first: readonly string[]): Finding =>
  error(
    'header-not-found',
    place,
    `No line holds the column names of the map. The first lines read ${first.map(quoted).join(', ')}.`,
    `Wanted: ${wanted.map(quoted).join(', ')}.`,
    'Set  header:  in the map to the line of the column names, and the names as that line has them.',
  );
export const delimiterDiffers = (place: Place, declared: string, found: string): Finding =>
  error(
    'delimiter-differs',
    place,
    `The column names are parted by ${delimiterWord(found)}, not by ${delimiterWord(declared)}.`,
    'The map declares the delimiter; it is not guessed.',
    `Write  delimiter: ${delimiterWord(found)}  in the map.`,
  );
export const delimiterWord = (d: string): string => (d === '\t' ? 'tab' : d === ';' ? 'semicolon' : 'comma');
export const columnMissing = (place: Place, header: string, near: string | null): Finding =>
  error(
    'column-missing',
    place,
    `No column is named ${quoted(header)}.`,
    'The map in rig.md reads a channel from it.',
    near === null
      ? 'Correct the name in the map, or use another map for this log.'
      : `The nearest name is ${quoted(near)}: write it in the map if it is meant.`,
  );
export const columnTwice = (place: Place, a: Named, b: Named): Finding =>
  error(
    'column-twice',
    place,
    `Columns ${a.number} and ${b.number} are both named ${quoted(a.header)}.`,
    'A reading must have one column; neither is taken on trust.',
    'Give each column a name of its own in the logger and export again.',
  );
export const columnUnnamed = (place: Place, at: number, before: Named | null): Finding =>
  error(
    'column-unnamed',
    place,
    `Column ${at} has no name${before === null ? '' : `; the one before it is ${columnName(before)}`}.`,
    'A column without a name cannot be told from a slip of the delimiter.',
    'Name the column in the logger and export again.',
  );
export const unitContradicted = (place: Place, c: Named, file: string, map: string): Finding =>
  error(
    'unit-contradicted',
    place,
    `The file gives ${columnName(c)} in ${quoted(file)}; the map says ${quoted(map)}.`,
    'One of the two is wrong, and with it every reading.',
    'Correct the unit in the map if the file is right; otherwise use a map of its own for this log.',
  );
export const unitUnread = (place: Place, c: Named, file: string, map: string): Finding =>
  warning(
    'unit-unread',
    place,
    `The file gives ${columnName(c)} in ${quoted(file)}, which is in no table of units.`,
    `The map says ${quoted(map)}; whether the two agree cannot be checked.`,
    'Check it by hand, and write the unit in the logger as in the map.',
    'The unit of the map is used.',
  );
export const unitMissing = (place: Place, header: string, unit: string | null): Finding =>
  error(
    'unit-missing',
    place,
    `The map gives the column ${quoted(header)} ${unit === null ? 'no unit' : `the unit ${quoted(unit)}`}.`,
    'A reading without a known unit is not a quantity.',
    `Write the unit, such as  ${quoted(header).slice(1, -1)}: { …, unit: rpm }.`,
  );
export const unitsRowWrong = (place: Place, c: Named, text: string): Finding =>
  error(
    'units-row-wrong',
    place,
    `The map declares a units row here, and ${columnName(c)} holds ${quoted(text)}.`,
    'A row of readings would be lost.',
    'Take  units-row:  out of the map, or set it to the right line.',
  );

/** The first of many of one kind speaks for the others. */
export const andMore = (finding: Finding, more: number): Finding =>
  more === 0
    ? finding
    : { ...finding, says: `${finding.says} ${counted(more, 'more cell is', 'more cells are')} like it.` };

export const moreFindings = (more: { place: Place; hidden: number; level: Level }): Finding => ({
  code: 'more-findings',
  level: more.level,
  place: more.place,
  says: `${counted(more.hidden, 'more finding')} in this file.`,
  why: 'Only the first twenty are listed.',
  write: 'Mend these and check again.',
});
