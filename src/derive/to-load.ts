import { combine, mean, type Estimate } from '../quantity/estimate.ts';
import type { Cell, DerivedRun, ToLoad } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';

/** How far load and speed may be off for it: beyond, neither part goes as simply (common practice, no source). */
const farthest = 0.1;

/**
 * What brings the heat made by a loaded run to the load and the speed of the plan, at the temperature where it settled:
 * load first, then speed.
 *
 *   Q_mesh = Q − S,   ΔQ = Q_mesh·(M_ref/M − 1) + Q_mesh·(M_ref/M)·(ω_ref/ω − 1) + S·[(ω_ref/ω)^p − 1]
 *
 * S is the spin power of the same cell at its own running temperature and p its exponent of speed there, both measured; M the
 * output torque. Where either was not measured nothing is brought anywhere. An error of the torque flanges themselves is
 * common to all runs of a rig and is not in it.
 *
 * range    load and speed within a tenth
 * source   mesh loss in proportion to torque, spin loss without load (common practice, no source)
 */
export function toPlanLoad(run: DerivedRun, runs: Iterable<DerivedRun>, plan: Plan | null): DerivedRun {
  const load = plan?.load ?? null;
  const made = run.results.find((r) => r.quantity === 'heat-made')?.estimate ?? null;
  const { outputSpeed_rad_s: speed, powerOut_W: power } = run.conditions;
  if (load === null || made === null || speed === null || power === null || !(speed > 0 && power > 0)) return run;
  const spun = [...runs].filter((d) => d.trial === 'spin' && d.leftOut === null && isSame(d.cell, run.cell));
  const own = spun.flatMap((d) =>
    d.results.flatMap((r) =>
      r.quantity === 'spin-power' && r.at.sump_K === 'own' && r.estimate !== null ? [r.estimate] : [],
    ),
  );
  const exponents = spun.flatMap(({ spinExponent }) => spinExponent ?? []);
  const speed_ratio = load.outputSpeed_rad_s / speed;
  const torque_ratio = load.powerOut_W / power / speed_ratio;
  const far = [speed_ratio, torque_ratio].some((ratio) => Math.abs(ratio - 1) > farthest);
  if (own.length === 0 || exponents.length === 0 || far) return run;
  const toLoad = brought({ made, spin: mean(own), exponent: mean(exponents) }, { speed_ratio, torque_ratio });
  const used = new Set(toLoad.by_W.parts.map(({ cause }) => cause));
  const known = new Set(run.causes.map(({ id }) => id));
  const more = spun.flatMap(({ causes }) => causes).filter(({ id }) => used.has(id) && !known.has(id));
  return { ...run, toLoad, causes: [...run.causes, ...new Map(more.map((c) => [c.id, c])).values()] };
}

function brought(
  of: { readonly made: Estimate; readonly spin: Estimate; readonly exponent: Estimate },
  by: { readonly speed_ratio: number; readonly torque_ratio: number },
): ToLoad {
  const { made, spin, exponent } = of;
  const { speed_ratio, torque_ratio } = by;
  const mesh_W = made.value - spin.value;
  const power = speed_ratio ** exponent.value;
  const byLoad_W = mesh_W * (torque_ratio - 1);
  const bySpeed_W = mesh_W * torque_ratio * (speed_ratio - 1) + spin.value * (power - 1);
  return {
    ...by,
    spin_W: spin.value,
    exponent: exponent.value,
    byLoad_W,
    bySpeed_W,
    by_W: combine(byLoad_W + bySpeed_W, [
      { of: made, sensitivity: torque_ratio * speed_ratio - 1 },
      { of: spin, sensitivity: power - torque_ratio * speed_ratio },
      { of: exponent, sensitivity: spin.value * power * Math.log(speed_ratio) },
    ]),
  };
}

const isSame = (a: Cell, b: Cell): boolean =>
  a.article === b.article &&
  a.oil === b.oil &&
  a.fill_m3 === b.fill_m3 &&
  a.tilt_ratio === b.tilt_ratio &&
  a.campaign === b.campaign;
