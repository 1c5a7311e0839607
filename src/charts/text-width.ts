import { characters, regular, semibold } from './glyphs.ts';

/** Width of a line of chart text as the bundled face sets it, px. A letter outside the table counts as a wide one. */
export function textWidth(text: string, size: number, bold = false): number {
  const table = bold ? boldAdvances : regularAdvances;
  let width = 0;
  for (const letter of text) width += table.get(letter) ?? 60;
  return (width * size) / 100;
}

/** Breaks a sentence into lines no wider than asked; a single long word keeps its line. */
export function wrapText(text: string, size: number, widest: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = lines.length === 0 ? word : `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && textWidth(longer, size) <= widest) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

const advances = (packed: string): ReadonlyMap<string, number> =>
  new Map(Array.from(characters, (letter, i) => [letter, parseInt(packed.slice(2 * i, 2 * i + 2), 36)]));

const regularAdvances = advances(regular);
const boldAdvances = advances(semibold);
