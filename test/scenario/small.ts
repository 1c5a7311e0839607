import { createHash } from 'node:crypto';
import type { Finding } from '../../src/finding/finding.ts';
import { makeBook, type Made, type Remember } from '../../src/pipeline.ts';
import type { SourceFile } from '../../src/trial/series.ts';
import { demoFiles, withoutSamples } from './demo.ts';

/** Runs of the small copy: three refits of the standard bowl and three of the shroud, and one heat-up of each. */
export const smallRuns = ['S-01', 'S-08', 'S-15', 'S-07', 'S-18', 'S-30', 'H-01', 'H-10'] as const;

let copied: readonly SourceFile[] | null = null;

/** Both series of the demo with few of their runs, so that one build takes a moment. */
export const smallDemo = (): readonly SourceFile[] => (copied ??= demoOf(['W-1', 'W-2', ...smallRuns]));

/** Both series of the demo with these runs alone, and nothing that names others. */
export const demoOf = (runs: readonly string[]): readonly SourceFile[] =>
  demoFiles()
    .filter(({ path }) => {
      const run = /\/runs\/([^.]+)\./.exec(path)?.[1];
      return !/\.json$|\/(?:amendments|parts|reports)\//.test(path) && (run === undefined || runs.includes(run));
    })
    .map((file) =>
      /\/oils\//.test(file.path) ? fileOf(file.path, withoutSamples(new TextDecoder().decode(file.bytes))) : file,
    );

/** The flow trials of the demo, for what only hangs on them. */
export const flowRuns = ['F-01', 'F-02', 'F-03', 'F-04', 'F-05', 'F-06'] as const;

export const textOf = (path: string, files: readonly SourceFile[] = smallDemo()): string => {
  const file = files.find((f) => f.path === path);
  if (file === undefined) throw new Error(`there is no ${path}`);
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(file.bytes);
};

export const fileOf = (path: string, text: string): SourceFile => {
  const bytes = new TextEncoder().encode(text);
  return { path, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
};

/** The files with one of them replaced; a path that is not among them is added. */
export const withText = (path: string, text: string, files: readonly SourceFile[] = smallDemo()): SourceFile[] => [
  ...files.filter((f) => f.path !== path),
  fileOf(path, text),
];

/** The files with one text of one file replaced; the text has to be there. */
export function spoilt(path: string, was: string, is: string, files = smallDemo()): SourceFile[] {
  const text = textOf(path, files);
  if (!text.includes(was)) throw new Error(`${path} does not hold ${was}`);
  return withText(
    path,
    text.replace(was, () => is),
    files,
  );
}

/** Unchanged logs are read once for all builds of this process, as `preview` does. */
const memo = new Map<string, unknown>();
export const remember: Remember = (told, make) => {
  const key = told();
  if (!memo.has(key)) memo.set(key, make());
  return memo.get(key) as ReturnType<typeof make>;
};

export const houseBook = (files: readonly SourceFile[]): Made => makeBook({ files, audience: 'house', remember });

/** Errors and warnings. */
export const loudOf = (made: Made): readonly Finding[] => made.findings.filter((f) => f.level !== 'notice');

/** Runs that have a figure from their logger file, whatever the series. */
export const figuredRuns = (made: Made): Set<string> =>
  new Set(
    made.ledgers.flatMap((l) =>
      l.figures.flatMap((f) =>
        f.subject.run !== undefined && ['spin-power', 'heat-made'].includes(f.quantity) ? [f.subject.run] : [],
      ),
    ),
  );
