import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { ownFolder } from '../disk/own-folder.ts';
import { packageRoot } from '../site/root.ts';
import { htmlOf } from './html.ts';
import type { PaperNodes } from './nodes.ts';
import type { Printer } from './printer.ts';

/** The fallback: an installed browser of the Chromium kind sets the same paper from HTML and a print stylesheet. Null where the program is none. */
export function browserPrinter(program: string): Printer | null {
  const found = whereIs(program);
  if (found === null) return null;
  return {
    name: 'browser',
    print: async (nodes, { sheet, colours }) => {
      const css = await readFile(join(packageRoot, 'content', 'paper', 'paper.css'), 'utf8');
      const folder = ownFolder(tmpdir(), 'dipmark-paper-');
      try {
        const page = join(folder, 'paper.html');
        const pdf = join(folder, 'paper.pdf');
        await writeFile(
          page,
          htmlOf(nodes, {
            sheet,
            colours,
            css: css.replaceAll('url(', `url(file://${join(packageRoot, 'content', 'paper')}/`),
          }),
        );
        const { status, error } = spawnSync(found, argumentsOf(folder, pdf, page), {
          stdio: 'ignore',
          timeout: patience_ms,
        });
        if (error !== undefined || status !== 0)
          throw new Error(`${program} did not set the paper: ${error?.message ?? `it ended with ${String(status)}`}`);
        return dated(await readFile(pdf), nodes);
      } finally {
        await rm(folder, { recursive: true, force: true });
      }
    },
  };
}

const patience_ms = 120_000;

const argumentsOf = (folder: string, pdf: string, page: string): string[] => [
  '--headless',
  '--disable-gpu',
  // one profile for this paper alone, gone with it
  `--user-data-dir=${join(folder, 'profile')}`,
  '--no-first-run',
  '--no-pdf-header-footer',
  '--generate-pdf-document-outline',
  // a browser refuses to be root's otherwise
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  `--print-to-pdf=${pdf}`,
  `file://${page}`,
];

/** The day of the paper where the browser wrote the moment of printing, byte for byte as long. */
function dated(bytes: Buffer, { issued }: PaperNodes): Uint8Array {
  const day = (issued ?? '1970-01-01').replaceAll('-', '');
  const text = bytes
    .toString('latin1')
    .replaceAll(/\((D:)\d{14}(\+00'00'|Z)?/g, (whole, before: string, zone: string | undefined) => {
      const same = `(${before}${day}000000${zone ?? ''}`;
      return same.length === whole.length ? same : whole;
    });
  return Buffer.from(text, 'latin1');
}

/** A program as typed, or as found on the path. */
function whereIs(program: string): string | null {
  const places = /[/\\]/.test(program)
    ? [program]
    : (process.env.PATH ?? '').split(delimiter).map((folder) => join(folder, program));
  return places.find(runs) ?? null;
}

function runs(place: string): boolean {
  try {
    accessSync(place, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
