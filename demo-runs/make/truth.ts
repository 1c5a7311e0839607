import { cellTruth } from './cells.ts';
import { cameraClock_s, cameraClockRun } from './faults.ts';
import type { Calibration } from './instruments.ts';
import type { Choice } from './choose.ts';
import { trueSteps } from './flow-truth.ts';
import * as law from './law.ts';
import { noReleaseRun } from './note.ts';
import { tableCells } from './order.ts';
import { sampleTruth } from './samples.ts';
import { hotWindowRun, limits_C, type MadeRun } from './run.ts';

/** One true value, named as the ledger names its figures. */
export interface Truth {
  readonly quantity: string;
  readonly subject: { readonly run: string };
  readonly at: Readonly<Record<string, string>>;
  readonly value: number | null;
  readonly unit: string;
  readonly bound?: readonly ['above', number];
}

const lastHalfHour_rows = 900;

export function truthText(given: {
  seed: number;
  quiet: boolean;
  choice: Choice;
  calibration: Calibration;
  made: readonly MadeRun[];
}): string {
  const head = {
    invented: true,
    note:
      'Everything here was planted when the demo was made. Truth of a run is the true physical value for its own refit, fill, airflow and load. ' +
      'shed-rest is store divided by the slow time constant of the two stores with the gears still. ' +
      'Heat made, final temperature, final rise and shed hold at the steady state that the run would reach in its mean ambient of the last 30 minutes. ' +
      'Grades are given before rounding; on the way down Bubble lags, because air leaves slowly. held-up is the static level less the level that the run settles to.',
    seed: given.seed,
    quiet: given.quiet,
    draws: given.choice.draws,
    calibration: round(given.calibration),
    banners: [
      { run: noReleaseRun, banner: 'release not recorded' },
      ...(given.quiet ? [] : [{ run: hotWindowRun, banner: 'cap exceeded' }]),
    ],
    camera: { run: cameraClockRun, ahead_s: given.quiet ? 0 : cameraClock_s },
    faults: given.made.flatMap((m) => m.faults),
    verdicts: given.choice.verdicts.map((v) => round({ ...v })),
    samples: sampleTruth(),
    cells: tableCells.map((cell) => round(cellTruth(cell))),
  };
  return spread(head, given.made);
}

const cellOf = ({ plan: { trial, article, oil, fill_L, tilt_pct } }: MadeRun) => ({
  ...{ trial, article, oil, fill_L, tilt_pct },
});

/** How a rig names its speed, its limits, and whether it reads a bearing race. */
const hillNames = { speed: 'wheel-speed', limits_C, race: true };

export function runTruth(made: MadeRun, named = hillNames): readonly Truth[] {
  const { plan, setUp, spin } = made;
  const subject = { run: plan.id };
  const say = (quantity: string, value: number, unit: string, at: Truth['at'] = {}): Truth => ({
    ...{ quantity, subject, at, value, unit },
  });
  const common = [
    say('static-level', setUp.level_mm, 'mm'),
    say('immersion', setUp.gear.ringRadius_mm + setUp.level_mm, 'mm'),
  ];
  if (plan.trial === 'spin')
    return [
      ...common,
      ...spin.temps_C.flatMap((temp_C) =>
        spin.steps_rpm.flatMap((wheel_rpm) => {
          const at = { [named.speed]: `${wheel_rpm} rpm`, sump: `${temp_C} Cel` };
          return [
            say('spin-torque', law.spinTorque_Nm(setUp, { wheel_rpm, temp_C }), 'N.m', at),
            say('spin-power', law.spinPower_W(setUp, { wheel_rpm, temp_C }), 'W', at),
          ];
        }),
      ),
    ];
  if (plan.trial === 'flow')
    return [
      ...common,
      ...trueSteps(made).flatMap((step) => {
        const at = {
          [named.speed]: `${step.wheel_rpm} rpm`,
          ...(step.direction === 'down' ? { direction: 'down' } : {}),
        };
        return [
          say('running-level', step.level_mm, 'mm', at),
          ...Object.entries(step.grades).map(([name, grade]) => say(name, law.held04(grade), '1', at)),
        ];
      }),
      say('held-up', law.heldAfter_mm, 'mm'),
      say('level-half-time', law.levelHalf_s(setUp), 's'),
    ];
  return [...common, ...(plan.trial === 'cool-down' ? restTruth(made, say) : loadedTruth(made, say, named))];
}

