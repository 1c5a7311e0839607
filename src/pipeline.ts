import { inOrder, type Finding } from './finding/finding.ts';
import type { Ledger } from './ledger/ledger.ts';
import { readBook, readNotes, seriesFolders } from './notes/book.ts';
import { afresh, type BookShare, makeSeries, type Remember } from './one-series.ts';
import { allRelations } from './physics/all.ts';
import { offChecks } from './physics/held.ts';
import type { TextFile } from './outlets/files.ts';
import { bookFiles } from './outlets/book-files.ts';
import { placed } from './placed.ts';
import { pagesOutside } from './report/pages.ts';
import type { Audience, SeriesInput } from './report/input.ts';
import type { SiteFrame } from './report/frame.ts';
import { frameOf } from './report/site-frame.ts';
import type { Page } from './report/page.ts';
import type { Book } from './trial/book.ts';
import type { MediaFile, SourceFile } from './trial/series.ts';

export type { Remember } from './one-series.ts';

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
  const { files, remember = afresh, tell = () => undefined } = input;
  tell('reading notes');
  const { book, findings: said } = readHead(files);
  if (book === null)
    return { ...nothing, findings: inOrder(placed(readNotes(files, input.media ?? null).findings, files)) };
  const folders = seriesFolders(files.map(({ path }) => path));
  const ones = folders.map((folder) =>
    makeSeries({ ...input, media: input.media ?? null, book, folder, folders, remember, tell }),
  );
  const made = ones.flatMap((one) => one.made ?? []);
  const around = madeAround({ book, folders: folders.length, shares: made.map(({ share }) => share) });
  return {
    book,
    pages: [...around.pages, ...made.flatMap(({ pages }) => pages)],
    files: [...made.flatMap((one) => one.files), ...around.files],
    frame: around.frame,
    ledgers: made.map(({ input: { ledger } }) => ledger),
    series: made.map((one) => one.input),
    findings: inOrder([...said, ...ones.flatMap(({ findings }) => findings)]),
  };
}

/** The note of the book, and what is to be said of the tool's own relations; no book where there is no note. */
export function readHead(files: readonly SourceFile[]): {
  readonly book: Book | null;
  readonly findings: readonly Finding[];
} {
  const { book, findings } = readBook(files);
  return {
    book,
    findings: placed(book === null ? findings : [...findings, ...offChecks(allRelations, book.file)], files),
  };
}

/** What stands outside any series, from what each of them hands on: no series need be held for it. */
export function madeAround(of: {
  readonly book: Book;
  readonly folders: number;
  readonly shares: readonly BookShare[];
}): {
  readonly pages: readonly Page[];
  readonly files: readonly TextFile[];
  readonly frame: SiteFrame;
} {
  const { book, folders } = of;
  const shares = of.shares.map(({ share }) => share);
  const pages = pagesOutside(book, shares);
  return {
    pages,
    files: bookFiles(
      book,
      of.shares.map(({ listed }) => listed),
      pages,
    ),
    frame: frameOf({ book, shares, folders }),
  };
}

const nothing = { book: null, pages: [], files: [], frame: null, ledgers: [], series: [] };
