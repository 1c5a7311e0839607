import { inOrder, type Finding, type Level } from '../finding/finding.ts';
import { andMore, moreFindings } from './texts.ts';

/** Findings and record lines of one file. A finding is built only while there is room to show it. */
export interface Collector {
  /** Those that are `alike` come of one mistake: the first is shown and says how many more there are. */
  readonly add: (level: Level, build: () => Finding, alike?: string) => void;
  readonly note: (line: string) => void;
  readonly errors: () => number;
  readonly findings: () => Finding[];
  readonly record: () => string[];
}

/** As many findings as one file may bring; the rest is counted. */
export const mostFindings = 20;

export function collector(): Collector {
  const kept: Record<Level, Finding[]> = { error: [], warning: [], notice: [] };
  const count: Record<Level, number> = { error: 0, warning: 0, notice: 0 };
  const lines: string[] = [];
  const firsts = new Map<string, { readonly finding: Finding | null; more: number }>();
  return {
    add: (level, build, alike) => {
      const first = alike === undefined ? undefined : firsts.get(alike);
      if (first !== undefined) {
        first.more++;
        return;
      }
      count[level]++;
      const finding = kept[level].length < mostFindings ? build() : null;
      if (finding !== null) kept[level].push(finding);
      if (alike !== undefined) firsts.set(alike, { finding, more: 0 });
    },
    note: (line) => {
      lines.push(line);
    },
    errors: () => count.error,
    findings: () => {
      const more = new Map([...firsts.values()].map((first) => [first.finding, first.more]));
      return shown(kept, count).map((finding) => andMore(finding, more.get(finding) ?? 0));
    },
    record: () => [...lines],
  };
}

function shown(kept: Record<Level, Finding[]>, count: Record<Level, number>): Finding[] {
  const all = inOrder([...kept.error, ...kept.warning, ...kept.notice]);
  const most = all.slice(0, mostFindings);
  const hidden = count.error + count.warning + count.notice - most.length;
  const last = most.at(-1);
  if (hidden === 0 || last === undefined) return most;
  return [...most, moreFindings({ place: last.place, hidden, level: all[mostFindings]?.level ?? last.level })];
}
