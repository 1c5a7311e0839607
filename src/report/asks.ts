import { refSpan } from './amends.ts';
import { asksPath } from './asks-view.ts';
import { dateWords } from './dates.ts';
import type { Page, Section, Span, TableRow } from './page.ts';
import { followed, partLink, stateOf, type Followed } from './parts-view.ts';
import { capital, counts, countWord, link, listed, row, section, tableBlock } from './spans.ts';
import type { View } from './view.ts';

/** The register of questions: what was asked, by whom, in which part, and what became of it. */
export function asksPage(view: View): Page {
  const all = followed(view);
  const open = all.filter((one) => stateOf(one) === 'open').length;
  return {
    kind: 'asks',
    path: asksPath(view),
    title:
      open === 0
        ? `${capital(counts(all.length, 'question'))}, and none is open`
        : `${capital(countWord(open))} of ${counts(all.length, 'question')} ${open === 1 ? 'is' : 'are'} open`,
    description: `What was asked in ${view.series.title}, and what became of it.`,
    whereabouts: [link(view.base, view.series.title), ' · asks'],
    lead: [
      'A question stays open until a part answers it, or the house says why it will not. It is carried from part to part by itself. What nobody ran stands under ',
      link(`${view.base}not-looked-at/`, 'not looked at'),
      '.',
    ],
    banners: [],
    series: view.series.id,
    sections: states.flatMap((state): Section[] => {
      const some = all.filter((one) => stateOf(one) === state);
      return some.length === 0 ? [] : [stateSection(view, state, some)];
    }),
  };
}

const states = ['open', 'answered', 'handed on', 'dropped'] as const;

const stateSection = (view: View, state: (typeof states)[number], some: readonly Followed[]): Section =>
  section(state.replace(' ', '-'), capital(state), [
    tableBlock(
      `asks-${state.replace(' ', '-')}`,
      ['id', 'wide question', 'put', 'asked in', `wide ${becameHead[state]}`],
      some.map((one): TableRow => ({
        ...row(
          one.question.id,
          one.question.text,
          `${dateWords(one.question.raisedOn)}, by ${role(one.question.raisedBy)}`,
          one.asked === null ? 'no part yet' : partLink(view, one.asked),
          becameOf(view, one),
        ),
        anchor: one.question.id,
      })),
    ),
  ]);

const becameHead = {
  open: 'what it is about',
  answered: 'answered in',
  'handed on': 'to whom, and why',
  dropped: 'why',
} as const;

function becameOf(view: View, { question: q, answered }: Followed): Span[] {
  if (answered !== null)
    return [
      partLink(view, answered.part),
      ...(answered.by.length === 0
        ? []
        : [
            ', by ',
            ...listed(
              answered.by.map((ref) => [refSpan(view, ref)]),
              ', ',
            ),
          ]),
    ];
  if (q.dropped !== null) return [`${dateWords(q.dropped.on)}: ${q.dropped.why}`];
  if (q.handedOn !== null) return [`${dateWords(q.handedOn.on)}, to ${q.handedOn.to}: ${q.handedOn.why}`];
  return [q.kind === 'other' ? 'none of flow, loss, heat, cost and wear' : q.kind];
}

const role = (who: string): string =>
  /^(?:the|a|an) /i.test(who)
    ? who
    : /^house$/i.test(who)
      ? 'the house'
      : `${/^[aeiou]/i.test(who) ? 'an' : 'a'} ${who}`;
