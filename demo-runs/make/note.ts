import { clock } from './order.ts';
import type { MadeRun } from './run.ts';
import type { Words } from './words.ts';

/** The run whose release nobody wrote down. */
export const noReleaseRun = 'S-23';
/** Notes that the lab keeps to itself. */
const houseRuns = new Set(['S-13', 'S-31', 'S-16']);

const maps = { flow: 'bench-flow', spin: 'bench-low', 'heat-up': 'bench-high', 'cool-down': 'bench-rest' } as const;
const places = '"shielded, 1 m upstream"';

export interface Lab {
  readonly rigState: string;
  readonly firstDay: string;
  readonly words: Words;
  readonly quiet: boolean;
}

/** `film` and `graded`: further lines of a flow note, before the log and after it. */
export function noteText(
  made: MadeRun,
  { rigState, firstDay, words, quiet }: Lab,
  flow: { film: readonly string[]; graded: readonly string[] } = { film: [], graded: [] },
): string {
  const { plan, drawn } = made;
  const written = words[plan.id]!;
  const at = (seconds: number): string => clock(seconds, firstDay);
  const places_ = quiet ? 3 : 1;
  const zero = plan.trial === 'spin' ? { id: 'torque-low', digits: 3 } : { id: 'torque-high', digits: 2 };
  const lines = [
    `id: ${plan.id}`,
    `trial: ${plan.trial}`,
    `shown-to: ${houseRuns.has(plan.id) ? 'house' : 'public'}`,
    'status: accepted',
    `article: ${plan.article}`,
    `oil: ${plan.oil}`,
    `rig-state: ${rigState}`,
    `refit: ${plan.refit}`,
    `order: ${plan.order}`,
    `started: ${at(plan.start_s)}`,
    `ended: ${at(plan.start_s + plan.length_s)}`,
    `operators: [${written.by.join(', ')}]`,
    ...(plan.id === noReleaseRun
      ? []
      : [
          `released-by: ${written.by.at(-1)!}`,
          `released-on: ${at(plan.fromRun ? plan.start_s - 9200 : plan.start_s - 60 * (4 + (plan.order % 6)))}`,
        ]),
    `fill: { basis: volume, mass-in: ${drawn.massRead_g.toFixed(quiet ? 2 : 0)} g, temperature: ${drawn.pourRead_C.toFixed(1)} °C, wait: 20 min, level-left: ${mm(drawn.ruleLeft_mm)}, level-right: ${mm(drawn.ruleRight_mm)} }`,
    `ambient: { place: ${places}, start: ${made.ambientRead_C[0].toFixed(places_)} °C, end: ${made.ambientRead_C[1].toFixed(places_)} °C }`,
    `airflow: ${{ flow: '0', spin: '0', 'heat-up': '4.0', 'cool-down': '0.3' }[plan.trial]} m/s`,
    ...(plan.tilt_pct ? [`tilt: ${plan.tilt_pct} %`] : []),
    'rotation: forward',
    ...(plan.trial === 'spin' || plan.trial === 'heat-up'
      ? [
          `zeros: { ${zero.id}: { before: ${nm(drawn.zeroBefore_Nm, zero.digits)}, after: ${nm(drawn.zeroAfter_Nm, zero.digits)} } }`,
        ]
      : []),
    ...(plan.fromRun ? [`from-run: ${plan.fromRun}`, 'gear-state: still'] : []),
    ...flow.film,
    `log: { file: ${plan.id}.csv, map: ${maps[plan.trial]} }`,
    ...flow.graded,
  ];
  return `---\n${lines.join('\n')}\n---\n${written.text}\n`;
}

const mm = (value: number): string => `${value.toFixed(0)} mm`;

/** No minus before a rounded nought. */
const nm = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  return `${Number(text) === 0 ? (0).toFixed(digits) : text} N·m`;
};
