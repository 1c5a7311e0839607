import type { Finding, Place } from '../finding/finding.ts';
import type { LogLogLine } from '../physics/viscosity.ts';
import type { DerivedRun, Result } from '../trial/derived.ts';
import type { Plan } from '../trial/plan.ts';
import type { Run } from '../trial/run.ts';
import type { SeriesRecord } from '../trial/series.ts';
import { breakInFindings } from './break-in.ts';
import { deriveCoolDown } from './cool-down.ts';
import { deriveFlow } from './flow.ts';
import { deriveHeatUp } from './heat-up.ts';
import { afterStop, underLoad } from './part.ts';
import { outputSpeed } from './reading.ts';
import { assembled, makeReady, type Ready } from './run.ts';
import { rowPlace } from './faults.ts';
import { besideLoaded } from './similarity.ts';
import { numbersAtFinal } from './spin-numbers.ts';
import { farFromModels } from './far-from-models.ts';
import { spinRun } from './spin-run.ts';
import { toPlanLoad } from './to-load.ts';
import { instrumentFindings } from './instruments.ts';
import { oilFindings } from './oil-findings.ts';
import * as texts from './texts.ts';

/** Reduces a run, or takes what the same run gave before; preview keeps one over rebuilds. `as` names another reduction of it. */
export type KeptRun = (run: Run, reduce: () => DerivedRun, as?: string) => DerivedRun;

/**
 * Every run of a series reduced. Flow first (running levels tell which probes hang in the air), then heat-ups (final
 * temperatures are the own temperature of spin), then cool-downs and spin. Heat-ups, which take the longest and lean on no
 * other run, may be kept.
 */
export function deriveSeries(
  record: SeriesRecord,
  kept: KeptRun = (_, reduce) => reduce(),
): {
  runs: ReadonlyMap<string, DerivedRun>;
  /** Runs with every stretch that was excluded put back, for those that have any: what leaving them out did. */
  putBack: ReadonlyMap<string, DerivedRun>;
  findings: readonly Finding[];
} {
  const { series, plan } = record;
  const baseline = record.articles.get(series.baseline.article);
  const readied = (run: Run): Ready[] => {
    const oil = record.oils.get(run.oil);
    if (oil === undefined) return [];
    const article = record.articles.get(run.article);
    return [
      makeReady({ run, rig: record.rig, series, plan, article, baseline, oil, log: record.logs.get(run.id) ?? null }),
    ];
  };
  const ready = record.runs.flatMap(readied);
  const done = new Map<string, DerivedRun>();
  const keep = (list: readonly DerivedRun[]): void => {
    for (const d of list) done.set(d.run, d);
  };
  const of = (...trials: Run['trial'][]): Ready[] => ready.filter((r) => trials.includes(r.input.run.trial));
  const levels = new Map<string, SeenLevel>();
  keep(of('flow', 'soak', 'check').map((r) => flow(r, plan, record, levels)));
  keep(of('heat-up').map((r) => kept(r.input.run, () => heatUp(r, plan))));
  keep(of('cool-down').map((r) => coolDown(r, done)));
  keep(of('spin').map((r) => spin(r, plan, levels, done)));
  const loaded = (d: DerivedRun): DerivedRun => toPlanLoad(d, done.values(), plan);
  keep([...done.values()].filter((d) => d.trial === 'heat-up').map(loaded));
  keep(of('flow').flatMap((r) => standing(r, done, record)));
  const back = record.runs
    .filter(({ exclude, id }) => exclude.length > 0 && done.get(id)?.leftOut === null)
    .flatMap((run): DerivedRun[] => {
      const whole = { ...run, exclude: [] };
      if (run.trial === 'spin') return readied(whole).map((r) => spin(r, plan, levels, done));
      if (run.trial !== 'heat-up') return [];
      return [loaded(kept(run, () => heatUp(readied(whole)[0]!, plan), 'put back'))];
    });
  return {
    putBack: new Map(back.map((d) => [d.run, d])),
    runs: new Map(record.runs.flatMap((r) => (done.has(r.id) ? [[r.id, done.get(r.id)!] as const] : []))),
    findings: [
      ...instrumentFindings(record),
      ...oilFindings(record),
      ...breakInFindings(record.rig, record.runs, record.series.id),
    ],
  };
}

