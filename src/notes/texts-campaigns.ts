import type { Told } from './note.ts';

/** What is said of later campaigns in series.md. */

export const campaignTwice = (id: string): Told => ({
  code: 'campaign-twice',
  level: 'error',
  says: `The campaign ${id} stands in the list twice.`,
  why: 'Its name marks its runs and their figures, so that it can be given once only.',
  write: 'Give the later one a name of its own, such as U-02.',
});

export const campaignNotLater = (of: { id: string; from: string }, before: string): Told => ({
  code: 'campaign-not-later',
  level: 'error',
  says: `The campaign ${of.id} begins on ${of.from}, not after ${before}.`,
  why: 'A run belongs to the last campaign that had begun on its day; the first has no entry and begins with the series.',
  write: 'List later campaigns only, in the order of their days.',
});

export const bridgeChosenLate = (of: { id: string; from: string; declared: string | null }): Told => ({
  code: 'bridge-chosen-late',
  level: 'warning',
  says:
    of.declared === null
      ? `The campaign ${of.id} adjusts, and does not say since when that is so.`
      : `The campaign ${of.id} adjusts since ${of.declared}, and its runs begin on ${of.from}.`,
  why: 'A shift that is taken off after it was seen is chosen by its outcome; a baseline that moved by more than it repeats then gives two tables.',
  write: `Write declared: with a day before ${of.from}, if it was decided then, or bridge: separate.`,
});
