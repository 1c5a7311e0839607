import type { Rerun } from '../trial/plan.ts';
import { group, optional, whole, yesNo } from './fields.ts';
import type { Node } from './note.ts';
import { readFields } from './read.ts';
import { beginning, type Into, worthKnowing, wrongAt } from './read-value.ts';
import * as say from './texts-check.ts';

/** When the baseline comes back, by places that can be counted. */
export const rerunKind = group({
  start: optional(yesNo, 'Before the first of the others.'),
  middle: optional(yesNo, 'Between them: a drift that bends shows only there.'),
  end: optional(yesNo, 'After the last of them: without it a drift is not known.'),
  'every-n': optional(whole('6', [1, 1000]), 'After so many runs of other cells.'),
});

const untold: Rerun = { start: null, middle: null, end: null, everyN: null };

/** Written as places, or as a sentence in which the places are named. */
export function readRerun(node: Node, into: Into): { readonly words: string; readonly rerun: Rerun } {
  if (node.kind === 'text') {
    const rerun = fromWords(node.text);
    if (rerun === untold) worthKnowing(into, node.span, say.rerunUncounted(node.text));
    return { words: node.text, rerun };
  }
  if (node.kind === 'list') {
    wrongAt(into, beginning(node.span), say.rerunShape());
    return { words: '', rerun: untold };
  }
  const { whole: read, values: v } = readFields(rerunKind, node, into);
  if (!read) return { words: '', rerun: untold };
  const rerun = {
    start: v.start ?? false,
    middle: v.middle ?? false,
    end: v.end ?? false,
    everyN: v['every-n'] ?? null,
  };
  return { words: inWords(rerun), rerun };
}

/** "at start, middle and end, and after every 6 runs" */
function inWords({ start, middle, end, everyN }: Rerun): string {
  const places = [start === true ? 'start' : '', middle === true ? 'middle' : '', end === true ? 'end' : ''].filter(
    (place) => place !== '',
  );
  const at = places.length < 2 ? places.join('') : `${places.slice(0, -1).join(', ')} and ${places.at(-1)!}`;
  const every = everyN === null ? '' : `after every ${everyN === 1 ? 'run' : `${everyN} runs`}`;
  const said = [at === '' ? '' : `at ${at}`, every].filter((part) => part !== '').join(', and ');
  return said === '' ? 'not run again' : said;
}

/** A sentence that denies one place may mean any of them, so that nothing is taken from it. */
function fromWords(text: string): Rerun {
  if (/\b(no|not|never|without|once|except|but)\b/i.test(text)) return untold;
  const names = (...words: readonly string[]): boolean => new RegExp(`\\b(?:${words.join('|')})\\b`, 'i').test(text);
  const every = /\b(?:every|each) (\d{1,3})(?:st|nd|rd|th)?\b/i.exec(text)?.[1];
  const said: Rerun = {
    start: names('start', 'beginning', 'first'),
    middle: names('middle', 'between', 'midway', 'halfway'),
    end: names('end', 'last', 'finish'),
    everyN: every === undefined || Number(every) === 0 ? null : Number(every),
  };
  return said.start || said.middle || said.end || said.everyN !== null ? said : untold;
}
