import type { JudgedClause } from '../trial/compared.ts';
import { claimStamp } from './amended.ts';
import { endsOf, sizeText } from './claim-ends.ts';
import { changeSpans, putSpans, ruleSpans, saysSpans } from './claim-words.ts';
import { clauseEffect, clauseFigure, type HeldClaim } from './claims-view.ts';
import { cited } from './cite.ts';
import { dateWords } from './dates.ts';
import { numberText, quantityText } from './digits.ts';
import { largestCauses } from './doubt.ts';
import type { Block, MarginNote, Section, Span } from './page.ts';
import { runLink } from './run-parts.ts';
import { capital, counts, facts, link, listNote, listed, plain, prose, section, strong, verdict } from './spans.ts';
import { stressSpans } from './stress.ts';
import { besideTheCells, isLoss } from './supply.ts';
import type { View } from './view.ts';

/** One claim whole: its word, its rule, what was found, what had to match, and what would have changed the word. */
export function claimSection(view: View, held: HeldClaim): Section {
  const { claim, judged } = held;
  const several = judged.clauses.length > 1;
  return {
    ...section(
      claim.id,
      claim.sentence,
      [
        prose(strong(claim.id), ' ', verdict(judged.word), '. ', ...putSpans(view, held)),
        several
          ? prose(`It says ${counts(judged.clauses.length, 'thing')}, and holds only where all of them do.`)
          : null,
        ...judged.clauses.map((clause, i) => clauseFacts(view, clause, judged.clauses[i - 1])),
        stressFacts(view, claim.id),
      ],
      [
        claimStamp(view, claim.id),
        overrideNote(view, held),
        lossNote(view, held),
        matchNote(view, held),
        openNote(view, held),
        sureNote(view, held),
      ],
    ),
    inIndex: `${claim.id}: ${judged.word}`,
  };
}

function stressFacts(view: View, claim: string): Block | null {
  const said = stressSpans(view, claim);
  return said.length === 0 ? null : facts([['Other choices', said]]);
}

/** A clause with the rule of the one before it does not repeat it. */
function clauseFacts(view: View, judged: JudgedClause, before: JudgedClause | undefined): Block {
  const { clause, inFamily, why } = judged;
  const rule = ruleSpans(view, clause);
  const runs = runSpans(view, judged);
  const other = [...changeSpans(judged), ...refitSpans(judged)];
  return facts([
    ['It says', saysSpans(view, clause)],
    ['Found', foundSpans(view, judged)],
    before !== undefined && plain(ruleSpans(view, before.clause)) === plain(rule) ? null : ['Rule', rule],
    why.length === 0 ? null : ['Why it cannot be told', [`${capital(why.join('; '))}.`]],
    runs.length === 0 ? null : ['Runs', [...runs, '.']],
    other.length === 0 ? null : ['What would change it', other],
    inFamily === null
      ? null
      : [
          'As one of a family',
          [
            verdict(inFamily),
            ', when all claims that were put before their data share one error rate (Holm). The word above is by its own interval.',
          ],
        ],
  ]);
}

/** "−9.5 ± 1.8 K, from −11.3 K to −7.7 K: shown" */
function foundSpans(view: View, judged: JudgedClause): Span[] {
  const { clause, interval, word } = judged;
  const figure = clauseFigure(view, clause);
  if (interval === null) return [verdict(word), '.'];
  const { fromTo } = endsOf(clause, interval);
  return [...(figure === undefined ? [] : [cited(view, figure), ', ']), `from ${fromTo}: `, verdict(word), '.'];
}

/** Runs of the one and of the other; those that are held back are named nowhere. */
function runSpans(view: View, { clause, runs }: JudgedClause): Span[] {
  const effect = clauseEffect(view, clause);
  const named = (ids: readonly string[]): Span[][] =>
    ids.filter((id) => view.runs.some((run) => run.id === id)).map((id) => [runLink(view, id)]);
  const sides = effect === undefined ? [runs] : [effect.runs, effect.againstRuns];
  return sides
    .map(named)
    .filter((side) => side.length > 0)
    .flatMap((side, i) => [...(i === 0 ? [] : [' against ']), ...listed(side)]);
}

