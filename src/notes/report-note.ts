import type { Reading } from '../finding/finding.ts';
import { reportStatuses, type Report } from '../trial/report.ts';
import { code, day, group, headFields, list, optional, required, text, whole, words } from './fields.ts';
import type { Note } from './note.ts';
import { readRecord, tellAt } from './record.ts';
import { neededFor } from './texts-check.ts';
import * as say from './texts-reports.ts';

const alias = group({
  article: required(code('P1'), 'The article as the house calls it.'),
  as: required(text('Article B'), 'The name it goes by on this paper.'),
});

/** `reports/<id>.md`: a client copy. */
export const reportKind = group({
  id: required(code('CR-01'), 'It is also the name of the file and the number of the paper.'),
  title: required(text('Four bowls on one axle'), 'It stands on the first page.'),
  client: required(text('Client A'), 'The name that stands for the client; never a name of a person or a firm.'),
  version: required(whole('1', [1, 999]), 'Issues of one paper are told apart by it.'),
  status: required(words(...reportStatuses), 'A draft may change; what was issued is superseded, never changed.'),
  issued: optional(day, 'The day it was handed over.'),
  supersedes: optional(text('CR-01, issue 1'), 'The issue that it takes the place of.'),
  articles: required(list(code('P0')), 'The articles that it reports; their runs are in it.'),
  claims: optional(list(code('CL-1')), 'Claims that it states with their words.'),
  parts: optional(list(code('4-uphill')), 'Parts that it rests on; none of them a draft.'),
  aliases: optional(list(alias), 'Names of articles that the client wants kept back.'),
  withheld: optional(list(code('H-04')), 'Runs that the client wants left out; the paper says how many they are.'),
  'withheld-why': optional(text('"not bought by the client"'), 'Why they are left out; for the house.'),
  'not-tested': optional(list(text('wear')), 'What the paper must not be read as.'),
  'signed-by': required(list(text('head of the lab')), 'Roles that sign by hand; the lines stay blank.'),
  ...headFields,
});

/** A client copy as its note says it. Nothing of it is for the public. */
export const readReport = (note: Note): Reading<Report> =>
  readRecord(reportKind, note, (v, head, into): Report => {
    if (v.status === 'issued' && v.issued === null)
      tellAt(into, 'status', neededFor('issued', 'status: issued', 'issued: 2026-08-03'));
    if (head.shownTo === 'public') tellAt(into, 'shown-to', say.reportPublic());
    if (v['signed-by'].length === 0) tellAt(into, 'signed-by', say.nobodySigns());
    return {
      ...head,
      ...{ id: v.id, title: v.title, client: v.client, version: v.version, status: v.status, issued: v.issued },
      ...{ supersedes: v.supersedes, articles: v.articles, claims: v.claims ?? [], parts: v.parts ?? [] },
      aliases: new Map((v.aliases ?? []).map(({ article, as }) => [article, as.trim()])),
      ...{ withheld: v.withheld ?? [], withheldWhy: v['withheld-why'] },
      ...{ notTested: v['not-tested'] ?? [], signedBy: v['signed-by'] },
    };
  });
