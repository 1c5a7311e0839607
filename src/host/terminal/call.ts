import { parseArgs } from 'node:util';
import { nearest } from '../../finding/nearest.ts';
import { type Beginning, beginnings } from '../../outlets/starter.ts';
import type { Audience } from '../../report/input.ts';

/** What was asked for on the command line. */
export interface Call {
  readonly command: Command;
  readonly folder: string;
  readonly out: string;
  readonly port: number;
  readonly audience: Audience;
  readonly json: boolean;
  /** Run cards (print), of every planned run or of one series only. */
  readonly cards: boolean;
  readonly all: boolean;
  /** A client copy (print), its sheet, and the browser that is to set it. */
  readonly copy: string | null;
  readonly sheet: string;
  readonly browser: string | null;
  readonly series: string | null;
  /** A part (pin), and whether it is written. */
  readonly part: string | null;
  readonly write: boolean;
  /** Every sum of a pack (check). */
  readonly deep: boolean;
  /** What a new book begins with, as far as it was said (start), and a logger file to read the columns from. */
  readonly beginning: Partial<Beginning>;
  readonly log: string | null;
}

const commands = ['start', 'check', 'build', 'preview', 'print', 'pin', 'pack', 'help', 'version'] as const;
type Command = (typeof commands)[number];

const options = {
  out: { type: 'string' },
  port: { type: 'string', default: '8080' },
  public: { type: 'boolean', default: false },
  json: { type: 'boolean', default: false },
  cards: { type: 'boolean', default: false },
  all: { type: 'boolean', default: false },
  sheet: { type: 'string', default: 'A4' },
  browser: { type: 'string' },
  series: { type: 'string' },
  part: { type: 'string' },
  write: { type: 'boolean', default: false },
  deep: { type: 'boolean', default: false },
  lab: { type: 'string' },
  question: { type: 'string' },
  baseline: { type: 'string' },
  candidate: { type: 'string' },
  fill: { type: 'string' },
  oil: { type: 'string' },
  log: { type: 'string' },
  help: { type: 'boolean', short: 'h', default: false },
  version: { type: 'boolean', short: 'v', default: false },
} as const;

/** Which command an option belongs to; one that it does not take is refused rather than passed over. */
const taken: Readonly<Record<Command, readonly string[]>> = {
  start: [...Object.keys(beginnings), 'log'],
  check: ['public', 'json', 'deep'],
  build: ['out', 'public', 'json'],
  preview: ['port', 'public'],
  print: ['cards', 'series', 'out', 'all', 'sheet', 'browser'],
  pin: ['part', 'series', 'write'],
  pack: ['out'],
  help: Object.keys(options),
  version: Object.keys(options),
};

/** A call as typed, or a sentence that says what to write instead. */
export function callOf(argv: readonly string[]): Call | string {
  const { values, positionals, tokens } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    strict: false,
    tokens: true,
    options,
  });
  const typed = tokens.flatMap((token) => (token.kind === 'option' ? [token] : []));
  for (const { name, rawName, value } of typed) {
    if (!Object.hasOwn(options, name)) return unknown(`option ${rawName}`, name, Object.keys(options), '--');
    const { type } = options[name as keyof typeof options];
    if (type === 'string' && (value === undefined || value === '' || value.startsWith('-')))
      return `${rawName} needs a value. Write  --${name} ${likely(name, positionals[0])}`;
    if (type === 'boolean' && value !== undefined) return `${rawName} takes no value. Write  --${name}`;
  }
  const [word, ...named] = positionals;
  const copy = word === 'print' && values.cards !== true ? (named.shift() ?? null) : null;
  const [folder = '.', ...more] = named;
  const command = values.help === true ? 'help' : values.version === true ? 'version' : word;
  if (command === undefined) return 'Say what to do. Write  dipmark build';
  if (!isCommand(command)) return unknown(`command ${command}`, command, commands, 'dipmark ');
  if (more.length > 0) return `One folder at a time: ${more.join(' ')} is too much.`;
  const stray = typed.find(({ name }) => !taken[command].includes(name));
  if (stray !== undefined) return `${command} does not take ${stray.rawName}.`;
  const port = Number(values.port);
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    return `--port ${String(values.port)} is no port. Write a whole number up to 65535, or 0 for any free one.`;
  return {
    command,
    folder,
    out: values.out === undefined ? outOf(command, copy) : String(values.out),
    port,
    audience: values.public === true ? 'public' : 'house',
    json: values.json === true,
    cards: values.cards === true,
    all: values.all === true,
    ...{ copy, sheet: String(values.sheet) },
    browser: typeof values.browser === 'string' ? values.browser : null,
    series: typeof values.series === 'string' ? values.series : null,
    part: typeof values.part === 'string' ? values.part : null,
    write: values.write === true,
    deep: values.deep === true,
    beginning: Object.fromEntries(
      Object.keys(beginnings).flatMap((name) => {
        const value = values[name as keyof Beginning];
        return typeof value === 'string' ? [[name, value]] : [];
      }),
    ),
    log: typeof values.log === 'string' ? values.log : null,
  };
}

/** A client copy is named after its number where nothing else is said. */
const outOf = (command: string | undefined, copy: string | null = null): string =>
  command === 'print' ? (copy === null ? '_cards' : '') : command === 'pack' ? '../pack' : '_site';

/** A value that an option may well be given. */
const likely = (option: string, command: string | undefined): string =>
  option === 'out'
    ? outOf(command)
    : option === 'port'
      ? options.port.default
      : option === 'sheet'
        ? options.sheet.default
        : option === 'browser'
          ? 'chromium'
          : option === 'part'
            ? '4-uphill'
            : option === 'log'
              ? 'file.csv'
              : option in beginnings
                ? JSON.stringify(beginnings[option as keyof Beginning].like)
                : 'hill-bowl';

const isCommand = (word: string): word is Command => (commands as readonly string[]).includes(word);

function unknown(what: string, word: string, known: readonly string[], before: string): string {
  const meant = nearest(word, known);
  return `There is no ${what}.${meant === null ? '' : ` Write  ${before}${meant}`}`;
}
