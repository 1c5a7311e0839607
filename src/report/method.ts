import { methods, type Method } from '../derive/methods.ts';
import type { Chapter } from '../physics/all.ts';
import { today } from '../physics/relation.ts';
import { methodVersions } from '../trial/method.ts';
import { numberText } from './digits.ts';
import { chapterPath, relationPath } from './method-path.ts';
import { methodText } from './method-text.ts';
import type { Page, Section } from './page.ts';
import { capital, counts, facts, link, listed, prose, section } from './spans.ts';

/** What figures are made with: the way in words, the rules, and the way to every relation. */
export function methodPage(chapters: readonly Chapter[]): Page {
  const relations = chapters.flatMap((chapter) => chapter.relations);
  const all = relations.flatMap((relation) => today(relation));
  const published = all.filter(({ seen }) => seen === 'published').length;
  const agree = all.filter(({ agrees }) => agrees).length;
  return {
    kind: 'method',
    path: 'method/',
    title: 'Method',
    description: 'How figures are found: methods in words, relations with range, source and checks.',
    whereabouts: ['The book · method'],
    lead: [
      relations.length === 0
        ? 'How figures are found, from the raw file to the standing.'
        : `How figures are found, from the raw file to the standing. ${capital(counts(relations.length, 'relation'))} ${relations.length === 1 ? 'is' : 'are'} held to ${counts(all.length, 'check')}, ${counts(published, 'of them printed', 'of them printed')} in a text that was read; ${agree === all.length ? 'all agree' : `${numberText(agree, 0)} agree`} today.`,
    ],
    banners: [],
    series: null,
    sections: [
      ...methodText,
      rules(),
      versions(),
      ...methods.map(ruleSection),
      ...(relations.length === 0 ? [] : [contents(chapters)]),
    ],
  };
}

const rules = (): Section =>
  section('rules', 'Rules of reduction', [
    prose('Steps that are a rule and not a published relation.'),
    prose(
      ...listed(
        methods.map((m) => [link(relationPath(m.id), m.title)]),
        ', ',
      ),
      '.',
    ),
  ]);

const versions = (): Section =>
  section(
    'versions',
    'Versions of the method',
    [
      prose('Older versions stay runnable: method in the note of a series builds an old table again as it was.'),
      facts(methodVersions.map(({ version, what }) => [`Version ${version}`, [what]])),
    ],
    [
      {
        name: 'Beside, not over.',
        text: ['Where a part was pinned under another version it shows then and now, with that as the reason.'],
      },
    ],
  );

const ruleSection = (m: Method): Section => ({
  ...section(
    m.id,
    m.title,
    [{ kind: 'formula', latex: m.formula.latex, plain: m.formula.plain }, prose(m.says)],
    [{ name: 'Source.', text: [m.source] }],
  ),
  inIndex: null,
});

const contents = (chapters: readonly Chapter[]): Section =>
  section(
    'relations',
    'Relations',
    [
      prose(
        'Each chapter shows its relations with formula, range, source and how its checks stand today. Outside its range a relation still gives a figure, and the figure says so. ',
        link(sourcesPath, 'All sources'),
        ' stand on one page, and ',
        link(notModelledPath, 'what cannot be reckoned honestly'),
        ' on another.',
      ),
      facts(
        chapters.map(({ id, title, relations }) => [
          title,
          [
            link(chapterPath(id), 'the chapter'),
            ': ',
            ...listed(
              relations.map((relation) => [link(relationPath(relation.id), relation.title)]),
              ', ',
            ),
          ],
        ]),
      ),
    ],
    [
      {
        name: 'Unverified.',
        text: [
          'A relation that carries this word was recalled and not found again. It is never used unless asked for.',
        ],
      },
    ],
  );

export const sourcesPath = 'method/sources/';
export const notModelledPath = 'method/not-modelled/';
