import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import { asFiles, type Files, goodBook } from './good-book.ts';

const file = 'hill-bowl/reports/CR-01.md';
const note = `---
id: CR-01
title: Two bowls
client: Client A
version: 2
status: issued
issued: 2026-08-03
supersedes: CR-01, issue 1
articles: [P0, P1]
aliases:
  - { article: P1, as: Article B }
withheld: [S-07]
not-tested: [wear]
signed-by: [head of the lab]
---
What the client asked.
`;
const draft = `---
id: 9-nine
number: 9
title: Nine
summary: Not yet.
status: draft
---
Words.
`;
const read = (text: string, change: Files = {}) => {
  const { findings, series } = readNotes(asFiles({ ...goodBook, ...change, [file]: text }));
  const all = [...findings, ...series.flatMap((s) => s.findings)].filter((f) => f.place.file === file);
  return {
    found: all.map(({ code, level, place }) => [code, level, place.line]),
    reports: series[0]!.reports,
  };
};
const spoiltTo = (was: string, is: string): string => {
  if (!note.includes(was)) throw new Error(`the note does not hold ${was}`);
  return note.replace(was, is);
};

describe('a client copy', () => {
  it('is read with its names, what is withheld and who signs, with nothing to find', () => {
    const { found, reports } = read(note);
    expect(found).toEqual([]);
    expect(reports).toHaveLength(1);
    expect(reports[0]).toMatchObject({
      ...{ id: 'CR-01', client: 'Client A', version: 2, issued: '2026-08-03', supersedes: 'CR-01, issue 1' },
      ...{ articles: ['P0', 'P1'], withheld: ['S-07'], signedBy: ['head of the lab'], notTested: ['wear'] },
    });
    expect([...reports[0]!.aliases]).toEqual([['P1', 'Article B']]);
  });

  it.each([
    ['an alias that is the id of an article', 'as: Article B', 'as: p0', 'alias-real', 11],
    ['an alias that is the id of a run', 'as: Article B', 'as: S-07', 'alias-real', 11],
    ['an alias of what is not reported', 'articles: [P0, P1]', 'articles: [P0]', 'alias-outside', 11],
    [
      'two articles under one name',
      'as: Article B }',
      'as: Article B }\n  - { article: P0, as: article b }',
      'alias-twice',
      12,
    ],
    ['an article that nobody knows', 'articles: [P0, P1]', 'articles: [P0, P1, P44]', 'article-unknown', 9],
    ['an unknown run in the withheld list', 'withheld: [S-07]', 'withheld: [S-77]', 'run-unknown', 12],
    ['a claim that nobody made', 'withheld: [S-07]', 'claims: [CL-77]', 'claim-unknown', 12],
    ['nobody who signs', 'signed-by: [head of the lab]', 'signed-by: []', 'report-signed', 14],
    ['no line for who signs', 'signed-by: [head of the lab]\n', '', 'field-missing', 2],
    ['a title that tells a name which is kept back', 'title: Two bowls', 'title: Two bowls with P1', 'alias-told', 3],
    ['words that tell a name which is kept back', 'What the client asked.', 'What of p1?', 'alias-told', 11],
    ['what is for the public', 'version: 2', 'version: 2\nshown-to: public', 'report-public', 6],
    ['what was issued on no day', 'issued: 2026-08-03\n', '', 'field-missing', 6],
  ])('is told of %s at its place, and left out alone', (_, was, is, code, line) => {
    const { found, reports } = read(spoiltTo(was, is));
    expect(found).toEqual([[code, 'error', line]]);
    expect(reports).toEqual([]);
  });

  it('does not rest on a part that is a draft', () => {
    const { found, reports } = read(spoiltTo('not-tested:', 'parts: [9-nine]\nnot-tested:'), {
      'hill-bowl/parts/9-nine.md': draft,
    });
    expect(found).toEqual([['report-over-draft', 'error', 13]]);
    expect(reports).toEqual([]);
  });
});
