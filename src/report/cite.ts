import type { Conditions, Figure } from '../ledger/figure.ts';
import { cellName, figureId, litres, subjectOf, workingPath, type FigureName } from '../ledger/ids.ts';
import type { Cell } from '../trial/derived.ts';
import type { GradeKind } from '../trial/flow.ts';
import { quantityKinds, type QuantityName } from '../trial/figures.ts';
import { scales } from '../trial/grade-anchors.ts';
import { plusMinusOf, valueOf, wholeOf } from './digits.ts';
import type { Span } from './page.ts';
import { capital } from './spans.ts';
import type { View } from './view.ts';

/** A page looks a figure up and links it to its working; it makes none. */
export const figureNamed = (view: View, name: FigureName): Figure | undefined =>
  view.figureById.get(figureId(name, view.naming));

export const runFigures = (view: View, run: string, quantity: QuantityName): readonly Figure[] =>
  (view.figuresOf.get(run) ?? []).filter((figure) => figure.quantity === quantity);

/** Figures of one cell, or of its difference from another, in the order of the ledger. */
export function cellFigures(view: View, cell: Cell, quantity: QuantityName, against?: Cell): readonly Figure[] {
  const subject = subjectOf(against ? { cell, against } : { cell });
  const tilt = cell.tilt_ratio === 0;
  return (view.figuresOf.get(against ? `${cell.article}~${against.article}` : cell.article) ?? []).filter(
    (figure) =>
      figure.quantity === quantity &&
      figure.subject.oil === subject.oil &&
      figure.subject.fill === subject.fill &&
      figure.subject.against?.oil === subject.against?.oil &&
      figure.subject.against?.fill === subject.against?.fill &&
      figure.subject.campaign === subject.campaign &&
      figure.subject.against?.campaign === subject.against?.campaign &&
      (figure.at.tilt === undefined) === tilt,
  );
}

const addressOf = (view: View, figure: Figure): string => {
  const { page, anchor } = workingPath(figure, view.series.id);
  return `${page}#${anchor}`;
};

const span = (view: View, figure: Figure, text: string): Span => ({
  kind: 'figure',
  to: addressOf(view, figure),
  text,
  id: figure.id,
});

/** "95.7 ± 1.3 °C" or "> 150 min", as a link; in leads and sentences. */
export const cited = (view: View, figure: Figure): Span => span(view, figure, wholeOf(figure, view.withUs));
/** The value alone, for a column of values; its ± stands in the next. */
export const citedValue = (view: View, figure: Figure): Span => span(view, figure, valueOf(figure, view.withUs));
export const toWorking = (view: View, figure: Figure): Span => span(view, figure, 'working');
export const doubtOf = (figure: Figure): Span => plusMinusOf(figure);

const noBreak = '\u202f';
/** "60 Cel" of the ledger as a page writes it. */
export const inCelsius = (text: string): string => text.replace(' Cel', `${noBreak}°C`);

/** The class in the word of a table; the working has it whole. */
export const classWord = (figure: Figure): string =>
  ({ measured: 'measured', 'derived from measurement': 'derived', 'model estimate': 'model estimate' })[figure.class];

export const kindOf = (quantity: string): (typeof quantityKinds)[QuantityName] | undefined =>
  quantity in quantityKinds ? quantityKinds[quantity as QuantityName] : undefined;

export const quantityWords = (quantity: string): string => kindOf(quantity)?.name ?? quantity.replaceAll('-', ' ');

/** "290 wheel rpm, sump 60 °C"; empty when the figure stands without conditions. */
export function conditionWords(at: Conditions): string {
  return [
    at['wheel-speed']?.replace(' rpm', ' wheel rpm'),
    at['output-speed']?.replace(' rpm', ' output rpm'),
    at.sump === 'own' ? 'at its own temperature' : at.sump && `sump ${at.sump}`,
    at.limit && `limit ${at.limit}`,
    at.basis && (at.basis === 'level' ? 'same level' : 'same litres'),
    at.tilt && `tilt ${at.tilt}`,
    at.direction === 'down' ? 'way down' : at.direction,
    at.grade && gradeName(at.grade),
    at.band && `sump ${at.band}`,
    at.charge && `charge ${chargeWords(at.charge)}`,
    at.sample && `sample ${at.sample}`,
    at.observers && `observers ${at.observers.replace('-', ' and ')}`,
  ]
    .filter((words) => words !== undefined && words !== '')
    .join(', ')
    .replaceAll(' Cel', `${noBreak}°C`);
}

/** "P0-3" is the charge of the third refit of P0. */
const chargeWords = (charge: string): string => charge.replace(/-(\d+)$/, ', refit $1');

