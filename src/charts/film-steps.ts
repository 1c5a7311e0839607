import type { FilmData } from '../report/page.ts';
import type { Clock } from './clock.ts';
import { atTime } from './clock.ts';
import type { Label, Layer, Piece, Plot } from './plot.ts';
import { pieceLayer, textLayer } from './plot.ts';
import { nameGroups } from './step-names.ts';
import { soft, textSize } from './theme.ts';
import { textWidth } from './text-width.ts';

/** A word over the picture: its middle and its ends, px. */
interface Name {
  readonly text: string;
  readonly middle: number;
  readonly from: number;
  readonly to: number;
}

export interface StepNames {
  readonly heads: readonly Name[];
  /** What heads share, with the stretch that it stands over; empty when each name fits whole. */
  readonly shared: readonly Name[];
}

/** Names over the holds, left to right; where they do not fit whole, "60 rpm up, 120 rpm up, …" becomes "rpm up" over its speeds. */
export function stepNames(steps: FilmData['steps'], clock: Omit<Clock, 'top' | 'bottom'>): StepNames {
  const holds = [...steps]
    .sort((a, b) => a.from - b.from)
    .map(({ from, to, label }) => ({ from: atTime(clock, from), to: atTime(clock, to), text: label }));
  const whole = holds.map(named);
  if (apart(whole).length === whole.length) return { heads: whole, shared: [] };
  const groups = nameGroups(holds.map(({ text }) => text));
  const heads = groups.flatMap((group) =>
    holds
      .slice(group.first, group.first + group.heads.length)
      .map((hold, k) => named({ ...hold, text: group.heads[k] ?? '' })),
  );
  const shared = groups.flatMap(({ first, heads: { length }, rest }) => {
    const [start, end] = [holds[first], holds[first + length - 1]];
    return start === undefined || end === undefined || rest === ''
      ? []
      : [named({ from: start.from, to: end.to, text: rest })];
  });
  return { heads: apart(heads), shared: apart(shared) };
}

const named = ({ from, to, text }: Omit<Name, 'middle'>): Name => ({ from, to, text, middle: (from + to) / 2 });

/** Those that do not touch the one before them. */
function apart(names: readonly Name[]): readonly Name[] {
  let taken = -Infinity;
  return names.filter(({ middle, text }) => {
    const half = textWidth(text, textSize) / 2;
    if (middle - half < taken) return false;
    taken = middle + half + 6;
    return true;
  });
}

const rowHeight = 17;

export const stepNameRoom = ({ heads, shared }: StepNames): number =>
  4 + (heads.length === 0 ? 0 : rowHeight) + (shared.length === 0 ? 0 : rowHeight + 5);

export function stepNameLayers(sheet: Plot, top: number, { heads, shared }: StepNames): readonly Layer[] {
  const y = top - rowHeight / 2;
  const over = y - rowHeight - 5;
  const brackets = shared.map(({ from, to }): Piece => [
    [from, over + 10],
    [to, over + 10],
  ]);
  const centred =
    (at: number) =>
    (name: Name): Label => [name.middle, at, name.text];
  return [
    ...textLayer(sheet, heads.map(centred(y)), { align: 'center' }),
    ...(brackets.length === 0 ? [] : [pieceLayer(sheet, brackets, { colour: soft, width: 1 })]),
    ...textLayer(sheet, shared.map(centred(over)), { align: 'center', colour: soft }),
  ];
}
