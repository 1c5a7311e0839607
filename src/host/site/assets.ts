import { cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { packageRoot } from './root.ts';

/** Style sheet, scripts, the few font files in use and the schemas of the notes, beside the pages. */
export async function copyAssets(out: string): Promise<void> {
  const assets = join(out, 'assets');
  await mkdir(join(assets, 'fonts'), { recursive: true });
  const parts = styleParts.map((part) => readFile(join(packageRoot, 'content', 'css', part), 'utf8'));
  await writeFile(join(assets, 'site.css'), (await Promise.all(parts)).join('\n'));
  await cp(join(packageRoot, 'content', 'mark.svg'), join(assets, 'mark.svg'));
  for (const script of ['film.js', 'grading.js', 'stress.js', 'axle.js', 'find.js'])
    await cp(join(packageRoot, 'dist', 'reader', script), join(assets, script));
  await cp(join(packageRoot, 'content', 'schema'), join(out, 'schema'), { recursive: true });
  await cp(join(packageRoot, 'content', 'fonts'), join(assets, 'fonts'), { recursive: true });
  for (const [family, files] of faces)
    for (const file of files) await cp(join(familyFolder(family), 'files', file), join(assets, 'fonts', file));
}

/** In this order: what comes later overrides. */
const styleParts = [
  'fonts',
  'tokens',
  'sheet',
  'tables',
  'pictures',
  'media',
  'film',
  'grading',
  'stress',
  'fields',
  'axle',
  'find',
  'kinds',
  'cards',
  'room',
].map((part) => `${part}.css`);

const familyFolder = (family: string): string =>
  dirname(createRequire(import.meta.url).resolve(`@fontsource/${family}/package.json`));

const scripts = ['latin', 'latin-ext', 'greek'];
const cuts = (family: string, kinds: readonly string[]) =>
  scripts.flatMap((script) => kinds.map((kind) => `${family}-${script}-${kind}.woff2`));

const faces: readonly (readonly [string, readonly string[]])[] = [
  ['source-serif-4', cuts('source-serif-4', ['400-normal', '400-italic', '600-normal'])],
  ['source-sans-3', cuts('source-sans-3', ['400-normal', '400-italic', '600-normal'])],
  ['noto-sans-math', ['noto-sans-math-latin-400-normal.woff2']],
];
