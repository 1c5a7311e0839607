import { methods, type Method } from '../derive/methods.ts';
import { today, type Relation } from '../physics/relation.ts';
import { sources, type Reference } from '../physics/sources.ts';
import { numberText, rangeText } from './digits.ts';
import { methodText } from './method-text.ts';
import type { Block, Page, Section } from './page.ts';
import { capital, counts, facts, link, listed, prose, row, section, tableBlock } from './spans.ts';

/** What figures are made with: the way in words, then every relation with its range, its source and how its checks stand today. */
export function methodPage(chapters: readonly Chapter[]): Page {
  const relations = chapters.flatMap((chapter) => chapter.relations);
  const checked = relations.map((relation) => ({ relation, checks: today(relation) }));
  const all = checked.flatMap(({ checks }) => checks);
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
      ...methods.map(ruleSection),
      ...(relations.length === 0 ? [] : [contents(chapters)]),
      ...checked.map(({ relation, checks }) => relationSection(relation, checks)),
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

const ruleSection = (m: Method): Section => ({
  ...section(
    m.id,
    m.title,
    [{ kind: 'formula', latex: m.formula.latex, plain: m.formula.plain }, prose(m.says)],
    [{ name: 'Source.', text: [m.source] }],
  ),
  inIndex: null,
});

export const relationPath = (id: string): string => `method/#${id}`;

interface Chapter {
  readonly title: string;
  readonly relations: readonly Relation[];
}

const contents = (chapters: readonly Chapter[]): Section =>
  section(
    'relations',
    'Relations',
    [
      prose('Outside its range a relation still gives a figure, and the figure says so.'),
      facts(
        chapters.map(({ title, relations }) => [
          title,
          listed(
            relations.map((relation) => [link(relationPath(relation.id), relation.title)]),
            ', ',
          ),
        ]),
      ),
    ],
    [{ name: 'Grades.', text: [`${capital(Object.values(grades).join('; '))}.`] }],
  );

const grades: Readonly<Record<Relation['grade'], string>> = {
  V2: 'seen in two independent places',
  V1: 'seen in one place',
  VC: 'recalled, and confirmed by numbers',
  U: 'unverified, and never used unless asked for',
};

function relationSection(relation: Relation, checks: ReturnType<typeof today>): Section {
  const whole = section(
    relation.id,
    relation.title,
    [
      { kind: 'formula', latex: relation.formula.latex, plain: relation.formula.plain },
      symbolTable(relation),
      checks.length === 0
        ? prose('No check against an outside source is held for it.')
        : checkTable(relation.id, checks),
    ],
    [
      { name: 'Source.', text: [sourceWords(sources[relation.source])] },
      { name: 'Range.', text: [rangeWords(relation)] },
      { name: 'Grade.', text: [`${capital(grades[relation.grade])}.`] },
    ],
  );
  return { ...whole, inIndex: null };
}

const symbolTable = (relation: Relation): Block =>
  relation.symbols.length === 0
    ? facts([])
    : tableBlock(
        `${relation.id}-symbols`,
        ['symbol', 'wide quantity', 'unit', ''],
        relation.symbols.map(({ symbol, name, unit, role }) =>
          row(symbol, name, unit, role === 'out' ? 'result' : 'given'),
        ),
      );

const checkTable = (id: string, checks: ReturnType<typeof today>): Block =>
  tableBlock(
    `${id}-checks`,
    ['wide check', 'number printed', 'number here', 'unit', 'today'],
    checks.map(({ source, seen, printed, unit, got, agrees, note }) =>
      row(
        `${source}${seen === 'published' ? '' : ` (${seen === 'memory' ? 'from memory' : 'computed, no publication'})`}${note === null ? '' : `; ${note}`}`,
        printed.replace('-', '−'),
        got === null ? 'no answer' : numberText(got, decimalsOf(printed) + 1),
        unit,
        agrees ? 'agrees' : 'does not agree',
      ),
    ),
  );

/** One digit more than the source printed. */
const decimalsOf = (printed: string): number => {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e');
  return Math.max(0, (mantissa.split('.')[1]?.length ?? 0) - Number(exponent));
};

function rangeWords({ range, symbols }: Relation): string {
  if (range.length === 0) return 'None stated.';
  return `${range
    .map((limit) => {
      const unit = (symbols.find(({ symbol }) => symbol === limit.symbol)?.unit ?? '1').replace(/^m²\/s$/, 'mm²/s');
      return `${limit.symbol} ${rangeText(limit.from, limit.to, unit)}: ${limit.why}`;
    })
    .join('; ')}.`;
}

const seenWords: Readonly<Record<Reference['seen'], string>> = {
  published: 'the text was read',
  seen: 'read as reproduced elsewhere',
  memory: 'from memory, not looked up',
  none: '',
};

export function sourceWords({ authors, year, title, where, seen }: Reference): string {
  const head = [authors, title, where, year === null ? null : String(year)].filter((part) => part !== null).join(', ');
  return `${head}${seen === 'none' ? '' : ` (${seenWords[seen]})`}.`;
}
