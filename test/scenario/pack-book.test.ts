import { execFile } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { unzipSync } from 'fflate';

const run = promisify(execFile);
const root = mkdtempSync(join(tmpdir(), 'dipmark-packed-'));
const pack = join(root, 'forestry');
const main = 'dist/host/terminal/main.js';
interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}
const dipmark = async (tool: string, argv: readonly string[], cwd = root): Promise<Ended> =>
  run(process.execPath, [tool, ...argv], {
    cwd,
    env: { PATH: process.env['PATH'] ?? '', HOME: root },
    maxBuffer: 64e6,
  }).then(
    ({ stdout, stderr }) => ({ code: 0, out: stdout, err: stderr }),
    (trouble: unknown) => {
      const ended = trouble as { code: number; stdout: string; stderr: string };
      return {
        code: ended.code,
        out: ended.stdout,
        err: ended.stderr,
      };
    },
  );
const ours = join(process.cwd(), main);
const ledgers = (site: string): string[] =>
  readdirSync(join(site, 'series')).map((id) => readFileSync(join(site, 'series', id, 'ledger.json'), 'utf8'));

beforeAll(async () => {
  cpSync('test/fixtures/forestry', join(root, 'book'), { recursive: true });
  const made = await dipmark(ours, ['pack', 'book', '--out', 'forestry']);
  expect(made.code, made.err).toBe(0);
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

describe('a packed book', () => {
  it('is one folder and one zip with the notes, the site, the tool and a page that says where to begin', () => {
    expect(readdirSync(pack).sort()).toEqual(['SHA256SUMS', 'START-HERE.md', 'book', 'site', 'tool']);
    expect(readFileSync(join(pack, 'START-HERE.md'), 'utf8')).toMatch(
      /States of the rig[\s\S]*Overdue calibrations[\s\S]*Weak points[\s\S]*Questions without an answer/,
    );
    expect(readdirSync(root).sort()).toEqual(['book', 'forestry', 'forestry.zip']);
    const zipped = unzipSync(readFileSync(join(root, 'forestry.zip')), {
      filter: ({ name }) => /SHA256SUMS$|book\//.test(name),
    });
    expect(Buffer.from(zipped['forestry/SHA256SUMS']!)).toEqual(readFileSync(join(pack, 'SHA256SUMS')));
    expect(Object.keys(zipped).length).toBeGreaterThan(5);
    expect(existsSync(join(pack, 'tool/node_modules/@img'))).toBe(false);
    expect(existsSync(join(pack, 'tool/node_modules/vitest'))).toBe(false);
  });

  it('builds again from its own tool, and every ledger is the same bytes', async () => {
    const again = await dipmark(join(pack, 'tool', main), ['build', 'book', '--out', 'site-again'], pack);
    expect(again.code, again.err).toBe(0);
    expect(ledgers(join(pack, 'site-again'))).toEqual(ledgers(join(pack, 'site')));
    rmSync(join(pack, 'site-again'), { recursive: true });
  });

  it('is whole by its sums, and names the figures that lose their support where a raw file is gone or changed', async () => {
    const whole = await dipmark(ours, ['check', pack, '--deep']);
    expect(whole).toMatchObject({ code: 0 });
    expect(whole.out).toMatch(/\d+ files are as they were packed\./);
    const [, raw] = /"file":"([^"]+\/runs\/[^"]+\.csv)"/.exec(ledgers(join(pack, 'site'))[0]!)!;
    const log = join(pack, 'book', raw!);
    const bytes = readFileSync(log);
    const figures = (
      JSON.parse(ledgers(join(pack, 'site'))[0]!) as { figures: { id: string; inputs: { file: string }[] }[] }
    ).figures
      .filter(({ inputs }) => inputs.some(({ file }) => file === raw))
      .map(({ id }) => id);
    rmSync(log);
    const gone = await dipmark(ours, ['check', pack, '--deep', '--json']);
    expect(gone.code).toBe(1);
    const [told] = JSON.parse(gone.out) as { code: string; says: string }[];
    expect(told).toMatchObject({ code: 'sum-missing' });
    expect(told!.says).toContain(
      `book/${raw!} is gone. ${String(figures.length)} figures lose their support: ${figures[0]!}`,
    );
    const flipped = Uint8Array.from(bytes);
    flipped[200] = flipped[200]! ^ 1;
    writeFileSync(log, flipped);
    writeFileSync(join(pack, 'book', 'new.md'), 'x');
    const changed = JSON.parse((await dipmark(ours, ['check', pack, '--deep', '--json'])).out) as { code: string }[];
    expect(changed.map(({ code }) => code)).toEqual(['sum-differs', 'sum-unlisted']);
    rmSync(join(pack, 'book', 'new.md'));
    writeFileSync(join(pack, 'SHA256SUMS'), `nonsense\n${readFileSync(join(pack, 'SHA256SUMS'), 'utf8')}`);
    const spoilt = JSON.parse((await dipmark(ours, ['check', pack, '--deep', '--json'])).out) as { code: string }[];
    expect(spoilt.map(({ code }) => code)).toEqual(['sums-row', 'sum-differs']);
  });

  it.each([
    ['a folder with something in it', ['pack', 'book', '--out', 'forestry'], /is not empty/],
    ['a place among the notes', ['pack', 'book', '--out', 'book/pack'], /lies among the notes/],
    ['a folder that is no book', ['pack', 'forestry', '--out', 'other'], /is no book/],
    ['a folder that is no pack', ['check', 'book', '--deep'], /is no pack/],
  ])('refuses %s, and leaves nothing behind', async (_, argv, says) => {
    const before = readdirSync(root).sort();
    const ended = await dipmark(ours, argv);
    expect(ended.code).toBe(2);
    expect(ended.err).toMatch(says);
    expect(readdirSync(root).sort()).toEqual(before);
  });

  it('refuses a link among the notes', async () => {
    symlinkSync('/etc/hostname', join(root, 'book', 'link.md'));
    const ended = await dipmark(ours, ['pack', 'book', '--out', 'other']);
    expect(ended).toMatchObject({ code: 2 });
    expect(ended.err).toMatch(/link\.md is a link/);
    expect(existsSync(join(root, 'other'))).toBe(false);
  });
});
