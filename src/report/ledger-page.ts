import type { Figure } from '../ledger/figure.ts';
import { citedValue, classWord, doubtOf, figureWords } from './cite.ts';
import { numberText } from './digits.ts';
import type { Block, Page, Section } from './page.ts';
import { code, counts, fold, link, row, section, tableBlock } from './spans.ts';
import { groupBy, subjectOfId, type View } from './view.ts';
import { anchorOfSubject } from './working.ts';

/** Every figure of the series, by what it is of. */
export function ledgerPage(view: View): Page {
  const differences = view.figures.filter(({ kind }) => kind === 'difference');
  const values = view.figures.filter(({ kind }) => kind === 'value');
  const ofRuns = values.filter(({ subject }) => subject.run !== undefined);
  const others = values.filter(({ subject }) => subject.run === undefined);
  return {
    kind: 'ledger',
    path: `${view.base}ledger/`,
    title: 'Ledger',
    description: `The one home of all figures of ${view.series.title}.`,
    whereabouts: [link(view.base, view.series.title), ' · ledger'],
    lead: [
      `${numberText(view.figures.length, 0)} figures, each with a name that stays and a working. No page of the series shows a number that is not here.`,
    ],
    banners: [],
    series: view.series.id,
    sections: [
      part('differences', 'Differences', differences),
      part('articles-and-oils', 'Articles and oils', others),
      part('runs', 'Runs', ofRuns),
      section('data', 'As data', [
        {
          kind: 'prose',
          text: [
            'The same figures for machines: ',
            link(`${view.base}ledger.json`, 'ledger.json'),
            `. Method version ${view.input.ledger.methodVersion}.`,
          ],
        },
      ]),
    ].filter((s) => s !== null),
  };

  function part(id: string, heading: string, figures: readonly Figure[]): Section | null {
    if (figures.length === 0) return null;
    const groups = [...groupBy(figures, (figure) => subjectOfId(figure.id))];
    return section(
      id,
      heading,
      groups.map(([subject, list]) =>
        fold(`${subject.replace('~', ' less ')}: ${counts(list.length, 'figure')}`, subjectTable(subject, list)),
      ),
      [
        {
          name: 'Find one.',
          text: [`${numberText(figures.length, 0)} figures of ${numberText(groups.length, 0)} subjects.`],
        },
      ],
    );
  }

  function subjectTable(subject: string, figures: readonly Figure[]): Block {
    const id = anchorOfSubject(`${subject}/`);
    return tableBlock(
      id,
      ['wide figure', 'number value', 'number 95 %', 'class', 'name'],
      figures.map((figure) =>
        row(figureWords(figure), citedValue(view, figure), doubtOf(figure), classWord(figure), code(figure.id)),
      ),
    );
  }
}
