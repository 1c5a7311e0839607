import type { Finding } from './finding/finding.ts';
import type { Correction } from './trial/amendment.ts';
import type { Series } from './trial/book.ts';
import { campaignOf } from './trial/campaign.ts';
import type { Claim } from './trial/claim.ts';
import type { Oil } from './trial/oil.ts';
import type { Run } from './trial/run.ts';
import type { OilSample } from './trial/sample.ts';
import type { SeriesRecord } from './trial/series.ts';

/** What a public build leaves out before anything is derived, so that nothing held back can be worked out from what stays. */
export interface Shown {
  readonly record: SeriesRecord;
  readonly findings: readonly Finding[];
  readonly held: { readonly runs: number; readonly notes: number; readonly claims: number };
  /** Errors in notes that could not be read, so that nobody knows whom they are for: they stop a public build and stand on no page. */
  readonly stops: readonly Finding[];
}

/**
 * The public part of a series: notes shown to the public, no drafts, and findings about those notes only. Null when the
 * series itself is for the house. Rig and plan are read in any case, since figures rest on them; their sheets are not shown.
 */
export function publicPart(record: SeriesRecord, findings: readonly Finding[]): Shown | null {
  if (record.series.shownTo !== 'public') return null;
  const open = <T extends { readonly shownTo: string }>(list: ReadonlyMap<string, T>): Map<string, T> =>
    new Map([...list].filter(([, note]) => note.shownTo === 'public'));
  const articles = open(record.articles);
  const readable = open(record.oils);
  const runs = record.runs.filter(
    (r) => r.shownTo === 'public' && r.status !== 'draft' && articles.has(r.article) && readable.has(r.oil),
  );
  const kept = new Set(runs.map((r) => r.id));
  const heldBack = new Set(record.runs.filter((r) => !kept.has(r.id)).map((r) => r.id));
  const oils = new Map([...readable].map(([id, oil]) => [id, withoutSamplesOf(oil, kept)]));
  const claimsNote = record.claimsNote?.shownTo === 'public' ? record.claimsNote : null;
  const hidden = [...heldBack, ...missing(record.articles, articles), ...missing(record.oils, oils)];
  const claims = claimsNote === null ? [] : openClaims(record.claims, hidden);
  const amendments = openAmendments(record, new Set(hidden));
  const written = openWords(record, [...hidden, ...hiddenAmendments(record, amendments)], claimsNote !== null);
  const claimIds = new Set(claims.map((c) => c.id));
  const files = new Set([
    ...[...articles.values(), ...oils.values(), ...runs, record.series].map((n) => n.file),
    ...runs.flatMap((r) => record.logs.get(r.id)?.file ?? []),
    ...runs.flatMap((r) => captionsOf(r)),
    ...(record.rig.shownTo === 'public' ? [record.rig.file] : []),
    ...written.parts.flatMap(({ file, pins }) => [file, ...(pins === null ? [] : [pins.file])]),
    ...(record.plan?.shownTo === 'public' ? [record.plan.file] : []),
    ...(claimsNote === null ? [] : [claimsNote.file]),
  ]);
  const names = naming(new Set([...heldBack, ...hiddenSamples(record.oils, oils)]));
  const isShown = (f: Finding): boolean =>
    files.has(f.place.file) &&
    !heldBack.has(f.about?.run ?? '') &&
    // of a claim that was left out nobody knows what it names
    (f.about?.claim === undefined || (f.level !== 'error' && claimIds.has(f.about.claim))) &&
    !names([f.says, f.why, f.write, f.effect].join(' '));
  const isOurs = (f: Finding): boolean =>
    heldBack.has(f.about?.run ?? '') ||
    /^[^/]+\/reports\//.test(f.place.file) ||
    (claimsNote === null && f.place.file === record.claimsNote?.file);
  return {
    record: {
      ...record,
      series: openCampaigns(record.series, runs, naming(new Set(hidden))),
      ...{ articles, oils, runs, claims, claimsNote, ...amendments, ...written, reports: [] },
      logs: new Map([...record.logs].filter(([id]) => kept.has(id))),
    },
    findings: findings.filter(isShown).map(strictly),
    held: {
      runs: record.runs.length - runs.length,
      notes:
        record.articles.size -
        articles.size +
        record.oils.size -
        oils.size +
        record.parts.length -
        written.parts.length,
      claims: record.claims.length - claims.length,
    },
    stops: findings.filter((f) => f.level === 'error' && !isShown(f) && !isOurs(f)),
  };
}

/** A campaign of which no run is shown is not told of; nor is a reason for it that names what is held back. */
function openCampaigns(series: Series, runs: readonly Run[], names: (text: string) => boolean): Series {
  const { campaigns, ...rest } = series;
  const shown = (campaigns ?? []).filter(({ id }) =>
    runs.some(({ started }) => campaignOf(campaigns ?? [], started.slice(0, 10))?.id === id),
  );
  if (shown.length === 0) return rest;
  return { ...rest, campaigns: shown.map((c) => (names(c.why) ? { ...c, why: '' } : c)) };
}