type Say = (quantity: string, value: number, unit: string, at?: Truth['at']) => Truth;

function loadedTruth(
  { plan, setUp, drawn, truth, load, crossings }: MadeRun,
  say: Say,
  named: typeof hillNames,
): Truth[] {
  const ambient_C = meanOfLast(truth.values.T_amb);
  const air_m_s = truth.values.u_air[0] ?? drawn.air_m_s;
  const end = law.settled(setUp, load!, { air_m_s, ambient_C });
  const bearing = truth.values.T_pb.map((t, row) => t - truth.values.T_sump[row]!);
  return [
    say('final-temperature', end.temp_C, 'Cel'),
    say('final-rise', end.rise_K, 'K'),
    say('heat-made', end.heat_W, 'W'),
    say('shed', end.heat_W / end.rise_K, 'W/K'),
    say('store', store_kJ_K(setUp), 'kJ/K'),
    ...named.limits_C.map((limit): Truth => {
      const at = { limit: `${Number(limit.toFixed(2))} Cel` };
      const t_s = crossings.get(limit);
      if (t_s !== undefined) return say('limit-crossing', t_s, 's', at);
      return { ...say('limit-crossing', 0, 's', at), value: null, bound: ['above', plan.length_s] };
    }),
    ...(named.race ? [say('bearing-rise', meanOfLast(bearing), 'K')] : []),
  ];
}

function restTruth({ setUp, truth, drawn }: MadeRun, say: Say): Truth[] {
  const slow_s = law.slowTime_s(setUp, truth.values.u_air[0] ?? drawn.air_m_s);
  return [say('time-constant', slow_s, 's'), say('shed-rest', (store_kJ_K(setUp) * 1000) / slow_s, 'W/K')];
}

const store_kJ_K = (setUp: law.SetUp): number => (law.oilStore_J_K(setUp) + law.housingStore_J_K(setUp)) / 1000;

const meanOfLast = (values: Float64Array): number =>
  values.slice(-lastHalfHour_rows).reduce((sum, v) => sum + v, 0) / lastHalfHour_rows;

const digits = (value: number): number => Number(value.toPrecision(8));

const round = (record: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  JSON.parse(JSON.stringify(record, (_, v: unknown) => (typeof v === 'number' ? digits(v) : v))) as Record<
    string,
    unknown
  >;

/** One fact a line, so that a person can read it and a comparison shows what moved. */
export function spread(head: Readonly<Record<string, unknown>>, made: readonly MadeRun[], named = hillNames): string {
  const lines = Object.entries(head).map(([key, value]) =>
    Array.isArray(value)
      ? `  ${JSON.stringify(key)}: [${value.map((v) => `\n    ${JSON.stringify(v)}`).join(',')}\n  ]`
      : `  ${JSON.stringify(key)}: ${JSON.stringify(value)}`,
  );
  const told = made.map((one) => {
    const rest = { run: one.plan.id, cell: cellOf(one), drawn: round({ ...one.drawn }) };
    const truth = runTruth(one, named).map((t) =>
      JSON.stringify({ ...t, value: t.value === null ? null : digits(t.value) }),
    );
    return `    ${JSON.stringify(rest).slice(0, -1)}, "truth": [${truth.map((t) => `\n      ${t}`).join(',')}\n    ]}`;
  });
  return `{\n${lines.join(',\n')},\n  "runs": [\n${told.join(',\n')}\n  ]\n}\n`;
}
