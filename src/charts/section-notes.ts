import type { SectionData } from '../report/page.ts';
import { heightAt } from './oil-area.ts';
import { stretchOf } from './section-oil.ts';
import { runningGroups } from './section-running.ts';
import type { Point, Sheet } from './section-sheet.ts';
import { onSheet } from './section-sheet.ts';
import { shroudAt } from './shroud.ts';
import { markOf, oil, soft } from './theme.ts';

/** Words in the column at the right, and what they name. */
export interface Note {
  readonly text: string;
  readonly colour: string;
  /** Start of the leader, px. */
  readonly from: Point;
  /** Where it names several lines at once: the ends of a bracket beside them, px down the sheet. */
  readonly bracket?: readonly [number, number];
}

export function notesOf(data: SectionData, sheet: Sheet): readonly Note[] {
  const beside = (point: Point): Point => {
    const [x, y] = onSheet(sheet, point);
    return [x + 4, y];
  };
  const endOf = (z: number, tilt: number): Point => {
    const surface = { z, tilt };
    const { to } = stretchOf(data, surface);
    return beside([to, heightAt(surface, to)]);
  };
  const { colour } = markOf(data.mark);
  const rightmost = [...(data.tray ?? [])].sort((a, b) => b[0] - a[0])[0];
  return [
    ...data.levels.map(({ z, label }) => ({ text: label, colour: oil, from: endOf(z, data.tilt) })),
    ...runningGroups(data.running).map(({ text, levels }) => {
      const ends = levels.map(({ z }) => endOf(z, data.tilt));
      return { text, colour: oil, ...gathered(ends) };
    }),
    // Lips belong to the housing, not to the surface: they do not lean.
    ...data.lips.map(({ z, label }) => ({ text: label, colour: soft, from: endOf(z, 0) })),
    ...(rightmost === undefined ? [] : [{ text: 'tray', colour, from: beside(rightmost) }]),
    ...(data.shroud === null ? [] : [{ text: 'shroud', colour, from: beside(shroudAt(data.shroud, 35)) }]),
  ];
}

/** One leader for lines that end near each other, from the middle of a bracket beside them. */
function gathered(ends: readonly Point[]): Pick<Note, 'from' | 'bracket'> {
  const [x, ys] = [Math.max(...ends.map((end) => end[0])), ends.map((end) => end[1])];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const from: Point = [x, (top + bottom) / 2];
  return ends.length > 1 ? { from: [x + 4, from[1]], bracket: [top, bottom] } : { from };
}
