import type { Pins } from '../trial/part.ts';

/** The file that `notes/pins.ts` reads: rows of columns parted by tabs, so that two of them can be compared with any text tool. */
export function pinsText(id: string, pins: Omit<Pins, 'file'>): string {
  const number = (value: number | null): string => (value === null ? '' : String(Number(value.toPrecision(12))));
  const rows = [
    ['part', id, pins.published, pins.method],
    ['words', pins.words],
    ...[...pins.figures.values()].map((pin) => [
      'figure',
      pin.figure,
      pin.shown,
      number(pin.value),
      number(pin.low),
      number(pin.high),
      pin.unit,
    ]),
    ...[...pins.claims].map(([claim, word]) => ['claim', claim, word]),
    ...[...pins.inputs].map(([file, sum]) => ['file', file, sum]),
  ];
  return rows.map((row) => `${row.join('\t')}\n`).join('');
}
