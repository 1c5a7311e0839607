import type { Finding, Reading } from '../finding/finding.ts';
import { shortSum } from '../statistics/seeded.ts';
import type { Pin, Pins } from '../trial/part.ts';
import type { SourceFile } from '../trial/series.ts';
import * as say from './texts-parts.ts';

/**
 * `parts/<n>-<slug>.pins`, rows of columns parted by tabs:
 * `part  id  day  method`, `words  sum`, `figure  id  shown  value  low  high  unit`, `claim  id  word`, `file  path  sum`.
 */
export function readPins(file: SourceFile): Reading<Pins> {
  const lines = new TextDecoder().decode(file.bytes).split(/\r?\n/);
  const figures = new Map<string, Pin>();
  const claims = new Map<string, string>();
  const inputs = new Map<string, string>();
  const findings: Finding[] = [];
  let head: { published: string; method: string } | null = null;
  let words = '';
  for (const [i, line] of lines.entries()) {
    if (line === '') continue;
    const row = line.split('\t');
    const figure = figureOf(row);
    if (row[0] === 'part' && row.length === 4) head = { published: row[2]!, method: row[3]! };
    else if (row[0] === 'words' && row.length === 2) words = row[1]!;
    else if (row[0] === 'claim' && row.length === 3) claims.set(row[1]!, row[2]!);
    else if (row[0] === 'file' && row.length === 3) inputs.set(row[1]!, row[2]!);
    else if (figure !== null) figures.set(figure.figure, figure);
    else findings.push({ ...say.pinsRow(line.slice(0, 60)), place: { file: file.path, line: i + 1, column: 1 } });
  }
  if (head === null && findings.length === 0)
    findings.push({ ...say.pinsRow(lines[0] ?? ''), place: { file: file.path, line: 1, column: 1 } });
  return head === null || findings.length > 0
    ? { ok: false, findings }
    : { ok: true, value: { file: file.path, ...head, words, figures, claims, inputs }, findings };
}

function figureOf(row: readonly string[]): Pin | null {
  const [kind, figure, shown, value, low, high, unit] = row;
  if (kind !== 'figure' || row.length !== 7) return null;
  const [v, l, h] = [value!, low!, high!].map((text) => (text === '' ? null : Number(text)));
  if ([v, l, h].some((n) => n !== null && !Number.isFinite(n))) return null;
  return { figure: figure!, shown: shown!, value: v!, low: l!, high: h!, unit: unit! };
}

/** Of the words of a part; the last line end is nobody's. */
export const sumOfWords = (body: string): string => shortSum(body.trim());
