import { describe, expect, it } from 'vitest';
import type { Finding, Level, Place } from '../../../src/finding/finding.ts';
import { asJson, showFinding, showFindings, summary } from '../../../src/finding/show.ts';

const finding = (place: Partial<Place> = {}, level: Level = 'error'): Finding => ({
  code: 'unit-missing',
  level,
  place: { file: 'runs/S-03.md', line: 14, column: 7, length: 3, lineText: 'fill: 2.1', ...place },
  says: '"fill" is a volume and has no unit.',
  why: 'The number alone has more than one reading',
  write: 'Write  fill: 2.1 L  or  fill: 2.1 US qt.',
  effect: 'This run is left out of the series.',
});
const caretLines = (place: Partial<Place>): string[] => showFinding(finding(place)).split('\n').slice(1, 3);

describe('a finding in the terminal', () => {
  it('shows where, the line with a caret, what is there, why, what to write and what becomes of it', () => {
    expect(showFinding(finding())).toBe(
      [
        'runs/S-03.md:14:7  error  unit-missing',
        '        14 | fill: 2.1',
        '           |       ^^^',
        '      "fill" is a volume and has no unit. The number alone has more than one reading. Write  fill:',
        '      2.1 L  or  fill: 2.1 US qt. This run is left out of the series.',
      ].join('\n'),
    );
  });

  it('without the line shows no caret', () => {
    const place = { file: 'runs/S-03.md', line: 14, column: 7 };
    expect(showFinding({ ...finding(), place }).split('\n')[1]).toMatch(/^ {6}"fill" is/);
  });

  it('keeps the place in view on a long line, within a hundred columns', () => {
    const lineText = `${'a'.repeat(300)}X${'b'.repeat(300)}`;
    const [line, caret] = caretLines({ lineText, column: 301, length: 1 }) as [string, string];
    expect(line.length).toBeLessThanOrEqual(100);
    expect(line[caret.indexOf('^')]).toBe('X');
    expect(line).toMatch(/\| …a+Xb+…$/);
  });

  it.each([1, 2, 88, 89, 600, 601])('points at column %i of a long line', (column) => {
    const lineText = `${'a'.repeat(column - 1)}X${'b'.repeat(601 - column)}`;
    const [line, caret] = caretLines({ lineText, column, length: 1 }) as [string, string];
    expect(line[caret.indexOf('^')]).toBe('X');
  });

  it('shows tabs as one sign, so that the caret still points right', () => {
    const [line, caret] = caretLines({ lineText: '\t\tfill: 2.1', column: 9, length: 3 }) as [string, string];
    expect(line).toContain('→→fill: 2.1');
    expect(line.slice(caret.indexOf('^'))).toBe('2.1');
  });

  it('leaves room for wide signs and none for combining ones', () => {
    const [, caret] = caretLines({ lineText: '油e\u0301: 2', column: 6, length: 1 }) as [string, string];
    expect(caret).toBe(`${' '.repeat(11)}| ${' '.repeat(5)}^`);
  });

  it('lets no control sign of the input reach the terminal', () => {
    const shown = showFinding({
      ...finding({ file: 'a\u001b[2J.md', lineText: 'fill: \u001b[31m\u202e2.1\ud83d' }),
      says: 'says \u001b]0;x\u0007',
    });
    expect(shown).not.toMatch(/[^\n\P{Cc}]|\u202e|\p{Cs}/u);
  });

  it('points behind the last sign when the trouble is the end of the line', () => {
    const [, caret] = caretLines({ lineText: 'fill:', column: 6, length: 1 }) as [string, string];
    expect(caret).toBe(`${' '.repeat(11)}| ${' '.repeat(5)}^`);
  });
});

describe('all findings', () => {
  it('come in order of what they block, then by place', () => {
    const list = [
      finding({ line: 2 }, 'notice'),
      finding({ line: 9 }),
      finding({ line: 1 }, 'warning'),
      finding({ line: 3 }),
    ];
    const heads = showFindings(list)
      .split('\n')
      .filter((line) => line.startsWith('runs/'));
    expect(heads.map((head) => head.split('  ').slice(0, 2).join(' '))).toEqual([
      'runs/S-03.md:3:7 error',
      'runs/S-03.md:9:7 error',
      'runs/S-03.md:1:7 warning',
      'runs/S-03.md:2:7 notice',
    ]);
  });

  it('are cut at a limit, and the rest is counted', () => {
    expect(showFindings([finding(), finding(), finding()], { limit: 1 })).toMatch(/\n\nand 2 more$/);
    expect(showFindings([])).toBe('');
  });

  it('are summed up in words', () => {
    const list = [
      finding(),
      finding(),
      finding({}, 'warning'),
      ...Array.from({ length: 3 }, () => finding({}, 'notice')),
    ];
    expect(summary(list)).toBe('2 errors, 1 warning, 3 notices');
    expect(summary([finding({}, 'warning')])).toBe('1 warning');
    expect(summary([])).toBe('nothing found');
  });

  it('are plain data for machines', () => {
    const json = asJson({ ...finding(), about: { series: 'hill-bowl', run: 'S-03' } });
    expect(JSON.parse(JSON.stringify(json))).toEqual({
      code: 'unit-missing',
      level: 'error',
      file: 'runs/S-03.md',
      line: 14,
      column: 7,
      length: 3,
      says: '"fill" is a volume and has no unit.',
      why: 'The number alone has more than one reading',
      write: 'Write  fill: 2.1 L  or  fill: 2.1 US qt.',
      effect: 'This run is left out of the series.',
      about: { series: 'hill-bowl', run: 'S-03' },
    });
  });
});
