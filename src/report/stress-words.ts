import { conditionsOf } from '../ledger/ids.ts';
import type { Choice, Stressed } from '../trial/stress.ts';
import { inCelsius } from './cite.ts';
import { numberText } from './digits.ts';
import type { Span } from './page.ts';
import { listed, verdict } from './spans.ts';
import type { View } from './view.ts';

/** A choice as its row says it: "at 80 °C", "without S-07", "drift left in". */
export function choiceWords({ naming, series }: View, choice: Choice): string {
  const { tolerance } = series;
  switch (choice.kind) {
    case 'sump':
      return choice.sump_K === 'own'
        ? 'each at its own temperature'
        : `at ${inCelsius(conditionsOf({ sump_K: choice.sump_K }, null, naming).sump ?? '')}`;
    case 'limit':
      return `to ${inCelsius(conditionsOf({ limit_K: choice.limit_K }, null, naming).limit ?? '')}`;
    case 'fill':
      return `filled to the ${choice.basis}`;
    case 'drift':
      return choice.over === 'none' ? 'drift left in' : 'drift taken out over running time';
    case 'ambient':
      return `ambient within ${numberText(tolerance.ambient_K * choice.times, 1)} K`;
    case 'airflow':
      return `airflow within ${numberText(tolerance.airflow_m_s * choice.times, 2)} m/s`;
    case 'causes':
      return `every cause ${choice.times < 1 ? 'thinner' : 'wider'}, × ${numberText(choice.times, 1)}`;
    case 'put-back':
      return `what was excluded of ${choice.run} put back`;
    case 'without':
      return `without ${choice.run}`;
  }
}

/** "holds in 44 of 46 other choices" */
export const holdsText = ({ holds, of }: Stressed): string =>
  of === 0
    ? 'no other choice could be tried'
    : `holds in ${numberText(holds, 0)} of ${numberText(of, 0)} other ${of === 1 ? 'choice' : 'choices'}`;

/** The choices that break it, with the word each gives: "without H-01 (shown against)". */
export function breaksSpans(view: View, { word, rows }: Stressed): Span[] {
  const broken = rows.filter((row) => row.word !== word);
  if (broken.length === 0) return [];
  return listed(broken.map((row) => [`${choiceWords(view, row.choice)} (`, verdict(row.word), ')']));
}
