#!/usr/bin/env node
import { parseArgs } from 'node:util';
import { build } from './build.ts';
import { check } from './check.ts';
import { preview } from './preview.ts';
import { usage, version } from './words.ts';

/** Exit status: 0 clean, 1 findings that stop publication, 2 wrong call. */
async function main(argv: readonly string[]): Promise<number> {
  const called = read(argv);
  if (typeof called === 'string') {
    process.stderr.write(`${called}\n\n${usage}`);
    return 2;
  }
  const { command, folder, options } = called;
  if (options.version) {
    process.stdout.write(`${version()}\n`);
    return 0;
  }
  if (options.help || command === undefined) {
    process.stdout.write(usage);
    return command === undefined && !options.help ? 2 : 0;
  }
  if (command === 'check') return check({ folder, json: options.json, audience: options.public ? 'public' : 'house' });
  if (command === 'build')
    return build({ folder, out: options.out, audience: options.public ? 'public' : 'house', json: options.json });
  if (command === 'preview')
    return preview({ folder, port: options.port, audience: options.public ? 'public' : 'house' });
  process.stderr.write(`There is no command ${command}.\n\n${usage}`);
  return 2;
}

interface Called {
  readonly command: string | undefined;
  readonly folder: string;
  readonly options: {
    readonly out: string;
    readonly port: number;
    readonly public: boolean;
    readonly json: boolean;
    readonly help: boolean;
    readonly version: boolean;
  };
}

function read(argv: readonly string[]): Called | string {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        out: { type: 'string', default: '_site' },
        port: { type: 'string', default: '8080' },
        public: { type: 'boolean', default: false },
        json: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false },
        version: { type: 'boolean', short: 'v', default: false },
      },
    });
    const [command, folder = '.', ...more] = positionals;
    if (more.length > 0) return `One folder at a time: ${more.join(' ')} is too much.`;
    const port = Number(values.port);
    if (!Number.isInteger(port) || port < 0 || port > 65535) return `--port ${values.port} is no port.`;
    return { command, folder, options: { ...values, port } };
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

main(process.argv.slice(2)).then(
  (status) => {
    process.exitCode = status;
  },
  (error: unknown) => {
    process.stderr.write(
      `This is a fault of dipmark, not of your notes. Please report it with this text:\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
    );
    process.exitCode = 70;
  },
);