const gradeName = (kind: string): string => (kind in scales ? scales[kind as GradeKind].name : kind);

/** "final sump temperature", "spin power at 290 wheel rpm, sump 60 °C", "time to 95 °C", "quadratic-weighted kappa, Reach, observers 1 and 2". */
export function figureWords(figure: Pick<Figure, 'quantity' | 'at'>): string {
  if (figure.quantity === 'limit-crossing' && figure.at.limit !== undefined) {
    const { limit, ...rest } = figure.at;
    const others = conditionWords(rest);
    return `time to ${inCelsius(limit)}${others === '' ? '' : `, ${others}`}`;
  }
  if (figure.quantity === 'thermal-dose' && figure.at.band === undefined)
    return `${quantityWords(figure.quantity)}, all bands${figure.at.charge === undefined ? '' : `, ${conditionWords(figure.at)}`}`;
  if (figure.at.grade !== undefined) return `${quantityWords(figure.quantity)}, ${conditionWords(figure.at)}`;
  const own = figure.quantity === 'viscosity' || figure.quantity === 'density';
  const conditions = own ? conditionWords(figure.at).replace(/^sump /, '') : conditionWords(figure.at);
  return `${quantityWords(figure.quantity)}${conditions === '' ? '' : conditions.startsWith('at ') ? ` ${conditions}` : ` at ${conditions}`}`;
}

/** Mark and name of an article, linked to its sheet where there is one. */
export function articleSpan(view: View, id: string, text: string = articleWords(view, id)): Span {
  return {
    kind: 'article',
    mark: view.marks.get(id) ?? 0,
    text,
    to: view.articles.has(id) ? `${view.base}articles/${id}/` : null,
  };
}

/** The same where no sheet lies beside the page, as on a card. */
export const articleMark = (view: View, id: string): Span => ({
  kind: 'article',
  mark: view.marks.get(id) ?? 0,
  text: articleWords(view, id),
  to: null,
});

export const articleWords = (view: View, id: string): string => {
  const name = view.articles.get(id)?.name;
  return name === undefined ? id : `${id} ${name}`;
};

/** "P4 shroud, 2.40 L of O1, 12 % nose up" */
export const cellWords = (view: View, cell: Cell): string =>
  `${articleWords(view, cell.article)}, ${litresWords(cell)} of ${cell.oil}${tiltWords(cell)}`;

/** What parts this cell from the others of its standing: the fill, and the tilt where there is one. */
export const cellDetail = (cell: Cell): string =>
  `${litresWords(cell)}${tiltWords(cell)}${cell.campaign === undefined ? '' : `, ${cell.campaign}`}`;
export const litresWords = ({ fill_m3 }: Pick<Cell, 'fill_m3'>): string => `${litres(fill_m3)}${noBreak}L`;

export function tiltWords({ article, oil, fill_m3, tilt_ratio }: Cell): string {
  if (tilt_ratio === 0) return '';
  const level = cellName({ article, oil, fill_m3, tilt_ratio: 0 });
  const percent = cellName({ article, oil, fill_m3, tilt_ratio }).slice(level.length + 2);
  return `, ${percent.replace(' ', noBreak)} nose ${tilt_ratio > 0 ? 'up' : 'down'}`;
}

export const cellSpans = (view: View, cell: Cell): Span[] => [articleSpan(view, cell.article), `, ${cellDetail(cell)}`];

export const titled = (figure: Pick<Figure, 'quantity' | 'at'>): string => capital(figureWords(figure));

/** What a figure is of: a run, a cell, a cell less another, an oil. */
export function subjectSpans(view: View, { subject, at }: Pick<Figure, 'subject' | 'at'>): Span[] {
  const tilt = at.tilt === undefined ? '' : `, tilt ${at.tilt}`;
  if (subject.run !== undefined)
    return [
      view.runs.some(({ id }) => id === subject.run)
        ? { kind: 'link', to: `${view.base}runs/${subject.run}/`, text: subject.run }
        : subject.run,
    ];
  if (subject.article === undefined) {
    const oil = subject.oil ?? 'the series';
    return [view.oils.has(oil) ? { kind: 'link', to: `${view.base}oils/${oil}/`, text: oil } : oil];
  }
  const { against } = subject;
  const part = (article: string, fill = '', oil = ''): Span[] => [
    articleSpan(view, article),
    `, ${[fill, oil].filter((w) => w !== '').join(' of ')}`,
  ];
  return [
    ...part(subject.article, subject.fill, subject.oil),
    tilt,
    ...(against ? [' less ', ...part(against.article, against.fill, against.oil)] : []),
  ].filter((span) => span !== '');
}
