import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type * as Opentype from 'opentype.js';

const require = createRequire(import.meta.url);
const opentype = require('opentype.js') as typeof Opentype;

/** Letters as outlines of the bundled face, so that a drawing looks alike on every machine. */
const faceOf = (weight: number): Opentype.Face => {
  const path = `@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff`;
  const bytes = readFileSync(require.resolve(path));
  return opentype.parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
};
const faces = { plain: faceOf(400), strong: faceOf(600) };

export interface Lettered {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly fill: string;
  readonly strong?: true;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Extra space after each letter. */
  readonly spaced?: number;
}

export function letters(text: string, at: Lettered): string {
  const face = at.strong ? faces.strong : faces.plain;
  const glyphs = Array.from(text, (letter) => face.charToGlyph(letter));
  const steps = glyphs.map((g) => ((g.advanceWidth ?? 0) * at.size) / face.unitsPerEm + (at.spaced ?? 0));
  const width = steps.reduce((sum, step) => sum + step, 0);
  let x = at.x - (at.anchor === 'middle' ? width / 2 : at.anchor === 'end' ? width : 0);
  const drawn = glyphs.map((glyph, i) => {
    const d = glyph.getPath(x, at.y, at.size).toPathData(1);
    x += steps[i]!;
    return d;
  });
  return `<path fill="${at.fill}" d="${drawn.join('')}"/>`;
}
