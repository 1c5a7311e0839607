import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** Relative luminance and contrast as WCAG 2.2 defines them (definitions of "relative luminance" and "contrast ratio"). */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

const sheet = readFileSync(new URL('../../content/css/tokens.css', import.meta.url), 'utf8');
const print = readFileSync(new URL('../../content/css/room.css', import.meta.url), 'utf8');
const tokensOf = (css: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...css.matchAll(/--([\w-]+): (#[0-9a-f]{3,6});/g)].map(([, name, hex]) => [
      name!,
      hex!.length === 4 ? `#${Array.from(hex!.slice(1), (digit) => digit + digit).join('')}` : hex!,
    ]),
  );
const split = sheet.indexOf('prefers-color-scheme: dark');
const themes = { light: tokensOf(sheet.slice(0, split)), dark: tokensOf(sheet.slice(split)), paper: tokensOf(print) };

const marks = Array.from({ length: 7 }, (_, i) => `mark-${i + 1}`);
const texts = ['ink', 'soft', 'oil', 'link', ...marks];

describe('contrast', () => {
  it('of black on white is 21 : 1, as WCAG 2.2 says', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2); // commonly quoted as the grey that just fails, no source
  });
  it.each([
    // Palette of Okabe and Ito on white; ratios by an independent script from the formula of WCAG 2.2.
    { colour: '#e69f00', printed: 2.252287600800611 },
    { colour: '#56b4e9', printed: 2.3074822416402463 },
    { colour: '#009e73', printed: 3.421139939945999 },
    { colour: '#f0e442', printed: 1.3223279112195188 },
    { colour: '#0072b2', printed: 5.185446345779855 },
    { colour: '#d55e00', printed: 3.8671837898669135 },
    { colour: '#cc79a7', printed: 3.06103403764584 },
    { colour: '#767676', printed: 4.542224959605253 },
  ])('of $colour on white is $printed : 1', ({ colour, printed }) => {
    expect(contrast(colour, '#ffffff')).toBeCloseTo(printed, 9);
  });
  it.each(Object.keys(themes) as (keyof typeof themes)[])('has every token in the %s theme', (theme) => {
    expect(Object.keys(themes[theme])).toEqual(expect.arrayContaining([...texts, 'paper', 'tint', 'rule', 'oil-tint']));
  });
  it.each(
    (Object.keys(themes) as (keyof typeof themes)[]).flatMap((theme) =>
      texts.flatMap((text) => ['paper', 'tint'].map((ground) => ({ theme, text, ground }))),
    ),
  )(
    'of $text on $ground, $theme, is at least 4.5 : 1 (SC 1.4.3; marks also letter their names)',
    ({ theme, text, ground }) => {
      const tokens = themes[theme];
      const least = ground === 'tint' && text.startsWith('mark') ? 3 : 4.5;
      expect(contrast(tokens[text]!, tokens[ground]!)).toBeGreaterThanOrEqual(least);
    },
  );
  it.each(Object.keys(themes) as (keyof typeof themes)[])(
    'of ink on the oil tint, %s, is at least 4.5 : 1',
    (theme) => {
      expect(contrast(themes[theme]['ink']!, themes[theme]['oil-tint']!)).toBeGreaterThanOrEqual(4.5);
    },
  );
});