/** Running levels seen behind a window, by article and nominal litres. */
interface SeenLevel {
  readonly run: string;
  readonly steps: ReadonlyMap<number, number>;
}
const levelKey = (article: string, fill_m3: number): string => `${article}@${(fill_m3 * 1e3).toFixed(1)}`;

function flow(r: Ready, plan: Plan | null, record: SeriesRecord, levels: Map<string, SeenLevel>): DerivedRun {
  const { run } = r.input;
  if (r.reading === null || plan === null || r.leftOut !== null) return assembled(r, {});
  const found = deriveFlow({
    ...{ reading: r.reading, plan, oil: r.input.oil, line: r.line, level: r.level },
    table: r.input.article?.levelTable ?? null,
    tip_z_m: tipOf(r),
  });
  const seen = { run: run.id, steps: found.runningLevel_z_m };
  // A tilted window shows another level than the level axle that is meant by a spin run.
  if (run.tilt_ratio === 0) {
    const stands = record.articles.get(run.article)?.standsInFor ?? [];
    for (const article of [run.article, ...stands]) levels.set(levelKey(article, r.cell.fill_m3), seen);
  }
  const findings = [...capFindings(r), ...aboveLevel(r, seen), ...found.findings];
  return assembled(r, { ...found, findings });
}

/** A flow trial beside the loaded run it is meant to stand for, once that is reduced. */
function standing(r: Ready, done: ReadonlyMap<string, DerivedRun>, record: SeriesRecord): DerivedRun[] {
  const flow = done.get(r.input.run.id);
  if (flow === undefined || r.line === null) return [];
  const { rig, oil, run } = r.input;
  const articles = [run.article, ...(record.articles.get(run.article)?.standsInFor ?? [])];
  const loaded = [...done.values()].filter(({ trial }) => trial === 'heat-up').sort((a, b) => a.order - b.order);
  return [besideLoaded(flow, { rig, oil, line: r.line, articles, loaded })];
}

function heatUp(r: Ready, plan: Plan | null): DerivedRun {
  if (r.reading === null || plan === null || r.line === null || r.leftOut !== null) return assembled(r, {});
  const speed_rad_s = plan.load?.outputSpeed_rad_s ?? r.input.series.reference.outputSpeed_rad_s;
  const part = { ...r, reading: underLoad(r.reading) };
  const found = deriveHeatUp({ reading: part.reading, plan, line: r.line, speed_rad_s });
  const findings = [...capFindings(r), ...nothing(r, found.why), ...onlyDirect(r, found.untold)];
  const results = [...found.results, ...oilAtTheEnd(r, r.line, found.results, speed_rad_s)];
  return assembled(part, { ...found, results, findings, leftOut: found.why });
}

/** Viscosity and Reynolds number at the held speed of a loaded run and the temperature it settles at. */
function oilAtTheEnd(r: Ready, line: LogLogLine, results: readonly Result[], speed_rad_s: number): Result[] {
  const final = results.find(({ quantity }) => quantity === 'final-temperature');
  if (final?.estimate == null) return [];
  const { run, rig, oil } = r.input;
  const at = { outputSpeed_rad_s: speed_rad_s, sump_K: 'own' } as const;
  return numbersAtFinal({ run: run.id, at: final.at, estimate: final.estimate }, at, speed_rad_s, { rig, oil, line });
}

function coolDown(r: Ready, done: ReadonlyMap<string, DerivedRun>): DerivedRun {
  if (r.reading === null || r.leftOut !== null) return assembled(r, {});
  const from = r.input.run.fromRun === null ? undefined : done.get(r.input.run.fromRun);
  const stored = from?.results.find((x) => x.quantity === 'store');
  const part = { ...r, reading: afterStop(r.reading) };
  const found = deriveCoolDown({
    reading: part.reading,
    store: stored?.estimate && from ? { estimate: stored.estimate, from: { run: from.run, at: stored.at } } : null,
  });
  return assembled(part, {
    ...found,
    causes: [...found.causes, ...(from?.causes ?? [])],
    findings: nothing(r, found.why),
    leftOut: found.why,
  });
}

