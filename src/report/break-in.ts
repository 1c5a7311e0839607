import { hasSettled, lastMove_ratio } from '../trial/break-in.ts';
import type { Rig, RigState } from '../trial/rig.ts';
import { quantityText } from './digits.ts';
import type { Block } from './page.ts';
import { listed, prose, row, tableBlock } from './spans.ts';

/** How each state was broken in, load by load, and whether it had settled by its own criterion. */
export function breakInBlocks(rig: Rig): Block[] {
  const recorded = rig.states.filter(({ breakIn }) => breakIn !== null);
  const without = rig.states.filter(({ breakIn }) => breakIn === null);
  return [
    ...recorded.map((state) => prose(...settledWords(state))),
    ...(recorded.length === 0 ? [] : [loadTable(recorded)]),
    ...(without.length === 0
      ? []
      : [
          prose(
            'Break-in not recorded of ',
            ...listed(without.map(({ id }) => [id])),
            '. Whether its gears had settled before they were compared cannot be told.',
          ),
        ]),
  ];
}

function settledWords({ id, breakIn, settled }: RigState): string[] {
  const within = points(breakIn?.settledWithin_ratio ?? 0);
  return settled === true
    ? [`State ${id} had settled: at every load the efficiency moved by no more than ${within} from middle to end.`]
    : [
        `State ${id} had not settled: at a load or more the efficiency still moved by more than ${within} from middle to end. What was run in it is indicative only.`,
      ];
}

const loadTable = (states: readonly RigState[]): Block =>
  tableBlock(
    'break-in-table',
    [
      'state',
      'number power out',
      'number efficiency at start',
      'number middle',
      'number end',
      'number middle to end',
      'settled',
    ],
    states.flatMap(({ id, breakIn }) =>
      (breakIn?.loads ?? []).map((load) =>
        row(
          id,
          quantityText(load.power_W, 'kW', 1),
          percent(load.start_ratio),
          percent(load.middle_ratio),
          percent(load.end_ratio),
          signed(lastMove_ratio(load)),
          breakIn !== null && hasSettled(load, breakIn) ? 'yes' : 'no',
        ),
      ),
    ),
    'Efficiency at start, middle and end of each load of the break-in',
  );

const percent = (ratio: number): string => quantityText(ratio, '%', 1);
const points = (ratio: number): string => quantityText(ratio, '%', 2);
const signed = (ratio: number): string => `${ratio > 0 ? '+' : ''}${points(ratio)}`;
