import type { Finding } from '../finding/finding.ts';
import { numberText } from './digits.ts';
import type { Block, Page, Section, Span } from './page.ts';
import { capital, code, counts, facts, listOf, prose, section, strong } from './spans.ts';
import { groupBy, type View } from './view.ts';

/** What the checks found: place, what is there, why it will not do, what to write, what becomes of it. */
export function checksPage(view: View): Page {
  const { findings } = view;
  const files = [...groupBy(findings, ({ place }) => place.file)].sort(([a], [b]) => (a < b ? -1 : 1));
  const of = (level: Finding['level']): number => findings.filter((finding) => finding.level === level).length;
  return {
    kind: 'checks',
    path: `${view.base}checks/`,
    title: 'What the checks found',
    description: `Findings in the notes and logger files of ${view.series.title}.`,
    whereabouts: [{ kind: 'link', to: view.base, text: view.series.title }, ' · checks'],
    lead: [
      findings.length === 0
        ? 'Nothing that needs a word: every note and every logger file was read as it stands.'
        : `${capital(counts(findings.length, 'finding'))}. Errors that stop publication: ${numberText(of('error'), 0)}. Warnings, with what becomes of each: ${numberText(of('warning'), 0)}. Worth knowing: ${numberText(of('notice'), 0)}.`,
    ],
    banners: [],
    series: view.series.id,
    sections: files.map(([file, list], i) =>
      section(
        `file-${String(i + 1)}`,
        file,
        list.flatMap((finding) => findingBlocks(view, finding)),
      ),
    ),
  };
}

/** Findings of one run on its own sheet. */
export function findingsSection(view: View, run: string): Section | null {
  const own = view.findings.filter(({ about }) => about?.run === run);
  if (own.length === 0) return null;
  return section('findings', 'What the checks found', [
    listOf(own.map((finding) => [strong(lineOf(finding)), ' ', ...findingSpans(finding)])),
  ]);
}

export const lineOf = ({ place }: Finding): string => `${place.file}:${String(place.line)}:${String(place.column)}`;

export function findingSpans({ says, why, write, effect }: Finding): Span[] {
  return [
    [says, why, write, effect]
      .map(sentence)
      .filter((part) => part !== '')
      .join(' '),
  ];
}

function findingBlocks(view: View, finding: Finding): Block[] {
  const { place, level, says, why, write, effect } = finding;
  const text =
    view.house && place.lineText !== undefined ? caret(place.lineText, place.column, place.length ?? 1) : null;
  return [
    prose(strong(`line ${String(place.line)}, column ${String(place.column)}`), ` ${level} `, code(finding.code)),
    ...(text === null ? [] : [{ kind: 'code', language: 'text', text } as const]),
    facts([
      ['What is there', [says]],
      ['Why it matters', [why]],
      ['What to write', [write]],
      effect === undefined ? null : ['What becomes of it', [effect]],
    ]),
  ];
}

const caret = (line: string, column: number, length: number): string =>
  `${line}\n${' '.repeat(Math.max(0, column - 1))}${'^'.repeat(Math.max(1, Math.min(length, 80)))}`;

const sentence = (text: string | undefined): string => {
  const trimmed = text?.trim() ?? '';
  return trimmed === '' || /[.!?…]$/.test(trimmed) ? trimmed : `${trimmed}.`;
};