/** What the claim itself names is its subject; the rest has to be alike within the tolerances of the series. */
function matchWords(view: View, { clause }: JudgedClause): string {
  const { subject, against } = clause;
  const { tolerance } = view.series;
  const subjects = [
    subject.article === against.article ? null : 'article',
    subject.oil === against.oil ? null : 'oil',
    Math.abs(subject.fill_m3 - against.fill_m3) <= tolerance.fill_m3 ? null : 'litres',
    subject.tilt_ratio === against.tilt_ratio ? null : 'tilt',
  ].filter((name) => name !== null);
  const loaded = [
    `ambient within ${quantityText(tolerance.ambient_K, 'K', 1, view.withUs)}`,
    `airflow within ${quantityText(tolerance.airflow_m_s, 'm/s', 2, view.withUs)}`,
    `speed within ${numberText(tolerance.outputSpeed_ratio * 100, 1)} %`,
    'power out',
  ];
  const basis = clauseEffect(view, clause)?.basis;
  const alike = ['rig state', 'rotation', ...(clause.quantity === 'spin-power' ? [] : loaded)];
  return [
    capital(listedWords(alike)),
    subjects.length === 0 ? '' : `; not ${listedWords(subjects)}, which the claim is about`,
    basis === undefined || basis === 'named by the claim' ? '' : ` (${basis})`,
  ].join('');
}

const listedWords = (words: readonly string[]): string => plain(listed(words.map((word) => [word])));

/** What these runs could just have separated, and how many would tell what was found from the threshold. */
function refitSpans({ clause, smallest, needed }: JudgedClause): Span[] {
  const refits = needed.map(({ chance, refits: n }): Span[] => [
    `${n === null ? 'no thousand would do' : numberText(n, 0)} for a chance of ${numberText(chance * 100, 0)} %`,
  ]);
  return [
    smallest === null ? '' : ` These runs could just have separated ${sizeText(clause.quantity, smallest)}.`,
    ...(refits.length === 0
      ? []
      : [
          ' If what was found is the truth, refits of each that would tell it from the threshold: ',
          ...listed(refits),
          '.',
        ]),
  ].filter((span) => span !== '');
}

/** A word that somebody wants instead stands beside the computed one; initials are the house's own business. */
function overrideNote(view: View, { claim, judged }: HeldClaim): MarginNote | null {
  const { override } = claim;
  if (override === null) return null;
  return {
    name: 'Another word.',
    code: 'override',
    text: [
      `${view.house ? override.by : 'The house'} would say `,
      verdict(override.word),
      ` (${dateWords(override.on)}): ${override.why.replace(/[.\s]+$/, '')}. By the rule it is `,
      verdict(judged.word),
      '.',
    ],
  };
}

/** Less loss may mean less oil at the pinion: both cells of a claim about loss are shown with it. */
const lossNote = (view: View, { judged }: HeldClaim): MarginNote | null =>
  besideTheCells(
    view,
    judged.clauses
      .filter(({ clause }) => isLoss(clause.quantity) || clause.quantity === 'makes-less-share')
      .flatMap(({ clause }) => [clause.against, clause.subject]),
  );

/** One remark for all clauses that ask for the same. */
function matchNote(view: View, { judged }: HeldClaim): MarginNote {
  const remarks = judged.clauses.map((clause) => matchWords(view, clause));
  return listNote('Had to match.', [...new Set(remarks)]);
}

function sureNote(view: View, { judged }: HeldClaim): MarginNote | null {
  const [first] = judged.clauses;
  const figure = first && clauseFigure(view, first.clause);
  const causes = largestCauses(view, figure);
  return causes === null ? null : { name: 'How sure.', text: [`Of the doubt in what was found, ${causes}.`] };
}

/** What the checks found on the runs that a claim rests on, and nobody has settled. */
function openNote(view: View, { judged }: HeldClaim): MarginNote | null {
  const runs = new Set(judged.clauses.flatMap((clause) => clause.runs));
  const found = view.findings.filter(({ about }) => about?.run !== undefined && runs.has(about.run));
  if (found.length === 0) return null;
  return {
    name: 'Open on its runs.',
    text: [],
    list: found.map(({ about, says }) => [link(`${view.base}checks/`, about?.run ?? ''), `: ${says}`]),
  };
}
