import { publicPart } from './audience.ts';
import { reachesOf } from './reaches.ts';
import { outlookOf } from './compare/outlook.ts';
import { compareSeries } from './compare/series.ts';
import { amendedRecord } from './derive/amended.ts';
import { deriveSeries, type KeptRun } from './derive/series.ts';
import { inOrder, type Finding } from './finding/finding.ts';
import { buildLedger } from './ledger/build.ts';
import { ownAxleOf } from './ledger/own-axle.ts';
import { readLog } from './logs/log.ts';
import { readOneSeries, type SeriesNotes } from './notes/book.ts';
import { stressInput } from './compare/stress-input.ts';
import { stressTable } from './compare/stress.ts';
import { shortSum } from './statistics/seeded.ts';
import type { TextFile } from './outlets/files.ts';
import { listedOf, seriesFiles, type SeriesListed } from './outlets/book-files.ts';
import { placed } from './placed.ts';
import { seriesPages } from './report/pages.ts';
import { partFindings } from './report/part-findings.ts';
import type { Audience, SeriesInput } from './report/input.ts';
import type { Page } from './report/page.ts';
import { shareOf, type SeriesShare } from './report/share.ts';
import { viewOf } from './report/view.ts';
import type { Book } from './trial/book.ts';
import { campaignOf } from './trial/campaign.ts';
import type { Log } from './trial/log.ts';
import type { MediaFile, SeriesRecord, SourceFile } from './trial/series.ts';

/** Answers a question once for the same key, which is only worked out where answers are kept; `preview` keeps one over rebuilds, so that a changed note reads one log again. */
export type Remember = <T>(key: () => string, make: () => T) => T;
export const afresh: Remember = (_, make) => make();

/** What one series becomes. The share is plain data and outlives the rest. */
export interface MadeSeries {
  readonly pages: readonly Page[];
  readonly files: readonly TextFile[];
  readonly input: SeriesInput;
  readonly share: BookShare;
}

/** What the book needs of a series that it no longer holds: for pages and for text files outside it. */
export interface BookShare {
  readonly share: SeriesShare;
  readonly listed: SeriesListed;
}

export interface OneInput {
  /** The files of the series and the note of the book; more of them do no harm. */
  readonly files: readonly SourceFile[];
  readonly media: readonly MediaFile[] | null;
  readonly book: Book;
  readonly folder: string;
  /** Every folder of the book that holds a series. */
  readonly folders: readonly string[];
  readonly audience: Audience;
  readonly remember?: Remember;
  readonly tell?: (what: string) => void;
  readonly asOf?: string;
}

/** Notes and logs of one series → record → runs reduced → cells compared → ledger → pages. Null where it is left out or held back. */
export function makeSeries(input: OneInput): {
  readonly made: MadeSeries | null;
  readonly findings: readonly Finding[];
} {
  const { found, findings } = foundIn(input);
  input.tell?.(`${found?.record.series.title ?? input.folder}: writing pages`);
  return { made: found === null ? null : written(found), findings };
}

/** The same without its pages: all that they, and a client copy, are made from. */
export function foundIn(input: OneInput): {
  readonly found: SeriesInput | null;
  readonly findings: readonly Finding[];
} {
  const { media, book, folder, audience, remember = afresh, tell = () => undefined } = input;
  const files = input.files.filter(({ path }) => path === book.file || path.startsWith(`${folder}/`));
  const notesWithout = (without: ReadonlySet<string>) => readOneSeries(folder, { ...input, files, without });
  const { series: noted, findings: said } = notesWithout(notYet(notesWithout, input.asOf));
  if (noted === null) return { found: null, findings: placed(said, files) };
  const seen = (media ?? []).filter(({ path }) => path.startsWith(`${folder}/`));
  const sums = new Map([...files, ...seen].flatMap((f) => (f.sha256 === null ? [] : [[f.path, f.sha256] as const])));
  tell(`${noted.series.title}: logger files`);
  const read = withLogs(noted, files, remember);
  const whole = asItStood(read.record, input.asOf);
  const shown =
    audience === 'public' ? publicPart(whole, read.findings) : { ...read, record: whole, held: none, stops: [] };
  if (shown === null) return { found: null, findings: [] };
  const told = ({ shownTo }: { readonly shownTo: string }): boolean => audience === 'house' || shownTo === 'public';
  const record = amendedRecord(shown.record, shown.record.corrections, told);
  tell(`${noted.series.title}: reducing ${record.runs.length} runs`);
  const kept = keptRun({ record, sums, audience, remember });
  const how = { sums, rigShown: audience === 'house' || noted.rig.shownTo === 'public', remember };
  const made = reduced(record, how, kept);
  const reaches = reachesOf({
    ...{ record, derived: made.derived, how, kept },
    before: (without) => {
      const again = notesWithout(without).series;
      const then = again === null ? null : asItStood(withLogs(again, files, remember).record, input.asOf);
      return then === null || audience === 'house' ? then : (publicPart(then, [])?.record ?? null);
    },
  });
  const own = inOrder(placed([...shown.findings, ...made.findings], files));
  const found: SeriesInput = {
    ...{ book, ...made, sums, record, reaches, media: new Map(seen.map((file) => [file.path, file])) },
    ...{ findings: own, held: shown.held, audience },
  };
  const parts = partFindings(found);
  const findings = [...own, ...placed([...parts, ...shown.stops], files)];
  return { found: { ...found, findings: inOrder([...own, ...parts]) }, findings };
}

