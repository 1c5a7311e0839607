import type { GradeKind } from './law.ts';

/** Colours of the book. */
export const ink = '#1c2226';
export const soft = '#5c656b';
export const rule = '#d8d4c8';
export const tint = '#f2efe6';
export const paper = '#fbfaf6';
export const oil = '#9a5b00';

/** What a moment of a flow trial is drawn from. */
export interface Scene {
  readonly article: string;
  readonly tilt_pct: number;
  readonly rpm: number;
  /** Held to the scale, before rounding. */
  readonly grades: Readonly<Record<GradeKind, number>>;
  readonly level_mm: number;
  readonly swing_mm: number;
  /** Time that drops and waves follow. */
  readonly t_s: number;
  /** How far the ring gear has turned, as drawn. */
  readonly turned_rad: number;
  readonly flash: boolean;
  readonly label: string;
  readonly clock: string;
}

/** Turning is drawn this much slower, so that teeth are not seen to turn backwards. */
export const slowed = 25;
