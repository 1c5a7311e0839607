import type { Finding } from '../finding/finding.ts';
import type { Part, PartRef } from '../trial/part.ts';

/** What is said of the words of parts once the figures stand. */
type Told = Omit<Finding, 'place'>;

export const refUnknown = ({ scheme, target }: PartRef, meant: string | null): Told => ({
  code: 'ref-unknown',
  level: 'error',
  says: `There is no ${scheme === 'see' ? 'run, article, oil, claim, part or amendment' : scheme} "${target}" in this series.`,
  why: 'A part says numbers and names by reference, so that none is typed wrong or grows old.',
  write: meant === null ? 'Look the name up in the ledger.' : `Write  ${scheme}:${meant} .`,
});

export const movedUntold = ({ number }: Part, what: string, then: string, now: string): Told => ({
  code: 'moved-untold',
  level: 'warning',
  says: `${what} was ${then} in Part ${number.toFixed(0)} and is ${now}, and no correction says why.`,
  why: 'What was published and then moved has a reason; readers look for it.',
  write: 'Write an amendment that says what changed, or put back the file or the setting that was changed.',
});
