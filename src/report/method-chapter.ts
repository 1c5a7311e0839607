import type { Chapter } from '../physics/all.ts';
import { today, type Relation } from '../physics/relation.ts';
import { sources, type Reference } from '../physics/sources.ts';
import { numberText, rangeText } from './digits.ts';
import { chapterPath } from './method-path.ts';
import type { Block, Page, Section } from './page.ts';
import { capital, counts, facts, link, prose, row, section, tableBlock } from './spans.ts';

/** One chapter of the method: every relation with formula, range, source, and its checks as they stand with this build. */
export function methodChapter({ id, title, relations }: Chapter): Page {
  const checked = relations.map((relation) => ({ relation, checks: today(relation) }));
  const all = checked.flatMap(({ checks }) => checks);
  const agree = all.filter(({ agrees }) => agrees).length;
  return {
    kind: 'method',
    path: chapterPath(id),
    title,
    description: `${title}: relations with range, source and checks.`,
    whereabouts: [link('method/', 'Method'), ' · chapter'],
    lead: [
      `${capital(counts(relations.length, 'relation'))}, held to ${counts(all.length, 'check')}: ${agree === all.length ? 'all agree' : `${numberText(agree, 0)} agree`} today.`,
    ],
    banners: [],
    series: null,
    sections: checked.map(({ relation, checks }) => relationSection(relation, checks)),
  };
}

function relationSection(relation: Relation, checks: ReturnType<typeof today>): Section {
  return section(
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
}

const grades: Readonly<Record<Relation['grade'], string>> = {
  V2: 'seen in two independent places',
  V1: 'seen in one place',
  VC: 'recalled, and confirmed by numbers',
  U: 'unverified, and never used unless asked for',
};

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
    ['wide check', 'number printed', 'number here', 'number apart', 'unit', 'today'],
    checks.map(({ source, seen, printed, unit, got, agrees, note }) =>
      row(
        `${source}${seen === 'published' ? '' : ` (${seen === 'memory' ? 'from memory' : 'computed, no publication'})`}${note === null ? '' : `; ${note}`}`,
        printed.includes('e') ? numberText(Number(printed), decimalsOf(printed)) : printed.replace('-', '−'),
        got === null ? 'no answer' : numberText(got, decimalsOf(printed) + 1),
        got === null ? '—' : numberText(got - Number(printed), decimalsOf(printed) + 1),
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

export const seenWords: Readonly<Record<Reference['seen'], string>> = {
  published: 'the text was read',
  seen: 'read as reproduced elsewhere',
  memory: 'from memory, not looked up',
  none: '',
};

export function sourceWords({ authors, year, title, where, seen }: Reference): string {
  const head = [authors, title, where, year === null ? null : String(year)].filter((part) => part !== null).join(', ');
  return `${head}${seen === 'none' ? '' : ` (${seenWords[seen]})`}.`;
}
