import type { Figure } from '../ledger/figure.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { ledgerSchemaPath } from './ledger-schema.ts';

/** A value as it stood until a correction. */
export type Superseded = Pick<Figure, 'id' | 'value' | 'bound' | 'interval' | 'unit'> & {
  readonly correction: string;
  /** The day from which another one holds. */
  readonly until: string;
};

/** `ledger.json`: one figure a line, so that two ledgers can be compared with any text tool. Same input, same bytes. */
export function ledgerJson(ledger: Ledger, superseded: readonly Superseded[] = []): string {
  const head = JSON.stringify({
    $schema: ledgerSchemaPath,
    series: ledger.series,
    method: ledger.methodVersion,
  }).slice(0, -1);
  const lines = ledger.figures.map((f) => `  ${JSON.stringify(written(f))}`);
  const before = superseded.map((s) => `  ${JSON.stringify(rounded(s))}`);
  return `${head},"figures":[\n${lines.join(',\n')}\n]${before.length === 0 ? '' : `,"superseded":[\n${before.join(',\n')}\n]`}}\n`;
}

/** Twelve significant digits: more than any reading holds, fewer than rounding disturbs. */
const digits = (v: number | null): number | null => (v === null ? null : Number(v.toPrecision(12)));

const rounded = <T extends Pick<Figure, 'value' | 'interval'>>(f: T): T => ({
  ...f,
  value: digits(f.value),
  interval: [digits(f.interval[0]), digits(f.interval[1])],
});

const written = (f: Figure): Figure => ({ ...rounded(f), k: digits(f.k), dof: digits(f.dof) });
