import { recovered } from '../site/staged.ts';
import { callOf } from './call.ts';
import { usage, version } from './words.ts';

/**
 * Does what a call asks for. Exit status: 0 clean, 1 findings that stop publication, 2 wrong call. Throws what the machine or a
 * fault of our own throws.
 */
export async function commanded(argv: readonly string[]): Promise<number> {
  const call = callOf(argv);
  if (typeof call === 'string') {
    process.stderr.write(`${call}\n\n${usage}`);
    return 2;
  }
  // whatever a killed build left is put right by the next command, whichever it is
  if (call.out !== '') await recovered(call.out);
  // each command brings what it needs, so that a wrong call is answered at once
  switch (call.command) {
    case 'version':
      process.stdout.write(`${version()}\n`);
      return 0;
    case 'help':
      process.stdout.write(usage);
      return 0;
    case 'start':
      return (await import('./start.ts')).start(call);
    case 'check':
      return (await import('./check.ts')).check(call);
    case 'build':
      return (await import('./build.ts')).build(call);
    case 'preview':
      return (await import('./preview.ts')).preview(call);
    case 'pin':
      return (await import('./pin.ts')).pin(call);
    case 'pack':
      return (await import('./pack.ts')).pack(call);
    case 'print':
      return call.cards
        ? (await import('./print-cards.ts')).printCards(call)
        : (await import('./print-copy.ts')).printCopy(call);
  }
}
