import type { Standing } from '../trial/compared.ts';
import { campaignNote } from './campaigns.ts';
import { articleSpan, cellDetail, quantityWords } from './cite.ts';
import { dateWords } from './dates.ts';
import { displayUnit, numberText, plusMinusText } from './digits.ts';
import { largestCauses } from './doubt.ts';
import type { MarginNote } from './page.ts';
import { code, counts, listNote } from './spans.ts';
import { effectFigure, reasonWords, shownRows } from './standing-words.ts';
import { stressNote } from './stress.ts';
import { derivedOf, type View } from './view.ts';

/** What stands in the margin of a standing: how sure, what was taken out, what the baseline did, what could be seen. */
export const standingNotes = (view: View, standing: Standing): (MarginNote | null)[] => [
  indicativeNote(standing),
  campaignNote(view, standing),
  sureNote(view, standing),
  driftNote(view, standing),
  wanderNote(standing),
  daysNote(standing),
  smallestNote(standing),
  stressNote(view, standing),
  declaredMargin(view, standing),
  trialsNote(view, standing),
  standing.notes.length === 0 ? null : notesNote(standing),
];

export function sureNote(view: View, standing: Standing): MarginNote {
  const { repeatability } = standing;
  const first = shownRows(view, standing).find(({ effect }) => effect !== null)?.effect;
  const figure = first ? effectFigure(view, first) : undefined;
  const causes = largestCauses(view, figure);
  return {
    name: 'How sure.',
    text: [
      repeatability === null
        ? first === undefined
          ? 'No scatter of repeats can be stated, so no interval is formed. '
          : 'Too few repeats; scatter comes from the causes that are known. '
        : `One refit scatters by ${spread(standing.quantity, repeatability.s)} (one standard deviation, pooled, ${numberText(repeatability.dof, 0)} degrees of freedom). `,
      ...(first === undefined ? [] : [bracketWords(view, standing)]),
      ...(first === undefined || causes === null || first === null
        ? []
        : [`Of the doubt in ${first.cell.article}, ${cellDetail(first.cell)}, ${causes}.`]),
    ],
  };
}

/** Whether the baseline of this table was run before and after the others, and whether a drift is out. */
function bracketWords(view: View, { rows, drift }: Standing): string {
  const ordersOf = (ids: readonly string[]): number[] => ids.flatMap((id) => derivedOf(view, id)?.order ?? []);
  const effects = rows.flatMap(({ effect }) => (effect === null ? [] : [effect]));
  const base = ordersOf(
    effects.flatMap(({ againstRuns, moved = [] }) => [...againstRuns, ...moved.flatMap(({ runs }) => runs)]),
  );
  const others = ordersOf(effects.flatMap(({ runs }) => runs));
  const brackets = Math.min(...base) < Math.min(...others) && Math.max(...base) > Math.max(...others);
  const held = brackets
    ? 'Held against a baseline that was run before and after the others'
    : `Held against ${counts(new Set(base).size, 'run')} of the baseline, which ${new Set(base).size === 1 ? 'does' : 'do'} not lie on both sides of all others`;
  return `${held}; ${drift === null ? 'no drift is taken out. ' : 'a drift common to all cells is taken out. '}`;
}

function driftNote(view: View, { drift, quantity, against }: Standing): MarginNote | null {
  if (drift === null) return null;
  return {
    name: 'Drift.',
    text: [
      drift.separated
        ? 'The runs drift together, and the drift is taken out: '
        : 'No drift of the baseline is separated from zero: ',
      articleSpan(view, against.article),
      `, ${cellDetail(against)}, one standard uncertainty of the slope ${spread(quantity, drift.u)} ${driftUnit[drift.over]}.`,
    ],
  };
}

const driftUnit = {
  'running-time': 'an hour of running',
  'clock-time': 'an hour by the clock',
  order: 'a run',
  none: '',
} as const;

/** What keeps a table from being more than indicative. */
function indicativeNote({ indicative }: Standing): MarginNote | null {
  return indicative.length === 0 ? null : listNote('Indicative only.', indicative);
}

function smallestNote(standing: Standing): MarginNote | null {
  if (standing.smallest === null) return null;
  return {
    name: 'Smallest visible difference.',
    text: [
      `${spread(standing.quantity, standing.smallest)} with these runs, all rows held against the baseline together; one difference that was claimed alone needs less.`,
    ],
  };
}

const notesNote = ({ notes }: Standing): MarginNote => listNote('Rests on.', notes.map(reasonWords));

/** A spread in SI, with its unit and without a sign: "6.0 W". */
const spread = (quantity: Standing['quantity'], si: number): string =>
  `${plusMinusText(quantity, si).replace('± ', '')} ${displayUnit(quantity) === '°C' ? 'K' : displayUnit(quantity)}`;

/** Whether the baseline kept to itself, which is asked before anything is held against it. */
function wanderNote({ wander, quantity, repeatability }: Standing): MarginNote | null {
  if (wander === null) return null;
  const own = `its ${counts(wander.runs, 'run')} scatter by ${spread(quantity, wander.s)}`;
  const others = `${repeatability === null ? 'their causes allow' : 'those of the others by'} ${spread(quantity, wander.against)}`;
  return {
    name: 'The baseline itself.',
    text: [
      wander.wandered
        ? `It wandered: ${own}, ${others}. Nothing is ranked against it.`
        : `It kept to itself: ${own}, ${others}.`,
    ],
  };
}

function daysNote({ days, quantity }: Standing): MarginNote | null {
  if (days === null) return null;
  return {
    name: 'Days.',
    text: [
      days.separated
        ? `Runs of one day are more alike than runs of two: the ${days.days} days scatter by ${spread(quantity, days.s_day)} beside the refits, which is carried.`
        : `Beside the refits the ${days.days} days add nothing that these runs show.`,
    ],
  };
}

/** The difference that does not matter, as it was declared. */
function declaredMargin(view: View, { quantity }: Standing): MarginNote | null {
  const { margins, familyLevel } = view.series;
  const margin = margins?.by.get(quantity);
  if (margins === null || margin === undefined) return null;
  return {
    name: 'Margin.',
    text: [
      `Declared on ${dateWords(margins.declared)}: ${spread(quantity, margin)} ${quantityWords(quantity)} either way does not matter. Equal within it is said where the ${numberText((1 - 2 * familyLevel) * 100, 0)} % interval lies inside (two one-sided tests), and only of data taken after that day.`,
    ],
  };
}

function trialsNote(view: View, { rows }: Standing): MarginNote | null {
  const { seed } = view.input.compared;
  if (seed === null || rows.every(({ lowest }) => lowest === null)) return null;
  return {
    name: 'By trials.',
    text: [
      'Causes were drawn once a trial for all rows together (JCGM 101), seed ',
      code(seed),
      '. The chance of lying lowest is no verdict: among equals the luckiest often has more than one half.',
    ],
  };
}