/** A correction holds whoever reads; one that is for the house, or speaks of what is held back, is told to the house only. */
function openAmendments({ corrections, objections }: SeriesRecord, hidden: ReadonlySet<string>) {
  const names = naming(hidden);
  return {
    corrections: corrections.map((c): Correction =>
      names([c.what, c.cause, c.rule ?? '', c.body, ...c.changes.map(({ run }) => run ?? '')].join(' '))
        ? { ...c, shownTo: 'house' }
        : c,
    ),
    objections: objections.filter(
      (o) =>
        o.shownTo === 'public' &&
        !names([o.text, o.answer ?? '', o.reply ?? '', o.body, ...o.about, ...o.by].join(' ')),
    ),
  };
}

const hiddenAmendments = ({ objections }: SeriesRecord, open: ReturnType<typeof openAmendments>): string[] => [
  ...open.corrections.filter(({ shownTo }) => shownTo !== 'public').map(({ id }) => id),
  ...objections.filter((o) => !open.objections.includes(o)).map(({ id }) => id),
];

/** Parts that are out and pinned, and questions; none that names what is held back. */
function openWords({ parts, questions }: SeriesRecord, hidden: readonly string[], register: boolean) {
  const names = naming(new Set(hidden));
  return {
    parts: parts.filter(
      (part) =>
        part.shownTo === 'public' &&
        part.status !== 'draft' &&
        part.pins !== null &&
        !names(
          [part.title, part.summary, part.why ?? '', part.body, ...part.answers.flatMap(({ by }) => by)].join(' '),
        ),
    ),
    questions: register
      ? questions.filter(
          (q) => !names([q.text, q.dropped?.why ?? '', q.handedOn?.why ?? '', q.handedOn?.to ?? ''].join(' ')),
        )
      : [],
  };
}

const missing = <T>(all: ReadonlyMap<string, T>, shown: ReadonlyMap<string, T>): string[] =>
  [...all.keys()].filter((id) => !shown.has(id));

/** A sample that names a run held back goes with it, also as it was typed: how its oil changed would tell of that run. */
function withoutSamplesOf(oil: Oil, kept: ReadonlySet<string>): Oil {
  const isShown = ({ afterRun, beforeRun }: OilSample): boolean =>
    [afterRun, beforeRun].every((run) => run === null || kept.has(run));
  const samples = oil.samples.filter(isShown);
  const open = new Set(samples.map(({ path }) => path));
  const own = <T>(map: ReadonlyMap<string, T>) =>
    new Map([...map].filter(([path]) => !/^samples\b/.test(path) || open.has(/^samples\.\d+/.exec(path)?.[0] ?? '')));
  return { ...oil, samples, places: own(oil.places), typed: own(oil.typed) };
}

const hiddenSamples = (all: ReadonlyMap<string, Oil>, shown: ReadonlyMap<string, Oil>): string[] =>
  [...all].flatMap(([id, { samples }]) =>
    samples.filter((sample) => shown.get(id)?.samples.includes(sample) !== true).map((sample) => sample.id),
  );

/** Claims that name nothing held back, in their cells or in their words; whose override it is stays in the house. */
function openClaims(claims: readonly Claim[], hidden: readonly string[]): Claim[] {
  const names = naming(new Set(hidden));
  return claims
    .filter(({ sentence, override, clauses }) => {
      const cells = clauses.flatMap(({ subject, against }) => [subject, against]);
      return (
        !cells.some(({ article, oil }) => hidden.includes(article) || hidden.includes(oil)) &&
        !names(`${sentence} ${override?.why ?? ''}`)
      );
    })
    .map((c) => (c.override === null ? c : { ...c, override: { ...c.override, by: 'the house' } }));
}

/** A file named after its observer may lie in the house; its name would stand in the public ledger. */
const strictly = (f: Finding): Finding => (f.code === 'captions-name-tells' ? { ...f, level: 'error' } : f);

/** Captions files of a run, beside its note: as the note names them, also for a clip that was left out. */
const captionsOf = ({ file, typed }: Run): string[] =>
  [...typed].flatMap(([path, name]) =>
    /^clips\.\d+\.captions$/.test(path) ? [`${file.slice(0, file.lastIndexOf('/') + 1)}${name}`] : [],
  );

/** Whether a text names a run that is held back: what is said of one run may speak of another. */
function naming(ids: ReadonlySet<string>): (text: string) => boolean {
  if (ids.size === 0) return () => false;
  const any = [...ids].map((id) => id.replace(/[.-]/g, '\\$&')).join('|');
  const pattern = new RegExp(`(?<![A-Za-z0-9.-])(?:${any})(?![A-Za-z0-9-]|\\.[A-Za-z0-9])`);
  return (text) => pattern.test(text);
}
