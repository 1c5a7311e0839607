import { mean, widened, type Cause, type Part } from '../quantity/estimate.ts';
import { calibration } from '../derive/causes.ts';
import type { Series } from '../trial/book.ts';
import type { DerivedRun } from '../trial/derived.ts';
import type { Rig } from '../trial/rig.ts';
import type { Celled } from './repeated.ts';
import { cellKey, type Group, type Reduced } from './group.ts';
import * as texts from './texts.ts';

/** Scatter of a refit as power at a speed, from the spin runs of the same series. */
export interface RefitScatter {
  readonly u_W: number;
  readonly dof: number;
}

/**
 * One loaded run each: what another installation, another airflow or another ambient would have changed is added to each
 * run. A heat-up's final rise answers a change of heat ΔQ by θ/Q·ΔQ, and a change of airflow as θ·m/u with m = 0.5: shed
 * grows with the 0.6th to 0.8th power of air speed on the part of it that is forced (common practice, no source). Below
 * half a metre a second, the still-air class of ISO/TR 14179-1, that answer dies away. Ambient: 0.2 K of rise a kelvin
 * (common practice, no source). What a run's own ambient and airflow lie off the mean of the series was read, and only the
 * answer to it is open: one cause for all runs, so that it cancels between runs of one day. The bearing probe is seated
 * anew at each installation, so its accuracy does not cancel between runs.
 */
export function single(
  group: Group,
  input: { refit: RefitScatter | null; rig: Meters; series: Series; mean: LoadedMean },
): Celled | null {
  if (input.refit === null) return null;
  const { refit } = input;
  const causes: Cause[] = [];
  const byCell = new Map<string, Reduced[]>();
  for (const r of group.reduced) {
    const opened = { ...r, estimate: widened(r.estimate, partsFor(group, r, { ...input, refit }, causes)) };
    byCell.set(cellKey(r.run.cell), [...(byCell.get(cellKey(r.run.cell)) ?? []), opened]);
  }
  const lists = [...byCell.values()];
  return {
    cells: lists.map((list) => ({
      cell: list[0]!.run.cell,
      runs: list,
      estimate: mean(list.map((r) => r.estimate)),
    })),
    causes,
    repeatability: null,
    drift: null,
    wander: null,
    days: null,
    indicative: [],
    notes: [lists.every((list) => list.length === 1) ? texts.oneEach : texts.fewRepeats],
    unranked: null,
  };
}

/** What is asked of the rig: its instruments, and what hangs on which. */
export interface Meters {
  readonly instruments: Rig['instruments'];
  readonly maps: readonly Pick<Rig['maps'][number], 'columns'>[];
}

/** Mean conditions of the loaded runs of a series. */
export interface LoadedMean {
  readonly ambient_K: number;
  readonly airflow_m_s: number;
}

