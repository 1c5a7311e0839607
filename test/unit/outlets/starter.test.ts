import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { proposedMap } from '../../../src/logs/proposed-map.ts';
import type { ProposedMap } from '../../../src/logs/proposed-map.ts';
import { mapAsks } from '../../../src/outlets/starter-map.ts';
import { startedBook, type Beginning } from '../../../src/outlets/starter.ts';
import { makeBook } from '../../../src/pipeline.ts';
import { filesOf } from '../../scenario/demo.ts';

const answers: Beginning = {
  lab: 'Bo’s "bench": 7 # no',
  question: 'Does it run cooler?\n---\nid: x',
  baseline: 'standard pan',
  candidate: '- deep: pan',
  fill: '1.80 L',
  oil: 'SAE 80W-90',
};
const log = `t_s,n_in [rpm],tq_in [N·m],T_sump [°C],T3
${Array.from({ length: 180 }, (_, s) => `${String(s)},1118.${String(s % 7)},1.7${String(s % 9)},60.0${String(s % 5)},20`).join('\n')}
`;
const map = proposedMap('a.csv', new TextEncoder().encode(log)) as ProposedMap;
const texts = (with_: ProposedMap | null): Map<string, string> =>
  new Map(
    startedBook(answers, { day: '2026-05-04', map: with_, log: 'S-01.csv' }).map(({ path, text }) => [path, text]),
  );

describe('a book that was just started', () => {
  it.each([
    ['without a logger file', null],
    ['from a logger file', map],
  ])('%s builds at once, whatever was answered, and says all that was answered', (_, with_) => {
    const made = makeBook({ files: filesOf(texts(with_)), audience: 'house' });
    expect(made.findings.filter(({ level }) => level === 'error')).toEqual([]);
    expect(made.book?.lab).toBe(answers.lab);
    const [{ record }] = made.series as [(typeof made.series)[number]];
    expect(record.series.question).toBe(answers.question);
    expect([...record.articles.values()].map(({ name }) => name)).toEqual([answers.baseline, answers.candidate]);
    expect(made.pages.some(({ path }) => path === 'series/first/runs/S-01/')).toBe(true);
    expect(made.ledgers[0]!.figures.filter(({ quantity }) => /spin|rise|torque/.test(quantity))).toEqual([]);
  });

  it('names in each note the schema by which an editor explains its fields, and is right by it', () => {
    for (const [path, text] of texts(map)) {
      const head = text.split(/^---$/m)[1]!;
      const [, name] = /^\n# yaml-language-server: \$schema=(\S+)\n/.exec(head) ?? [];
      const schema = join('content', join(dirname(path), name!));
      const read = z.fromJSONSchema(JSON.parse(readFileSync(schema, 'utf8')) as never).safeParse(parse(head));
      expect(read.error?.issues, path).toBeUndefined();
    }
  });

  it('keeps what the file says, and asks for what it does not', () => {
    expect(texts(map).get('first/rig.md')).toContain(
      '"n_in [rpm]": { is: pinion-speed, unit: rpm, instrument: speed-1 }',
    );
    expect(texts(map).get('first/rig.md')).toMatch(/# "T3": \{ is: …, unit: … \} +# what is it\? It reads 20 to 20\./);
    expect(mapAsks(map)).toEqual(['T3: what is it? It reads 20 to 20.']);
  });

  it('gives the figures of its run once nothing is a guess any more and the run is accepted', () => {
    const book = texts(map);
    for (const [path, text] of book)
      book.set(
        path,
        text
          .replace(/^guessed: .*\n/m, '')
          .replace('status: draft', 'status: accepted')
          .replace('steps: [100 rpm, 200 rpm, 300 rpm, 400 rpm]', 'steps: [300 rpm]')
          .replace('hold: 120 s', 'hold: 90 s'),
      );
    book.set('first/runs/S-01.csv', log);
    const made = makeBook({ files: filesOf(book), audience: 'house' });
    expect(made.findings.filter(({ level }) => level === 'error')).toEqual([]);
    const power = made.ledgers[0]!.figures.find(({ id }) => id.startsWith('S-01/spin-power'));
    // 1.74 N·m at 1118 rpm of the pinion, by hand: 1.74 · 1118 · π / 30 = 204 W
    expect(power?.value).toBeGreaterThan(195);
    expect(power?.value).toBeLessThan(212);
  });
});
