/** A drawing written by hand: elements with presentation attributes only, so that no style rule is needed inside it. */
export type Attributes = Readonly<Record<string, string | number>>;

export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? String(rounded(value)) : escapeXml(value)}"`)
    .join('');
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`;
}

export const escapeXml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

export const rounded = (value: number): number => Math.round(value * 100) / 100;

export const pathOf = (points: readonly (readonly [number, number])[], closed = false): string =>
  points.length === 0 ? '' : `M${points.map(([x, y]) => `${rounded(x)},${rounded(y)}`).join('L')}${closed ? 'Z' : ''}`;
