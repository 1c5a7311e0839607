import { inOrder, type Finding, type Level, type Place } from './finding.ts';

const width = 100;
const indent = '      ';

/** A finding for the terminal: where, the line with a caret, then what is there, why it will not do, what to write. */
export function showFinding(finding: Finding): string {
  const { file, line, column } = finding.place;
  const head = `${printable(file)}:${line}:${column}  ${finding.level}  ${finding.code}`;
  const words = [finding.says, finding.why, finding.write, finding.effect ?? '']
    .map(asSentence)
    .filter((s) => s !== '');
  return [head, ...caret(finding.place), ...wrapped(words.join(' '))].join('\n');
}

/** All of them, in order of what they block; the rest is counted, never dropped unsaid. */
export function showFindings(findings: readonly Finding[], options: { readonly limit?: number } = {}): string {
  const limit = options.limit ?? Infinity;
  const shown = inOrder(findings).slice(0, limit).map(showFinding);
  const rest = findings.length - shown.length;
  return [...shown, ...(rest > 0 ? [`and ${rest} more`] : [])].join('\n\n');
}

/** "2 errors, 1 warning, 3 notices"; "nothing found" when there are none. */
export function summary(findings: readonly Finding[]): string {
  const levels: readonly Level[] = ['error', 'warning', 'notice'];
  const counts = levels.map((level) => ({ level, n: findings.filter((f) => f.level === level).length }));
  const said = counts.filter(({ n }) => n > 0).map(({ level, n }) => `${n} ${level}${n === 1 ? '' : 's'}`);
  return said.length > 0 ? said.join(', ') : 'nothing found';
}

/** For machines: one flat place, absent fields left out. */
export function asJson(finding: Finding): Readonly<Record<string, unknown>> {
  const { place, about, effect, ...rest } = finding;
  const { file, line, column, length } = place;
  return {
    code: rest.code,
    level: rest.level,
    file,
    line,
    column,
    ...(length === undefined ? {} : { length }),
    says: rest.says,
    why: rest.why,
    write: rest.write,
    ...(effect === undefined ? {} : { effect }),
    ...(about === undefined ? {} : { about }),
  };
}

function caret(place: Place): string[] {
  if (place.lineText === undefined) return [];
  const gutter = `${indent}  ${place.line} | `;
  const room = width - gutter.length;
  const from = place.column - 1;
  const { text, start } = window(printable(place.lineText), from, room);
  const length = Math.max(1, Math.min(place.length ?? 1, start + text.length - from));
  const before = Array.from(text.slice(0, Math.max(0, from - start)))
    .map((sign) => ' '.repeat(cells(sign)))
    .join('');
  const under = Array.from(text.slice(from - start, from - start + length)).reduce((sum, sign) => sum + cells(sign), 0);
  const blank = ' '.repeat(gutter.length - 2);
  return [gutter + text, `${blank}| ${before}${'^'.repeat(Math.max(1, under))}`];
}

/** The part of a long line that holds the place. `start` is the offset in the line of the first sign shown. */
function window(line: string, from: number, room: number): { text: string; start: number } {
  if (line.length <= room) return { text: line, start: 0 };
  const start = Math.max(0, Math.min(from - Math.floor(room / 2), line.length - room));
  const cutLeft = start > 0;
  const cutRight = start + room < line.length;
  const text = line.slice(start, start + room);
  return {
    text: printable((cutLeft ? '…' : text.slice(0, 1)) + text.slice(1, -1) + (cutRight ? '…' : text.slice(-1))),
    start,
  };
}

/** Signs that would move the cursor become one visible sign each, so that columns stay; a tab is one column wide here. */
const printable = (text: string): string =>
  text.replace(/\t/g, '→').replace(/[\p{Cc}\p{Cs}\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/gu, '·');

/** Columns of a terminal that a sign takes: none for combining marks, two for wide scripts and pictures. */
function cells(sign: string): number {
  if (/\p{M}/u.test(sign)) return 0;
  return /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u.test(
    sign,
  )
    ? 2
    : 1;
}

function wrapped(text: string): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of printable(text).split(/(?<=\S)(?= )/)) {
    if (line.length + word.length > width && line.trim() !== '') {
      lines.push(line);
      line = indent + word.trimStart();
    } else line += line === indent ? word.trimStart() : word;
  }
  return line.trim() === '' ? lines : [...lines, line];
}

const asSentence = (text: string): string => {
  const said = text.trim();
  return said === '' || /[.!?:]$/.test(said) ? said : `${said}.`;
};
