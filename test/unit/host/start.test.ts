import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { missingText } from '../../../src/host/terminal/missing.ts';
import { start } from '../../../src/host/terminal/start.ts';
import { readFolder } from '../../../src/host/disk/book.ts';
import { makeBook } from '../../../src/pipeline.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-start-'));
const at = (...path: readonly string[]) => join(root, ...path);
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

const answers = {
  ...{ lab: 'Millrace Axle Bench', question: 'Does a deeper pan run cooler?', baseline: 'standard pan' },
  ...{ candidate: 'deep pan', fill: '1.80 L', oil: 'SAE 80W-90' },
};
const call = async (folder: string, beginning: Parameters<typeof start>[0]['beginning'], log: string | null = null) => {
  const told: string[] = [];
  const heard = vi.spyOn(process.stderr, 'write').mockImplementation((text) => told.push(String(text)) > 0);
  const status = await start({ folder: at(folder), beginning, log }).finally(() => {
    heard.mockRestore();
  });
  return { status, told: told.join('') };
};

describe('dipmark start', () => {
  it('writes a book, says what comes next, and never touches one that is there', async () => {
    const { status, told } = await call('new', answers);
    expect(status).toBe(0);
    expect(told).toContain('8 notes in');
    expect(told).toContain('dipmark check');
    const before = readFileSync(at('new', 'first', 'rig.md'), 'utf8');
    const again = await call('new', { ...answers, lab: 'Another' });
    expect(again.status).toBe(2);
    expect(again.told).toContain('is there already. Name a new folder:  dipmark start my-book');
    expect(readFileSync(at('new', 'first', 'rig.md'), 'utf8')).toBe(before);
  });

  it('takes no place that something else has: schemas of somebody else are told before anything is written', async () => {
    mkdirSync(at('taken', 'schema'), { recursive: true });
    const { status, told } = await call('taken', answers);
    expect(status).toBe(2);
    expect(told).toContain(`${at('taken', 'schema')} is there already. Name a new folder`);
    expect(readdirSync(at('taken'))).toEqual(['schema']);
    rmSync(at('taken'), { recursive: true });
  });

  it('takes the logger file along and says what it leaves open', async () => {
    writeFileSync(at('bench.CSV'), 't_s;n_in [rpm];T_sump\n0;100;20\n1;100;20\n');
    const { status, told } = await call('logged', answers, at('bench.CSV'));
    expect(status).toBe(0);
    expect(told).toContain('T_sump: in which unit? It reads 20 to 20.');
    expect(readFileSync(at('logged', 'first', 'runs', 'S-01.csv'), 'utf8')).toBe(readFileSync(at('bench.CSV'), 'utf8'));
  });

  it('says which options are missing where nobody can be asked, and writes nothing over an answer that cannot be read', async () => {
    const { lab, question, baseline, candidate } = answers;
    const missing = await call('none', { lab, question, baseline, candidate });
    expect(missing).toEqual({
      status: 2,
      told: 'Nobody can be asked here. Write  --fill "1.80 L" --oil "SAE 80W-90"\n',
    });
    const wrong = await call('none', { ...answers, fill: '2 pt' });
    expect(wrong.status).toBe(1);
    expect(wrong.told).toContain('Nothing was written. Answer again');
    const strange = await call('none', answers, at('no.csv'));
    expect(strange.told).toContain('There is no file');
    writeFileSync(at('words.csv'), 'hello\n');
    const words = await call('none', answers, at('words.csv'));
    expect(words.status).toBe(1);
    expect(words.told).toContain('log-no-table');
    expect(readdirSync(root)).not.toContain('none');
  });
});

describe('what is still missing', () => {
  it('is told in the order of what waits for it', () => {
    const { series } = makeBook({ files: readFolder(at('new')), audience: 'house' });
    const lines = missingText(series).split('\n');
    expect(lines[0]).toBe('first  still missing, in the order of what waits for it');
    expect(lines.slice(1, 6).map((line) => line.slice(2).split('  ')[0])).toEqual([
      ...['every figure', 'runs with L1', 'runs of A0', 'runs of A1', 'S-01'],
    ]);
    expect(lines[1]).toContain('rig.md: teeth, ring, offset, instruments, maps');
    expect(lines[5]).toContain('status, a draft so far');
  });

  it('is nothing in a book that lacks nothing', () => {
    const { series } = makeBook({ files: readFolder('test/fixtures/forestry'), audience: 'house' });
    expect(missingText(series)).toBe('');
  });
});
