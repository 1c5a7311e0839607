import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { Zip, ZipDeflate } from 'fflate';
import { createWriteStream } from 'node:fs';
import { once } from 'node:events';
import { finished } from 'node:stream/promises';
import { startHere } from '../../outlets/start-here.ts';
import { plainFiles, sumsFile, sumsText } from '../pack/sums.ts';
import { productionTree } from '../pack/tree.ts';
import { ownFolder } from '../disk/own-folder.ts';
import { stillStore } from '../pictures/stills.ts';
import { buildSite } from '../site/build.ts';
import { packageRoot, packageVersion } from '../site/root.ts';
import { madeFrom } from './make.ts';
import { counted, progress } from './say.ts';

/** Of the tool itself, beside what it needs. */
const toolParts = [
  'dist',
  '_includes',
  'content',
  '.eleventy.js',
  'package.json',
  'LICENSE',
  'README.md',
  'CHANGELOG.md',
];

/**
 * `dipmark pack`: one folder and one zip with the notes, the raw files, the pins, the site and the tool, that builds again
 * without a network. It is put together beside its place and moved there whole, so that no half of one is ever left.
 */
export async function pack(input: { folder: string; out: string }): Promise<number> {
  const { folder } = input;
  const out = resolve(input.out);
  const no = (why: string): number => {
    process.stderr.write(`${why}\n`);
    return 2;
  };
  if (existsSync(out) && readdirSync(out).length > 0)
    return no(`${input.out} is not empty; it is left alone. Write another --out, or empty it yourself.`);
  if (existsSync(`${out}.zip`))
    return no(`${input.out}.zip is there already; it is left alone. Write another --out, or take it away yourself.`);
  if (!relative(resolve(folder), out).startsWith('..'))
    return no(`${input.out} lies among the notes and would be packed into itself. Write  --out ../pack`);
  if (!existsSync(join(packageRoot, 'dist', 'host', 'terminal', 'main.js')))
    return no('The tool is not compiled here. Type  npm run compile  first.');
  const { tell, end } = progress();
  const store = stillStore();
  mkdirSync(dirname(out), { recursive: true });
  const fresh = ownFolder(dirname(out), `.${basename(out)}-`);
  try {
    const made = await madeFrom({ folder, audience: 'house', tell, store });
    if (typeof made === 'string') return no(made);
    if (made.frame === null || made.book === null)
      return no('There is nothing here that can be built; see  dipmark check .');
    const { links } = plainFiles(folder);
    if (links.length > 0)
      return no(`${links[0]!} is a link; a pack holds plain files only. Put the file itself in its place.`);
    tell('copying');
    const left = new Set(['node_modules', '_site', '_cards', '.git']);
    cpSync(folder, join(fresh, 'book'), { recursive: true, filter: (path) => !left.has(basename(path)) });
    await buildSite({ ...made, frame: made.frame, out: join(fresh, 'site'), tell: counted(tell) });
    tell('copying the tool');
    for (const part of toolParts)
      if (existsSync(join(packageRoot, part)))
        cpSync(join(packageRoot, part), join(fresh, 'tool', part), { recursive: true });
    for (const { from, to } of productionTree(packageRoot.replace(/\/$/, '')))
      cpSync(from, join(fresh, 'tool', to), {
        recursive: true,
        dereference: true,
        filter: (path) => !relative(from, path).split('/').includes('node_modules') && needed(path),
      });
    writeFileSync(
      join(fresh, 'START-HERE.md'),
      startHere({ book: made.book, series: made.series, version: packageVersion, node: '20.19 or newer' }),
    );
    tell('sums');
    writeFileSync(join(fresh, sumsFile), sumsText(fresh));
    tell('zip');
    const zipped = `${fresh}.zip`;
    const bytes = await zip(fresh, zipped, basename(out));
    rmSync(out, { recursive: true, force: true });
    renameSync(fresh, out);
    renameSync(zipped, `${out}.zip`);
    end();
    process.stderr.write(
      `${plainFiles(out).files.length.toFixed(0)} files in ${input.out}, and ${(bytes / 1e6).toFixed(1)} MB in ${input.out}.zip\n`,
    );
    return 0;
  } finally {
    end();
    store.close();
    rmSync(fresh, { recursive: true, force: true });
    rmSync(`${fresh}.zip`, { force: true });
  }
}

/** Sources, types and tests of libraries are not run. */
const needed = (path: string): boolean =>
  !/\.(?:map|d\.ts|d\.mts|d\.cts|ts|flow|min\.js\.map)$|\/(?:test|tests|__tests__|docs|examples?|benchmark)$/.test(
    path,
  );

/** The folder as one file, always the same bytes: in the order of names, all of one day. */
async function zip(folder: string, into: string, name: string): Promise<number> {
  const file = createWriteStream(into, { flags: 'wx' });
  let bytes = 0;
  const archive = new Zip((trouble, piece) => {
    if (trouble !== null) file.destroy(trouble);
    else {
      bytes += piece.length;
      file.write(piece);
    }
  });
  for (const path of plainFiles(folder).files) {
    const entry = new ZipDeflate(`${name}/${path}`, { level: 6 });
    entry.mtime = new Date(1980, 0, 1);
    archive.add(entry);
    entry.push(readFileSync(join(folder, path)), true);
    if (file.writableNeedDrain) await once(file, 'drain');
  }
  archive.end();
  file.end();
  await finished(file);
  return bytes;
}
