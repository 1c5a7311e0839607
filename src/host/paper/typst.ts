import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { packageRoot } from '../site/root.ts';
import type { PaperNodes } from './nodes.ts';
import type { Printer, Sheet } from './printer.ts';

/**
 * The printer that comes with the tool: Typst. Everything a user wrote goes in as data and never as markup; faces are our
 * own files; nothing is read but the template, nothing is looked up, and the only date is that of the paper.
 */
export async function typstPrinter(): Promise<Printer | null> {
  const loaded = await import('@myriaddreamin/typst-ts-node-compiler').catch(() => null);
  if (loaded === null) return null;
  return { name: 'typst', print: (nodes, how) => printed(loaded, nodes, how) };
}

type Compiler = typeof import('@myriaddreamin/typst-ts-node-compiler');

async function printed(
  { NodeCompiler }: Compiler,
  nodes: PaperNodes,
  how: { readonly sheet: Sheet; readonly colours: ReadonlyMap<string, string> },
): Promise<Uint8Array> {
  const folder = join(packageRoot, 'content', 'paper');
  const files = (await readdir(folder)).filter((name) => name.endsWith('.ttf')).sort();
  const fontBlobs = await Promise.all(files.map((name) => readFile(join(folder, name))));
  const template = await readFile(join(folder, 'paper.typ'), 'utf8');
  const compiler = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontBlobs }] });
  const data = JSON.stringify({ ...nodes, sheet: how.sheet, colours: Object.fromEntries(how.colours) });
  try {
    return compiler.pdf({ mainFileContent: template, inputs: { data } }, { pdfStandard: 'ua-1' });
  } catch (trouble) {
    throw new Error(`The paper could not be set: ${whyOf(trouble)}`, { cause: trouble });
  } finally {
    compiler.evictCache(0);
  }
}

/** What the printer says, in one line. */
function whyOf(trouble: unknown): string {
  const told = trouble as {
    readonly message?: unknown;
    readonly shortDiagnostics?: readonly { readonly message?: string }[];
  };
  const first = told.shortDiagnostics?.map(({ message }) => message).filter((text) => text !== undefined);
  return first === undefined || first.length === 0 ? String(told.message ?? trouble) : first.join('; ');
}
