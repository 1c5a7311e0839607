import { doneOf } from '../compare/plan-done.ts';
import { asksPath, questionLink } from './asks-view.ts';
import { articleSpan, cellWords } from './cite.ts';
import { claimPath, claimsOf } from './claims-view.ts';
import { numberText } from './digits.ts';
import type { Block, Page, Section, Span } from './page.ts';
import { followed, stateOf } from './parts-view.ts';
import { capital, counts, link, listOf, row, section, tableBlock, verdict } from './spans.ts';
import type { View } from './view.ts';

export const notLookedAtPath = (view: View): string => `${view.base}not-looked-at/`;

/** What the plan, a claim or a question names and no run covers; nobody lists it by hand. */
export function notLookedAtPage(view: View): Page {
  const parts = [openPlan(view), unjudged(view), unanswered(view), unrun(view), said(view)].filter(
    (part) => part !== null,
  );
  const all = parts.reduce((sum, { n }) => sum + n, 0);
  return {
    kind: 'not-looked-at',
    path: notLookedAtPath(view),
    title: all === 0 ? 'Nothing that was named is missing' : `${capital(counts(all, 'thing'))} that no run answers`,
    description: `What ${view.series.title} names and did not look at.`,
    whereabouts: [link(view.base, view.series.title), ' · not looked at'],
    lead: [
      'What the plan, a claim or a question of this series names and no run covers. Not tested is no result, neither way. The stock objections have ',
      link(`${view.base}usual-objections/`, 'a page of their own'),
      '.',
    ],
    banners: [],
    series: view.series.id,
    sections: parts.map(({ section: of }) => of),
  };
}

interface Missing {
  readonly n: number;
  readonly section: Section;
}

const missing = (n: number, id: string, heading: string, block: Block): Missing | null =>
  n === 0 ? null : { n, section: section(id, heading, [block]) };

function openPlan(view: View): Missing | null {
  const cells = (view.plan?.cells ?? [])
    .filter(({ article, oil }) => view.articles.has(article) && view.oils.has(oil))
    .map((cell) => ({ cell, done: doneOf(cell, view.input.derived.values(), view.series) }))
    .filter(({ cell, done }) => done < cell.wanted);
  return missing(
    cells.length,
    'plan',
    'Planned, and not run as often as planned',
    tableBlock(
      'plan-open',
      ['trial', 'wide article, fill and oil', 'number wanted', 'number that count'],
      cells.map(({ cell, done }) =>
        row(cell.trial, cellWords(view, cell), numberText(cell.wanted, 0), numberText(done, 0)),
      ),
    ),
  );
}

function unjudged(view: View): Missing | null {
  const held = claimsOf(view).filter(({ judged }) => judged.word === 'cannot tell');
  return missing(
    held.length,
    'claims',
    'Claims that these runs cannot judge',
    listOf(
      held.map((one): Span[] => [
        link(claimPath(view, one), one.claim.id),
        `: ${one.claim.sentence} `,
        verdict('cannot tell'),
        '.',
      ]),
    ),
  );
}

function unanswered(view: View): Missing | null {
  const open = followed(view).filter((one) => stateOf(one) !== 'answered');
  return missing(
    open.length,
    'questions',
    'Questions without an answer',
    listOf(
      open.map((one): Span[] => {
        const { question: q } = one;
        const end = q.dropped ?? q.handedOn;
        return [
          questionLink(view, q),
          ` ${q.text} `,
          end === null
            ? link(asksPath(view), 'Open')
            : `${capital(stateOf(one))}${q.handedOn === null ? '' : ` to ${q.handedOn.to}`}: ${end.why}`,
          '.',
        ];
      }),
    ),
  );
}

/** Articles and oils that have a sheet and no run that counts. */
function unrun(view: View): Missing | null {
  const runs = [...view.input.derived.values()].filter(({ leftOut }) => leftOut === null);
  const articles = [...view.articles.keys()].filter((id) => !runs.some(({ cell }) => cell.article === id));
  const oils = [...view.oils.keys()].filter((id) => !runs.some(({ cell }) => cell.oil === id));
  return missing(
    articles.length + oils.length,
    'sheets',
    'On a sheet, and never run',
    listOf([
      ...articles.map((id): Span[] => [articleSpan(view, id), '.']),
      ...oils.map((id): Span[] => [link(`${view.base}oils/${id}/`, `${id} ${view.oils.get(id)!.name}`), '.']),
    ]),
  );
}

const said = (view: View): Missing | null =>
  missing(
    view.series.notTested.length,
    'said',
    'What the series says that it does not look at',
    listOf(view.series.notTested.map((text): Span[] => [`${capital(text)}.`])),
  );
