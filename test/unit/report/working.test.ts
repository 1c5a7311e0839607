import { describe, expect, it } from 'vitest';
import { seriesPages } from '../../../src/report/pages.ts';
import type { Page, Section } from '../../../src/report/page.ts';
import { findingOf, input } from './fixture.ts';
import { plainSpaces } from './page-at.ts';
import { textsOf } from './reading.ts';

const pages = seriesPages(input({ findings: [findingOf('sump-odd', { run: 'S-01' })] }));
const page = (path: string): Page => pages.find((p) => p.path === path)!;
const textIn = (p: Page, anchor: string): string => {
  const section: Section = p.sections.find(({ id }) => id === anchor)!;
  return textsOf({ ...p, sections: [section] }).replace(/[\u202f\u00a0]/g, ' ');
};

describe('the working of a figure', () => {
  it('gives a section a condition, with what was given, the relation, the result and the budget', () => {
    const text = textIn(page('series/pan/workings/S-01/spin-power/'), '300rpm,60Cel');
    expect(text).toContain('pan/runs/S-01.csv');
    expect(text).toContain(' lines 10–40');
    expect(text).toContain('Net torque is raw torque less the zero');
    expect(text).toContain('Power of a turning shaft');
    expect(text).toMatch(/241\.0 ± 9\.\d W/);
    // by hand: u and u/2 are 80 % and 20 % of the variance
    expect(text).toMatch(/refitting\n.*\n80 %\n14\nrefit/);
    expect(text).toMatch(/torque zero\n.*\n20 %\nfirm\nrun/);
  });

  it('says of a grade that it has no interval', () => {
    const grade = plainSpaces(textsOf(page('series/pan/workings/F-03/reach/')));
    expect(grade).toContain('It has no interval of its own.');
    expect(grade).not.toContain('— is half');
  });

  it('keeps every condition of one subject and quantity on one page', () => {
    expect(page('series/pan/workings/S-01/spin-power/').sections.map(({ id }) => id)).toEqual([
      '150rpm,60Cel',
      '300rpm,40Cel',
      '300rpm,60Cel',
    ]);
  });

  it('shows of a difference both of its cells, each of their runs, and the word', () => {
    const text = textIn(page('series/pan/workings/A1~A0/spin-power/'), '300rpm,60Cel');
    expect(text).toContain('A1 shroud');
    expect(text).toContain('A0 pressed bowl');
    expect(text).toContain('S-02');
    expect(text).toContain('S-01');
    expect(text).toMatch(/ΔP = \n−28\.0 ± \d\.\d W/);
    expect(text).toContain('separated');
  });
});

describe('what the checks found', () => {
  it('says the place, what is there, why it will not do and what to write, under the line itself', () => {
    const text = textsOf(page('series/pan/checks/'));
    for (const part of [
      'line 3, column 5',
      'sump-odd',
      'the sump reads 61.2 °C',
      'the cap is 60 °C',
      'nothing; the run is marked',
    ])
      expect(text).toContain(part);
    expect(text).toContain('a: by KZQ\n    ^^^^');
  });

  it('stands on the sheet of its run too', () => {
    expect(page('series/pan/runs/S-01/').sections.map(({ id }) => id)).toContain('findings');
    expect(page('series/pan/runs/S-02/').sections.map(({ id }) => id)).not.toContain('findings');
  });
});
