import { describe, expect, it } from 'vitest';
import { hrefFrom, insideSite, relative } from '../../src/host/site/address.ts';

describe('an address on a page', () => {
  const here = 'series/hill-bowl/runs/S-07/';
  it.each([
    ['', '../../../../index.html'],
    ['series/hill-bowl/', '../../index.html'],
    ['series/hill-bowl/runs/S-08/', '../S-08/index.html'],
    ['series/hill-bowl/runs/S-07/', 'index.html'],
    ['#figures', '#figures'],
    ['method/#upright-plate', '../../../../method/index.html#upright-plate'],
    ['series/hill-bowl/ledger.json', '../../ledger.json'],
    [
      'series/hill-bowl/workings/P4~P0/spin-power/#290rpm,60Cel',
      '../../workings/P4~P0/spin-power/index.html#290rpm%2C60Cel',
    ],
    ['https://example.org/a', 'https://example.org/a'],
  ])('to "%s" is written %s', (to, href) => {
    expect(hrefFrom(here, to)).toBe(href);
  });
  it.each([
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    'data:text/html,x',
    'figure:H-03/x',
    '//evil.example/x',
    'file:///etc/passwd',
  ])('to "%s" is none', (to) => {
    expect(hrefFrom(here, to)).toBeNull();
  });
  it('from the home page needs no step up', () => {
    expect(relative('', 'assets/site.css')).toBe('assets/site.css');
  });
  it.each(['../x', 'a/../../x', '/etc/x', 'a\\b', './x'])('of a file "%s" outside the site is refused', (path) => {
    expect(() => insideSite(path)).toThrow(/outside the site/);
  });
});
