import type { Figure } from '../ledger/figure.ts';
import { workingPath } from '../ledger/ids.ts';
import type { Working } from '../ledger/ledger.ts';
import type { Given } from '../trial/derived.ts';
import { wasSpans } from './amended.ts';
import { bothSides } from './both-sides.ts';
import { trialBlocks } from './by-trials.ts';
import { conditionWords, kindOf, quantityWords, subjectSpans } from './cite.ts';
import { givenText, numberText, plusMinusOf, uncertaintyText, valueOf, wholeOf } from './digits.ts';
import type { Block, MarginNote, Page, Section, Span } from './page.ts';
import { relationPath } from './method-path.ts';
import { rawSection } from './raw-trace.ts';
import { besideTheFigure } from './supply.ts';
import { capital, code, fold, link, plain, prose, row, section, strong, tableBlock } from './spans.ts';
import { groupBy, subjectOfId, type View } from './view.ts';

/** One page a subject and quantity; one section a condition. Reads like a solved exercise. */
export function workingPages(view: View, relationTitles: ReadonlyMap<string, string>): readonly Page[] {
  const pages = groupBy(view.figures, (figure) => workingPath(figure, view.series.id).page);
  return [...pages].map(([path, figures]) => workingPage(view, path, figures, relationTitles));
}

function workingPage(
  view: View,
  path: string,
  figures: readonly Figure[],
  relationTitles: ReadonlyMap<string, string>,
): Page {
  const [first] = figures as [Figure, ...Figure[]];
  const subject =
    first.subject.article === undefined ? subjectSpans(view, first) : [subjectOfId(first.id).replace('~', ' less ')];
  const name = plain(subject);
  return {
    kind: 'working',
    path,
    title: `${capital(quantityWords(first.quantity))} of ${name}`,
    description: `How the ${quantityWords(first.quantity)} of ${name} was found.`,
    whereabouts: [
      link(view.base, view.series.title),
      ' · ',
      link(`${view.base}ledger/#${anchorOfSubject(first.id)}`, 'ledger'),
      ' · working',
    ],
    lead: [
      'Given, relation, numbers, result, doubt: how ',
      figures.length === 1 ? wholeOf(first, view.withUs) : `these ${numberText(figures.length, 0)} figures`,
      ` of `,
      ...subject,
      figures.length === 1 ? ' was found.' : ' were found.',
    ],
    banners: [],
    series: view.series.id,
    sections: [
      ...[rawSection(view, figures)].filter((raw) => raw !== null),
      ...figures.map((figure, i) =>
        withNote(figureSection(view, figure, relationTitles), i === 0 ? besideTheFigure(view, figure) : null),
      ),
    ],
  };
}

const withNote = (section: Section, note: MarginNote | null): Section =>
  note === null ? section : { ...section, margin: [...section.margin, note] };

export const anchorOfSubject = (id: string): string => `of-${subjectOfId(id).toLowerCase().replaceAll('~', '-less-')}`;

function figureSection(view: View, figure: Figure, relationTitles: ReadonlyMap<string, string>): Section {
  const working = view.input.ledger.workings.get(figure.id);
  const conditions = [conditionWords(figure.at), fillWords(figure)].filter((words) => words !== '').join('; ');
  return section(
    workingPath(figure, view.series.id).anchor,
    conditions === '' ? capital(quantityWords(figure.quantity)) : capital(conditions),
    [
      ...(figure.kind === 'difference' ? bothSides(view, figure, { id: idOf(figure), unit: unitOfDoubt(figure) }) : []),
      figure.kind === 'value' && figure.subject.article !== undefined
        ? prose('Of ', ...subjectSpans(view, figure), '.')
        : null,
      ...givenBlocks(view, working, figure),
      ...relationBlocks(figure, working, relationTitles),
      prose(
        strong('Result'),
        ` ${figure.kind === 'difference' ? 'Δ' : ''}${kindOf(figure.quantity)?.symbol ?? ''} = `,
        wholeOf(figure, view.withUs),
        figure.separated === undefined ? '' : '; ',
        ...(figure.separated === undefined
          ? []
          : [
              { kind: 'verdict' as const, text: figure.separated ? 'separated' : 'not separated' },
              ' from zero in its family',
            ]),
        '. ',
        ...wasSpans(view, figure.id),
      ),
      ...budgetBlocks(figure, working),
      ...trialBlocks(figure, working, { id: `trials-${idOf(figure)}`, unit: unitOfDoubt(figure) }),
    ],
    [
      classNote(figure),
      inputsNote(figure),
      figure.notes.length === 0 ? null : { name: 'Rests on.', text: [], list: figure.notes.map((n) => [n]) },
    ],
  );
}

function givenBlocks(view: View, working: Working | undefined, figure: Figure): Block[] {
  if (working === undefined || working.given.length === 0) return [];
  return [
    prose(strong('Given')),
    tableBlock(
      `given-${idOf(figure)}`,
      ['symbol', 'wide quantity', 'number value', 'number one standard uncertainty', 'wide from'],
      working.given.map(({ symbol, name, value, u, unit, from }) =>
        row(symbol, name, givenText(value, u, unit), uncertaintyText(value, u, unit), sourceSpans(view, from)),
      ),
    ),
  ];
}

