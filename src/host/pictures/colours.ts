import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { packageRoot } from '../site/root.ts';

/** The tokens of the light page, literal: paper and pictures for other sites have no dark one and no style sheet. */
export async function literalColours(): Promise<ReadonlyMap<string, string>> {
  const css = await readFile(join(packageRoot, 'content', 'css', 'tokens.css'), 'utf8');
  const light = css.slice(0, css.indexOf('@media'));
  return new Map([...light.matchAll(/(--[\w-]+):\s*(#[0-9a-f]+)/g)].map(([, name, colour]) => [name!, colour!]));
}

/** A drawing whose colours stand in it. */
export const withColours = (drawing: string, colours: ReadonlyMap<string, string>): string =>
  drawing.replaceAll(/var\((--[\w-]+)\)/g, (_, name: string) => colours.get(name) ?? '#000000');
