import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { outsideOf, outsideSaid } from '../../../src/host/terminal/outside.ts';
import { fault } from '../../../src/host/terminal/words.ts';

const thrown = (act: () => unknown): unknown => {
  try {
    act();
  } catch (error) {
    return error;
  }
  throw new Error('nothing was thrown');
};
const missing = thrown(() => readFileSync('no/such/file'));

describe('trouble of the machine', () => {
  it('is known as it comes, and inside an error that a library made of it', () => {
    expect(outsideOf(missing)?.code).toBe('ENOENT');
    expect(outsideOf(new Error('cannot write', { cause: missing }))).toBe(missing);
    expect(outsideOf(Object.assign(new Error('cannot write'), { originalError: missing }))).toBe(missing);
  });

  it('is no fault of ours, and a fault of ours is not taken for it', () => {
    expect(outsideOf(new TypeError('no such thing'))).toBeNull();
    expect(outsideOf('words')).toBeNull();
    expect(fault(new TypeError('no such thing'))).toContain('fault of dipmark');
    expect(fault(missing)).toBe(
      'no/such/file is not there, or is gone by now: open found nothing. Call again once it is back.',
    );
  });

  it.each([
    ['ENOSPC', /disk is full: out\/a could/],
    ['EDQUOT', /disk is full/],
    ['EFBIG', /out\/a to be that large/],
    ['EROFS', /EROFS.*copyfile of out\/a/],
    ['EACCES', /EACCES/],
    ['EPERM', /EPERM/],
    ['EMFILE', /ulimit -n/],
    ['EADDRINUSE', /--port 0/],
    ['EIO', /would not do it: as it was said/],
  ])('%s is told with its place and with what to do', (code, words) => {
    const error = Object.assign(new Error('as it was said'), {
      code,
      syscall: 'copyfile',
      path: 'from',
      dest: 'out/a',
    });
    expect(outsideSaid(error)).toMatch(words);
  });
});
