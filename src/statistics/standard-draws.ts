import { fillChiSquare, fillNormal, fillRectangular, seededSource } from './seeded.ts';

/**
 * What one cause draws: standard uncertainty 1 for normal and rectangular; for t the scaled t, whose scale is the standard
 * uncertainty (JCGM 101:2008, 6.4.9) and whose standard deviation is therefore larger, endless at two degrees and below.
 */
export interface Drawn {
  readonly id: string;
  readonly distribution: 'normal' | 'rectangular' | 't';
  /** Above zero; Infinity makes a t normal. */
  readonly dof: number;
  /** Causes sized by one estimate of scatter; default: its own id. */
  readonly family?: string;
}

/** Numbers of one cause in one block of trials. Kept for the next who asks: not to be written to. */
export type Draws = (cause: Drawn, block: number, size: number) => Float64Array;

interface Wanted {
  readonly seed: string;
  readonly cause: Drawn;
  readonly block: number;
  readonly size: number;
}

/**
 * Standardised numbers of one cause in one block. Same seed, id and block: same numbers, whatever else is drawn and in
 * whatever order, so that a cause two figures share is drawn once a trial for the whole series. Causes of one family share
 * one chi-square a trial, since one pooled scatter sized them all:
 *
 *   zᵢ = nᵢ / √(χ²_ν/ν)
 *
 * source  JCGM 101:2008, 6.4.9.4                       check: quantiles of Student's t, JCGM 100 table G.2
 */
export const standardDraws = (of: Wanted): Float64Array => drawn(of, scatterOf(of));

/**
 * The same numbers, remembered. At most `keep` of them stand in memory (8 bytes each, the longest unasked are dropped and
 * drawn anew when asked for), which is enough for some three hundred causes over two blocks.
 */
export function drawsOf(seed: string, keep = 6e6): Draws {
  const kept = new Map<string, Float64Array>();
  let held = 0;
  const remembered = (key: string, make: () => Float64Array): Float64Array => {
    const values = kept.get(key) ?? make();
    if (kept.delete(key)) held -= values.length;
    kept.set(key, values);
    held += values.length;
    for (const [oldest, { length }] of kept) {
      if (held <= keep || oldest === key) break;
      kept.delete(oldest);
      held -= length;
    }
    return values;
  };
  return (cause, block, size) => {
    const of = { seed, cause, block, size };
    const { id, distribution, dof } = cause;
    const family = cause.family ?? id;
    return remembered(JSON.stringify(['cause', id, distribution, isT(cause) ? [family, dof] : '', block, size]), () =>
      drawn(
        of,
        isT(cause) ? remembered(JSON.stringify(['family', family, dof, block, size]), () => scatterOf(of)!) : null,
      ),
    );
  };
}

const isT = ({ distribution, dof }: Drawn): boolean => distribution === 't' && dof !== Infinity;

/** √(χ²_ν/ν) of the cause's family, trial by trial; null where nothing is divided by it. */
function scatterOf({ seed, cause, block, size }: Wanted): Float64Array | null {
  if (!isT(cause)) return null;
  if (!(cause.dof > 0)) throw new Error(`cause "${cause.id}" has no degrees of freedom`);
  const scatter = new Float64Array(size);
  fillChiSquare(scatter, seededSource(seed, 'family', cause.family ?? cause.id, block), cause.dof);
  for (let i = 0; i < size; i++) scatter[i] = Math.sqrt(scatter[i]! / cause.dof);
  return scatter;
}

function drawn({ seed, cause, block, size }: Wanted, scatter: Float64Array | null): Float64Array {
  const values = new Float64Array(size);
  const source = seededSource(seed, 'cause', cause.id, block);
  if (cause.distribution === 'rectangular') fillRectangular(values, source);
  else fillNormal(values, source);
  if (scatter !== null) for (let i = 0; i < size; i++) values[i]! /= scatter[i]!;
  return values;
}
