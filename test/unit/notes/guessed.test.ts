import { describe, expect, it } from 'vitest';
import { readNotes } from '../../../src/notes/book.ts';
import { asFiles, type Files, goodBook } from './good-book.ts';

const rig = 'hill-bowl/rig.md';
const run = 'hill-bowl/runs/S-07.md';
const with_ = (file: string, line: string): Files => ({
  ...goodBook,
  [file]: String(goodBook[file]).replace(/^---\n/, `---\n${line}\n`),
});
const read = (files: Files) => {
  const { series } = readNotes(asFiles(files));
  const { runs, findings } = series[0]!;
  return {
    status: runs.map(({ id, status }) => [id, status]),
    why: runs.map(({ statusReason }) => statusReason),
    found: findings
      .filter(({ code }) => code.startsWith('guessed'))
      .map(({ code, level, place, says }) => [code, level, `${place.file}:${String(place.line)}`, says]),
  };
};

describe('a value that is a guess so far', () => {
  it('in the rig keeps every run a draft, and says which wait', () => {
    const before = read(goodBook);
    const { status, why, found } = read(with_(rig, 'guessed: [teeth, ring.diameter]'));
    expect(before.status.some(([, is]) => is === 'accepted')).toBe(true);
    expect(status.every(([, is]) => is === 'draft')).toBe(true);
    expect(why).toContain('it rests on a value that is still a guess');
    expect(found).toHaveLength(1);
    expect(found[0]!.slice(0, 3)).toEqual(['guessed-still', 'warning', `${rig}:2`]);
    expect(found[0]![3]).toMatch(/^teeth, ring\.diameter: guesses so far\. .*S-07.* gives? no figures until then\.$/);
  });

  it('in a run keeps that run alone', () => {
    const { status, found } = read(with_(run, 'guessed: [airflow]'));
    expect(status).toContainEqual(['S-07', 'draft']);
    expect(status.filter(([id, is]) => id !== 'S-07' && is === 'draft')).toEqual(
      read(goodBook).status.filter(([id, is]) => id !== 'S-07' && is === 'draft'),
    );
    expect(found).toEqual([
      ['guessed-still', 'warning', `${run}:2`, 'airflow: a guess so far. S-07 gives no figures until then.'],
    ]);
  });

  it('that no field is called by is told with the name that was meant', () => {
    const { found } = read(with_(rig, 'guessed: [teeht]'));
    expect(found.map(([code]) => code)).toEqual(['guessed-still', 'guessed-stranger']);
    expect(found[1]![3]).toContain('"teeht"');
  });
});