function spin(
  r: Ready,
  plan: Plan | null,
  levels: ReadonlyMap<string, SeenLevel>,
  done: ReadonlyMap<string, DerivedRun>,
): DerivedRun {
  const { reading, line, input } = r;
  if (reading === null || plan === null || line === null || r.leftOut !== null) return assembled(r, {});
  const seen = levels.get(levelKey(input.run.article, r.cell.fill_m3));
  const findings = [...capFindings(r), ...(seen === undefined ? [] : aboveLevel(r, seen))];
  const notAt = seen === undefined ? [] : stepsAbove(r, seen).map((s) => s.step);
  const found = spinRun({ r, reading, plan, line, done, notAt });
  return assembled(r, {
    ...found,
    findings: [...findings, ...nothing(r, found.leftOut), ...farFromModels(r, found.results)],
  });
}

/** Height of the tip of this run's sump probe; null when the rig sheet does not say. */
function tipOf(r: Ready): number | null {
  const probe = r.reading?.instrument('sump');
  return probe?.tip_z_m.get(r.input.run.article) ?? probe?.tip_z_m.get('other') ?? null;
}

/** Steps at which the running level lies below the tip of this run's sump probe. */
function stepsAbove(r: Ready, seen: SeenLevel): { step: number; level_m: number; tip_m: number }[] {
  const tip_m = tipOf(r);
  if (tip_m === null) return [];
  return [...seen.steps].filter(([, level_m]) => level_m < tip_m).map(([step, level_m]) => ({ step, level_m, tip_m }));
}

function aboveLevel(r: Ready, seen: SeenLevel): Finding[] {
  const log = r.reading?.log;
  const plan = r.input.plan;
  if (log === undefined || plan === null) return [];
  return stepsAbove(r, seen).map(({ step, level_m, tip_m }) =>
    texts.probeAboveLevel({
      place: rowPlace(log, firstRowAt(r, step), 'sump'),
      run: r.input.run.id,
      step: (step * 30) / Math.PI,
      level: level_m * 1e3,
      tip: tip_m * 1e3,
      sawIn: seen.run === r.input.run.id ? 'this run' : `seen in ${seen.run}`,
    }),
  );
}

function firstRowAt(r: Ready, step_rad_s: number): number {
  const speed = r.reading === null ? null : outputSpeed(r.reading);
  const row = speed?.findIndex((w) => Math.abs(Math.abs(w) - step_rad_s) < 0.015 * step_rad_s) ?? -1;
  return Math.max(0, row);
}

/** A sump past the cap of a window, or past what the article or the oil states, is said at its hottest row. */
function capFindings(r: Ready): Finding[] {
  const { run, rig, article, oil } = r.input;
  const sump = r.reading?.channel('sump');
  if (sump == null || r.reading === null) return [];
  let top = 0;
  sump.forEach((v, i) => {
    if (v > sump[top]! || Number.isNaN(sump[top]!)) top = i;
  });
  const past = (limit_K: number | null | undefined): limit_K is number => limit_K != null && sump[top]! > limit_K + 0.2;
  const here = { place: rowPlace(r.reading.log, top, 'sump'), run: run.id, sump: sump[top]! - 273.15 };
  const cap_K = rig.window?.usedOn.includes(run.article) === true ? rig.window.maxSump_K : null;
  const stated = [
    // A window copy has its cap in the rig sheet.
    { of: `article ${run.article}`, limit_K: cap_K === null ? article?.maxSump_K : null },
    { of: `oil ${run.oil}`, limit_K: oil.maxSump_K },
  ];
  return [
    ...(past(cap_K) ? [texts.capExceeded({ ...here, cap: cap_K - 273.15 })] : []),
    ...stated.flatMap(({ of, limit_K }) =>
      past(limit_K) ? [texts.limitExceeded({ ...here, of, limit: limit_K - 273.15 })] : [],
    ),
  ];
}

const nothing = (r: Ready, why: string | null): Finding[] =>
  why === null ? [] : [texts.notDerived({ place: fileOf(r), run: r.input.run.id, why })];

const onlyDirect = (r: Ready, why: string | null): Finding[] =>
  why === null ? [] : [texts.finalNotTold({ place: fileOf(r), run: r.input.run.id, why })];

const fileOf = (r: Ready): Place => ({ file: r.input.log?.file ?? r.input.run.file, line: 1, column: 1 });
