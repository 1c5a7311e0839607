import type { Finding } from '../finding/finding.ts';
import { nearest } from '../finding/nearest.ts';
import { readDay, readInstant } from '../quantity/time.ts';
import type { Series } from '../trial/book.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import type { SourceFile } from '../trial/series.ts';
import { type Known, namesOf, stranger } from './check-series.ts';
import { foundAt, type Gathered, stem, withEffect } from './gather.ts';
import * as say from './texts-book.ts';
import { unknownName } from './texts-check.ts';

export interface RunsChecked {
  /** Runs that stand, in the order of their files. */
  readonly runs: readonly Run[];
  readonly findings: readonly Finding[];
  /** Runs that are left out because the note of an article or oil is spoilt, by its name. */
  readonly needed: {
    readonly articles: ReadonlyMap<string, readonly string[]>;
    readonly oils: ReadonlyMap<string, readonly string[]>;
  };
}

export interface RunsAround {
  readonly series: Series | null;
  readonly folder: string;
  readonly files: readonly SourceFile[];
}

/** What the runs of a series name, and what two runs say together. A wrong run is left out alone. */
export function checkRuns(runs: Gathered<Run>, known: Known, around: RunsAround): RunsChecked {
  const read = [...runs.records.values()];
  const own = new Map(read.map((run) => [run.id, checkRun(run, runs, known, around)]));
  const twins = checkTwins(read, around);
  const wrong = new Set([
    ...twins.flatMap(({ both }) => both),
    ...read.filter((run) => own.get(run.id)?.some((f) => f.level === 'error')).map((run) => run.id),
  ]);
  const leaning = (run: Run): boolean => known.articles.spoilt.has(run.article) || known.oils.spoilt.has(run.oil);
  const about = { series: around.folder };
  const stands = read.filter((run) => !wrong.has(run.id) && !leaning(run));
  return {
    runs: stands,
    findings: [
      ...runs.findings.flatMap((f) => withEffect([f], say.runLeftOut, { ...about, run: stem(f.place.file) })),
      ...read.flatMap((run) => withEffect(own.get(run.id) ?? [], say.runLeftOut, { ...about, run: run.id })),
      ...twins.flatMap(({ finding, both }) =>
        withEffect([finding], say.twinsLeftOut(both), { ...about, run: stem(finding.place.file) }),
      ),
      ...withEffect(checkTables(stands, known), '', about),
      ...stands.flatMap((run, i) => {
        const other = stands.slice(0, i).find(({ order }) => order === run.order);
        return other === undefined
          ? []
          : withEffect([foundAt(run, 'order', say.orderTwice(run.order, other.id))], '', { ...about, run: run.id });
      }),
    ],
    needed: {
      articles: by(
        read.filter((run) => known.articles.spoilt.has(run.article)),
        (run) => run.article,
      ),
      oils: by(
        read.filter((run) => known.oils.spoilt.has(run.oil)),
        (run) => run.oil,
      ),
    },
  };
}

function checkRun(run: Run, runs: Gathered<Run>, { articles, oils, rig }: Known, around: RunsAround): Finding[] {
  const states = rig?.states.map((s) => s.id);
  return [
    ...stranger(run, 'article', 'article', run.article, namesOf(articles)),
    ...stranger(run, 'oil', 'oil', run.oil, namesOf(oils)),
    ...(states ? stranger(run, 'rig-state', 'rig state', run.rigState, states) : []),
    ...checkFrom(run, runs),
    ...checkLog(run, rig, around),
    ...(rig ? checkZeros(run, rig) : []),
    ...checkDays(run, rig, around.series),
    ...checkIds(run, [...namesOf(articles), ...namesOf(oils), ...namesOf(runs)]),
  ];
}

/** Identifiers are one set in a series; case is not enough to tell two apart, since some disks do not. */
function checkIds(run: Run, names: readonly string[]): Finding[] {
  const ofOthers = names.filter((name, i) => name !== run.id || names.indexOf(name) < i);
  const same = ofOthers.find((name) => name.toLowerCase() === run.id.toLowerCase());
  return same === undefined ? [] : [foundAt(run, 'id', say.idOfOther(run.id, same))];
}

function checkFrom(run: Run, runs: Gathered<Run>): Finding[] {
  if (run.fromRun === null) return [];
  const from = runs.records.get(run.fromRun);
  if (from && from.trial !== 'heat-up') return [foundAt(run, 'from-run', say.fromNotHeatUp(from.id, from.trial))];
  return stranger(run, 'from-run', 'run', run.fromRun, namesOf(runs));
}

