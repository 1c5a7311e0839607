/**
 * The house's colours, marks and sizes as charts use them. Colours are variables of the style sheet (`content/css/tokens.css`),
 * so that one drawing serves light and dark; paper replaces them by literals.
 */
export const ink = 'var(--ink)';
export const soft = 'var(--soft)';
export const rule = 'var(--rule)';
export const tint = 'var(--tint)';
export const paper = 'var(--paper)';
export const oil = 'var(--oil)';
export const oilTint = 'var(--oil-tint)';

export const face = 'Source Sans 3';
/** Shown at least at 12 px down to a picture column of 324 px (a 360 px phone). */
export const textSize = 13;

export type Width = 'wide' | 'narrow';
export const pictureWidth = { wide: 690, narrow: 350 } as const;

/** A mark is a colour and a shape; outlines are drawn inside −1…1. */
export interface Mark {
  readonly colour: string;
  readonly shape: string;
  /** Drawn as an outline filled with paper: the baseline, and the second round of marks. */
  readonly hollow: boolean;
  readonly name: string;
}

const shapes = [
  { name: 'diamond', shape: 'M0,-1L1,0L0,1L-1,0Z' },
  { name: 'triangle', shape: 'M0,-0.9L0.95,0.75L-0.95,0.75Z' },
  {
    name: 'cross',
    shape:
      'M-0.95,-0.5L-0.5,-0.95L0,-0.45L0.5,-0.95L0.95,-0.5L0.45,0L0.95,0.5L0.5,0.95L0,0.45L-0.5,0.95L-0.95,0.5L-0.45,0Z',
  },
  { name: 'square', shape: 'M-0.8,-0.8L0.8,-0.8L0.8,0.8L-0.8,0.8Z' },
  { name: 'wedge', shape: 'M0,0.9L0.95,-0.75L-0.95,-0.75Z' },
  {
    name: 'plus',
    shape: 'M-0.3,-1L0.3,-1L0.3,-0.3L1,-0.3L1,0.3L0.3,0.3L0.3,1L-0.3,1L-0.3,0.3L-1,0.3L-1,-0.3L-0.3,-0.3Z',
  },
  { name: 'hexagon', shape: 'M0,-1L0.87,-0.5L0.87,0.5L0,1L-0.87,0.5L-0.87,-0.5Z' },
] as const;

const circle = 'M-0.85,0A0.85,0.85,0,1,1,0.85,0A0.85,0.85,0,1,1,-0.85,0Z';

/** 0 is the baseline: ink, hollow circle. After seven articles the shapes come round again, hollow. */
export function markOf(index: number): Mark {
  if (index <= 0) return { colour: ink, shape: circle, hollow: true, name: 'circle' };
  const turn = (index - 1) % shapes.length;
  const { name, shape } = shapes[turn] ?? shapes[0];
  return { colour: `var(--mark-${turn + 1})`, shape, hollow: index > shapes.length, name };
}
