import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { makeBook, type Made } from '../src/pipeline.ts';
import { wholeOf } from '../src/report/digits.ts';
import type { SourceFile } from '../src/trial/series.ts';

/** A demo as it was when its format was new: notes and logger files byte for byte, and what was printed of them. */
export interface Frozen {
  /** Each byte of a file as one character. */
  readonly files: Readonly<Record<string, string>>;
  /** Series, then figure or claim, then what was printed. */
  readonly figures: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

export const frozenFile = 'test/fixtures/format-1.json.gz';
export const readFrozen = (): Frozen => JSON.parse(gunzipSync(readFileSync(frozenFile)).toString('utf8')) as Frozen;

export const sourcesOf = ({ files }: Pick<Frozen, 'files'>): SourceFile[] =>
  Object.entries(files).map(([path, text]) => {
    const bytes = Buffer.from(text, 'latin1');
    return { path, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
  });

/** What is printed of every figure and the word of every claim. */
export const printedOf = (made: Made): Frozen['figures'] =>
  Object.fromEntries(
    made.ledgers.map((ledger, i) => [
      made.series[i]!.record.series.id,
      {
        ...Object.fromEntries(ledger.figures.map((figure) => [figure.id, wholeOf(figure)])),
        ...Object.fromEntries(made.series[i]!.compared.claims.map(({ claim, word }) => [claim, word])),
      },
    ]),
  );

export const builtFrom = (frozen: Pick<Frozen, 'files'>): Made =>
  makeBook({ files: sourcesOf(frozen), audience: 'house' });
