import { describe, expect, it } from 'vitest';
import { callOf } from '../../../src/host/terminal/call.ts';

const told = (...argv: readonly string[]): string => {
  const call = callOf(argv);
  if (typeof call !== 'string') throw new Error(`taken as a call: ${JSON.stringify(call)}`);
  return call;
};

describe('a call from the command line', () => {
  it('takes the folder one stands in, the house, and _site when nothing else is said', () => {
    expect(callOf(['build'])).toEqual({
      command: 'build',
      folder: '.',
      out: '_site',
      port: 8080,
      audience: 'house',
      json: false,
      ...{ cards: false, all: false, series: null, part: null, write: false, deep: false },
      ...{ copy: null, sheet: 'A4', browser: null, beginning: {}, log: null },
    });
  });
  it('takes options before and after the folder', () => {
    expect(callOf(['build', '--public', 'book', '--out=pages', '--json'])).toMatchObject({
      folder: 'book',
      out: 'pages',
      audience: 'public',
      json: true,
    });
  });
  it('takes a client copy before the folder, and a folder alone where cards are asked for', () => {
    expect(callOf(['print', 'CR-01', 'book', '--sheet', 'letter', '--browser', 'chromium'])).toMatchObject({
      ...{ copy: 'CR-01', folder: 'book', out: '', sheet: 'letter', browser: 'chromium', cards: false },
    });
    expect(callOf(['print', 'CR-01'])).toMatchObject({ copy: 'CR-01', folder: '.' });
    expect(callOf(['print'])).toMatchObject({ copy: null, folder: '.' });
    expect(callOf(['print', 'book', '--cards'])).toMatchObject({ copy: null, folder: 'book', out: '_cards' });
    expect(told('print', 'CR-01', 'book', 'more')).toContain('more is too much');
    expect(told('print', 'CR-01', '--browser')).toContain('Write  --browser chromium');
  });
  it('takes what a new book begins with, as far as it is said', () => {
    expect(callOf(['start', 'my-book', '--lab', 'Ours', '--fill', '1.80 L', '--log', 'a.csv'])).toMatchObject({
      ...{ command: 'start', folder: 'my-book', beginning: { lab: 'Ours', fill: '1.80 L' }, log: 'a.csv' },
    });
    expect(told('start', '--fill')).toBe('--fill needs a value. Write  --fill "1.80 L"');
  });
  it('asks for help and for the version whatever else stands there', () => {
    expect(callOf(['build', '-h'])).toMatchObject({ command: 'help' });
    expect(callOf(['--version'])).toMatchObject({ command: 'version' });
  });
  it('names the command that was meant', () => {
    expect(told('biuld')).toContain('Write  dipmark build');
    expect(told('publish')).toBe('There is no command publish.');
    expect(told()).toContain('Write  dipmark build');
  });
  it('names the option that was meant, and the value that is missing or too much', () => {
    expect(told('build', '--pubic')).toContain('Write  --public');
    expect(told('build', '--out')).toContain('Write  --out _site');
    expect(told('build', '--out', '--json')).toContain('needs a value');
    expect(told('build', '--public=yes')).toContain('takes no value');
    expect(told('build', '--constructor')).toContain('There is no option');
  });
  it('refuses what a command does not take, a second folder and a port that is none', () => {
    expect(told('check', '--out', 'x')).toBe('check does not take --out.');
    expect(told('build', 'a', 'b')).toContain('b is too much');
    for (const port of ['70000', '80.5', 'x']) expect(told('preview', '--port', port)).toContain('is no port');
  });
});
