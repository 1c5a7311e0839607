/** A fixed stream of chance: the same seed, the same spoils. Common practice (a 32-bit mix), no source. */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Spoil = (text: string, random: () => number) => string | Uint8Array;
const pick = <T>(list: readonly T[], random: () => number): T => list[Math.floor(random() * list.length)]!;
const between = (from: number, to: number, random: () => number): number => from + Math.floor(random() * (to - from));

/** A stretch of lines, never the head. */
function stretch(lines: readonly string[], random: () => number): [number, number] {
  const from = between(1, lines.length - 2, random);
  return [from, Math.min(lines.length - 1, from + between(1, 1 + Math.floor(lines.length / 3), random))];
}
/** Two of the columns; input and left output torque are no spoil that a file could show, see `legalLogSpoils`. */
function anyTwo(random: () => number): [number, number] {
  const two: [number, number] = [between(0, 9, random), between(0, 9, random)];
  return two.includes(2) && two.includes(4) ? anyTwo(random) : two;
}
const byLines =
  (change: (lines: string[], random: () => number) => string[]): Spoil =>
  (text, random) =>
    change(text.split('\n'), random).join('\n');
const byCells = (change: (cells: string[], line: number, random: () => number) => string[]): Spoil =>
  byLines((lines, random) => lines.map((line, at) => change(line.split(','), at, random).join(',')));

const codes = (text: string): number[] => Array.from({ length: text.length }, (_, at) => text.charCodeAt(at));

