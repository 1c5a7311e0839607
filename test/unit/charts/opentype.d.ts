/** What the test uses of opentype.js, which ships no types. */
declare module 'opentype.js' {
  export interface Face {
    readonly unitsPerEm: number;
    charToGlyph(letter: string): { readonly advanceWidth?: number };
  }
  export function parse(bytes: ArrayBuffer): Face;
}
