import type { PlusMinus } from '../quantity/quantity.ts';
import type { NoteHead } from './note.ts';
import type { OilSample } from './sample.ts';

/** `oils/<id>.md` */
export interface Oil extends NoteHead {
  readonly id: string;
  readonly name: string;
  /** SAE J306 or ISO VG designation as typed. */
  readonly grade: string;
  readonly base: 'mineral' | 'synthetic' | 'semi' | 'unknown';
  readonly nu40_m2_s: number;
  readonly nu100_m2_s: number;
  /** What the note says of each, m²/s; absent when it says nothing and the kind of source decides. */
  readonly nu40PlusMinus?: PlusMinus;
  readonly nu100PlusMinus?: PlusMinus;
  /** Standard uncertainty of each, relative; from the stated ± or the kind of source. */
  readonly nuSource: 'measured' | 'data_sheet' | 'typical';
  readonly density15_kg_m3: number;
  /** Volumetric expansion, 1/K: ρ(T) = ρ15·(1 − β(T − 15 °C)). */
  readonly expansion_1_K: number;
  readonly specificHeat_J_kgK: number;
  readonly maxSump_K: number | null;
  readonly batch: string;
  readonly openedOn: string | null;
  readonly hoursUsed_s: number | null;
  /** In the order of the note. */
  readonly samples: readonly OilSample[];
}
