import { shuffled, stream } from './random.ts';

export type Trial = 'flow' | 'spin' | 'heat-up' | 'cool-down';

export interface CellPlan {
  readonly trial: Trial;
  readonly article: string;
  readonly oil: string;
  readonly fill_L: number;
  readonly tilt_pct: number;
}

export interface RunPlan extends CellPlan {
  readonly id: string;
  readonly order: number;
  /** Counts the fittings of an article; a cool-down keeps that of its heat-up. */
  readonly refit: number;
  /** Seconds after the first midnight of the series. */
  readonly start_s: number;
  readonly length_s: number;
  readonly fromRun: string | null;
}

export const orderSeed = 20260302;
export const firstDay = '2026-03-02';

const cell = (article: string, fill_L: number, oil = 'O1') => ({ article, oil, fill_L, tilt_pct: 0 });
const baseline = cell('P0', 2.4);
/** The ten cells beside the baseline. */
const others = [
  cell('P0', 3.2),
  cell('P1', 2.4),
  cell('P1', 3.2),
  cell('P1', 3.59),
  cell('P2', 2.4),
  cell('P3', 2.4),
  cell('P4', 2.4),
  cell('P0', 2.4, 'O2'),
  cell('P1', 3.59, 'O2'),
  cell('P4', 2.4, 'O2'),
];
export const tableCells = [baseline, ...others];
const flowCells = [cell('P0w', 3.2), cell('P1w', 2.4), cell('P1w', 3.59), cell('P2w', 2.4), cell('P4w', 2.4)];
const nosedUp = (article: string, trial: Trial): CellPlan => ({ ...cell(article, 2.4), trial, tilt_pct: 12 });
const tilted: readonly CellPlan[] = [
  nosedUp('P0w', 'flow'),
  nosedUp('P2w', 'flow'),
  nosedUp('P4w', 'flow'),
  nosedUp('P0', 'heat-up'),
  nosedUp('P4', 'heat-up'),
];

export const lengths_s: Readonly<Record<Trial, number>> = {
  flow: 1712,
  spin: 3430,
  'heat-up': 9000,
  'cool-down': 5400,
};

/** Working days after the first, and the trials of the day in their order. The gap is the spring holiday. */
const days = [
  ...['0 F F', '1 F F', '2 F F', '3 H C', '4 S', '7 H S', '8 S', '9 H S', '10 S', '11 H C', '14 S', '15 S S', '16 H S'],
  ...['17 S S', '18 H C', '21 S S', '22 H S', '23 S S', '24 S S', '25 H S', '28 S S', '29 H S', '30 S S', '31 H C'],
  ...['36 S S', '37 H S', '38 S S', '39 S S', '42 H S', '43 S S', '44 S S', '45 T T', '46 T', '49 T', '50 T'],
].map((line) => {
  const [day, ...trials] = line.split(' ');
  return { day: Number(day), trials };
});

export function runOrder(): readonly RunPlan[] {
  const queues = trialQueues();
  const refits = new Map<string, number>();
  const runs: RunPlan[] = [];
  const odd = stream(orderSeed, 7);
  for (const { day, trials } of days) {
    let free_s = firstStart_s(trials[0]!, odd);
    for (const letter of trials) {
      const { planned, number } = queues(letter);
      const heatUp = planned ? null : runs.at(-1)!;
      const { trial, article, oil, fill_L, tilt_pct } = planned ?? { ...heatUp!, trial: 'cool-down' as const };
      const id = `${letter}-${String(number).padStart(2, '0')}`;
      const refit = heatUp?.refit ?? (refits.get(article) ?? 0) + 1;
      refits.set(article, refit);
      const start_s =
        id === 'S-07' ? at(day, '10:05') : heatUp ? heatUp.start_s + heatUp.length_s + 20 : day * 86_400 + free_s;
      const length_s = lengths_s[trial];
      runs.push({
        ...{ id, trial, article, oil, fill_L, tilt_pct, order: runs.length + 1, refit, start_s, length_s },
        fromRun: heatUp?.id ?? null,
      });
      free_s = roundUp(start_s - day * 86_400 + length_s + 60 * odd.even(75, 115), 300);
    }
  }
  return runs;
}

/** One queue a letter; a cool-down has no plan of its own, it follows the heat-up before it. */
function trialQueues(): (letter: string) => { planned: CellPlan | null; number: number } {
  const planned: Readonly<Record<string, readonly CellPlan[]>> = {
    F: [cell('P0w', 2.4), ...shuffled(flowCells, stream(orderSeed, 1))].map((c) => ({ ...c, trial: 'flow' as const })),
    S: spinOrder().map((c) => ({ ...c, trial: 'spin' as const })),
    H: [baseline, ...heatUpOrder(), baseline].map((c) => ({ ...c, trial: 'heat-up' as const })),
    T: tilted,
  };
  const taken = new Map<string, number>();
  return (letter) => {
    const number = (taken.get(letter) ?? 0) + 1;
    taken.set(letter, number);
    return { planned: planned[letter]?.[number - 1] ?? null, number };
  };
}

/** Three rounds of the ten cells, each shuffled, with the baseline before, after and after every sixth. */
function spinOrder(): (typeof baseline)[] {
  const from = stream(orderSeed, 2);
  let round: (typeof baseline)[];
  do round = shuffled(others, from);
  while (round[5]!.article !== 'P4' || round[5]!.oil !== 'O1' || !round.slice(0, 5).some((c) => c.article === 'P4'));
  const all = [...round, ...shuffled(others, from), ...shuffled(others, from)];
  return [0, 6, 12, 18, 24].flatMap((i) => [baseline, ...all.slice(i, i + 6)]).concat(baseline);
}

/** Shuffled until the cool-downs follow three bowls of different make, and the shroud waits for its first spin run. */
function heatUpOrder(): (typeof baseline)[] {
  const from = stream(orderSeed, 3);
  for (;;) {
    const order = shuffled(others, from);
    const name = order.map((c) => `${c.article} ${c.fill_L} ${c.oil}`);
    const cooled = [name[2]!, name[4]!, name[8]!];
    if (name[7] !== 'P2 2.4 O1') continue;
    if (!['P1 3.59 O1', 'P3 2.4 O1', 'P4 2.4 O1'].every((wanted) => cooled.includes(wanted))) continue;
    if (order.slice(0, 3).some((c) => c.article === 'P4')) continue;
    return order;
  }
}

const at = (day: number, clock: string): number => {
  const [hours, minutes] = clock.split(':').map(Number) as [number, number];
  return day * 86_400 + hours * 3600 + minutes * 60;
};

const roundUp = (value: number, step: number): number => Math.ceil(value / step) * step;

/** A heat-up starts cold, first thing; the others take their turn. */
const firstStart_s = (letter: string, odd: { even: (low: number, high: number) => number }): number =>
  letter === 'H' ? roundUp(odd.even(28_800, 30_600), 300) : roundUp(odd.even(31_800, 35_400), 300);

const summer = [
  ['2024-03-31', '2024-10-27'],
  ['2026-03-29', '2026-10-25'],
  ['2027-03-28', '2027-10-31'],
] as const;

/** Local time with its offset. */
export function clock(seconds: number, first: string): string {
  const day = new Date(Date.UTC(...ymd(first)) + seconds * 1000).toISOString();
  const date = day.slice(0, 10);
  return `${day.slice(0, 19)}${summer.some(([from, to]) => date >= from && date < to) ? '+02:00' : '+01:00'}`;
}

const ymd = (date: string): [number, number, number] => {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  return [year, month - 1, day];
};
