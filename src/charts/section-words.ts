import type { Note } from './section-notes.ts';
import type { Sheet } from './section-sheet.ts';
import { lettering } from './lettering.ts';
import { stack } from './stack.ts';
import { element, pathOf } from './svg.ts';
import { textSize } from './theme.ts';
import { wrapText } from './text-width.ts';

const lineHeight = 15;

/** All words stand in one column at the right, each with a leader to what it names; the sheet grows where they need more room. */
export function wordColumn(notes: readonly Note[], sheet: Sheet): { readonly height: number; readonly inside: string } {
  const blocks = notes.map((note) => {
    const lines = wrapText(note.text, textSize, sheet.room);
    return { note, lines, wanted: note.from[1], height: lines.length * lineHeight + 3 };
  });
  const needed = blocks.reduce((sum, { height }) => sum + height, 0) + upper;
  const height = Math.max(sheet.height, needed);
  const places = stack(blocks, upper, Math.max(needed, sheet.height - 8));
  return { height, inside: blocks.map(({ note, lines }, i) => block(note, lines, places[i] ?? 0, sheet)).join('') };
}

const upper = 2;

function block(note: Note, lines: readonly string[], y: number, sheet: Sheet): string {
  const [x, from] = note.from;
  const line = (d: string) => element('path', { d, fill: 'none', stroke: note.colour, 'stroke-width': 0.75 });
  const foot = y - ((lines.length - 1) * lineHeight) / 2 + 4.5;
  return [
    note.bracket === undefined ? '' : line(`M${x - 4},${note.bracket[0]}h4V${note.bracket[1]}h-4`),
    line(
      pathOf([
        [x, from],
        [sheet.edge - 14, y],
        [sheet.edge - 5, y],
      ]),
    ),
    ...lines.map((text, i) => lettering({ text, x: sheet.edge, y: foot + lineHeight * i, fill: note.colour })),
  ].join('');
}
