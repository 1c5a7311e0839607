import temml from 'temml';

/** A relation as MathML, set when the site is built. The style attributes that the setter writes are left to the style sheet. */
export function formulaToHtml(latex: string): string {
  const known = set.get(latex);
  if (known !== undefined) return known;
  const html = temml.renderToString(latex, { displayMode: true, throwOnError: true }).replaceAll(/ style="[^"]*"/g, '');
  set.set(latex, html);
  return html;
}

const set = new Map<string, string>();
