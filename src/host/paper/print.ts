import type { Paper } from '../../report/paper.ts';
import { literalColours } from '../pictures/colours.ts';
import { drawingsOf } from './drawings.ts';
import { nodesOf } from './nodes.ts';
import type { Printer, Sheet } from './printer.ts';

/** A paper with its drawings, as the bytes of one PDF. */
export async function printedPaper(paper: Paper, printer: Printer, sheet: Sheet): Promise<Uint8Array> {
  const colours = await literalColours();
  return printer.print(nodesOf(paper, await drawingsOf(paper, colours)), { sheet, colours });
}
