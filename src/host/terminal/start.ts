import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { extname, join } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { proposedMap, type ProposedMap } from '../../logs/proposed-map.ts';
import { mapAsks } from '../../outlets/starter-map.ts';
import { type Beginning, beginnings, schemaFolder, startedBook } from '../../outlets/starter.ts';
import type { TextFile } from '../../outlets/files.ts';
import { readNotes } from '../../notes/book.ts';
import type { Finding } from '../../finding/finding.ts';
import { type NewFile, writeAllNew } from '../disk/all-or-nothing.ts';
import { packageRoot } from '../site/root.ts';
import { sayFindings } from './say.ts';

/** `dipmark start`: six questions, or the same as options, and a book that builds at once. Nothing that is there is touched. */
export async function start(input: {
  readonly folder: string;
  readonly beginning: Partial<Beginning>;
  readonly log: string | null;
}): Promise<number> {
  const { folder, log } = input;
  const say = (status: number, text: string): number => {
    process.stderr.write(`${text}\n`);
    return status;
  };
  const there = ['book.md', 'first', schemaFolder].find((name) => existsSync(join(folder, name)));
  if (there !== undefined)
    return say(2, `${join(folder, there)} is there already. Name a new folder:  dipmark start my-book`);
  if (log !== null && (!existsSync(log) || !statSync(log).isFile())) return say(2, `There is no file ${log}.`);
  const map = log === null ? null : proposedMap(log, readFileSync(log));
  if (map !== null && isRefused(map)) {
    sayFindings(map, false);
    return say(1, 'Nothing was written.');
  }
  const answers = await answered(input.beginning);
  if (typeof answers === 'string') return say(2, answers);
  const logName = `S-01${log === null ? '.csv' : extname(log).toLowerCase()}`;
  const files = startedBook(answers, { day: new Date().toISOString().slice(0, 10), map, log: logName });
  const wrong = errorsIn(files);
  if (wrong.length > 0) {
    sayFindings(wrong, false);
    return say(1, `Nothing was written. Answer again, or say it with an option, as  --fill "${beginnings.fill.like}"`);
  }
  writeAllNew(folder, [
    ...files.map(({ path, text }) => ({ path, content: text })),
    ...schemas(),
    ...(log === null ? [] : [{ path: `first/runs/${logName}`, content: readFileSync(log) }]),
  ]);
  const asks = map === null ? [] : mapAsks(map);
  return say(
    0,
    [
      `${String(files.length)} notes in ${folder}. Each says beside its fields what they are for, and under  guessed:  what to look up.`,
      ...(asks.length === 0
        ? []
        : ['', `The column map in ${join(folder, 'first', 'rig.md')} leaves open:`, ...asks.map((ask) => `  ${ask}`)]),
      '',
      'Next:',
      `  dipmark check ${folder}      what is still missing, and what waits for it`,
      `  dipmark preview ${folder}    the pages, built again at each saved note`,
    ].join('\n'),
  );
}

/** What an editor completes and explains fields by; the notes name it in their first line. */
const schemas = (): readonly NewFile[] =>
  readdirSync(join(packageRoot, 'content', 'schema')).map((name) => ({
    path: `${schemaFolder}/${name}`,
    content: readFileSync(join(packageRoot, 'content', 'schema', name)),
  }));

const isRefused = (map: ProposedMap | readonly Finding[]): map is readonly Finding[] => Array.isArray(map);

/** The six answers; without a terminal to ask on, a sentence that says which options are missing. */
async function answered(said: Partial<Beginning>): Promise<Beginning | string> {
  const names = Object.keys(beginnings) as (keyof Beginning)[];
  const missing = names.filter((name) => said[name] === undefined);
  if (missing.length > 0 && !process.stdin.isTTY)
    return `Nobody can be asked here. Write  ${missing.map((name) => `--${name} ${JSON.stringify(beginnings[name].like)}`).join(' ')}`;
  const answers: Partial<Record<keyof Beginning, string>> = { ...said };
  if (missing.length > 0) {
    const ask = createInterface({ input: process.stdin, output: process.stderr });
    try {
      for (const name of missing) {
        const { asks, like } = beginnings[name];
        answers[name] = '';
        while (answers[name].trim() === '') answers[name] = await ask.question(`${asks} (as in: ${like})  `);
      }
    } finally {
      ask.close();
    }
  }
  return answers as Beginning;
}

/** What the checks have against the notes before any is written: an answer that cannot be read is told at its place. */
function errorsIn(files: readonly TextFile[]): readonly Finding[] {
  const read = readNotes(
    files.map(({ path, text }) => {
      const bytes = new TextEncoder().encode(text);
      return { path, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
    }),
  );
  return [...read.findings, ...read.series.flatMap(({ findings }) => findings)].filter(
    ({ level }) => level === 'error',
  );
}
