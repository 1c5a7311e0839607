import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Measure } from './book.ts';

const command = resolve('dist/host/terminal/main.js');

/** Every file below a folder as one sum: two sites are the same only byte for byte. */
export function sumOf(folder: string): string {
  const sum = createHash('sha256');
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort())
    if (statSync(join(folder, path)).isFile()) sum.update(`${path}\n`).update(readFileSync(join(folder, path)));
  return sum.digest('hex');
}

/**
 * Builds that are killed at random moments, more of them near the end where folders change places. The next command may be a
 * check or a build; after it the site has to be the last good one or the new one, whole, and nothing may lie beside it.
 */
export async function killsBench(times: number): Promise<readonly Measure[]> {
  const root = mkdtempSync(join(tmpdir(), 'dipmark-kills-'));
  const book = join(root, 'book');
  const note = join(book, 'drop-box', 'runs', 'S-1.md');
  const run = (...argv: readonly string[]) => spawnSync(process.execPath, [command, ...argv], { cwd: root });
  const temporary = () => readdirSync(tmpdir()).filter((name) => /^dipmark-(?:stills|preview|paper)-/.test(name));
  try {
    cpSync('test/fixtures/forestry', book, { recursive: true });
    const texts = [0, 1].map((turn) => `${readFileSync(note, 'utf8')}\nTurn ${String(turn)}.\n`);
    const good: string[] = [];
    let usual = 0;
    for (const text of texts) {
      writeFileSync(note, text);
      const started = performance.now();
      run('build', 'book');
      usual = performance.now() - started;
      good.push(sumOf(join(root, '_site')));
    }
    if (good[0] === good[1]) throw new Error('the two books make the same site');
    const before = new Set(temporary());
    let [mixed, lost, left, killed] = [0, 0, 0, 0];
    for (let i = 0; i < times; i++) {
      writeFileSync(note, texts[i % 2]!);
      const inputs = sumOf(book);
      const child = spawn(process.execPath, [command, 'build', 'book'], { cwd: root, stdio: 'ignore' });
      const ended = new Promise<string | null>((done) =>
        child.on('exit', (_, signal) => {
          done(signal);
        }),
      );
      const share = i % 3 === 0 ? Math.random() : 0.75 + 0.3 * Math.random();
      await new Promise((done) => setTimeout(done, usual * share));
      child.kill('SIGKILL');
      if ((await ended) === 'SIGKILL') killed++;
      run('check', 'book');
      const site = join(root, '_site');
      if (!existsSync(site) || !good.includes(sumOf(site))) mixed++;
      if (sumOf(book) !== inputs) lost++;
      const whole = i % 10 === 9;
      if (whole) run('build', 'book');
      left += readdirSync(root).filter((name) => name !== 'book' && name !== '_site').length;
      left += temporary().filter((name) => !before.has(name)).length;
      if (whole && sumOf(site) !== good[i % 2]) mixed++;
    }
    return [
      { name: `builds killed, of ${String(times)} tried`, value: killed, unit: '' },
      { name: 'mixed sites', value: mixed, unit: '' },
      { name: 'lost inputs', value: lost, unit: '' },
      { name: 'leftovers', value: left, unit: '' },
    ];
  } finally {
    rmSync(root, { recursive: true, force: true });
  }
}
