import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readNotes } from '../../src/notes/book.ts';
import { makeBook } from '../../src/pipeline.ts';
import { filesOf } from './demo.ts';

const readme = readFileSync('README.md', 'utf8');

/** Every file that the README writes out: its path at the head of a paragraph, then its text in a block. */
const written = new Map(
  [...readme.matchAll(/^`([\w./-]+\.(?:md|csv))`.*\n(?:.+\n)*\n```\w+\n([\s\S]*?)^```/gm)].map(([, path, text]) => [
    path!,
    text!,
  ]),
);

/** The README shows the first rows only; the trial went on for three minutes. */
const threeMinutes = (head: string): string =>
  head +
  Array.from({ length: 178 }, (_, i) => {
    const wave = Math.sin(2 * i);
    return `${i + 3},${(1321 + wave).toFixed(1)},${(1.76 + wave / 100).toFixed(3)},${(60 + wave / 20).toFixed(2)}\n`;
  }).join('');

describe('the book that the README writes out', () => {
  it('holds all the notes that its picture of the folder names', () => {
    const [, picture = ''] = /```\nmy-book\/\n([\s\S]*?)```/.exec(readme) ?? [];
    const named = [...picture.matchAll(/[\w-]+\.(?:md|csv)/g)].map(([name]) => name);
    expect(named.length).toBeGreaterThan(5);
    expect([...written.keys()].map((path) => path.replace(/.*\//, '')).sort()).toEqual([...named].sort());
  });

  it('is read without an error and gives spin power, with its interval, from its one run', () => {
    const log = 'spring/runs/S-01.csv';
    const files = filesOf(new Map([...written, [log, threeMinutes(written.get(log)!)]]));
    const made = makeBook({ files, audience: 'house' });
    expect(made.findings.filter(({ level }) => level === 'error')).toEqual([]);
    const power = made.ledgers[0]?.byId.get('S-01/spin-power@290rpm,60Cel');
    // 1.76 N·m less a zero of 0.02 to 0.04 N·m, on a pinion at 1321 rpm: torque times speed.
    const watts = (1.76 - 0.03) * ((1321 * Math.PI) / 30);
    expect(power?.interval[0]).toBeLessThan(watts);
    expect(power?.interval[1]).toBeGreaterThan(watts);
  });

  it('has a flow trial whose clip, grades, readings and still are read as they stand', () => {
    const [, flow = ''] = /^```yaml\n(clips:\n[\s\S]*?)^```/m.exec(readme) ?? [];
    const spin = written.get('spring/runs/S-01.md')!;
    const note = spin
      .replace('id: S-01', 'id: F-01')
      .replace('trial: spin', 'trial: flow')
      .replace(/^zeros: .*\n/m, '')
      .replace(/^log: .*\n/m, () => `log: { file: F-01.csv, map: logger }\n${flow}`);
    const plan = written.get('spring/plan.md')!.replace('steps: [290 rpm]', 'steps: [60 rpm, 290 rpm]');
    const files = filesOf(
      new Map([
        ...[...written].filter(([path]) => !path.includes('/runs/')),
        ['spring/plan.md', plan],
        ['spring/runs/F-01.md', note],
        ['spring/runs/F-01.csv', threeMinutes(written.get('spring/runs/S-01.csv')!)],
      ]),
    );
    const { findings, series } = readNotes(files);
    expect(findings.filter(({ level }) => level === 'error')).toEqual([]);
    const [run] = series[0]!.runs;
    expect([run?.clips.length, run?.observations.length, run?.settle.length, run?.stills.length]).toEqual([1, 2, 2, 1]);
  });

  it('names every command of the tool and every script that it asks for', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> };
    for (const [, script] of readme.matchAll(/npm run ([\w:]+)/g)) expect(scripts).toHaveProperty([script!]);
    for (const command of ['check', 'build', 'preview']) expect(readme).toContain(`\`dipmark ${command} [folder]`);
  });

  it('has a claim that is read as it stands, and cannot be told before its runs', () => {
    const [, claims = ''] = /^```yaml\n(claims:\n[\s\S]*?)^```/m.exec(readme) ?? [];
    const shroud = written.get('spring/articles/P0.md')!.replace('id: P0', 'id: P1').replace('baseline', 'candidate');
    const log = 'spring/runs/S-01.csv';
    const files = filesOf(
      new Map([
        ...written,
        ['spring/articles/P1.md', shroud],
        ['spring/claims.md', `---\n${claims}---\n`],
        [log, threeMinutes(written.get(log)!)],
      ]),
    );
    const made = makeBook({ files, audience: 'house' });
    expect(made.findings.filter(({ level }) => level === 'error')).toEqual([]);
    const page = made.pages.find(({ path }) => path === 'series/spring/claims/');
    expect(JSON.stringify(page?.sections)).toContain('cannot tell');
  });
});
