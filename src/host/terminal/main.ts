#!/usr/bin/env node
import { BuiltByAnother } from '../site/staged.ts';
import { commanded } from './commanded.ts';
import { outsideOf } from './outside.ts';
import { fault } from './words.ts';

// A reader that closes the pipe early, such as `head`, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

/** 70 is a fault of our own. */
commanded(process.argv.slice(2)).then(
  (status) => {
    process.exitCode = status;
  },
  (error: unknown) => {
    process.stderr.write(`${fault(error)}\n`);
    process.exitCode = outsideOf(error) !== null || error instanceof BuiltByAnother ? 2 : 70;
  },
);
