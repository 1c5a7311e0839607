import type { NoteHead } from './note.ts';

/** One row of a level table: height above the axle centreline, and the litres standing below it. */
export interface LevelRow {
  readonly z_m: number;
  readonly volume_m3: number;
}

export interface LevelTable {
  readonly method: string;
  readonly rows: readonly LevelRow[];
}

export interface Point {
  readonly x_m: number;
  readonly z_m: number;
}

/** Lines of the inside in the mid-plane, x behind the axle centre. Drawing only: no figure comes from them. */
export interface InsideProfile {
  readonly wall: readonly Point[];
  readonly tray: readonly Point[] | null;
  readonly shroud: { readonly radius_m: number; readonly from_rad: number; readonly to_rad: number } | null;
}

/** `articles/<id>.md`: what is compared. */
export interface Article extends NoteHead {
  readonly id: string;
  readonly name: string;
  readonly kind: 'cover' | 'bowl' | 'insert' | 'housing' | 'window_copy' | 'assembly';
  readonly role: 'baseline' | 'candidate' | 'window_copy' | 'modified';
  readonly standsInFor: readonly string[];
  readonly differences: readonly string[];
  readonly insideShape: string;
  readonly material: string;
  readonly wall_m: number | null;
  /** Outside surface with its fins. */
  readonly outsideArea_m2: number | null;
  readonly mass_kg: number | null;
  readonly heatCapacity_J_K: number | null;
  readonly obtained: string;
  readonly samples: number;
  readonly condition: string;
  readonly maxSump_K: number | null;
  readonly makerFillAdvice: string | null;
  readonly levelTable: LevelTable | null;
  readonly profile: InsideProfile | null;
}
