import type { Found } from './book.ts';
import type { AskField, AskTyped } from './ask.ts';
import type { Facet } from './differs.ts';
import type { Near } from './nearest.ts';

/** Name of each field, as the page labels it. */
export const labels: Readonly<Record<AskField, string>> = {
  words: 'Words',
  trial: 'Trial',
  kind: 'Kind of article',
  article: 'Article',
  oil: 'Oil grade',
  basis: 'Fill by',
  fill: 'Fill',
  speed: 'Speed of wheel or output',
  sump: 'Sump temperature',
  grade: 'Grade of flow',
  value: 'Graded',
  word: 'Word',
};

/** "spin, SAE 75W-80, 3.20 L": what was asked of conditions, as it was typed. */
export function askedWords(typed: AskTyped): string {
  const { trial, kind, article, oil, basis, fill, speed, sump, grade } = typed;
  return [
    trial,
    kind.replaceAll('_', ' '),
    article,
    oil,
    basis === '' ? '' : `fill by ${basis}`,
    fill,
    speed,
    sump === '' ? '' : /^\s*own/i.test(sump) ? 'at its own temperature' : `sump ${sump}`,
    grade === '' ? '' : `graded for ${grade}`,
  ]
    .filter((part) => part.trim() !== '')
    .join(', ');
}

const differsIn: Readonly<Record<Facet, string>> = {
  trial: 'the trial',
  kind: 'the kind of article',
  article: 'the article',
  oil: 'the oil',
  basis: 'what it was filled by',
  fill: 'the fill',
  speed: 'the speed',
  sump: 'the temperature',
  grade: 'not being graded so',
};

/** "differs in the fill and the speed" */
export const differsWords = ({ differs }: Near): string => {
  const parts = differs.map((facet) => differsIn[facet]);
  return `differs in ${parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)!}`}`;
};

/** Of those that differ in the same, one is said; the list holds them all. */
const firstOfEach = (nearest: readonly Near[]): readonly Near[] =>
  nearest
    .filter((near, i) => nearest.findIndex((other) => differsWords(other) === differsWords(near)) === i)
    .slice(0, 3);

/** "P1 deep bowl, 3.59 L of O2 (differs in the fill)" */
const nearWords = (near: Near): string =>
  `${near.series.cells[near.runs[0]![2]]![3]}${near.condition === null || near.condition[1] === '' ? '' : `, ${near.condition[1]}`} (${differsWords(near)})`;

/** What came of asking, in one or two sentences; the lists below it hold the rest. */
export function saidOf({ answer, texts }: Found, typed: AskTyped, heldRuns: number): string {
  const { tested, runs, out, figures, claims, nearest } = answer;
  const held = heldRuns === 0 ? '' : ` ${count(heldRuns, 'run is', 'runs are')} held back and not looked through.`;
  const places = typed.words.trim() === '' ? [] : [count(texts.length, 'place in words', 'places in words')];
  if (tested === false) {
    const aside =
      out.length === 0 ? '' : ` ${count(out.length, 'run of this kind gives', 'runs of this kind give')} no figure.`;
    const near = nearest.length === 0 ? '' : ` Nearest: ${firstOfEach(nearest).map(nearWords).join('; ')}.`;
    return `Not tested: ${askedWords(typed)}.${aside}${near}${held}`;
  }
  const found = [
    ...(runs.length > 0 ? [count(runs.length, 'run')] : []),
    ...(figures.length > 0 ? [count(figures.length, 'figure')] : []),
    ...(claims.length > 0 ? [count(claims.length, 'claim')] : []),
    ...places,
  ];
  if (tested === true && runs.length + figures.length + claims.length === 0)
    return `Tested: ${askedWords(typed)}; nothing of it has ${narrowing(typed)}.`;
  if (tested === true)
    return `Tested: ${found.join(', ')}.${out.length === 0 ? '' : ` ${count(out.length, 'more run of this kind gives', 'more runs of this kind give')} no figure.`}`;
  if (found.length === 0) return typed.word + typed.value === '' ? '' : `Nothing has ${narrowing(typed)}.`;
  return `Found: ${found.join(', ')}.`;
}

const narrowing = ({ words, value, word }: AskTyped): string =>
  [
    words.trim() === '' ? '' : 'these words',
    value === '' ? '' : `the grade ${value}`,
    word === '' ? '' : `the word “${word}”`,
  ]
    .filter((part) => part !== '')
    .join(' and ');

const count = (n: number, one: string, many = `${one}s`): string => `${String(n)} ${n === 1 ? one : many}`;
