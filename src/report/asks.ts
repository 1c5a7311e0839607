import { refSpan } from './amends.ts';
import { asksPath } from './asks-view.ts';
import { dateWords } from './dates.ts';
import type { Page, Section, Span } from './page.ts';
import { followed, partLink, stateOf, type Followed } from './parts-view.ts';
import { capital, countWord, counts, facts, link, listed, section } from './spans.ts';
import type { View } from './view.ts';

/** The register of questions: what was asked, by whom, in which part, and what became of it. */
export function asksPage(view: View): Page {
  const all = followed(view);
  const states = ['open', 'answered', 'handed on', 'dropped'] as const;
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
    sections: states.flatMap((state) =>
      all.filter((one) => stateOf(one) === state).map((one) => questionSection(view, one)),
    ),
  };
}

function questionSection(view: View, one: Followed): Section {
  const { question: q, asked, answered } = one;
  const state = stateOf(one);
  return {
    ...section(q.id, q.text, [
      facts([
        ['State', [state]],
        ['Put', [`${dateWords(q.raisedOn)}, by ${role(q.raisedBy)}; about ${q.kind}`]],
        asked === null ? null : ['Asked in', [partLink(view, asked)]],
        answered === null ? null : ['Answered in', answeredSpans(view, answered)],
        q.dropped === null ? null : ['Dropped', [`${dateWords(q.dropped.on)}: ${q.dropped.why}`]],
        q.handedOn === null
          ? null
          : ['Handed on', [`${dateWords(q.handedOn.on)}, to ${q.handedOn.to}: ${q.handedOn.why}`]],
      ]),
    ]),
    inIndex: `${q.id}: ${state}`,
  };
}

const role = (who: string): string =>
  /^(?:the|a|an) /i.test(who)
    ? who
    : /^house$/i.test(who)
      ? 'the house'
      : `${/^[aeiou]/i.test(who) ? 'an' : 'a'} ${who}`;

const answeredSpans = (view: View, { part, by }: NonNullable<Followed['answered']>): Span[] => [
  partLink(view, part),
  ...(by.length === 0
    ? []
    : [
        ', by ',
        ...listed(
          by.map((ref) => [refSpan(view, ref)]),
          ', ',
        ),
      ]),
];
