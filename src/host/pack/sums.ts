import { createHash } from 'node:crypto';
import { existsSync, lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Finding } from '../../finding/finding.ts';
import * as say from './texts.ts';

export const sumsFile = 'SHA256SUMS';

/** Plain files below a folder by path with `/`, in the order of their names; links are told, not followed. */
export function plainFiles(folder: string): { readonly files: readonly string[]; readonly links: readonly string[] } {
  const files: string[] = [];
  const links: string[] = [];
  const walk = (below: string): void => {
    for (const name of readdirSync(join(folder, below)).sort()) {
      const path = below === '' ? name : `${below}/${name}`;
      const stat = lstatSync(join(folder, path));
      if (stat.isDirectory()) walk(path);
      else if (stat.isFile()) files.push(path);
      else links.push(path);
    }
  };
  walk('');
  return { files, links };
}

export const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** Every file of a pack in the common form of a list of sums: `sum  path`. */
export const sumsText = (folder: string): string =>
  plainFiles(folder)
    .files.filter((path) => path !== sumsFile)
    .map((path) => `${sumOf(readFileSync(join(folder, path)))}  ${path}\n`)
    .join('');

/** Every sum of a pack against its files; what is gone or changed, with the figures that rest on it. */
export function checkSums(pack: string): { readonly findings: readonly Finding[]; readonly verified: number } {
  const lines = readFileSync(join(pack, sumsFile), 'utf8').split('\n');
  const supported = supportOf(pack);
  const findings: Finding[] = [];
  let verified = 0;
  const listed = new Set<string>();
  for (const [i, line] of lines.entries()) {
    if (line === '') continue;
    const [, sum, path] = /^([0-9a-f]{64}) [ *](.+)$/.exec(line) ?? [];
    const place = { file: sumsFile, line: i + 1, column: 1, lineText: line.slice(0, 200) };
    if (sum === undefined || path === undefined || path.split('/').includes('..') || path.startsWith('/')) {
      findings.push({ ...say.sumsRow(), place });
      continue;
    }
    listed.add(path);
    const file = join(pack, path);
    const figures = supported.get(path) ?? [];
    if (!existsSync(file)) findings.push({ ...say.fileGone(path, figures), place });
    else if (!lstatSync(file).isFile() || sumOf(readFileSync(file)) !== sum)
      findings.push({ ...say.fileChanged(path, figures), place });
    else verified += 1;
  }
  for (const path of plainFiles(join(pack, 'book')).files)
    if (!listed.has(`book/${path}`))
      findings.push({ ...say.fileNew(`book/${path}`), place: { file: `book/${path}`, line: 1, column: 1 } });
  return { findings, verified };
}

/** File of the book → ids of the figures that were worked out from it, by the ledgers of the packed site. */
function supportOf(pack: string): ReadonlyMap<string, readonly string[]> {
  const series = join(pack, 'site', 'series');
  const by = new Map<string, string[]>();
  for (const id of existsSync(series) ? readdirSync(series) : []) {
    const file = join(series, id, 'ledger.json');
    if (!existsSync(file)) continue;
    for (const { id: figure, inputs } of figuresIn(file))
      for (const { file: input } of inputs) by.set(`book/${input}`, [...(by.get(`book/${input}`) ?? []), figure]);
  }
  return by;
}

interface Supported {
  readonly id: string;
  readonly inputs: readonly { readonly file: string }[];
}

/** A ledger that was spoilt has its own finding; nothing is known from it. */
function figuresIn(file: string): readonly Supported[] {
  try {
    return (JSON.parse(readFileSync(file, 'utf8')) as { figures: readonly Supported[] }).figures;
  } catch {
    return [];
  }
}
