import type { Finding } from '../finding/finding.ts';
import type { Part, Pins, Question } from '../trial/part.ts';
import type { SourceFile } from '../trial/series.ts';
import { stranger } from './check-series.ts';
import { firstLine, foundAt, gather, withEffect } from './gather.ts';
import { readPart } from './part-note.ts';
import { readPins, sumOfWords } from './pins.ts';
import * as say from './texts-parts.ts';

/** Parts in their order, each with what was pinned for it; one whose note or number is wrong is left out alone. */
export function readParts(
  files: readonly SourceFile[],
  around: { readonly folder: string; readonly questions: readonly Question[] },
): { readonly parts: readonly Part[]; readonly findings: readonly Finding[] } {
  const { folder, questions } = around;
  const inside = (pattern: RegExp) => files.filter((f) => pattern.test(f.path.slice(folder.length + 1)));
  const read = gather(inside(/^parts\/[^/]+\.md$/), readPart);
  const pins = new Map<string, Pins>();
  const findings: Finding[] = [...read.findings];
  const broken = new Set<string>();
  for (const file of inside(/^parts\/[^/]+\.pins$/)) {
    const name = file.path.slice(file.path.lastIndexOf('/') + 1).replace(/\.pins$/, '');
    const result = readPins(file);
    findings.push(...result.findings);
    if (!read.records.has(name)) findings.push({ ...say.pinsWithoutPart(), place: firstLine(file.path) });
    if (result.ok) pins.set(name, result.value);
    else broken.add(name);
  }
  const all = [...read.records.values()].map((part): Part => ({ ...part, pins: pins.get(part.id) ?? null }));
  all.sort((a, b) => a.number - b.number || (a.id < b.id ? -1 : 1));
  const kept = all.filter((part, i) => {
    const other = all.findIndex((one) => one.number === part.number);
    if (other === i) return true;
    findings.push(foundAt(part, 'number', say.partNumberTwice(part.number, all[other]!.file)));
    return false;
  });
  const checked = kept.map((part) => ({ part, findings: [...checkPins(part), ...checkAsks(part, questions)] }));
  const stands = ({ part, findings: of }: (typeof checked)[number]): boolean =>
    !broken.has(part.id) && !of.some(({ level }) => level === 'error');
  return {
    parts: checked.filter(stands).map(({ part }) => part),
    findings: withEffect(
      [...findings, ...checked.flatMap(({ part, findings: of }) => (broken.has(part.id) ? [] : of))],
      say.partLeftOut,
      { series: folder },
    ),
  };
}

function checkPins(part: Part): Finding[] {
  const { pins, status } = part;
  if (pins === null) return status === 'out' ? [foundAt(part, 'status', say.partNotPinned(part.id))] : [];
  return [
    ...(status === 'draft' ? [foundAt(part, 'status', say.pinsOfDraft())] : []),
    ...(part.published !== null && pins.published !== part.published
      ? [foundAt(part, 'published', say.pinsDay(pins.published, part.published))]
      : []),
    ...(pins.words !== sumOfWords(part.body) ? [foundAt(part, 'title', say.wordsChanged())] : []),
  ];
}

/** A question that is not in the register is named with the nearest that is. */
function checkAsks(part: Part, questions: readonly Question[]): Finding[] {
  const ids = questions.map(({ id }) => id);
  const asked = part.asks.map((id, i) => ({ id, path: `asks.${i.toFixed(0)}` }));
  const answered = part.answers.map(({ question: id }, i) => ({ id, path: `answers.${i.toFixed(0)}.question` }));
  return [
    ...[...asked, ...answered].flatMap(({ id, path }) => stranger(part, path, 'question', id, ids)),
    ...answered.flatMap(({ id, path }) => {
      const put = questions.find((q) => q.id === id);
      return put !== undefined && part.published !== null && put.raisedOn > part.published
        ? [foundAt(part, path, say.answeredBeforeAsked(id, put.raisedOn))]
        : [];
    }),
  ];
}
