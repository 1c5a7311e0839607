import { mean, widened, type Cause, type Part } from '../quantity/estimate.ts';
import { calibration } from '../derive/causes.ts';
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
 * run as causes of its own. A heat-up's final rise answers a change of heat ΔQ by θ/Q·ΔQ, and a change of airflow as
 * θ·m/u with m = 0.5: shed grows with the 0.6th to 0.8th power of air speed on the part of it that is forced (common
 * practice, no source). Ambient: 0.2 K a kelvin away from the mean of the series (common practice, no source). The bearing
 * probe is seated anew at each installation, so its accuracy does not cancel between runs.
 */
export function single(
  group: Group,
  input: { refit: RefitScatter | null; rig: Rig; ambient_K: number },
): Celled | null {
  if (input.refit === null) return null;
  const { refit } = input;
  const causes: Cause[] = [];
  const byCell = new Map<string, Reduced[]>();
  for (const r of group.reduced) {
    const opened = { run: r.run, estimate: widened(r.estimate, partsFor(group, r, { ...input, refit }, causes)) };
    byCell.set(cellKey(r.run.cell), [...(byCell.get(cellKey(r.run.cell)) ?? []), opened]);
  }
  return {
    cells: [...byCell.values()].map((list) => ({
      cell: list[0]!.run.cell,
      runs: list,
      estimate: mean(list.map((r) => r.estimate)),
    })),
    causes,
    repeatability: null,
    drift: null,
    notes: [texts.oneEach],
    unranked: null,
  };
}

/** What a kelvin of final temperature, a watt and a metre a second do to this quantity of this run. */
function partsFor(
  group: Group,
  r: Reduced,
  input: { refit: RefitScatter; rig: Rig; ambient_K: number },
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
  const airSpeed = run.conditions.airflow_m_s ?? NaN;
  const perWatt_K = rise_K / heat_W;
  const perAir_K = -(rise_K * 0.5) / airSpeed;
  const limit_K = group.at.limit_K ?? NaN;
  const tau_s = store_J_K / shed_W_K;
  const start_K = final_K - rise_K;
  const perKelvin_s = -tau_s * (1 / (final_K - limit_K) - 1 / (final_K - start_K));
  const through: Readonly<Partial<Record<string, readonly [number, number, number]>>> = {
    // quantity: [per watt of heat, per m/s of airflow, per kelvin of ambient]
    'final-rise': [perWatt_K, perAir_K, 0.2],
    'final-temperature': [perWatt_K, perAir_K, 0.8],
    'heat-made': [1, 0, 0],
    shed: [0, (shed_W_K * 0.5) / airSpeed, 0],
    store: [0, 0, 0],
    'limit-crossing': [perWatt_K * perKelvin_s, perAir_K * perKelvin_s, 0.8 * perKelvin_s],
    'bearing-rise': [0, 0, 0],
  };
  const [perW, perU, perAmbient] = through[group.quantity] ?? [0, 0, 0];
  const meter = input.rig.instruments.find((i) => i.measures === 'airflow');
  const seat_K = group.quantity === 'bearing-rise' ? seatOfBearingProbe_K(input.rig) : 0;
  const away_K = Math.abs((run.conditions.ambient_K ?? input.ambient_K) - input.ambient_K) / Math.sqrt(3);
  const list: readonly { cause: Cause; u: number }[] = [
    { cause: own(run, 'refit', 'refit', input.refit.dof), u: perW * input.refit.u_W },
    { cause: own(run, 'airflow', 'airflow', Infinity), u: perU * (meter?.repeat ?? 0.05) },
    { cause: own(run, 'seat', 'seat of the bearing probe', Infinity), u: seat_K },
    { cause: own(run, 'ambient', 'ambient away from the mean of the series', Infinity), u: perAmbient * away_K },
  ];
  const real = list.filter(({ u }) => Number.isFinite(u) && u !== 0);
  causes.push(...real.map(({ cause }) => cause));
  return real.map(({ cause, u }) => ({ cause: cause.id, u }));
}

/** Standard uncertainty that the accuracy of the bearing probe leaves each time it is seated, K. */
function seatOfBearingProbe_K(rig: Rig): number {
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
