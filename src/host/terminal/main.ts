#!/usr/bin/env node
import { build } from './build.ts';
import { callOf } from './call.ts';
import { check } from './check.ts';
import { pack } from './pack.ts';
import { pin } from './pin.ts';
import { preview } from './preview.ts';
import { printCards } from './print-cards.ts';
import { printCopy } from './print-copy.ts';
import { fault, isOutside, usage, version } from './words.ts';

/** Exit status: 0 clean, 1 findings that stop publication, 2 wrong call; 70 a fault of our own. */
async function main(argv: readonly string[]): Promise<number> {
  const call = callOf(argv);
  if (typeof call === 'string') {
    process.stderr.write(`${call}\n\n${usage}`);
    return 2;
  }
  switch (call.command) {
    case 'version':
      process.stdout.write(`${version()}\n`);
      return 0;
    case 'help':
      process.stdout.write(usage);
      return 0;
    case 'check':
      return check(call);
    case 'build':
      return build(call);
    case 'preview':
      return preview(call);
    case 'pin':
      return pin(call);
    case 'pack':
      return pack(call);
    case 'print':
      return call.cards ? printCards(call) : printCopy(call);
  }
}

// A reader that closes the pipe early, such as `head`, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

main(process.argv.slice(2)).then(
  (status) => {
    process.exitCode = status;
  },
  (error: unknown) => {
    process.stderr.write(`${fault(error)}\n`);
    process.exitCode = isOutside(error) ? 2 : 70;
  },
);
