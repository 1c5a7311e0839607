/** What the test and the maker's drawings use of opentype.js, which ships no types. */
declare module 'opentype.js' {
  export interface Glyph {
    readonly advanceWidth?: number;
    getPath(x: number, y: number, size: number): { toPathData(decimals: number): string };
  }
  export interface Face {
    readonly unitsPerEm: number;
    charToGlyph(letter: string): Glyph;
  }
  export function parse(bytes: ArrayBuffer): Face;
}
