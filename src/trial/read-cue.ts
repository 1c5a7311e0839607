import { nearest } from '../finding/nearest.ts';
import { type Measure, measureNames, measures, type Noted, rpm_rad_s, seenGrades, unescaped } from './cue.ts';
import { type Graded, type GradeKind, gradeKinds, type View } from './flow.ts';

/** What will not do in a cue, as data; `offset` counts from the beginning of its text. */
export interface CueTrouble {
  readonly what: 'no-run' | 'unknown' | 'twice' | 'missing' | 'no-value' | 'grade' | 'number' | 'outside' | 'word';
  /** The word of the cue that it is about. */
  readonly name: string;
  readonly typed: string;
  /** Words that would do here. */
  readonly known: readonly string[];
  readonly near: string | null;
  readonly offset: number;
  readonly length: number;
}

export interface CueRead {
  /** Null when there are troubles. */
  readonly noted: Noted | null;
  readonly troubles: readonly CueTrouble[];
  /** Run id or clip code, speed, View and words, as they stand in the text; null when they are not there. */
  readonly run: Token | null;
  readonly rpm: Token | null;
  readonly view: Token | null;
  readonly words: Token | null;
  /** A grade was written beside View 0 or 1 and is read as ng. */
  readonly unseen: boolean;
}

export interface Token {
  readonly text: string;
  readonly offset: number;
}

/** Words of a cue, and how many values may follow each. Bars part a cue for the eye; each word is known by itself. */
const values = {
  run: 1,
  step: 1,
  rpm: 2,
  observer: Infinity,
  pass: 1,
  blind: 3,
  reach: 1,
  side: 1,
  wall: 1,
  bubble: 1,
  tube: 1,
  view: 1,
  level: 1,
  swing: 1,
  foam: 1,
  detach: 1,
} as const satisfies Readonly<Record<string, number>>;
type Name = keyof typeof values;
const names = Object.keys(values) as readonly Name[];
const isName = (text: string): text is Name => Object.hasOwn(values, text);
const needed: readonly Name[] = ['run', 'rpm', 'observer', ...gradeKinds, 'view'];

/** One cue's text by the grammar that `cueText` writes. All that is wrong in it is told, each once; it never throws. */
export function readCue(text: string): CueRead {
  const words = wordsOf(text);
  const tokens = [...text.slice(0, words?.from).matchAll(/[^\s|]+|\|/g)].map((m) => ({ text: m[0], offset: m.index }));
  const first = tokens[0] ?? { text: '', offset: 0 };
  const said = words?.token ?? null;
  if (first.text !== 'run')
    return {
      ...{ noted: null, troubles: [trouble('no-run', first)], unseen: false },
      ...{ run: null, rpm: null, view: null, words: said },
    };

  const troubles: CueTrouble[] = [];
  const found = collect(tokens, troubles);
  const typed = Object.fromEntries(gradeKinds.map((kind) => [kind, gradeOf(kind, 4, found, troubles)])) as Record<
    GradeKind,
    Graded
  >;
  const view = gradeOf('view', 3, found, troubles) as View;
  const [rpm, direction] = found.get('rpm') ?? [];
  const speed = numberOf('rpm', { low: 0.1, high: 20000 }, found, troubles) ?? 0;
  oneOf('rpm', direction ?? null, ['up', 'down'], found, troubles);
  oneOf('pass', found.get('pass')?.[0], ['first', 'joint'], found, troubles);
  for (const hidden of found.get('blind') ?? []) oneOf('blind', hidden, ['article', 'fill', 'oil'], found, troubles);
  const counted = found.get('step')?.[0];
  if (counted && !/^\d{1,4}$/.test(counted.text)) troubles.push(trouble('number', counted, { name: 'step' }));
  const read = measureNames.map((name) => numberOf(name, measures[name], found, troubles));
  const si = (name: Measure): number | null => {
    const value = read[measureNames.indexOf(name)] ?? null;
    return value === null ? null : value * measures[name].factor;
  };
  const whole = troubles.length === 0;
  return {
    noted: whole
      ? {
          step: { outputSpeed_rad_s: speed * rpm_rad_s, direction: direction?.text === 'down' ? 'down' : 'up' },
          observer: unescaped((found.get('observer') ?? []).map((t) => t.text).join(' ')),
          pass: found.get('pass')?.[0]?.text === 'joint' ? 'joint' : 'first',
          blind: (found.get('blind') ?? []).map((t) => t.text as Noted['blind'][number]),
          grades: seenGrades(typed, view),
          view,
          level_z_m: si('level'),
          swing_m: si('swing'),
          foam_m: si('foam'),
          detach_rad: si('detach'),
          words: said === null ? null : unescaped(said.text.replace(/\s+/g, ' ')),
        }
      : null,
    troubles: troubles.sort((a, b) => a.offset - b.offset),
    run: found.get('run')?.[0] ?? null,
    rpm: rpm ?? null,
    view: found.get('view')?.[0] ?? null,
    words: said,
    unseen: whole && view < 2 && gradeKinds.some((kind) => typed[kind] !== 'ng'),
  };
}

