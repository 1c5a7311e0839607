import { readQuantity } from '../../quantity/read.ts';
import type { Dimension, Quantity } from '../../quantity/quantity.ts';
import { gradeKinds } from '../../trial/flow.ts';

/** Fields of the page that finds, in their order; each is also its name in the address. */
export const askFields = [
  'words',
  'trial',
  'kind',
  'article',
  'oil',
  'basis',
  'fill',
  'speed',
  'sump',
  'grade',
  'value',
  'word',
] as const;
export type AskField = (typeof askFields)[number];
export type AskTyped = Readonly<Record<AskField, string>>;

export const nothingAsked = Object.fromEntries(askFields.map((field) => [field, ''])) as unknown as AskTyped;

/** What is asked for; '' and null mean any. Articles by "P4 ring gear shroud", oils by their grade. */
export interface Ask {
  readonly words: string;
  readonly trial: string;
  readonly kind: string;
  readonly article: string;
  readonly oil: string;
  readonly basis: string;
  readonly fill_L: number | null;
  readonly speed_rpm: number | null;
  /** Degrees Celsius, or at its own running temperature. */
  readonly sump: number | 'own' | null;
  readonly grade: string;
  readonly value: string;
  readonly word: string;
}

export type AskRead =
  { readonly ok: true; readonly ask: Ask } | { readonly ok: false; readonly wrong: ReadonlyMap<AskField, string> };

/** What was typed, in any unit that the notes take; one sentence beside each field that will not do. */
export function readAsk(typed: AskTyped): AskRead {
  const wrong = new Map<AskField, string>();
  const read = (field: 'fill' | 'speed' | 'sump', dimension: Dimension): number | null => {
    if (typed[field].trim() === '') return null;
    const found = readQuantity(typed[field], dimension, { field: field === 'speed' ? 'wheel-speed' : field });
    if (found.ok) return si(found.value);
    const { says, why, write } = found.trouble;
    wrong.set(field, [says, why, write].filter((part) => part !== '').join(' '));
    return null;
  };
  const own = /^\s*own\b/i.test(typed.sump);
  const [fill_m3, speed_rad_s] = [read('fill', 'volume'), read('speed', 'rotation')];
  const sump_K = own ? null : read('sump', 'temperature');
  if (wrong.size > 0) return { ok: false, wrong };
  const { words, trial, kind, article, oil, basis, grade, value, word } = typed;
  return {
    ok: true,
    ask: {
      ...{ words: words.trim(), trial, kind, article, oil, basis, value, word },
      fill_L: fill_m3 === null ? null : fill_m3 * 1e3,
      speed_rpm: speed_rad_s === null ? null : (speed_rad_s * 30) / Math.PI,
      sump: own ? 'own' : sump_K === null ? null : sump_K - 273.15,
      grade: gradeKinds.find((each) => each === grade) ?? '',
    },
  };
}

const si = ({ value }: Quantity): number => value;

/** What is filled in, as the address holds it: "#trial=spin&fill=3.20+L". */
export const askAddress = (typed: AskTyped): string =>
  `#${new URLSearchParams(askFields.flatMap((field) => (typed[field] === '' ? [] : [[field, typed[field]]]))).toString()}`;

/** Unknown names in an address are passed over. */
export function askFrom(hash: string): AskTyped {
  const held = new URLSearchParams(hash.replace(/^#/, ''));
  return Object.fromEntries(askFields.map((field) => [field, held.get(field) ?? ''])) as unknown as AskTyped;
}
