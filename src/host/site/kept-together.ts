/**
 * Words of a page as HTML in which nothing breaks that is read as one thing: a name with a hyphen before its number ("F-01",
 * "sha-256"), a short word with a hyphen ("set-ups") and a number with its unit. What a reader copies or looks for stays as it was written.
 */
export const keptTogether = (text: string): string => whole(text.replace(beforeUnit, '\u00a0'), named);

/** Code and paths break after a slash or at a space, and at no hyphen. */
export const brokenAtSlashes = (path: string): string =>
  path
    .split(/(?<=\/)(?=[^/\s])/)
    .map((part) => whole(part, hyphened))
    .join('<wbr>');

const named = /[\p{L}\p{N}]+-[\p{L}\p{N}-]*\p{N}[\p{L}\p{N}]*|(?<![\p{L}\p{N}-])[\p{L}-]{3,9}(?![\p{L}\p{N}-])/gu;
const hyphened = /\S*-\S*/g;
const beforeUnit = /(?<=\p{N}) (?=(?:%|L|mm|rpm|°C|K|W|kW|kJ|N·m|m\/s|min|s|h)(?![\p{L}\p{N}]))/gu;
/** A longer one would stick out of a phone's column. */
const longest = 24;

function whole(text: string, one: RegExp): string {
  // Most cells of a table hold no hyphen, and there are many tables.
  if (!text.includes('-')) return safe(text);
  const found = [...text.matchAll(one)].filter(([name]) => name.includes('-') && name.length <= longest);
  const ends = [0, ...found.map((match) => match.index + match[0].length)];
  const kept = found.map(
    (match, i) => `${safe(text.slice(ends[i], match.index))}<span class="whole">${safe(match[0])}</span>`,
  );
  return kept.join('') + safe(text.slice(ends.at(-1)));
}

const signs: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
const safe = (text: string): string =>
  !special.test(text) ? text : text.replace(/[&<>"']/g, (sign) => signs[sign] ?? sign);
const special = /[&<>"']/;
