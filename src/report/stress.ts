import type { Choice, StressTable } from '../trial/stress.ts';
import { claimPath, claimsOf } from './claims-view.ts';
import { articleWords, cellDetail, cellSpans, conditionWords, quantityWords } from './cite.ts';
import { cellName, conditionsOf } from '../ledger/ids.ts';
import type { Standing } from '../trial/compared.ts';
import type { At } from '../trial/derived.ts';
import { numberText } from './digits.ts';
import type { Block, MarginNote, Page, Section, Span } from './page.ts';
import { capital, counts, countWord, link, prose, row, section, tableBlock, verdict } from './spans.ts';
import { breaksSpans, choiceWords, holdsText } from './stress-words.ts';
import { groupBy, type View } from './view.ts';

export const stressPath = (view: View): string => `${view.base}stress/`;

type ClaimRow = StressTable['claims'][number];
type StepRow = StressTable['steps'][number];

/** Claims that the reader sees, under every other choice. */
export const stressedClaims = (view: View): readonly ClaimRow[] => {
  const seen = new Set(claimsOf(view).map(({ claim }) => claim.id));
  return view.input.stress.claims.filter(({ claim }) => seen.has(claim));
};

export const stressedSteps = (view: View): readonly StepRow[] =>
  view.input.stress.steps.filter(({ step }) => view.articles.has(step.cell.article) && view.oils.has(step.cell.oil));

export const hasStress = (view: View): boolean => stressedClaims(view).length + stressedSteps(view).length > 0;

/** Every word of the series under each other choice that somebody could defend, one choice at a time. */
export function stressPage(view: View): Page {
  const [claims, steps] = [stressedClaims(view), stressedSteps(view)];
  return {
    kind: 'stress',
    path: stressPath(view),
    title: titleOf(claims, steps),
    description: `Claims and steps of the standing of ${view.series.title}, under every other choice that could be tried.`,
    whereabouts: [link(view.base, view.series.title), ' · stress table'],
    lead: [
      'Another limit, temperature or fill, a tolerance halved or doubled, drift left in, causes thinner or wider, one run left out: each choice is made otherwise, one at a time, and every word is worked out again.',
    ],
    banners: [],
    series: view.series.id,
    sections: [
      switchesSection(view, claims, steps),
      claims.length === 0 ? null : claimsSection(view, claims),
      claims.length === 0 ? null : wholeSection(view, claims),
      ...stepSections(view, steps),
    ].filter((s) => s !== null),
  };
}

function titleOf(claims: readonly ClaimRow[], steps: readonly StepRow[]): string {
  const rows = claims.length > 0 ? claims : steps;
  const firm = rows.filter(({ holds, of }) => holds === of).length;
  const what = claims.length > 0 ? 'claim' : 'step';
  if (firm === rows.length) return `Every ${what} keeps its word under every other choice`;
  if (firm === 0) return `No ${what} keeps its word under every other choice`;
  return `${capital(countWord(firm))} of ${counts(rows.length, what)} ${firm === 1 ? 'keeps its' : 'keep their'} word under every other choice`;
}

/**
 * Switches for several choices at once, from the same data. Not where something of it is held back from the reader: the words
 * would need it, and may not carry it.
 */
function switchesSection(view: View, claims: readonly ClaimRow[], steps: readonly StepRow[]): Section | null {
  const { input } = view.input.stress;
  const seen = new Set(view.runs.map(({ id }) => id));
  const hidden = input.runs.some(({ run, cell }) => !seen.has(run) || !view.articles.has(input.cells[cell]!.article));
  if (hidden) return null;
  const shown = new Set(claims.map(({ claim }) => claim));
  const choices = new Map(
    [...claims, ...steps].flatMap(({ rows }) => rows.map(({ choice }) => [JSON.stringify(choice), choice] as const)),
  );
  return section(
    'several',
    'Several choices at once',
    [
      {
        kind: 'stress',
        stress: {
          input: { ...input, claims: input.claims.filter(({ id }) => shown.has(id)) },
          choices: [...choices.values()].map((choice) => ({ choice, text: choiceWords(view, choice) })),
          claims: [...shown],
          steps: steps.map(({ step }) => ({ step, text: stepText(view, step) })),
        },
      },
    ],
    [
      {
        name: 'Your own choices.',
        text: [
          'The words are worked out here, in this page, by the rule that the site was made with. The address keeps the choices: copy it to show somebody.',
        ],
      },
    ],
  );
}

const stepText = (view: View, { quantity, cell }: StepRow['step']): string =>
  `${capital(quantityWords(quantity))}, ${articleWords(view, cell.article)}, ${cellDetail(cell)}${cell.oil === view.series.baseline.oil ? '' : `, ${cell.oil}`}`;

