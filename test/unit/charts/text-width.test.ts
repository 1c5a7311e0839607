import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as opentype from 'opentype.js';
import { describe, expect, it } from 'vitest';
import { textWidth, wrapText } from '../../../src/charts/text-width.ts';

/** Oracle: opentype.js 2.0.0 reading the bundled face. Our table is kept in hundredths of an em, so half a hundredth a letter. */
const faceOf = (weight: number) => {
  const path = `@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff`;
  const bytes = readFileSync(createRequire(import.meta.url).resolve(path));
  return opentype.parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
};

describe('the width of chart text', () => {
  it.each(['Temperature, °C', 'WWWW', 'P4 ring gear shroud, 2.40 L', '−38.7 ± 8.4 W', 'pinion bearing'])(
    'agrees with the font file for "%s"',
    (text) => {
      for (const weight of [400, 600]) {
        const face = faceOf(weight);
        const letters = Array.from(text).map((letter) => face.charToGlyph(letter).advanceWidth ?? 0);
        const printed = (letters.reduce((sum, advance) => sum + advance, 0) / face.unitsPerEm) * 13;
        expect(Math.abs(textWidth(text, 13, weight === 600) - printed)).toBeLessThan(0.005 * 13 * text.length + 1e-6);
      }
    },
  );
  it('breaks a sentence into lines that fit, and never within a word', () => {
    const lines = wrapText('minutes under 22 kW at 290 wheel rpm, air 4.0 m/s', 13, 120);
    expect(lines.join(' ')).toBe('minutes under 22 kW at 290 wheel rpm, air 4.0 m/s');
    for (const line of lines) expect(textWidth(line, 13)).toBeLessThanOrEqual(120);
  });
  it('gives a word longer than the line a line of its own', () => {
    expect(wrapText('a wwwwwwwwwwwwwwwwwwww b', 13, 40)).toEqual(['a', 'wwwwwwwwwwwwwwwwwwww', 'b']);
  });
});
