/** Columns of the bench's logger file, in their order; time stands before them and the event word after. */
export const channels = [
  'n_in',
  'tq_in',
  'n_out_l',
  'tq_out_l',
  'tq_out_r',
  'T_sump',
  'T_skin',
  'T_pb',
  'T_amb',
  'u_air',
  'lvl',
] as const;
export type Channel = (typeof channels)[number];

/** Rows every two seconds; NaN where nothing is read. True values first, then turned into readings. */
export interface Recording {
  readonly rows: number;
  readonly values: Readonly<Record<Channel, Float64Array>>;
  readonly events: ReadonlyMap<number, string>;
  /** Row written on each line under the header; a logger that stutters writes a row twice. */
  readonly written: readonly number[];
}

export const interval_s = 2;
/** The header is the first line, and lines count from 1. */
export const lineOf = (row: number): number => row + 2;

export function blank(length_s: number, events: ReadonlyMap<number, string>): Recording {
  const rows = length_s / interval_s + 1;
  const values = Object.fromEntries(channels.map((c) => [c, new Float64Array(rows).fill(NaN)]));
  return {
    rows,
    values: values as Record<Channel, Float64Array>,
    events,
    written: Array.from({ length: rows }, (_, row) => row),
  };
}

export type Digits = Readonly<Record<Channel, number>>;

export function logText(recording: Recording, digits: Digits): string {
  const lines = [['t_s', ...channels, 'evt'].join(',')];
  for (const row of recording.written) {
    let line = String(row * interval_s);
    for (const channel of channels) line += ',' + cell(recording.values[channel][row]!, digits[channel]);
    lines.push(`${line},${recording.events.get(row) ?? ''}`);
  }
  return lines.join('\n') + '\n';
}

/** No minus before a rounded zero. */
function cell(value: number, digits: number): string {
  if (Number.isNaN(value)) return '';
  const text = value.toFixed(digits);
  return Number(text) === 0 ? (0).toFixed(digits) : text;
}
