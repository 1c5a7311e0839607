/** Round steps, domains and places of labels: arithmetic of axes, no drawing. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  /** Near zero the axis is straight, beyond this value it closes up as a logarithm does; left out, it is straight. */
  readonly bend?: number;
}

/** Where on the axis a value stands, 0 at its low end and 1 at its high end. */
export function shareOf({ low, high, bend }: Axis, value: number): number {
  const [from, to] = [bent(low, bend), bent(high, bend)];
  return (bent(value, bend) - from) / (to - from);
}

/** The other way: what stands at a share of the axis; beyond 0 and 1 it is carried on. */
export function valueAt({ low, high, bend }: Axis, share: number): number {
  const [from, to] = [bent(low, bend), bent(high, bend)];
  const place = from + share * (to - from);
  return bend === undefined ? place : Math.sign(place) * Math.expm1(Math.abs(place)) * bend;
}

const bent = (value: number, bend: number | undefined): number =>
  bend === undefined ? value : Math.sign(value) * Math.log1p(Math.abs(value / bend));

/** Axis of about `count` round steps (1, 2, 2.5 or 5 times a power of ten) that holds all values. */
export function roundAxis(values: readonly number[], count: number, cover: 'whole' | 'values' = 'whole'): Axis {
  const known = values.filter(Number.isFinite);
  const least = known.length === 0 ? 0 : Math.min(...known);
  const most = known.length === 0 ? 1 : Math.max(...known);
  const span = most - least || Math.abs(most) || 1;
  const step = roundStep(span / count);
  const first = Math.floor(least / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(most / step - 1e-9));
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
  if (cover === 'whole' || least === most) return { low: ticks[0] ?? 0, high: ticks.at(-1) ?? 1, ticks };
  return { low: least, high: most, ticks: ticks.filter((tick) => tick >= least && tick <= most) };
}

/** The same, ending just above the highest value rather than at the next step: no empty field over the marks. */
export function closeAxis(values: readonly number[], count: number): Axis {
  const round = roundAxis(values, count);
  const step = (round.ticks[1] ?? round.high) - round.low;
  const high = Math.min(round.high, Math.max(round.low, ...values.filter(Number.isFinite)) + step * 0.3);
  return { low: round.low, high, ticks: round.ticks.filter((tick) => tick <= high) };
}

export function roundStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  return (stepFactors.find((factor) => factor * power >= rough * 0.999) ?? 10) * power;
}

const stepFactors = [1, 2, 2.5, 5, 10] as const;

/** Minutes go by the clock: halves and whole hours rather than 50s. */
export function minuteAxis(longest: number, count: number): Axis {
  return { low: 0, high: longest || 1, ticks: minuteTicks(0, longest, count) };
}

export function minuteTicks(from: number, to: number, count: number): readonly number[] {
  const steps = [0.25, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 240, 480];
  const step = steps.find((each) => (to - from) / each <= count) ?? roundStep((to - from) / count);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
}

/** A tick as it is written: true minus, no trailing noise of floating point. */
export const tickText = (tick: number): string => String(Number(tick.toPrecision(6))).replace('-', '−');

/**
 * Places labels near where they belong, at least `gap` apart, within bounds: crowded neighbours are pushed
 * apart evenly about the middle of their group. Too many for the room: evenly over the whole of it.
 */
export function spread(wanted: readonly number[], gap: number, low: number, high: number): readonly number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  if (order.length > 1 && (order.length - 1) * gap > high - low) gap = (high - low) / (order.length - 1);
  const groups: { middle: number; members: number[] }[] = [];
  for (const i of order) {
    groups.push({ middle: inside(wanted[i] ?? 0, 1, gap, low, high), members: [i] });
    for (
      let last = groups.at(-1), before = groups.at(-2);
      last && before;
      last = groups.at(-1), before = groups.at(-2)
    ) {
      const reach = ((last.members.length + before.members.length) * gap) / 2;
      if (last.middle - before.middle >= reach - 1e-9) break;
      const members = [...before.members, ...last.members];
      const mean = members.reduce((sum, member) => sum + (wanted[member] ?? 0), 0) / members.length;
      groups.splice(-2, 2, { middle: inside(mean, members.length, gap, low, high), members });
    }
  }
  const placed = [...wanted];
  for (const { middle, members } of groups)
    members.forEach((member, k) => (placed[member] = middle + (k - (members.length - 1) / 2) * gap));
  return placed;
}

const inside = (middle: number, count: number, gap: number, low: number, high: number): number => {
  const half = ((count - 1) * gap) / 2;
  return Math.min(Math.max(middle, low + half), high - half);
};

/** Thins a line to at most about `most` points, keeping the lowest and highest of each stretch, so that no spike is lost. */
export function thin(
  points: readonly (readonly [number, number])[],
  most: number,
): readonly (readonly [number, number])[] {
  if (points.length <= most) return points;
  const kept: (readonly [number, number])[] = [];
  const size = (points.length / most) * 2;
  for (let start = 0; start < points.length; start += size) {
    const stretch = points.slice(Math.floor(start), Math.floor(start + size));
    const byHeight = [...stretch].sort((a, b) => a[1] - b[1]);
    const ends = [byHeight[0], byHeight.at(-1)].filter((point) => point !== undefined);
    kept.push(...[...new Set(ends)].sort((a, b) => a[0] - b[0]));
  }
  const last = points.at(-1);
  return last && kept.at(-1) !== last ? [...kept, last] : kept;
}
