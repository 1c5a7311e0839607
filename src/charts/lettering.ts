import { element, escapeXml } from './svg.ts';
import { face, textSize } from './theme.ts';

export interface Letters {
  readonly text: string;
  readonly x: number;
  /** Foot of the letters. */
  readonly y: number;
  readonly fill: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** A rim of this colour behind the letters, where they may cross a line. */
  readonly rim?: string;
}

/** Words in a drawing. */
export function lettering({ text, x, y, fill, anchor = 'start', rim }: Letters): string {
  const behind =
    rim === undefined ? {} : { 'paint-order': 'stroke', stroke: rim, 'stroke-width': 3.5, 'stroke-linejoin': 'round' };
  const look = { x, y, fill, 'font-family': face, 'font-size': textSize, 'text-anchor': anchor, ...behind };
  return element('text', look, escapeXml(text));
}
