import type { Finding } from './finding/finding.ts';
import type { SeriesRecord } from './trial/series.ts';

/** What a public build leaves out before anything is derived, so that nothing held back can be worked out from what stays. */
export interface Shown {
  readonly record: SeriesRecord;
  readonly findings: readonly Finding[];
  readonly held: { readonly runs: number; readonly notes: number };
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
  const oils = open(record.oils);
  const runs = record.runs.filter(
    (r) => r.shownTo === 'public' && r.status !== 'draft' && articles.has(r.article) && oils.has(r.oil),
  );
  const kept = new Set(runs.map((r) => r.id));
  const files = new Set([
    ...[...articles.values(), ...oils.values(), ...runs, record.series].map((n) => n.file),
    ...runs.flatMap((r) => record.logs.get(r.id)?.file ?? []),
    ...(record.rig.shownTo === 'public' ? [record.rig.file] : []),
    ...(record.plan?.shownTo === 'public' ? [record.plan.file] : []),
  ]);
  const heldBack = new Set(record.runs.filter((r) => !kept.has(r.id)).map((r) => r.id));
  return {
    record: { ...record, articles, oils, runs, logs: new Map([...record.logs].filter(([id]) => kept.has(id))) },
    findings: findings.filter((f) => files.has(f.place.file)),
    held: {
      runs: record.runs.length - runs.length,
      notes: record.articles.size - articles.size + record.oils.size - oils.size,
    },
    stops: findings.filter((f) => f.level === 'error' && !files.has(f.place.file) && !heldBack.has(f.about?.run ?? '')),
  };
}
