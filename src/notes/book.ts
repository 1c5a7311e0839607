import type { Finding } from '../finding/finding.ts';
import type { Book } from '../trial/book.ts';
import type { MediaFile, SourceFile } from '../trial/series.ts';
import { readBookNote, standIn } from './book-note.ts';
import { firstLine, withEffect } from './gather.ts';
import { readSeriesFolder, type SeriesNotes } from './series-folder.ts';
import { splitNote } from './split.ts';
import * as say from './texts-book.ts';

export type { SeriesNotes } from './series-folder.ts';

/** All notes of a book. What is wrong in one note leaves out that note and what needs it; the rest is read. */
export interface BookNotes {
  /** Null when the folder has no book.md, so that it may be no book at all. */
  readonly book: Book | null;
  readonly series: readonly SeriesNotes[];
  /** Of the book itself and of series that are left out; those of a series that is kept stand with it. */
  readonly findings: readonly Finding[];
}

/** Without `media` nobody looked which pictures and clips there are, and nothing is said of them as files. */
export function readNotes(
  files: readonly SourceFile[],
  media: readonly MediaFile[] | null = null,
  without: ReadonlySet<string> = new Set(),
): BookNotes {
  const { book, findings } = readBook(files);
  const folders = seriesFolders(files.map(({ path }) => path));
  const read = folders.map((folder) => readOneSeries(folder, { files, folders, media, without, book }));
  return {
    book,
    series: read.flatMap(({ series }) => series ?? []),
    findings: [...findings, ...read.flatMap(({ series, findings: of }) => (series ? [] : of))],
  };
}

/** Folders of a book that hold a series, in the order of their names. */
export const seriesFolders = (paths: readonly string[]): readonly string[] =>
  paths.flatMap((path) => /^([^/]+)\/series\.md$/.exec(path)?.[1] ?? []).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));

/** The notes of one series; of the rest of the book only its own note and the names of the other folders are known. */
export function readOneSeries(
  folder: string,
  of: {
    readonly files: readonly SourceFile[];
    readonly folders: readonly string[];
    readonly media: readonly MediaFile[] | null;
    readonly without: ReadonlySet<string>;
    readonly book: Book | null;
  },
): ReturnType<typeof readSeriesFolder> {
  const own = of.files.filter((f) => f.path.startsWith(`${folder}/`));
  return readSeriesFolder(
    folder,
    own.sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0)),
    {
      media: of.media,
      without: of.without,
      licence: of.book?.licence ?? 'no licence stated',
      otherFolders: of.folders.filter((f) => f !== folder),
    },
  );
}

/** The note of the book itself; null when there is none. */
export function readBook(files: readonly SourceFile[]): { book: Book | null; findings: readonly Finding[] } {
  const file = files.find((f) => f.path === 'book.md');
  if (!file) return { book: null, findings: [{ ...say.bookMissing(), place: firstLine('book.md') }] };
  const note = splitNote(file);
  const { book, findings } = note.ok ? readBookNote(note.value) : { book: standIn(file.path), findings: note.findings };
  return { book, findings: withEffect(findings, say.standInEffect, undefined) };
}
