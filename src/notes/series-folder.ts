import type { Finding, Reading } from '../finding/finding.ts';
import type { Series } from '../trial/book.ts';
import type { NoteHead } from '../trial/note.ts';
import type { Rig } from '../trial/rig.ts';
import type { Run } from '../trial/run.ts';
import type { MediaFile, SeriesRecord, SourceFile } from '../trial/series.ts';
import { fieldChanges, fieldsStand, withWritten } from './amended.ts';
import { readAmendment } from './amendment.ts';
import { readArticle } from './article.ts';
import { withFlow } from './check-flow.ts';
import { checkGuessed } from './check-guessed.ts';
import { checkClaims } from './check-claims.ts';
import { checkAmendments, parted, standingCorrections } from './check-amendments.ts';
import { readParts } from './check-parts.ts';
import { readReports } from './check-reports.ts';
import { checkRuns } from './check-runs.ts';
import { checkPlan, checkSeries, namesOf, withLevelTables } from './check-series.ts';
import { type ClaimsNote, readClaims } from './claims.ts';
import { firstLine, foundAt, gather, type Gathered, readNote, stem, withEffect } from './gather.ts';
import { readOil } from './oil.ts';
import { readPlan } from './plan.ts';
import { readRig } from './rig.ts';
import { readRun } from './run.ts';
import { withSamples } from './samples.ts';
import { readSeriesNote } from './series.ts';
import * as say from './texts-book.ts';
import { claimsLeftOut } from './texts-claims.ts';
import { captionsNotNamed } from './texts-captions.ts';

/** A series as its notes say it, before any logger file is read. */
export type SeriesNotes = Omit<SeriesRecord, 'logs'>;

export interface Around {
  /** Pictures and clips of the book; null when nobody looked. */
  readonly media: readonly MediaFile[] | null;
  readonly licence: string;
  readonly otherFolders: readonly string[];
  /** Corrections that do not hold yet, by id: the series as it was read before them. */
  readonly without?: ReadonlySet<string>;
}

/** Everything in the folder is read and told, even when the series itself must be left out. */
export function readSeriesFolder(
  folder: string,
  files: readonly SourceFile[],
  around: Around,
): { series: SeriesNotes | null; findings: readonly Finding[] } {
  const about = { series: folder };
  const inside = (pattern: RegExp): SourceFile[] => files.filter((f) => pattern.test(f.path.slice(folder.length + 1)));
  const one = <T>(name: string, read: Parameters<typeof readNote<T>>[1]): Reading<T> | null => {
    const file = files.find((f) => f.path === `${folder}/${name}`);
    return file ? readNote(file, read) : null;
  };

  const series = checkedId(
    one('series.md', (note) => readSeriesNote(note, around.licence)),
    folder,
    around.otherFolders,
  );
  const rig = one('rig.md', readRig) ?? missingRig(folder);
  const plan = one('plan.md', readPlan);
  const articles = withLevelTables(gather(inside(/^articles\/[^/]+\.md$/), readArticle));
  const amendments = gather(inside(/^amendments\/[^/]+\.md$/), readAmendment);
  const taken = inside(/^(?:articles|oils|runs)\/[^/]+\.md$/).map(({ path }) => stem(path));
  const { corrections, objections } = parted(amendments, taken);
  const runFiles = inside(/^runs\/[^/]+\.md$/);
  const holding = corrections.filter((c) => around.without?.has(c.id) !== true && fieldsStand(c, runFiles));
  const runs = withFlow(gather(runFiles, withWritten(readRun, fieldChanges(holding))), {
    ...{ folder, files, media: around.media },
    plan: plan?.ok ? plan.value : null,
  });

  const oils = withSamples(gather(inside(/^oils\/[^/]+\.md$/), readOil), runs, folder);

  const known = { articles, oils, rig: rig.ok ? rig.value : null };
  const whole = series.ok ? checkSeries(series.value, known) : [];
  const planned = plan?.ok ? checkPlan(plan.value, known, series.ok ? series.value : null) : [];
  const checked = checkRuns(runs, known, { series: series.ok ? series.value : null, folder, files });
  const settled = checkGuessed(checked.runs, {
    everywhere: [series.ok ? series.value : null, rig.ok ? rig.value : null, plan?.ok ? plan.value : null],
    ...{ articles: articles.records, oils: oils.records },
  });
  const standing = plan?.ok && !planned.some(isError) ? plan.value : null;
  const note = one('claims.md', readClaims);
  const claims =
    note?.ok && series.ok
      ? checkClaims(note.value, { known, runs: namesOf(runs), series: series.value, plan: standing })
      : { claims: [], findings: [] };
  const questions = note?.ok ? note.value.questions : [];
  const parts = readParts(files, { folder, questions });
  const reports = readReports(files, {
    ...{ folder, articles: articles.records, oils: [...oils.records.keys()], runs: namesOf(runs), parts: parts.parts },
    claims: claims.claims.map(({ id }) => id),
  });

  const findings = [
    ...withEffect([...series.findings, ...rig.findings, ...whole], say.seriesLeftOut, about),
    ...withEffect([...(plan?.findings ?? []), ...planned], say.planLeftOut, about),
    ...(plan ? [] : withEffect([{ ...say.planMissing(), place: firstLine(`${folder}/plan.md`) }], '', about)),
    ...ofThings(articles, checked.needed.articles, 'article', folder),
    ...ofThings(oils, checked.needed.oils, 'oil', folder),
    ...checked.findings,
    ...withEffect(settled.findings, '', about),
    ...withEffect([...(note?.findings ?? []), ...claims.findings], claimsLeftOut, about),
    ...parts.findings,
    ...reports.findings,
    ...checkAmendments(amendments, { runs, rig: rig.ok ? rig.value : null, folder, taken }),
    ...files.filter((f) => isStray(f.path.slice(folder.length + 1))).map((f) => stray(f.path, folder)),
    ...unread(files, runs, folder),
  ];
  const stands = series.ok && rig.ok && !whole.some((f) => f.level === 'error');
  if (!stands) return { series: null, findings };
  return {
    series: {
      ...{ series: series.value, rig: rig.value, plan: standing, runs: settled.runs, findings },
      ...{ articles: articles.records, oils: oils.records },
      ...{ claims: claims.claims, claimsNote: note?.ok ? headOnly(note.value) : null },
      ...{ corrections: standingCorrections(corrections, runs), objections, parts: parts.parts, questions },
      reports: reports.reports,
    },
    findings,
  };
}