function claimsSection(view: View, claims: readonly ClaimRow[]): Section {
  return section(
    'claims',
    'Claims',
    [
      tableBlock(
        'stress-claims',
        ['claim', 'word', 'number holds in', 'wide otherwise'],
        claims.map((one) => row(claimLink(view, one), verdict(one.word), holdsCount(one), [...breaksSpans(view, one)])),
      ),
    ],
    [
      {
        name: 'One at a time.',
        text: [
          'Nothing else is changed with a choice. A choice that has nothing to do with a word, or that was not run, is not counted. Intervals here are the linear ones, so that all choices are held to one rule.',
        ],
      },
    ],
  );
}

/** Choices down, claims across: what each gives. */
function wholeSection(view: View, claims: readonly ClaimRow[]): Section {
  const key = (choice: Choice): string => JSON.stringify(choice);
  const choices = new Map(claims.flatMap(({ rows }) => rows.map(({ choice }) => [key(choice), choice] as const)));
  const order = [...choices].sort(([, a], [, b]) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind));
  const words = claims.map(({ rows }) => new Map(rows.map(({ choice, word }) => [key(choice), word])));
  return section('whole', 'Choice by choice', [
    prose('A dash: the choice has nothing to do with the claim. A point: the word stays.'),
    tableBlock(
      'stress-choices',
      ['wide other choice', ...claims.map(({ claim }) => claim)],
      order.map(([name, choice]) =>
        row(
          choiceWords(view, choice),
          ...claims.map(({ word }, i): Span => {
            const other = words[i]!.get(name);
            return other === undefined ? '—' : other === word ? '·' : verdict(other);
          }),
        ),
      ),
    ),
  ]);
}

const kinds: readonly Choice['kind'][] = ['sump', 'limit', 'fill', 'drift', 'ambient', 'airflow', 'causes', 'put-back', 'without']; // prettier-ignore

function stepSections(view: View, steps: readonly StepRow[]): Section[] {
  const groups = groupBy(steps, ({ step }) => step.quantity);
  return [...groups].map(([quantity, list]) => {
    const [first] = list;
    const at = first === undefined ? '' : conditionWords(conditionsOf(first.step.at, null, view.naming));
    const block: Block = tableBlock(
      `stress-${quantity}`,
      ['wide article and fill', 'oil', 'against the baseline', 'number holds in', 'wide otherwise'],
      list.map((one) =>
        row(
          cellSpans(view, one.step.cell),
          one.step.cell.oil,
          verdict(one.word),
          holdsCount(one),
          breaksSpans(view, one),
        ),
      ),
    );
    return section(quantity, capital(`${quantityWords(quantity)}${at === '' ? '' : `, ${at}`}`), [block]);
  });
}

const holdsCount = ({ holds, of }: { readonly holds: number; readonly of: number }): string =>
  of === 0 ? '—' : `${numberText(holds, 0)} of ${numberText(of, 0)}`;

function claimLink(view: View, { claim }: ClaimRow): Span {
  const held = claimsOf(view).find((one) => one.claim.id === claim);
  return held === undefined ? claim : link(claimPath(view, held), claim);
}

/** What stands with a claim on its own page: "holds in 44 of 46 other choices; not without H-01 (shown against)." */
export function stressSpans(view: View, claim: string): Span[] {
  const one = stressedClaims(view).find((each) => each.claim === claim);
  if (one === undefined || one.of === 0) return [];
  const broken = breaksSpans(view, one);
  return [
    link(`${stressPath(view)}#claims`, capital(holdsText(one))),
    ...(broken.length === 0 ? ['.'] : ['; not ', ...broken, '.']),
  ];
}

/** What stands beside a standing: in how many other choices each row keeps its word. Null where none was tried of it. */
export function stressNote(view: View, standing: Standing): MarginNote | null {
  const steps = stressedSteps(view).filter(
    ({ step, of }) =>
      of > 0 &&
      step.quantity === standing.quantity &&
      atName(view, step.at) === atName(view, standing.at) &&
      standing.rows.some(({ cell }) => cellName(cell) === cellName(step.cell)),
  );
  if (steps.length === 0) return null;
  return {
    name: 'Under other choices.',
    text: ['Each row keeps its word in so many: '],
    list: [
      ...steps.map(({ step, holds, of }) => [
        `${step.cell.article}, ${cellDetail(step.cell)}: ${numberText(holds, 0)} of ${numberText(of, 0)}`,
      ]),
      [link(`${stressPath(view)}#${standing.quantity}`, 'which ones do not')],
    ],
  };
}

const atName = (view: View, at: At): string => JSON.stringify(conditionsOf(at, null, view.naming));
