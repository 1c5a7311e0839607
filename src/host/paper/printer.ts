import type { PaperNodes } from './nodes.ts';

export const sheets = ['A4', 'letter'] as const;
export type Sheet = (typeof sheets)[number];
export const isSheet = (word: string): word is Sheet => (sheets as readonly string[]).includes(word);

/** Whatever sets a paper and gives the bytes of a PDF. The rest of the tool knows no more of it than this. */
export interface Printer {
  readonly name: 'typst' | 'browser';
  print(
    nodes: PaperNodes,
    how: { readonly sheet: Sheet; readonly colours: ReadonlyMap<string, string> },
  ): Promise<Uint8Array>;
}