const isError = (f: Finding): boolean => f.level === 'error';

/** The words under the claims; each claim carries its own text and place, so that one held back takes all of it along. */
function headOnly({ file, shownTo, body, places, typed }: ClaimsNote): NoteHead {
  const own = <T>(map: ReadonlyMap<string, T>) =>
    new Map([...map].filter(([path]) => !/^(?:claims|questions)/.test(path)));
  return { file, shownTo, body, places: own(places), typed: own(typed) };
}

/** The id of a series is the name of its folder, since both are part of every permanent address. */
function checkedId(series: Reading<Series> | null, folder: string, others: readonly string[]): Reading<Series> {
  if (!series?.ok || series.value.id === folder) return series ?? { ok: false, findings: [] };
  const { value, findings } = series;
  const told = others.includes(value.id) ? say.seriesIdTwice(value.id, folder) : say.idNotFolder(value.id, folder);
  return { ok: false, findings: [...findings, foundAt(value, 'id', told)] };
}

const missingRig = (folder: string): Reading<Rig> => ({
  ok: false,
  findings: [{ ...say.rigMissing(), place: firstLine(`${folder}/rig.md`) }],
});

/** Findings in articles or oils, with the runs that are left out because of them. */
function ofThings<T>(
  things: Gathered<T>,
  needed: ReadonlyMap<string, readonly string[]>,
  what: string,
  series: string,
): Finding[] {
  const runsOf = (name: string): string[] =>
    [...needed].flatMap(([needs, runs]) => ((things.leansOn?.get(needs) ?? needs) === name ? runs : []));
  return things.findings.flatMap((finding) =>
    withEffect([finding], say.runsLeftOut(what, runsOf(stem(finding.place.file))), { series }),
  );
}

/** A note that no reader looks at is named, so that a folder `run/` does not lose its runs without a word. */
const isStray = (path: string): boolean =>
  path.endsWith('.md') &&
  !/^(series|rig|plan|claims|README)\.md$/.test(path) &&
  !/^(articles|oils|runs)\/[^/]+\.md$/.test(path) &&
  !/^(parts|amendments|reports|pictures|make)\//.test(path);

/** A note under another ending, and a logger file beside no note, would be missed without a word. */
function unread(files: readonly SourceFile[], runs: Gathered<Run>, series: string): Finding[] {
  const read = [...runs.records.values()];
  const named = new Set(read.map(({ log }) => log?.file));
  const captions = new Set(read.flatMap(({ typed }) => [...typed].flatMap(([at, is]) => (isCaptions(at) ? [is] : []))));
  // a note beside the file has its own findings, whatever it is called and whatever it names
  const noted = new Set(files.flatMap(({ path }) => /\/runs\/([^/]+?)\.md\b/.exec(path)?.[1]?.toLowerCase() ?? []));
  return files.flatMap(({ path }) => {
    const inside = path.slice(series.length + 1);
    const name = inside.slice(inside.lastIndexOf('/') + 1);
    const told = /\.md\.\w+$/i.test(name)
      ? say.noteEnding(name)
      : /^runs\/[^/]+\.(csv|tsv|dat)$/.test(inside) && !named.has(name) && !noted.has(stemOf(name))
        ? say.logNotNamed(name)
        : /^runs\/[^/]+\.vtt$/i.test(inside) && !captions.has(name) && !noted.has(stemOf(name))
          ? captionsNotNamed(name)
          : null;
    return told === null ? [] : [{ ...told, place: firstLine(path), about: { series } }];
  });
}

const stemOf = (name: string): string => name.replace(/\.\w+$/, '').toLowerCase();
const isCaptions = (path: string): boolean => /^clips\.\d+\.captions$/.test(path);

const stray = (path: string, series: string): Finding => ({
  ...say.noteNotRead(),
  place: firstLine(path),
  about: { series },
});
