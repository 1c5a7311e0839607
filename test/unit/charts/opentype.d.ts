/** What the test and the maker's drawings use of opentype.js, which ships no types. */
declare module 'opentype.js' {
  export interface Face {
    readonly unitsPerEm: number;
    charToGlyph(letter: string): { readonly advanceWidth?: number };
    getAdvanceWidth(text: string, size: number): number;
    getPath(text: string, x: number, y: number, size: number): { toPathData(decimals: number): string };
  }
  export function parse(bytes: ArrayBuffer): Face;
}