function relationBlocks(figure: Figure, working: Working | undefined, titles: ReadonlyMap<string, string>): Block[] {
  const title = titles.get(figure.relation);
  const steps = working?.steps ?? [];
  return [
    prose(
      strong('Relation'),
      ' ',
      title === undefined ? figure.relation.replaceAll('-', ' ') : link(relationPath(figure.relation), title),
      ...(figure.method === '' ? [] : ['; method ', code(figure.method)]),
      '.',
    ),
    ...(steps.length === 0
      ? []
      : [
          tableBlock(
            `steps-${idOf(figure)}`,
            ['wide step', 'formula', 'number value'],
            steps.map(({ says, formula, value, unit }) =>
              row(says, formula === '' ? '' : code(formula), givenText(value, null, unit)),
            ),
          ),
        ]),
  ];
}

/** Below it a share is what cancelling leaves of two equal numbers. */
const roundOff = 1e-9;

/** A doubt of a temperature is in kelvin. */
const unitOfDoubt = ({ quantity }: Figure): string => {
  const unit = kindOf(quantity)?.unit ?? '1';
  return unit === '°C' ? 'K' : unit;
};

/** Where the doubt comes from, largest first; the rest in a fold. */
export function budgetBlocks(figure: Figure, working: Working | undefined): Block[] {
  const budget = (working?.budget ?? []).filter(({ share }) => share > roundOff).sort((a, b) => b.share - a.share);
  if (budget.length === 0) return [];
  const of = (id: string, rows: typeof budget): Block =>
    tableBlock(
      id,
      [
        'wide cause',
        `number one standard uncertainty, ${unitOfDoubt(figure)}`,
        'bar share',
        'number degrees of freedom',
        'reach',
      ],
      rows.map(({ name, u, share, dof, scope }) =>
        row(
          name,
          uncertaintyText(0, Math.abs(u), '1'),
          `${numberText(share * 100, share < 0.1 ? 1 : 0)} %`,
          Number.isFinite(dof) ? numberText(dof, 0) : 'firm',
          scope.replaceAll('-', ' '),
        ),
      ),
    );
  const large = budget.slice(0, 6);
  const small = budget.slice(6);
  return [
    prose(strong('Where its doubt comes from')),
    of(`budget-${idOf(figure)}`, large),
    ...(small.length === 0
      ? []
      : [fold(`${String(small.length)} smaller causes`, of(`budget-more-${idOf(figure)}`, small))]),
  ];
}

function classNote(figure: Figure): MarginNote {
  const coverage = `${numberText(figure.coverage * 100, 0)} %`;
  return {
    name: 'How sure.',
    text: [
      `${capital(figure.class)}. `,
      figure.value === null
        ? `A bound: ${valueOf(figure)}.`
        : plusMinusOf(figure) === '—'
          ? 'It has no interval of its own.'
          : `${plusMinusOf(figure)} is half its ${coverage} interval${figure.k === null ? '' : `, k = ${numberText(figure.k, 2)}`}${dofWords(figure.dof)}.`,
    ],
  };
}

/** Beyond some two hundred the coverage factor no longer moves in its printed digits. */
const dofWords = (dof: number | null): string => {
  if (dof === null || !Number.isFinite(dof)) return '';
  return dof > 200 ? ', more than 200 degrees of freedom' : `, ${numberText(dof, 0)} degrees of freedom`;
};

/** Few inputs are named here; those of a mean or a difference stand at its runs. */
const inputsNote = ({ id, inputs }: Figure): MarginNote => ({
  name: 'Name and inputs.',
  text: [
    code(id),
    ...(inputs.length > 4 ? [`, from ${numberText(inputs.length, 0)} files; their SHA-256 stand in ledger.json.`] : []),
  ],
  ...(inputs.length > 4
    ? {}
    : { list: inputs.map(({ file, sha256 }) => [code(file), ' sha-256 ', code(`${sha256.slice(0, 8)}…`)]) }),
});

/** A difference is made of two cells, and each of its runs. */
function sourceSpans(view: View, from: Given['from']): Span[] {
  switch (from.kind) {
    case 'constant':
      return [from.text];
    case 'note':
      if (view.hidden.has(from.place.file)) return ['a note that is held back'];
      return [code(`${from.place.file}:${String(from.place.line)}`), ` `, code(from.typed)];
    case 'log':
      if (view.hidden.has(from.file)) return ['a log that is held back'];
      return [
        code(from.file),
        from.fromLine === from.toLine
          ? ` line ${String(from.fromLine)}`
          : ` lines ${String(from.fromLine)}–${String(from.toLine)}`,
        `, ${from.channel}`,
      ];
    case 'result':
      return [`${quantityWords(from.quantity)} of ${from.run}`];
    case 'figure': {
      const figure = view.figureById.get(from.id);
      if (figure === undefined) return [code(from.id)];
      const { page, anchor } = workingPath(figure, view.series.id);
      return [{ kind: 'figure', to: `${page}#${anchor}`, text: from.id, id: from.id }];
    }
  }
}

/** "3.59 L of O1 less 2.40 L of O1" */
function fillWords({ subject: { article, fill, oil, against } }: Figure): string {
  if (article === undefined) return '';
  const own = `${fill ?? ''} of ${oil ?? ''}`;
  if (against === undefined) return own;
  const other = `${against.fill} of ${against.oil}`;
  return own === other ? `both with ${own}` : `${own} less ${other}`;
}

const idOf = (figure: Figure): string => workingPath(figure, 'x').anchor.replace(/[^a-zA-Z0-9.]+/g, '-');
