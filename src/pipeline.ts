import { publicPart } from './audience.ts';
import { reachesOf } from './reaches.ts';
import { outlookOf } from './compare/outlook.ts';
import { compareSeries } from './compare/series.ts';
import { amendedRecord } from './derive/amended.ts';
import { deriveSeries, type KeptRun } from './derive/series.ts';
import { inOrder, type Finding } from './finding/finding.ts';
import { buildLedger } from './ledger/build.ts';
import type { Ledger } from './ledger/ledger.ts';
import { ownAxleOf } from './ledger/own-axle.ts';
import { readLog } from './logs/log.ts';
import { readNotes, type SeriesNotes } from './notes/book.ts';
import { stressInput } from './compare/stress-input.ts';
import { stressTable } from './compare/stress.ts';
import { allRelations } from './physics/all.ts';
import { offChecks } from './physics/held.ts';
import { shortSum } from './statistics/seeded.ts';
import type { TextFile } from './outlets/files.ts';
import { bookFiles } from './outlets/book-files.ts';
import { placed } from './placed.ts';
import { bookPages, seriesPages } from './report/pages.ts';
import { partFindings } from './report/part-findings.ts';
import type { Audience, SeriesInput } from './report/input.ts';
import type { SiteFrame } from './report/frame.ts';
import { siteFrame } from './report/site-frame.ts';
import type { Page } from './report/page.ts';
import type { Book } from './trial/book.ts';
import { campaignOf } from './trial/campaign.ts';
import type { Log } from './trial/log.ts';
import type { MediaFile, SeriesRecord, SourceFile } from './trial/series.ts';

/** What one folder becomes: pages, text files beside them, and every finding. */
export interface Made {
  readonly book: Book | null;
  readonly pages: readonly Page[];
  readonly files: readonly TextFile[];
  readonly frame: SiteFrame | null;
  readonly ledgers: readonly Ledger[];
  /** What the pages of each series were made from: run cards are made of it too, and what a plan can part. */
  readonly series: readonly SeriesInput[];
  readonly findings: readonly Finding[];
}

/** Answers a question once for the same key; `preview` keeps one over rebuilds, so that a changed note reads one log again. */
export type Remember = <T>(key: string, make: () => T) => T;
const afresh: Remember = (_, make) => make();

/** The whole story: notes and logs → records → runs reduced → cells compared → ledger → pages. Pure: no disk, no clock. */
export function makeBook(input: {
  files: readonly SourceFile[];
  /** Pictures and clips of the folder: they are known by their beginning and shown by the host. */
  media?: readonly MediaFile[];
  audience: Audience;
  remember?: Remember;
  tell?: (what: string) => void;
  /** As it stood at the end of this day: runs made since and corrections published since are not there. For pins. */
  asOf?: string;
}): Made {
  const { files, media = [], audience, remember = afresh, tell = () => undefined } = input;
  tell('reading notes');
  const notes = readNotes(files, input.media ?? null, later(files, input.media ?? null, input.asOf));
  if (notes.book === null) return { ...nothing, findings: inOrder(placed(notes.findings, files)) };
  const { book } = notes;
  const sums = new Map([...files, ...media].flatMap((f) => (f.sha256 === null ? [] : [[f.path, f.sha256] as const])));
  const present = new Map(media.map((file) => [file.path, file]));
  const findings: Finding[] = [...notes.findings, ...offChecks(allRelations, book.file)];
  const stops: Finding[] = [];
  const series: SeriesInput[] = [];
  const told = ({ shownTo }: { readonly shownTo: string }): boolean => audience === 'house' || shownTo === 'public';
  for (const noted of notes.series) {
    tell(`${noted.series.title}: logger files`);
    const read = withLogs(noted, files, remember);
    const whole = asItStood(read.record, input.asOf);
    const shown =
      audience === 'public' ? publicPart(whole, read.findings) : { ...read, record: whole, held: none, stops: [] };
    if (shown === null) continue;
    const record = { ...shown, record: amendedRecord(shown.record, shown.record.corrections, told) };
    tell(`${noted.series.title}: reducing ${record.record.runs.length} runs`);
    const kept = keptRun({ record: record.record, sums, audience, remember });
    const how = { sums, rigShown: audience === 'house' || noted.rig.shownTo === 'public', remember };
    const made = reduced(record.record, how, kept);
    const reaches = reachesOf({
      ...{ record: record.record, derived: made.derived, how, kept },
      before: (without) => {
        const again = readNotes(files, input.media ?? null, without).series.find(
          (s) => s.series.id === noted.series.id,
        );
        const then = again && withLogs(again, files, remember);
        return then === undefined
          ? null
          : audience === 'public'
            ? (publicPart(then.record, [])?.record ?? null)
            : then.record;
      },
    });
    const own = inOrder(placed([...record.findings, ...made.findings], files));
    findings.push(...own);
    stops.push(...record.stops);
    const one: SeriesInput = {
      ...{ book, ...made, sums, media: present, record: record.record },
      ...{ findings: own, held: record.held, audience, reaches },
    };
    const said = partFindings(one);
    findings.push(...said);
    series.push({ ...one, findings: inOrder([...own, ...said]) });
  }
  tell('writing pages');
  const all = inOrder(placed(findings, files));
  const pages = [...bookPages({ book, series, findings: all, audience }), ...series.flatMap((s) => seriesPages(s))];
  return {
    book,
    pages,
    files: bookFiles(book, series, pages),
    frame: siteFrame({ book, series }),
    ledgers: series.map((s) => s.ledger),
    series,
    findings: inOrder([...all, ...placed(stops, files)]),
  };
}

/** Corrections that did not hold yet on that day. */
const later = (files: readonly SourceFile[], media: readonly MediaFile[] | null, day: string | undefined) =>
  new Set(
    day === undefined
      ? []
      : readNotes(files, media).series.flatMap(({ corrections }) =>
          corrections.flatMap(({ id, publishedOn }) => (publishedOn > day ? [id] : [])),
        ),
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
  };
}

const none = { runs: 0, notes: 0, claims: 0 };
const nothing = { book: null, pages: [], files: [], frame: null, ledgers: [], series: [] };

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
    const log = remember(`log ${file.sha256} ${file.path} ${JSON.stringify(map)}`, () =>
      readLog({ file: file.path, ...file, map }),
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
    return remember(`run ${as} ${around} ${JSON.stringify([used, parts, run.amended ?? []])}`, reduce);
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
    stress: { ...how.remember(`stress ${JSON.stringify(stressed)}`, () => stressTable(stressed)), input: stressed },
    outlook: outlookOf({ record, runs, compared }),
    ownAxle: ownAxleOf({ record, runs, compared, ledger }),
    findings: [...findings, ...[...runs.values()].flatMap((r) => r.findings), ...compared.findings],
  };
}
