/** A cell: text, a number, or nothing. */
export type Cell = string | number | null;

/**
 * Comma-separated values (RFC 4180). Text that a spreadsheet would run as a formula is made harmless by an apostrophe before it;
 * numbers stay numbers, in as many digits as the ledger has.
 */
export const csvText = (heads: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  [heads, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('');

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(Number(cell.toPrecision(12))) : '';
  const harmless = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