function written(input: SeriesInput): MadeSeries {
  const view = viewOf(input);
  const pages = seriesPages(input, view);
  return {
    ...{ input, pages, files: seriesFiles(input, view, pages) },
    share: { share: shareOf(input, view), listed: listedOf(input, view, pages) },
  };
}

/** Corrections that did not hold yet on that day. */
const notYet = (
  notes: (without: ReadonlySet<string>) => { readonly series: SeriesNotes | null },
  day: string | undefined,
): ReadonlySet<string> =>
  new Set(
    day === undefined
      ? []
      : (notes(new Set()).series?.corrections ?? []).flatMap(({ id, publishedOn }) => (publishedOn > day ? [id] : [])),
  );

function asItStood(record: SeriesRecord, day: string | undefined): SeriesRecord {
  if (day === undefined) return record;
  const runs = record.runs.filter(({ started }) => started.slice(0, 10) <= day);
  const there = new Set(runs.map(({ id }) => id));
  return {
    ...record,
    runs,
    logs: new Map([...record.logs].filter(([id]) => there.has(id))),
    corrections: record.corrections.filter(({ publishedOn }) => publishedOn <= day),
    parts: record.parts.filter(({ published }) => published !== null && published <= day),
  };
}

const none = { runs: 0, notes: 0, claims: 0 };

/** Logger files of the runs that have one. A log that cannot be read leaves its run without figures. */
function withLogs(
  one: SeriesNotes,
  files: readonly SourceFile[],
  remember: Remember,
): { record: SeriesRecord; findings: readonly Finding[] } {
  const byPath = new Map(files.map((f) => [f.path, f]));
  const logs = new Map<string, Log>();
  const findings: Finding[] = [...one.findings];
  for (const run of one.runs) {
    const file = run.log === null ? undefined : byPath.get(beside(run.file, run.log.file));
    const map = one.rig.maps.find((m) => m.id === run.log?.map);
    if (file === undefined || map === undefined || run.status === 'draft') continue;
    const log = remember(
      () => `log ${file.sha256} ${file.path} ${JSON.stringify(map)}`,
      () => readLog({ file: file.path, ...file, map }),
    );
    findings.push(...log.findings.map((f) => ({ ...f, about: { ...f.about, run: run.id } })));
    if (log.ok) logs.set(run.id, log.value);
  }
  return { record: { ...one, logs, findings }, findings };
}

/** A log stands beside the note that names it. */
const beside = (note: string, file: string): string => `${note.slice(0, note.lastIndexOf('/') + 1)}${file}`;

/** A run is what its note, its log, what was seen of it and the notes of its series other than runs make of it. */
function keptRun(input: {
  record: SeriesRecord;
  sums: ReadonlyMap<string, string>;
  audience: Audience;
  remember: Remember;
}): KeptRun {
  const { record, sums, audience, remember } = input;
  const own = record.series.file.replace(/[^/]*$/, '');
  const shared = [...sums].filter(
    ([path]) =>
      path.startsWith(own) &&
      !/^(?:runs\/|pictures\/|parts\/|amendments\/|reports\/|claims\.md$)/.test(path.slice(own.length)),
  );
  const around = JSON.stringify([audience, sums.get('book.md'), shared]);
  return (run, reduce, as = '') => {
    const log = run.log === null ? null : beside(run.file, run.log.file);
    const used = [run.file, log].map((path) => [path, path === null ? null : sums.get(path)]);
    // captions, pictures and clips beside the note may change what stands of these
    const parts = [run.clips, run.observations, run.stills];
    return remember(() => `run ${as} ${around} ${JSON.stringify([used, parts, run.amended ?? []])}`, reduce);
  };
}

/** The seed of the trials: a hash of the logger files of the first campaign, so that prose may be mended, and a later one arrive, without other draws. */
function seedOf({ runs, series, logs }: SeriesRecord, sums: ReadonlyMap<string, string>): string {
  const first = runs.filter(({ started }) => campaignOf(series.campaigns ?? [], started.slice(0, 10)) === null);
  const files = first.flatMap(({ id }) => logs.get(id)?.file ?? []).sort();
  return shortSum(files.map((file) => sums.get(file) ?? '').join(' '));
}

function reduced(
  record: SeriesRecord,
  how: { sums: ReadonlyMap<string, string>; rigShown: boolean; remember: Remember },
  kept: KeptRun,
) {
  const { runs, putBack, findings } = deriveSeries(record, kept);
  const compared = compareSeries(record, runs, { seed: seedOf(record, how.sums), remember: how.remember });
  const stressed = stressInput(record, runs, putBack);
  const ledger = buildLedger({ record, runs, compared, ...how });
  return {
    derived: runs,
    compared,
    ledger,
    stress: {
      ...how.remember(
        () => `stress ${JSON.stringify(stressed)}`,
        () => stressTable(stressed),
      ),
      input: stressed,
    },
    outlook: outlookOf({ record, runs, compared }),
    ownAxle: ownAxleOf({ record, runs, compared, ledger }),
    findings: [...findings, ...[...runs.values()].flatMap((r) => r.findings), ...compared.findings],
  };
}
