import type { SectionData } from '../report/page.ts';
import { dimensionLines } from './section-dimensions.ts';
import { insert, walls } from './section-insert.ts';
import { notesOf } from './section-notes.ts';
import { oilArea, surfaces } from './section-oil.ts';
import { gear, named, pinion, scaleBar, tiltSign } from './section-parts.ts';
import { race } from './section-race.ts';
import { barNames, runningLevels } from './section-running.ts';
import { sheetFor } from './section-sheet.ts';
import { wordColumn } from './section-words.ts';
import type { Width } from './theme.ts';

/** Section of the housing to scale, seen along the axle: only what is known is drawn. Gives the inside of an `svg`. */
export function sectionDrawing(data: SectionData, width: Width): { readonly height: number; readonly inside: string } {
  const sheet = sheetFor(data, width);
  const dimensions = dimensionLines(data, sheet);
  const words = wordColumn([...notesOf(data, sheet), ...dimensions.notes], sheet);
  const inside = [
    oilArea(data, sheet),
    gear(data, sheet),
    pinion(data, sheet),
    race(data, sheet),
    surfaces(data, sheet),
    runningLevels(data, sheet),
    walls(data, sheet),
    insert(data, sheet),
    dimensions.inside,
    named(data, sheet),
    barNames(data, sheet),
    words.inside,
    tiltSign(data),
    scaleBar({ ...sheet, height: words.height }),
  ].join('');
  return { height: words.height, inside };
}