type Found = ReadonlyMap<Name, readonly Token[]>;

/** `words:` takes all that follows, bars too. */
function wordsOf(text: string): { readonly from: number; readonly token: Token | null } | null {
  const mark = /(^|\|)\s*words\s*:\s*/.exec(text);
  if (!mark) return null;
  const offset = mark.index + mark[0].length;
  const said = text.slice(offset).trimEnd();
  return { from: mark.index, token: said === '' ? null : { text: said, offset } };
}

/** The values after each word. A word that is not known is told, and what follows it goes with it. */
function collect(tokens: readonly Token[], troubles: CueTrouble[]): Found {
  const found = new Map<Name, readonly Token[]>();
  const settled = new Set<string>();
  let open: { readonly name: Name; readonly twice: boolean } | null = null;
  let told = false;
  const close = (): void => {
    if (open && !open.twice && found.get(open.name)?.length === 0 && open.name !== 'rpm') {
      troubles.push(trouble('no-value', keys.get(open.name)!, { name: open.name }));
      settled.add(open.name);
    }
    [open, told] = [null, false];
  };
  const keys = new Map<Name, Token>();
  for (const token of tokens) {
    const taken: number = open ? (found.get(open.name)?.length ?? 0) : 0;
    // a run or an observer may be called by any word
    const isValue = open !== null && taken === 0 && (open.name === 'run' || open.name === 'observer');
    if (token.text === '|') close();
    else if (isName(token.text) && !isValue) {
      close();
      const twice = found.has(token.text);
      if (twice) troubles.push(trouble('twice', token, { name: token.text }));
      else {
        found.set(token.text, []);
        keys.set(token.text, token);
      }
      open = { name: token.text, twice };
    } else if (open && !told && (open.twice || taken < values[open.name])) {
      if (!open.twice) found.set(open.name, [...(found.get(open.name) ?? []), token]);
    } else if (!told) {
      const near = nearest(token.text, names);
      troubles.push(trouble('unknown', token, { known: names, near }));
      if (near !== null) settled.add(near);
      told = true;
    }
  }
  close();
  const missing = needed.filter((name) => !found.has(name) && !settled.has(name));
  // a word that nobody knows may be what each of the missing ones was meant to be
  const strange = troubles.filter(({ what, near }) => what === 'unknown' && near === null).length;
  const last = tokens[tokens.length - 1];
  if (missing.length > strange && last) troubles.push(trouble('missing', last, { known: missing, name: missing[0]! }));
  return found;
}

function gradeOf(name: GradeKind | 'view', most: 3 | 4, found: Found, troubles: CueTrouble[]): Graded {
  const typed = found.get(name)?.[0];
  if (!typed) return 'ng';
  if (typed.text === 'ng' && most === 4) return 'ng';
  if (!/^\d$/.test(typed.text) || Number(typed.text) > most) troubles.push(trouble('grade', typed, { name }));
  return Number(typed.text) as Graded;
}

/** As it is written: rpm, mm or degrees, with a point and without a unit. */
function numberOf(
  name: Name,
  bounds: { readonly low: number; readonly high: number },
  found: Found,
  troubles: CueTrouble[],
): number | null {
  const typed = found.get(name)?.[0];
  if (!typed) return null;
  const value = Number(typed.text.replace('\u2212', '-'));
  if (!/^[-+\u2212]?\d{1,9}(\.\d{1,9})?$/.test(typed.text)) troubles.push(trouble('number', typed, { name }));
  else if (value < bounds.low || value > bounds.high)
    troubles.push(trouble('outside', typed, { name, known: [String(bounds.low), String(bounds.high)] }));
  return value;
}

function oneOf(
  name: Name,
  typed: Token | null | undefined,
  known: readonly string[],
  found: Found,
  troubles: CueTrouble[],
): void {
  const before = found.get(name)?.[0];
  if (typed ? known.includes(typed.text) : typed === undefined || !before) return;
  const near = typed ? nearest(typed.text, known) : null;
  troubles.push({ ...trouble('word', typed ?? before!, { name, known, near }), ...(typed ? {} : { typed: '' }) });
}

const trouble = (
  what: CueTrouble['what'],
  { text, offset }: Token,
  more: Partial<Pick<CueTrouble, 'name' | 'known' | 'near'>> = {},
): CueTrouble => ({
  what,
  name: '',
  typed: text,
  known: [],
  near: null,
  offset,
  length: Math.max(1, text.length),
  ...more,
});
