import type { RunCard } from '../trial/run-card.ts';
import { rpm } from '../ledger/ids.ts';
import { numberText, quantityText } from './digits.ts';
import type { Block, Section, TableRow } from './page.ts';
import { blank, prose, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** The steps or the clock of a run, with room beside each for what is read. */
export function readingsSection(view: View, card: RunCard, id: string): Section {
  const { trial } = card.cell;
  const blocks =
    trial === 'flow'
      ? flow(view, card, id)
      : trial === 'spin' || trial === 'check'
        ? spin(view, card, id)
        : trial === 'heat-up'
          ? heatUp(view, id)
          : coolDown(id);
  return section(`${id}readings`, trial === 'heat-up' || blocks.length === 0 ? 'Readings' : headingOf[trial], blocks);
}

const headingOf = {
  flow: 'Steps, up and down again',
  spin: 'Steps',
  check: 'Steps',
  'heat-up': 'Readings',
  'cool-down': 'Readings while it cools',
  soak: 'Readings while it soaks',
} as const;

const held = ({ plan }: View): string =>
  plan === null
    ? ''
    : `Each is held ${quantityText(plan.hold_s, 's', 0)}; the last ${quantityText(plan.steadyWindow_s, 's', 0)} are read, with the sump moving by no more than ${quantityText(plan.steadySlope_K_s, 'K/min', 1)}.`;

function spin(view: View, { steps }: RunCard, id: string): Block[] {
  const temperatures = (view.plan?.temperatures_K ?? []).map((t_K) => quantityText(t_K, '°C', 0));
  return [
    prose(held(view)),
    tableBlock(
      `${id}steps`,
      [...speedHeads(view, steps), ...temperatures.map((t) => `N·m at ${t}`)],
      steps.map((step) =>
        stepRow(
          step,
          temperatures.map((t) => `torque at ${t}`),
        ),
      ),
    ),
  ];
}

function flow(view: View, { steps }: RunCard, id: string): Block[] {
  const read = ['sump, °C', 'level, mm', 'swing, mm', 'seen'];
  return [
    prose(
      `Each is held ${quantityText(Math.max(60, view.plan?.hold_s ?? 60), 's', 0)} or longer, until the level stands. Flash the lamp once before the first step, so that film and logger can be tied; after the last, ten minutes of settling from the standstill of the gear.`,
    ),
    tableBlock(
      `${id}steps`,
      ['way', ...speedHeads(view, steps), ...read],
      steps.map((step) => ({
        cells: [[step.direction], ...stepRow(step, read).cells],
      })),
    ),
  ];
}

const speedHeads = (view: View, steps: RunCard['steps']): string[] => [
  `number ${view.speed}`,
  ...(steps.some(({ road_m_s }) => road_m_s !== null) ? ['number km/h'] : []),
  'number pinion rpm',
];

const stepRow = (
  { output_rad_s, road_m_s, pinion_rad_s, direction }: RunCard['steps'][number],
  read: readonly string[],
): TableRow =>
  row(
    rpm(output_rad_s),
    ...(road_m_s === null ? [] : [numberText(road_m_s * 3.6, 1)]),
    rpm(Math.round((pinion_rad_s * 30) / Math.PI) * (Math.PI / 30)),
    ...read.map((what) => blank(`${what}, ${rpm(output_rad_s)} rpm ${direction}`)),
  );

function heatUp(view: View, id: string): Block[] {
  const { plan } = view;
  const end_min = (plan?.maxTime_s ?? 9000) / 60;
  return [
    prose(
      `From a cold start, sump and ambient within 2\u202fK of each other, to ${quantityText(end_min * 60, 'min', 0)} or the stop temperature. A limit counts once it is passed for ${quantityText(plan?.sustained_s ?? 20, 's', 0)}.`,
    ),
    tableBlock(
      `${id}limits`,
      ['limit', ...(plan?.limits_K ?? []).map((t_K) => quantityText(t_K, '°C', 0, view.withUs))],
      [row('passed at, min', ...(plan?.limits_K ?? []).map((t_K) => blank(`minute at ${quantityText(t_K, '°C', 0)}`)))],
    ),
    clockTable(
      [0, 15, 30, 60, 90, 120, 150, 180, 240].filter((min) => min < end_min),
      ['sump, °C', 'skin, °C', 'pinion bearing, °C', 'ambient, °C', 'air, m/s'],
      `${id}clock`,
      end_min,
    ),
  ];
}

const coolDown = (id: string): Block[] => [
  prose(
    'Time from the stop. Gears ',
    blank('still or slow roll'),
    ', fan ',
    blank('air speed'),
    ' m/s, after run ',
    blank('heat-up it follows'),
    '.',
  ),
  clockTable([0, 5, 10, 20, 30, 60], ['sump, °C', 'skin, °C', 'ambient, °C', 'air, m/s'], `${id}clock`, 90),
];

const clockTable = (minutes: readonly number[], read: readonly string[], id: string, last: number): Block =>
  tableBlock(
    id,
    ['number min', ...read],
    [...minutes, last].map((min) =>
      row(numberText(min, 0), ...read.map((what) => blank(`${what} at ${numberText(min, 0)} min`))),
    ),
  );
