import type { SectionData } from '../report/page.ts';
import { lettering } from './lettering.ts';
import { heightAt } from './oil-area.ts';
import { stretchOf, surfaceLine } from './section-oil.ts';
import type { Sheet } from './section-sheet.ts';
import { onSheet } from './section-sheet.ts';
import { nameGroups } from './step-names.ts';
import { element } from './svg.ts';
import { ink, oil, oilTint, paper, textSize } from './theme.ts';
import { textWidth } from './text-width.ts';

type Running = SectionData['running'];

/** Running levels that are named together: "running at 60–520 rpm up". */
export interface RunningGroup {
  readonly text: string;
  readonly levels: Running;
}

/** More than this many lines lie too close for a name each. */
const namedEach = 4;

export function runningGroups(running: Running): readonly RunningGroup[] {
  if (running.length <= namedEach)
    return running.map((level) => ({ text: `running at ${level.label}`, levels: [level] }));
  return nameGroups(running.map(({ label }) => label)).map(({ first, heads, rest }) => {
    const ends = heads.length === 1 ? heads : [heads[0], heads.at(-1)];
    return { text: `running at ${ends.join('–')} ${rest}`.trim(), levels: running.slice(first, first + heads.length) };
  });
}

/** While it turns: a thin line a step, broken on the way down; the bars, set side by side, say how far the level swings. */
export function runningLevels(data: SectionData, sheet: Sheet): string {
  const places = placesOf(data);
  const ways = nameGroups(data.running.map(({ label }) => label));
  return data.running
    .map(({ z, swing }, i) => {
      const surface = { z, tilt: data.tilt };
      const { from, to } = stretchOf(data, surface);
      const dash = i >= (ways[1]?.first ?? Infinity) ? '1.5 2' : '';
      const x = places[i] ?? 0;
      return (
        surfaceLine(sheet, surface, { from, to }, { width: 0.9, dash }) + bar(sheet, x, heightAt(surface, x), swing)
      );
    })
    .join('');
}

/** Where the bars stand, mm behind the axle: evenly over the stretch that all of the surfaces reach. */
function placesOf(data: SectionData): readonly number[] {
  const stretches = data.running.map(({ z }) => stretchOf(data, { z, tilt: data.tilt }));
  const from = Math.max(...stretches.map((stretch) => stretch.from));
  const to = Math.min(...stretches.map((stretch) => stretch.to));
  return data.running.map((_, i) => from + ((to - from) * (i + 0.6)) / (data.running.length + 0.2));
}

function bar(sheet: Sheet, x: number, z: number, swing: number): string {
  if (swing <= 0) return '';
  const [across, top] = onSheet(sheet, [x, z + swing]);
  const bottom = sheet.y(z - swing);
  return element('path', {
    d: `M${across - 3.5},${top}h7M${across},${top}V${bottom}M${across - 3.5},${bottom}h7`,
    fill: 'none',
    stroke: oil,
    'stroke-width': 1.5,
  });
}

/** Speeds over their bars, above all surfaces, or below them where the pinion's axis is; without room the group's name must do. */
export const barNames = (data: SectionData, sheet: Sheet): string =>
  barNamePlaces(data, sheet)
    .map(({ inOil, ...name }) => lettering({ ...name, fill: ink, anchor: 'middle', rim: inOil ? oilTint : paper }))
    .join('');

interface BarName {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly inOil: boolean;
}

/** Over the surfaces a name and the pinion's axis need this much, px. */
const clearOfAxis = 24;

export function barNamePlaces(data: SectionData, sheet: Sheet): readonly BarName[] {
  if (data.running.length <= namedEach) return [];
  const places = placesOf(data);
  const heads = nameGroups(data.running.map(({ label }) => label)).flatMap((group) => group.heads);
  const apart = ((places[1] ?? 0) - (places[0] ?? 0)) * sheet.scale;
  if (heads.some((head) => textWidth(head, textSize) + 6 > apart)) return [];
  const over = Math.max(...data.levels.map((level) => level.z), ...data.running.map((level) => level.z + level.swing));
  const under = Math.min(...data.running.map((level) => level.z - level.swing));
  const onAxis = data.pinion !== null && Math.abs(sheet.y(data.pinion.offset) - sheet.y(over)) < clearOfAxis;
  return heads.map((text, i) => {
    const x = places[i] ?? 0;
    const y = sheet.y(heightAt({ z: onAxis ? under : over, tilt: data.tilt }, x));
    return { text, x: sheet.x(x), y: onAxis ? y + 14 : y - 5, inOil: onAxis };
  });
}