/** What a kelvin of final temperature, a watt and a metre a second do to this quantity of this run. */
function partsFor(
  group: Group,
  r: Reduced,
  input: { refit: RefitScatter; rig: Meters; series: Series; mean: LoadedMean },
  causes: Cause[],
): Part[] {
  const { run } = r;
  const value = (quantity: string): number => run.results.find((x) => x.quantity === quantity)?.estimate?.value ?? NaN;
  const [rise_K, heat_W, shed_W_K, store_J_K, final_K] = [
    'final-rise',
    'heat-made',
    'shed',
    'store',
    'final-temperature',
  ].map(value) as [number, number, number, number, number];
  const air_m_s = run.conditions.airflow_m_s ?? 0;
  const perAir = (0.5 * air_m_s) / (air_m_s ** 2 + 0.5 ** 2);
  const perWatt_K = rise_K / heat_W;
  const perAir_K = -rise_K * perAir;
  const { perFinal_s, perAmbient_s } = crossing({
    t_s: r.estimate.value,
    store_s: store_J_K / shed_W_K,
    toGo_K: Math.max(final_K - (group.at.limit_K ?? NaN), 0.3),
    rise_K,
  });
  const through: Readonly<Partial<Record<string, readonly [number, number, number]>>> = {
    // quantity: [per watt of heat, per m/s of airflow, per kelvin of ambient]
    'final-rise': [perWatt_K, perAir_K, 0.2],
    'final-temperature': [perWatt_K, perAir_K, 0.8],
    'heat-made': [1, 0, 0],
    shed: [0, shed_W_K * perAir, 0],
    store: [0, 0, 0],
    'limit-crossing': [perWatt_K * perFinal_s, perAir_K * perFinal_s, 0.8 * perAmbient_s],
    'bearing-rise': [0, 0, 0],
  };
  const [perW, perU, perAmbient] = through[group.quantity] ?? [0, 0, 0];
  const seat_K = group.quantity === 'bearing-rise' ? seatOfBearingProbe_K(input.rig) : 0;
  // What was corrected carries the doubt of its own slope instead.
  const offAmbient_K =
    r.corrected === undefined ? (run.conditions.ambient_K ?? input.mean.ambient_K) - input.mean.ambient_K : 0;
  const list: readonly { cause: Cause; u: number }[] = [
    { cause: own(run, 'refit', 'refit', input.refit.dof), u: perW * input.refit.u_W },
    { cause: own(run, 'airflow', 'airflow', Infinity), u: perU * airflowRepeat_m_s(input, air_m_s) },
    { cause: own(run, 'seat', 'seat of the bearing probe', Infinity), u: seat_K },
    { cause: answerTo('ambient'), u: (perAmbient * offAmbient_K) / Math.sqrt(3) },
    { cause: answerTo('airflow'), u: (perU * (air_m_s - input.mean.airflow_m_s)) / Math.sqrt(3) },
  ];
  const real = list.filter(({ u }) => u !== 0);
  causes.push(...real.map(({ cause }) => cause));
  return real.map(({ cause, u }) => ({ cause: cause.id, u }));
}

/**
 * What a kelvin of final temperature, and one of ambient with the start, do to the time to a limit (one store):
 *
 *   ∂t/∂T∞ = −τ·[1/(T∞ − T_lim) − 1/θ∞],   ∂t/∂T_amb = −τ/(T∞ − T_lim)
 *
 * τ from the store, or from the crossing itself where no store is known: t = τ·ln[θ∞/(T∞ − T_lim)].
 */
function crossing(of: { t_s: number; store_s: number; toGo_K: number; rise_K: number }): {
  perFinal_s: number;
  perAmbient_s: number;
} {
  const { t_s, store_s, toGo_K, rise_K } = of;
  const tau_s = Number.isNaN(store_s) ? t_s / Math.log(Math.max(rise_K / toGo_K, 1.01)) : store_s;
  return { perFinal_s: -tau_s * (1 / toGo_K - 1 / rise_K), perAmbient_s: -tau_s / toGo_K };
}

/** How far the air speed of a run may lie off what was read: the meter's repeat, its accuracy, or what the series allows. */
function airflowRepeat_m_s(of: { rig: Meters; series: Series }, air_m_s: number): number {
  const meter = of.rig.instruments.find((i) => i.measures === 'airflow');
  if (meter === undefined) return of.series.tolerance.airflow_m_s / Math.sqrt(3);
  return meter.repeat ?? calibration(meter, air_m_s).u;
}

const answerTo = (what: 'ambient' | 'airflow'): Cause => ({
  id: `answer:${what}`,
  name: `what ${what} off the mean of the series does to a loaded run`,
  kind: 'model',
  distribution: 'rectangular',
  dof: Infinity,
  scope: 'series',
});

/** Standard uncertainty that the accuracy of the bearing probe leaves each time it is seated, K. */
function seatOfBearingProbe_K(rig: Meters): number {
  const column = rig.maps.flatMap((m) => m.columns).find((c) => c.is === 'pinion-bearing' && c.instrument !== null);
  const probe = rig.instruments.find((i) => i.id === column?.instrument);
  return probe === undefined ? 0 : calibration(probe, 370).u;
}

const own = (run: DerivedRun, id: string, name: string, dof: number): Cause => ({
  id: `${id}:${run.run}`,
  name: `${name} of ${run.run}`,
  kind: id === 'refit' ? 'scatter' : 'offset',
  distribution: dof === Infinity ? 'rectangular' : 't',
  dof,
  scope: id === 'refit' ? 'refit' : 'run',
  ...(id === 'refit' ? { family: 'refit:loaded' } : {}),
});
