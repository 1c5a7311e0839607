import type { Finding } from './finding/finding.ts';
import type { SourceFile } from './trial/series.ts';

/** Findings of rooms that know rows and cells, with the column and the text of their line put in. */
export function placed(findings: readonly Finding[], files: readonly SourceFile[]): Finding[] {
  const lines = new Map<string, readonly string[]>();
  return findings.map((f) => {
    const { cell, ...place } = f.place;
    if (cell === undefined) return f;
    const source = files.find((x) => x.path === place.file);
    if (source === undefined) return { ...f, place };
    const text = lines.get(place.file) ?? new TextDecoder().decode(source.bytes).split(/\r\n|\n|\r/);
    lines.set(place.file, text);
    const line = text[place.line - 1] ?? '';
    const cells = line.split(delimiterOf(line));
    const before = cells.slice(0, cell - 1).reduce((n, c) => n + c.length + 1, 0);
    return {
      ...f,
      place: { ...place, column: before + 1, length: Math.max(1, cells[cell - 1]?.length ?? 1), lineText: line },
    };
  });
}

/** What parts the cells of a line: a semicolon or tab where there is one, since commas may then be decimal marks. */
const delimiterOf = (line: string): string => (line.includes(';') ? ';' : line.includes('\t') ? '\t' : ',');
