import { fromSI, unitNamed } from '../quantity/units.ts';
import type { SourceKey } from './sources.ts';

export type Inputs = Readonly<Record<string, unknown>>;

/** `key` is the name of the argument; null for what comes out. `unit` is a name in the units table; the number is SI. */
export interface RelationSymbol {
  readonly symbol: string;
  readonly name: string;
  readonly unit: string;
  readonly role: 'in' | 'out';
  readonly key: string | null;
}

/** Limits in SI, both inside; null where there is none. */
export interface RangeRow {
  readonly symbol: string;
  readonly from: number | null;
  readonly to: number | null;
  readonly why: string;
}

/** One value somebody printed for stated inputs. Agreement is half of its last digit, or `within` with its reason. */
export interface Check<I> {
  readonly source: string;
  /** computed: by a program independent of this one; it guards the arithmetic and is no publication. */
  readonly seen: 'published' | 'memory' | 'computed';
  readonly inputs: I;
  readonly printed: string;
  /** Name in the units table; the unit of what comes out, when not stated. */
  readonly unit?: string;
  readonly within?: { readonly relative: number; readonly why: string };
  readonly note?: string;
}

/**
 * A published relation as an object, so that the method page is made from it.
 * grade: V2 seen in two independent places · V1 in one · VC recalled and confirmed by numbers · U unverified.
 */
export interface Relation<I extends Inputs = Inputs> {
  readonly id: string;
  readonly title: string;
  readonly formula: { readonly latex: string; readonly plain: string };
  readonly symbols: readonly RelationSymbol[];
  readonly range: readonly RangeRow[];
  readonly source: SourceKey;
  readonly grade: 'V2' | 'V1' | 'VC' | 'U';
  readonly checks: readonly Check<I>[];
  /** Null where the relation has no answer; never NaN. A method, so that a list may hold relations of any inputs. */
  of(inputs: I): number | null;
}

/** The same relation, which has no answer instead of one that is no number or has no end, whatever is put in. */
export const answering = (relation: Relation): Relation => ({
  ...relation,
  of: (inputs) => {
    const answer = relation.of(inputs);
    return answer !== null && Number.isFinite(answer) ? answer : null;
  },
});

export const input = (key: string, symbol: string, name: string, unit: string): RelationSymbol => ({
  symbol,
  name,
  unit,
  role: 'in',
  key,
});

export const output = (symbol: string, name: string, unit: string): RelationSymbol => ({
  symbol,
  name,
  unit,
  role: 'out',
  key: null,
});

/** The figure, or null where the sum runs beyond any number or has none: 0/0, the root of what is below 0. */
export const finiteOrNull = (value: number): number | null => (Number.isFinite(value) ? value : null);

/** One sentence for each limit that these inputs, or what comes out, do not keep. The figure is still given. */
export function outsideRange<I extends Inputs>(relation: Relation<I>, inputs: I): readonly string[] {
  return relation.range.flatMap((row) => {
    const symbol = relation.symbols.find((s) => s.symbol === row.symbol);
    if (symbol === undefined) throw new Error(`${relation.id}: range of ${row.symbol}, which is no symbol of it`);
    const value = symbol.key === null ? relation.of(inputs) : inputs[symbol.key];
    if (typeof value !== 'number' || Number.isNaN(value)) return [`${symbol.name} has no value.`];
    if (row.from !== null && value < row.from) return [`${symbol.name} is below the range: ${row.why}.`];
    if (row.to !== null && value > row.to) return [`${symbol.name} is above the range: ${row.why}.`];
    return [];
  });
}

/** How a check stands with the code as it is now. `got` is in the unit of the print. */
export interface CheckToday {
  readonly source: string;
  readonly seen: Check<unknown>['seen'];
  readonly printed: string;
  readonly unit: string;
  readonly got: number | null;
  readonly tolerance: number;
  readonly agrees: boolean;
  readonly note: string | null;
}

/** The checks of one relation are worked out once, however many pages show them. */
export function today<I extends Inputs>(relation: Relation<I>): readonly CheckToday[] {
  const before = workedOut.get(relation);
  // eslint-disable-next-line @typescript-eslint/unbound-method -- only asked whether it is still the same
  const { of, checks } = relation;
  if (before?.of === of && before.checks === checks) return before.today;
  const fresh = { of, checks, today: checksOf(relation) };
  workedOut.set(relation, fresh);
  return fresh.today;
}

interface WorkedOut {
  readonly of: unknown;
  readonly checks: unknown;
  readonly today: readonly CheckToday[];
}
const workedOut = new WeakMap<object, WorkedOut>();

function checksOf<I extends Inputs>(relation: Relation<I>): readonly CheckToday[] {
  const outUnit = relation.symbols.find((s) => s.role === 'out')?.unit ?? '1';
  return relation.checks.map((check) => {
    const value = relation.of(check.inputs);
    const unit = check.unit ?? outUnit;
    const got = value === null ? null : inUnit(value, unit);
    const tolerance = toleranceOf(check);
    return {
      source: check.source,
      seen: check.seen,
      printed: check.printed,
      unit,
      got,
      tolerance,
      // a hair more, for binary rounding of the last digit
      agrees: got !== null && Math.abs(got - Number(check.printed)) <= tolerance * (1 + 1e-9),
      note: check.note ?? null,
    };
  });
}

/** Half of the last printed digit: "8.5" 0.05, "1.20e3" 5, "236" 0.5. */
export function halfOfLastDigit(printed: string): number {
  const parts = /^[+-]?\d+(?:\.(\d+))?(?:e([+-]?\d+))?$/i.exec(printed);
  if (parts === null) throw new Error(`"${printed}" is not a printed number`);
  return 0.5 * 10 ** (Number(parts[2] ?? 0) - (parts[1]?.length ?? 0));
}

function inUnit(si: number, name: string): number {
  const unit = unitNamed(name);
  if (unit === null) throw new Error(`"${name}" is not in the units table`);
  return fromSI(unit, si);
}

function toleranceOf(check: Check<unknown>): number {
  const half = halfOfLastDigit(check.printed);
  return check.within ? Math.max(half, Math.abs(Number(check.printed)) * check.within.relative) : half;
}
