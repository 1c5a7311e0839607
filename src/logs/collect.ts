import { inOrder, type Finding, type Level } from '../finding/finding.ts';
import { moreFindings } from './texts.ts';

/** Findings and record lines of one file. A finding is built only while there is room to show it. */
export interface Collector {
  readonly add: (level: Level, build: () => Finding) => void;
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
  return {
    add: (level, build) => {
      count[level]++;
      if (kept[level].length < mostFindings) kept[level].push(build());
    },
    note: (line) => {
      lines.push(line);
    },
    errors: () => count.error,
    findings: () => shown(kept, count),
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