/** The file stands in the folder of its note, and the reading never leaves that folder. */
function checkLog(run: Run, rig: Rig | null, { folder, files }: RunsAround): Finding[] {
  if (!run.log) return [];
  const { file, map } = run.log;
  const maps = rig?.maps.map((m) => m.id);
  const ofMap = maps ? stranger(run, 'log.map', 'column map', map, maps) : [];
  if (isOutside(file)) return [foundAt(run, 'log.file', say.logOutside(file)), ...ofMap];
  const home = `${folder}/runs/`;
  if (files.some((f) => f.path === home + file)) return ofMap;
  const beside = files
    .filter((f) => f.path.startsWith(home) && !f.path.endsWith('.md'))
    .map((f) => f.path.slice(home.length));
  const missing = say.logMissing(file, `${home}${file}`, nearest(file, beside));
  // a draft may be written before its run
  return [foundAt(run, 'log.file', run.status === 'draft' ? { ...missing, level: 'notice' } : missing), ...ofMap];
}

const isOutside = (file: string): boolean =>
  /^[A-Za-z]:|\\|^~/.test(file) || file.split('/').some((step) => step === '' || step === '.' || step === '..');

/** A torque flange whose zero is written with each run has one in each run that makes a loss figure. */
function checkZeros(run: Run, rig: Rig): Finding[] {
  const named = run.zeros.flatMap(({ instrument }) => {
    const torque = rig.instruments.filter((i) => i.measures === 'torque').map((i) => i.id);
    if (torque.includes(instrument)) return [];
    return [
      foundAt(
        run,
        `zeros.${instrument}`,
        unknownName('torque instrument', instrument, nearest(instrument, torque), torque),
      ),
    ];
  });
  const needs = run.status !== 'draft' && (run.trial === 'spin' || run.trial === 'heat-up');
  if (!needs || named.length > 0) return named;
  const columns = rig.maps.find((m) => m.id === run.log?.map)?.columns ?? [];
  const missing = rig.instruments
    .filter(
      (i) => i.measures === 'torque' && i.zeroPolicy === 'before-after' && columns.some((c) => c.instrument === i.id),
    )
    .filter((i) => !run.zeros.some((z) => z.instrument === i.id))
    .map((i) => i.id);
  return missing.length === 0
    ? []
    : [foundAt(run, run.zeros.length > 0 ? 'zeros' : 'trial', say.zerosMissing(missing))];
}

function checkDays(run: Run, rig: Rig | null, series: Series | null): Finding[] {
  const started = readInstant(run.started);
  if (!started.ok) return [];
  const before = (day: string | undefined): boolean => {
    const read = day === undefined ? null : readDay(day);
    // a day begins up to fourteen hours earlier somewhere on earth
    return read?.ok === true && started.value.epoch_s < read.value.epoch_s - 14 * 3600;
  };
  const state = rig?.states.find((s) => s.id === run.rigState);
  return [
    ...(series && before(series.started) ? [foundAt(run, 'started', say.runBeforeSeries(series.started))] : []),
    ...(state && before(state.from) ? [foundAt(run, 'rig-state', say.runBeforeState(state.id, state.from))] : []),
  ];
}

/** Two runs with one file, by name or by content: one of them is not what it says, and nobody can tell which. */
function checkTwins(runs: readonly Run[], { folder, files }: RunsAround): { finding: Finding; both: string[] }[] {
  const sha = new Map(files.map((f) => [f.path, f.sha256]));
  const logged = runs.filter((run) => run.log !== null && sha.has(`${folder}/runs/${run.log.file}`));
  const groups = by(logged, (run) => sha.get(`${folder}/runs/${run.log?.file ?? ''}`) ?? '');
  return [...groups.values()].flatMap((both) => {
    const last = runs.find((run) => run.id === both[both.length - 1]);
    const first = runs.find((run) => run.id === both[0]);
    if (both.length < 2 || !last || !first) return [];
    const told = last.log?.file === first.log?.file ? say.logTwice(both) : say.logSameContent(both);
    return [{ finding: foundAt(last, 'log.file', told), both: [...both] }];
  });
}

/** An article without a level table has no level where none was read. Told once an article. */
function checkTables(runs: readonly Run[], { articles }: Known): Finding[] {
  const without = runs.filter((run) => {
    const read = run.fill.levelLeft_z_m !== null || run.fill.levelRight_z_m !== null;
    const article = articles.records.get(run.article);
    return article?.levelTable === null && (run.fill.basis === 'level' || !read);
  });
  return [...by(without, (run) => run.article)].map(([id, needing]) =>
    foundAt(articles.records.get(id)!, 'id', say.levelTableMissing(id, needing)),
  );
}

/** Run ids by a key, in order. */
function by(runs: readonly Run[], key: (run: Run) => string): Map<string, readonly string[]> {
  const groups = new Map<string, readonly string[]>();
  for (const run of runs) groups.set(key(run), [...(groups.get(key(run)) ?? []), run.id]);
  return groups;
}
