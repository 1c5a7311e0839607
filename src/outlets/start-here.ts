import type { SeriesInput } from '../report/input.ts';
import { doneOf } from '../compare/plan-done.ts';
import { followed, stateOf } from '../report/parts-view.ts';
import { viewOf } from '../report/view.ts';
import type { Book } from '../trial/book.ts';

/** The page that a newcomer to a pack reads first: what is in it, how it builds again, and where it is weak. Markdown. */
export function startHere(of: {
  readonly book: Book;
  readonly series: readonly SeriesInput[];
  readonly version: string;
  readonly node: string;
}): string {
  const { book, series, version, node } = of;
  return [
    `# ${book.name}: start here`,
    '',
    `Packed by dipmark ${version}. ${book.lab}; corrections to ${book.contact}; licence ${book.licence}.`,
    '',
    '- `book/` notes, logger files, pictures and pins, as they were',
    '- `site/` the pages made from them; open `site/index.html`',
    '- `tool/` the program that made them, with all it needs but Node',
    '- `SHA256SUMS` the sum of every file here',
    '',
    `To build the pages again, with Node ${node} and no network:`,
    '',
    '```',
    'node tool/dist/host/terminal/main.js build book --out site-again',
    'node tool/dist/host/terminal/main.js check . --deep',
    '```',
    '',
    'The second line holds every file against its sum, and names the figures that lose their support where one is gone.',
    ...series.flatMap(seriesLines),
    '',
  ].join('\n');
}

function seriesLines(input: SeriesInput): string[] {
  const view = viewOf(input);
  const { series, rig, plan } = view;
  const loud = input.findings.filter(({ level }) => level !== 'notice');
  const overdue = loud.filter(({ code }) => code === 'instrument-overdue');
  const open = followed(view).filter((one) => stateOf(one) !== 'answered');
  const cells = (plan?.cells ?? []).filter((cell) => doneOf(cell, input.derived.values(), series) < cell.wanted);
  const excluded = view.runs.flatMap((run) =>
    run.exclude.map(
      (e) =>
        `${run.id}, ${e.from_s.toFixed(0)} to ${e.to_s.toFixed(0)} s${e.channels.length === 0 ? '' : `, ${e.channels.join(', ')}`}: ${e.reason}`,
    ),
  );
  const left = [...input.derived.values()].flatMap(({ run, leftOut }) =>
    leftOut === null ? [] : [`${run}: ${leftOut}`],
  );
  return [
    '',
    `## ${series.title}`,
    '',
    series.question,
    ...list(
      'States of the rig',
      rig.states.map(({ id, note }) => `${id}${note === '' ? '' : `: ${note}`}`),
    ),
    ...list(
      'Overdue calibrations',
      overdue.map(({ says }) => says),
    ),
    ...list(
      'Weak points',
      loud
        .filter((f) => !overdue.includes(f))
        .map(({ place, says }) => `${place.file}:${place.line.toFixed(0)} ${says}`),
    ),
    ...list('Runs that give no figures', left),
    ...list('Stretches that were left out', excluded),
    ...list(
      'Planned, and not run as often as planned',
      cells.map((c) => `${c.trial} ${c.article} ${(c.fill_m3 * 1e3).toFixed(2)} L ${c.oil}`),
    ),
    ...list(
      'Questions without an answer',
      open.map((one) => `${one.question.id} (${stateOf(one)}) ${one.question.text}`),
    ),
    ...list('Not looked at', series.notTested),
    ...list(
      'Corrections',
      input.record.corrections.map((c) => `${c.id}, ${c.publishedOn}: ${c.what}`),
    ),
  ];
}

const list = (heading: string, items: readonly string[]): string[] => [
  '',
  `**${heading}**`,
  '',
  ...(items.length === 0 ? ['- none'] : items.map((item) => `- ${item.replace(/\s+/g, ' ')}`)),
];
