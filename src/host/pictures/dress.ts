import type { Clock } from '../../charts/clock.ts';
import type { Attributes } from '../../charts/svg.ts';
import { element, escapeXml, rounded } from '../../charts/svg.ts';
import type { Undressed } from './draw.ts';

/**
 * Makes a drawing fit to stand in a page under a strict policy: ids of its own, a role, a name and a description,
 * no style attributes, numbers to two decimals, nothing that says what holds anyway.
 */
export function dressed(
  drawing: Undressed,
  as: { readonly id: string; readonly title: string; readonly alternative: string },
): string {
  const prefix = `${as.id.replaceAll(/[^\w-]/g, '-')}-`;
  const inside = drawing.inside.replaceAll(/<[^>]+>/g, (tag) =>
    tag
      .replaceAll(/ (?:style|role|class|pointer-events|aria-[a-z]+)="[^"]*"/g, '')
      .replaceAll(
        / (?:stroke-miterlimit="10"|opacity="1"|stroke-dasharray=""|transform="translate\(0,0\)"|font-weight="normal")/g,
        '',
      )
      .replaceAll(/ id="/g, ` id="${prefix}`)
      .replaceAll('url(#', `url(#${prefix}`)
      .replaceAll(/-?\d+\.\d{3,}(?:e-?\d+)?/g, (digits) => String(rounded(Number(digits)))),
  );
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: drawing.width,
      height: drawing.height,
      viewBox: `0 0 ${drawing.width} ${drawing.height}`,
      role: 'img',
      'aria-labelledby': `${prefix}name`,
      'aria-describedby': `${prefix}says`,
      ...(drawing.clock === undefined ? {} : timed(drawing.clock)),
    },
    `<title id="${prefix}name">${escapeXml(as.title)}</title>`,
    `<desc id="${prefix}says">${escapeXml(as.alternative)}</desc>`,
    joined(inside),
  );
}

/** What the reader's page needs to set a mark at a time; times unrounded, a hundredth of a minute is too coarse for a film. */
const timed = ({ from, to, left, right, top, bottom }: Clock): Attributes => ({
  'data-time-from': String(from),
  'data-time-to': String(to),
  'data-left': left,
  'data-right': right,
  'data-top': top,
  'data-bottom': bottom,
});

/** Straight pieces of one look that follow each other become one path: a picture of many bars is half as long. */
function joined(inside: string): string {
  const piece = /<line transform="translate\(([\d.,-]+)\)" x2="([\d.-]+)" y2="([\d.-]+)"( [^>]*?)\/>/g;
  return inside.replaceAll(new RegExp(`(?:${piece.source})+`, 'g'), (run) => {
    const looks = new Map<string, string>();
    for (const [, from = '', x = '', y = '', look = ''] of run.matchAll(piece))
      looks.set(look, `${looks.get(look) ?? ''}M${from}l${x},${y}`);
    return [...looks].map(([look, d]) => `<path d="${d}"${look}/>`).join('');
  });
}
