import type { Figure } from '../ledger/figure.ts';
import type { Ledger } from '../ledger/ledger.ts';

/** `ledger.json`: one figure a line, so that two ledgers can be compared with any text tool. Same input, same bytes. */
export function ledgerJson(ledger: Ledger): string {
  const head = JSON.stringify({ series: ledger.series, method: ledger.methodVersion }).slice(0, -1);
  const lines = ledger.figures.map((f) => `  ${JSON.stringify(written(f))}`);
  return `${head},"figures":[\n${lines.join(',\n')}\n]}\n`;
}

/** Twelve significant digits: more than any reading holds, fewer than rounding disturbs. */
const digits = (v: number | null): number | null => (v === null ? null : Number(v.toPrecision(12)));

const written = (f: Figure): Figure => ({
  ...f,
  value: digits(f.value),
  interval: [digits(f.interval[0]), digits(f.interval[1])],
  k: digits(f.k),
  dof: digits(f.dof),
});
