import Eleventy from '@11ty/eleventy';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { packageRoot } from '../../src/host/site/root.ts';
import { wire } from '../../src/host/site/wire.ts';

/** Every way of writing front matter that the site builder or its parser has been seen to evaluate or to read as something else. */
const spellings = [
  '---js',
  '---javascript',
  '---JS',
  '---JavaScript',
  '--- js',
  '---  JavaScript ',
  '\uFEFF---js',
  '---jsLegacy',
  '---node',
  '---json',
  '---toml',
  '---constructor',
  '---toString',
];
const folder = mkdtempSync(join(tmpdir(), 'dipmark-front-'));
const exitCode = process.exitCode;
const around = { lab: '', language: 'en', invented: false, footer: [], version: '' };

async function built(
  name: string,
  template: string,
  { beside = {}, wired = true }: { beside?: Readonly<Record<string, string>>; wired?: boolean } = {},
): Promise<string> {
  const input = join(folder, name);
  mkdirSync(input, { recursive: true });
  for (const [path, text] of Object.entries({ ...beside, 'index.njk': template }))
    writeFileSync(join(input, path), text);
  const builder = new Eleventy(input, join(input, '_out'), {
    configPath: join(packageRoot, '.eleventy.js'),
    quietMode: true,
    source: 'script',
    config: (config) => {
      if (wired) wire(config, { sheets: [], around });
    },
  });
  builder.disableLogger();
  await builder.write();
  return readFileSync(join(input, '_out', 'index.html'), 'utf8');
}

const payload = (spelling: string, witness: string): string => {
  const write = `process.getBuiltinModule('node:fs').writeFileSync(${JSON.stringify(witness)}, '')`;
  return `${spelling}\n{ title: (() => { ${write}; return 1; })() }\n---\n<p>{{ title }}</p>\n`;
};

afterEach(() => {
  // The builder marks a failed build on the process, which would fail the test run.
  process.exitCode = exitCode;
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('front matter of a template', () => {
  it.each(spellings)('opened by "%s" is never evaluated', async (spelling) => {
    const name = `closed-${spellings.indexOf(spelling)}`;
    const witness = join(folder, `${name}-ran`);
    await built(name, payload(spelling, witness)).catch(() => undefined);
    expect(existsSync(witness)).toBe(false);
  });
  it('would be evaluated if we did not close it: the payload of these tests runs', async () => {
    const witness = join(folder, 'open-ran');
    await built('open', payload('---js', witness), { wired: false }).catch(() => undefined);
    expect(existsSync(witness)).toBe(true);
  });
  it('as plain YAML is read', async () => {
    expect(await built('plain', '---\nname: bench\n---\n<p>{{ name }}</p>')).toBe('<p>bench</p>');
  });
  it('is refused with a directive or a key given twice', async () => {
    await expect(built('twice', '---\na: 1\na: 2\n---\n')).rejects.toThrow();
    await expect(built('directive', '---\n%YAML 1.1\n--- \na: on\n---\n')).rejects.toThrow();
  });
  it('is not helped by a data file that runs', async () => {
    const witness = join(folder, 'data-ran');
    const data = `require('node:fs').writeFileSync(${JSON.stringify(witness)}, ''); module.exports = {};`;
    await built('data', '<p>x</p>', { beside: { 'index.11tydata.js': data, 'index.11tydata.cjs': data } });
    expect(existsSync(witness)).toBe(false);
  });
  it('prints what it is given as text', async () => {
    expect(await built('escape', '---\nname: "<b>&"\n---\n{{ name }}')).toBe('&lt;b&gt;&amp;');
  });
});