/** What goes wrong with a logger file as a whole: its shape, never a single digit of a reading. */
export const logSpoils: Readonly<Record<string, Spoil>> = {
  'cut off at its end': (text, random) => text.slice(0, between(1, text.length, random)),
  'begins in its middle': (text, random) => text.slice(between(1, text.length, random)),
  'a stretch of lines missing': byLines((lines, random) => {
    const [from, to] = stretch(lines, random);
    return [...lines.slice(0, from), ...lines.slice(to)];
  }),
  'a stretch of lines doubled': byLines((lines, random) => {
    const [from, to] = stretch(lines, random);
    return [...lines.slice(0, to), ...lines.slice(from)];
  }),
  'a stretch of lines elsewhere': byLines((lines, random) => {
    const [from, to] = stretch(lines, random);
    const rest = [...lines.slice(0, from), ...lines.slice(to)];
    const at = between(1, rest.length, random);
    return [...rest.slice(0, at), ...lines.slice(from, to), ...rest.slice(at)];
  }),
  'two lines exchanged': byLines((lines, random) => {
    const [a, b] = [between(1, lines.length - 1, random), between(1, lines.length - 1, random)];
    return lines.map((line, at) => (at === a ? lines[b]! : at === b ? lines[a]! : line));
  }),
  backwards: byLines(([head = '', ...rest]) => [head, ...rest.reverse()]),
  'two columns of readings exchanged, their names left': (text, random) => {
    const [a, b] = anyTwo(random);
    return byCells((cells, line) =>
      line === 0 || cells.length < 10
        ? cells
        : cells.map((cell, at) => (at === a ? cells[b]! : at === b ? cells[a]! : cell)),
    )(text, random);
  },
  'two names of columns exchanged': (text, random) => {
    const [a, b] = anyTwo(random);
    return byCells((cells, line) =>
      line > 0 ? cells : cells.map((cell, at) => (at === a ? cells[b]! : at === b ? cells[a]! : cell)),
    )(text, random);
  },
  'a cell missing in some lines': (text, random) => {
    const [at, share] = [between(0, 9, random), random()];
    return byCells((cells, line) => (line > 0 && random() < share ? cells.filter((_, i) => i !== at) : cells))(
      text,
      random,
    );
  },
  'a column missing': (text, random) => {
    const at = between(0, 9, random);
    return byCells((cells) => cells.filter((_, i) => i !== at))(text, random);
  },
  'another delimiter': (text, random) => text.replaceAll(',', pick([';', '\t', '|', ' '], random)),
  'another delimiter in some lines': byLines((lines, random) =>
    lines.map((line) => (random() < 0.3 ? line.replaceAll(',', ';') : line)),
  ),
  'decimal commas': (text) => text.replaceAll(',', ';').replaceAll(/(\d)\.(\d)/g, '$1,$2'),
  'decimal commas in some cells': (text, random) =>
    text.replaceAll(/(\d)\.(\d)/g, (whole, a: string, b: string) => (random() < 0.05 ? `"${a},${b}"` : whole)),
  'decimal marks lost in some cells': (text, random) => {
    const share = pick([0.002, 0.02, 0.2], random);
    return text.replaceAll(/(\d)\.(\d)/g, (whole, a: string, b: string) => (random() < share ? `${a}${b}` : whole));
  },
  'thousands parted': (text) => text.replaceAll(/\b(\d)(\d{3}\.\d)/g, '"$1,$2"'),
  'a name changed': byCells((cells, line, random) =>
    line > 0 ? cells : cells.with(between(0, 9, random), pick(['n', 'x', '', 'T_oil', 'tq_in'], random)),
  ),
  'a name in other case': (text) => text.replace(/^.*/, (head) => head.toUpperCase()),
  'a row of other units': (text, random) =>
    text.replace(
      '\n',
      `\n${pick(['min', 's', 'ms'], random)},rpm,${pick(['N·m', 'lbf·ft'], random)},rpm,N·m,N·m,${pick(['°F', 'K', '°C'], random)},°C,°C,°C,m/s,mm,\n`,
    ),
  'UTF-16': (text) => Uint8Array.from([0xff, 0xfe, ...codes(text).flatMap((code) => [code & 255, code >> 8])]),
  'UTF-16 without its mark': (text) => Uint8Array.from(codes(text).flatMap((code) => [code & 255, code >> 8])),
  'an old encoding with odd signs': (text, random) =>
    Uint8Array.from(codes(text.replace('T_sump', pick(['T_sump\u00b0', 'T_sump'], random))).map((code) => code & 255)),
  'lines ended by CR': (text) => text.replaceAll('\n', '\r'),
  'all in one line': (text) => text.replaceAll('\n', ' '),
  'its head twice': byLines((lines, random) => lines.toSpliced(between(1, lines.length, random), 0, lines[0]!)),
  'two files one after the other': (text) => `${text}\n${text}`,
  'a clock that starts anew': byCells((cells, line) =>
    line > 300 ? cells.with(0, String(Number(cells[0]) - 300)) : cells,
  ),
  'a clock of minutes': byCells((cells, line) =>
    line === 0 ? cells : cells.with(0, (Number(cells[0]) / 60).toFixed(4)),
  ),
  'a clock of milliseconds': byCells((cells, line) =>
    line === 0 ? cells : cells.with(0, String(Number(cells[0]) * 1000)),
  ),
  'a column in another unit': (text, random) => {
    const at = pick([6, 7, 8, 9], random);
    return byCells((cells, line) =>
      line === 0 || cells[at] === '' || cells[at] === undefined
        ? cells
        : cells.with(at, (Number(cells[at]) * 1.8 + 32).toFixed(2)),
    )(text, random);
  },
  'speed in another unit': byCells((cells, line) =>
    line === 0 || cells.length < 6 ? cells : cells.with(1, (Number(cells[1]) / 60).toFixed(3)),
  ),
};

/** Torques of the input and of the left output lie about as high here, and a torque in pounds is a torque. */
export const legalLogSpoils: Readonly<Record<string, Spoil>> = {
  'torque in another unit': byCells((cells, line) =>
    line === 0 || cells.length < 6 ? cells : cells.with(2, (Number(cells[2]) * 0.7376).toFixed(3)),
  ),
  'input and left output torque exchanged': byCells((cells, line) =>
    line === 0 || cells.length < 6 ? cells : cells.with(2, cells[4]!).with(4, cells[2]!),
  ),
  'other digits in some cells': (text, random) =>
    text.replaceAll(/\.(\d)/g, (all, digit: string) =>
      random() < 0.01 ? `.${String((Number(digit) + 1) % 10)}` : all,
    ),
};
