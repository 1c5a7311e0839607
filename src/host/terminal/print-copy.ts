import { existsSync } from 'node:fs';
import { readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { blocks } from '../../finding/finding.ts';
import { nearest } from '../../finding/nearest.ts';
import { readOneSeries, seriesFolders, type SeriesNotes } from '../../notes/book.ts';
import { foundIn } from '../../one-series.ts';
import { readHead } from '../../pipeline.ts';
import { paperOf } from '../../report/copy.ts';
import type { Book } from '../../trial/book.ts';
import type { Report } from '../../trial/report.ts';
import type { MediaFile, SourceFile } from '../../trial/series.ts';
import { filesBelow, readFolder, readMedia } from '../disk/book.ts';
import { printedPaper } from '../paper/print.ts';
import { isSheet, sheets } from '../paper/printer.ts';
import { printerFor } from '../paper/printers.ts';
import { notABook } from './make.ts';
import { progress, sayFindings } from './say.ts';

/** What is asked of `dipmark print <client copy>`. */
export interface CopyCall {
  readonly folder: string;
  readonly copy: string | null;
  readonly out: string;
  readonly sheet: string;
  readonly browser: string | null;
  readonly series: string | null;
}

/** `dipmark print CR-01`: one client copy as one PDF, with the figures that stood on the day it was issued. */
export async function printCopy(input: CopyCall): Promise<number> {
  const { folder, copy, sheet } = input;
  if (copy === null) return say(2, 'Say which client copy. Write  dipmark print CR-01  or, for run cards,  --cards');
  if (!isSheet(sheet))
    return say(2, `There is no sheet ${sheet} here. Write  --sheet ${sheets.join('  or  --sheet ')}`);
  const wrong = notABook(folder);
  if (wrong !== null) return say(2, wrong);
  const printer = await printerFor(input.browser);
  if (typeof printer === 'string') return say(2, printer);
  const { tell, end } = progress();
  tell('reading files');
  const listed = filesBelow(folder);
  const files = readFolder(folder, listed);
  const { book, findings: ofBook } = readHead(files);
  if (book === null || blocks(ofBook)) {
    sayFindings(ofBook, false);
    return say(1, untouched);
  }
  const asked = copyIn({ ...input, copy, files, book });
  end();
  if (typeof asked === 'number') return asked;
  const { report, notes } = asked;
  const out = input.out === '' ? `${report.id}-issue-${report.version.toFixed(0)}.pdf` : input.out;
  if (!existsSync(dirname(out))) return say(2, `There is no folder ${dirname(out)}. ${untouched}`);
  const media = readMedia(
    folder,
    new Map(),
    listed.filter(({ path }) => path.startsWith(`${asked.series}/`)),
  );
  const folders = seriesFolders(files.map(({ path }) => path));
  const { found, findings } = foundIn({
    ...{ files, media, book, folders, folder: asked.series, audience: 'house', tell },
    ...(report.issued === null ? {} : { asOf: report.issued }),
  });
  end();
  const then = found?.record.reports.find(({ id }) => id === report.id);
  if (found === null || then === undefined || blocks(findings)) {
    sayFindings(
      findings.filter(({ level }) => level === 'error'),
      false,
    );
    return say(1, untouched);
  }
  tell('setting the paper');
  const { paper, told } = paperOf(found, then);
  if (told !== null)
    return say(1, `"${told}" goes by another name on ${report.id}, and would stand in it all the same. ${untouched}`);
  const pdf = await printedPaper(paper, printer, sheet).finally(end);
  const before = existsSync(out) ? await readFile(out) : null;
  if (report.status === 'issued' && before !== null && !before.equals(pdf))
    return say(
      1,
      `${out} is there, and what would be printed today differs from it. An issue is never changed: give the note a higher  version:  , or write another  --out . ${untouched}`,
    );
  await laidDown(out, pdf);
  return say(0, [`${report.id}, issue ${report.version.toFixed(0)}: ${out}`, ...since(report, notes)].join('\n'));
}

const untouched = 'Nothing was written.';

function say(status: number, what: string): number {
  process.stderr.write(`${what}\n`);
  return status;
}

/** Beside its place first, so that no half of a paper is ever found there. */
async function laidDown(out: string, pdf: Uint8Array): Promise<void> {
  const fresh = `${out}.part`;
  try {
    await writeFile(fresh, pdf);
    await rename(fresh, out);
  } finally {
    await rm(fresh, { force: true });
  }
}

/** Corrections that this issue could not know. */
const since = ({ issued, id }: Report, { corrections }: SeriesNotes): readonly string[] => {
  const later = corrections.filter(({ publishedOn }) => issued !== null && publishedOn > issued);
  return later.length === 0
    ? []
    : [
        `Published since: ${later.map((one) => one.id).join(', ')}. Where the amendments page names ${id} among what was reached, a new issue is owed.`,
      ];
};

/** The note of a client copy and its series; an exit status, with the reason told, where it is none that can be printed. */
function copyIn(of: {
  readonly copy: string;
  readonly series: string | null;
  readonly files: readonly SourceFile[];
  readonly book: Book;
}): { readonly report: Report; readonly series: string; readonly notes: SeriesNotes } | number {
  const { copy, files, book } = of;
  const folders = seriesFolders(files.map(({ path }) => path));
  const media: readonly MediaFile[] | null = null;
  const read = folders
    .filter((folder) => files.some(({ path }) => path.startsWith(`${folder}/reports/`)))
    .map((folder) => ({ folder, ...readOneSeries(folder, { files, folders, media, without: new Set(), book }) }))
    .filter(({ folder, series }) => of.series === null || series?.series.id === of.series || folder === of.series);
  const known = read.flatMap(({ folder, series }) =>
    series === null ? [] : series.reports.map((report) => ({ report, series: folder, notes: series })),
  );
  const found = known.filter(({ report }) => report.id === copy);
  if (found.length === 1) return found[0]!;
  if (found.length > 1) return say(2, `Several series have a client copy ${copy}. Write  --series ${found[0]!.series}`);
  const ofNote = read
    .flatMap(({ series, findings }) => series?.findings ?? findings)
    .filter(({ place }) => place.file.endsWith(`/reports/${copy}.md`));
  if (ofNote.length > 0) {
    sayFindings(ofNote, false);
    return say(1, untouched);
  }
  const ids = known.map(({ report }) => report.id);
  const meant = nearest(copy, ids);
  const write =
    ids.length === 0
      ? 'Write a note of it into  reports/  of its series (see the guide).'
      : `Write  dipmark print ${meant ?? ids[0]!}`;
  return say(2, `There is no client copy ${copy} that can be read. ${write}`);
}
