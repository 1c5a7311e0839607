import { describe, expect, it } from 'vitest';
import { brokenAtSlashes, keptTogether } from '../../../src/host/site/kept-together.ts';

// common practice, no source: a name and a number with its unit are read as one thing and stand on one line
describe('what a line of a page may not break', () => {
  it('a run’s name stays in one piece, and the words round it may break', () => {
    expect(keptTogether('Graded in F-01, without load')).toBe(
      'Graded in <span class="whole">F-01</span>, without load',
    );
    expect(keptTogether('sha-256')).toBe('<span class="whole">sha-256</span>');
  });

  it('a hyphen between long words is left alone, and so is a name longer than a phone’s column', () => {
    expect(keptTogether('a camera-shy, half-opened lid')).toBe('a camera-shy, half-opened lid');
    const long = 'the-cover-of-the-other-rear-axle-2';
    expect(keptTogether(long)).toBe(long);
  });

  it('a short word with a hyphen keeps its end', () => {
    expect(keptTogether('four set-ups are run')).toBe('four <span class="whole">set-ups</span> are run');
  });

  it('a number stays with its unit, and a number before a word does not', () => {
    expect(keptTogether('2.40 L, 12 % nose up')).toBe('2.40\u00a0L, 12\u00a0% nose up');
    expect(keptTogether('3 steps of 290 rpm')).toBe('3 steps of 290\u00a0rpm');
  });

  it('signs of HTML are text, inside a name and out of it', () => {
    expect(keptTogether('<b>F-01</b> & "T-01"')).toBe(
      '&lt;b&gt;<span class="whole">F-01</span>&lt;/b&gt; &amp; &quot;<span class="whole">T-01</span>&quot;',
    );
    expect(brokenAtSlashes('<a>/b-1')).toBe('&lt;a&gt;/<wbr><span class="whole">b-1</span>');
  });

  it('a path breaks after its slashes and not at its hyphens; an empty text stays empty', () => {
    expect(brokenAtSlashes('hill-bowl/runs/F-01.vtt')).toBe(
      '<span class="whole">hill-bowl/</span><wbr>runs/<wbr><span class="whole">F-01.vtt</span>',
    );
    expect([keptTogether(''), brokenAtSlashes('')]).toEqual(['', '']);
  });
});
