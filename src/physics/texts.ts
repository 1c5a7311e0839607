import type { Finding } from '../finding/finding.ts';

/** A relation that does not give what its source prints: a fault of the program, on which nothing is published. */
export const relationOff = (of: {
  file: string;
  title: string;
  source: string;
  printed: string;
  got: string;
  unit: string;
}): Finding => ({
  code: 'relation-off',
  level: 'error',
  place: { file: of.file, line: 1, column: 1 },
  says: `The relation “${of.title}” gives ${of.got} where ${of.source} has ${of.printed} ${of.unit}.`,
  why: 'Every relation is held to its checks in each build; figures that rest on this one may be wrong.',
  write:
    'Nothing in your notes: this is a fault of the program. Report it with this text, and go on with the version before.',
});
