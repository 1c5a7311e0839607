import { finiteOrNull, input, output, type Relation } from './relation.ts';

/** Rolling radius over the free one: the tyre stands flattened. Common practice, no source. */
export const flattened = 0.97;

export interface Tyre {
  readonly width_m: number;
  /** Height of the side wall over the width. */
  readonly aspect: number;
  readonly rim_m: number;
}

/**
 * Reads a tyre's marking as it stands on the side wall: "265/70R17", "LT 245/75 R16", "205/55 ZR 16 91W".
 * Null for other systems of marking, such as inches throughout.
 */
export function readTyre(text: string): Tyre | null {
  const marking = /^(?:P|LT)?\s?(\d{3})\s?\/\s?(\d{2})\s?-?(?:ZR|R|D|B|-)?\s?-?(\d{2}(?:\.5)?)(?:\s.*)?$/;
  const parts = marking.exec(text.trim().toUpperCase());
  if (parts === null) return null;
  return { width_m: Number(parts[1]) / 1000, aspect: Number(parts[2]) / 100, rim_m: Number(parts[3]) * 0.0254 };
}

/**
 * Radius of a tyre that carries nothing.
 *
 *   r = d/2 + a w
 *
 * width w, rim d [m], aspect a [1]
 * returns      r [m]; null where nothing above 0 comes out
 * range        none
 * source       definition      check: 265/70R17: 401.4 mm
 */
export function freeRadius_m({ width_m, aspect, rim_m }: Tyre): number | null {
  const radius_m = finiteOrNull(rim_m / 2 + aspect * width_m);
  return radius_m !== null && radius_m > 0 ? radius_m : null;
}

/**
 * Rolling radius of a tyre by its marking: the last resort. Turns counted over a mile or a kilometre come first.
 *
 *   r = f (d/2 + a w)
 *
 * as freeRadius_m, flattening f [1]: 0.97
 * returns      r [m]; null as the free radius
 * range        f 0.9 to 1
 * source       commonPractice      check: 265/70R17: 389.358 mm
 */
export function rollingRadiusByMarking_m(at: Tyre & { readonly flattening: number }): number | null {
  const free_m = freeRadius_m(at);
  return free_m !== null && at.flattening > 0 ? finiteOrNull(free_m * at.flattening) : null;
}

const marked: Record<keyof Tyre, number> = { width_m: 0.265, aspect: 0.7, rim_m: 17 * 0.0254 };
const tyre = [
  input('width_m', 'w', 'width of the tyre', 'm'),
  input('aspect', 'a', 'height of the side wall over the width', '1'),
  input('rim_m', 'd', 'diameter of the rim', 'm'),
];
const hand = 'by hand, 265/70R17';

export const freeRadiusRelation: Relation<Readonly<Record<keyof Tyre, number>>> = {
  id: 'tyre-free-radius',
  title: 'Free radius of a tyre by its marking',
  formula: { latex: String.raw`r=\frac{d}{2}+a\,w`, plain: 'r = d/2 + a w' },
  symbols: [...tyre, output('r', 'free radius', 'm')],
  range: [],
  source: 'definition',
  grade: 'V2',
  checks: [{ source: hand, seen: 'computed', inputs: marked, printed: '401.400', unit: 'mm' }],
  of: (at) => freeRadius_m(at),
};

export const rollingRadiusRelation: Relation<Readonly<Record<keyof Tyre | 'flattening', number>>> = {
  id: 'tyre-rolling-radius',
  title: 'Rolling radius of a tyre by its marking',
  formula: { latex: String.raw`r=f\left(\frac{d}{2}+a\,w\right)`, plain: 'r = f (d/2 + a w)' },
  symbols: [
    ...tyre,
    input('flattening', 'f', 'rolling radius over free radius', '1'),
    output('r', 'rolling radius', 'm'),
  ],
  range: [{ symbol: 'f', from: 0.9, to: 1, why: 'a tyre rolls on less than its free radius; 0.97 is common practice' }],
  source: 'commonPractice',
  grade: 'VC',
  checks: [
    { source: hand, seen: 'computed', inputs: { ...marked, flattening: flattened }, printed: '389.3580', unit: 'mm' },
  ],
  of: (at) => rollingRadiusByMarking_m(at),
};
