import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { nearest } from '../../finding/nearest.ts';
import { pinsText } from '../../outlets/pins.ts';
import { makeBook } from '../../pipeline.ts';
import { pinsOf } from '../../report/pin-rows.ts';
import { viewOf } from '../../report/view.ts';
import { readFolder, readMedia } from '../disk/book.ts';
import { progress } from './say.ts';

/**
 * `dipmark pin`: what a part shows, kept beside it as it stands at the end of its day. It is shown first and written only when
 * asked for, and a part that has pins keeps them: it takes a note that says out, a day, this command and one more word.
 */
export function pin(input: { folder: string; part: string | null; series: string | null; write: boolean }): number {
  const { folder, part: id, series, write } = input;
  const no = (why: string): number => {
    process.stderr.write(`${why}\n`);
    return 2;
  };
  if (!existsSync(join(folder, 'book.md'))) return no(`${folder} is no book: it has no book.md.`);
  if (id === null) return no('Say which part. Write  --part 4-uphill');
  const { tell, end } = progress();
  const files = readFolder(folder);
  const media = readMedia(folder);
  const first = makeBook({ files, media, audience: 'house', tell });
  const parts = first.series
    .filter(({ record }) => series === null || record.series.id === series)
    .flatMap(({ record }) => record.parts.map((part) => ({ part, series: record.series.id })));
  const found = parts.filter(({ part }) => part.id === id);
  end();
  const [one] = found;
  if (one === undefined) {
    const meant = nearest(
      id,
      parts.map(({ part }) => part.id),
    );
    return no(`There is no part ${id} that can be read.${meant === null ? '' : ` Write  --part ${meant}`}`);
  }
  if (found.length > 1) return no(`Several series have a part ${id}. Write  --series ${one.series}`);
  const { part } = one;
  const { published } = part;
  if (part.status !== 'out' || published === null)
    return no(`${part.file} is ${part.status}. Write  status: out  and  published:  with the day into it first.`);
  if (part.pins !== null || existsSync(join(folder, part.file.replace(/\.md$/, '.pins'))))
    return no(`${part.id} is pinned already; what it showed on its day is never written again.`);
  const wrong = first.findings.filter(({ level, place }) => level === 'error' && place.file === part.file);
  if (wrong.length > 0)
    return no(`${part.file} has ${wrong.length.toFixed(0)} errors; see  dipmark check . Nothing is pinned.`);
  const then = makeBook({ files, media, audience: 'house', asOf: published, tell });
  end();
  const input_ = then.series.find(({ record }) => record.series.id === one.series)!;
  const text = pinsText(part.id, pinsOf(viewOf(input_), { ...part, published }));
  process.stdout.write(text);
  const place = part.file.replace(/\.md$/, '.pins');
  if (!write) {
    process.stderr.write(
      `This is what Part ${part.number.toFixed(0)} showed on ${published}. Nothing was written; add  --write  to keep it for good.\n`,
    );
    return 0;
  }
  writeFileSync(join(folder, place), text, { flag: 'wx' });
  process.stderr.write(`Pinned in ${place}.\n`);
  return 0;
}
