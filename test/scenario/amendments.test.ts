import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { hillGear, lawOf, oilLaws, settled } from '../../demo-runs/make/law.ts';
import { makeDemo } from '../../demo-runs/make/demo.ts';
import { makeBook } from '../../src/pipeline.ts';
import type { Figure } from '../../src/ledger/figure.ts';
import type { Reach } from '../../src/trial/reach.ts';
import { demoFiles, demoMade, filesOf } from './demo.ts';
import { smallDemo, withText } from './small.ts';

const made = demoMade();
const { reaches, ledger } = made.series[0]!;
const [c01] = reaches as readonly [Reach<Figure>];
const page = (path: string) => JSON.stringify(made.pages.find((p) => p.path === `series/hill-bowl/${path}`));
const moved = (reach: Reach<Figure>, id: string): number => {
  const found = reach.figures.find((figure) => figure.id === id)!;
  return found.after!.value! - found.before!.value!;
};

describe('the correction of the demo: an ambient probe that hung in the return of the fan', () => {
  it('moves the rise of H-09 by 3.4 K, and turns one claim', () => {
    expect(c01.correction.id).toBe('COR-01');
    expect(Math.abs(moved(c01, 'H-09/final-rise') - 3.4)).toBeLessThan(0.1);
    expect(c01.claims).toEqual([{ id: 'CL-5', before: 'shown', after: 'not shown' }]);
  });

  it('moves the difference by as much as the axle answers to ambient: what is stated is for one reference ambient', () => {
    // 3.4 K off in ambient are 3.4·K/(K − s) in a final temperature that is brought to another ambient
    const run = made.series[0]!.derived.get('H-09')!;
    const K = ledger.byId.get('H-09/shed')!.value!;
    const answer = K / (K - run.heatSlope_W_K!.value);
    expect(Math.abs(moved(c01, 'P2~P0/final-rise') / (3.4 * answer) - 1)).toBeLessThan(0.03);
    expect(moved(c01, 'P2~P0/final-rise')).toBeCloseTo(moved(c01, 'P2/final-rise'), 6);
  });

  it('reaches that run, the spin runs of its article at their own temperature, its flow trial, and nobody else', () => {
    expect(c01.runs).toEqual(['F-03', 'H-09', 'S-02', 'S-21', 'S-26']);
    const subjects = new Set(c01.figures.map(({ id }) => id.slice(0, id.indexOf('/'))));
    for (const subject of subjects) expect(['F-03', 'H-09', 'S-02', 'S-21', 'S-26', 'P2', 'P2~P0']).toContain(subject);
  });

  it('stamps every page that it reached, keeps the old value readable, and no other', () => {
    for (const path of [
      'runs/H-09/',
      'articles/P2/',
      'standing/',
      'claims/',
      'workings/H-09/final-rise/',
      'workings/P2~P0/final-rise/',
    ])
      expect(page(path), path).toContain('amends/#COR-01');
    expect(page('workings/H-09/final-rise/')).toMatch(/It was 79\.\d+/);
    for (const path of ['runs/H-10/', 'articles/P4/', 'workings/H-10/final-rise/'])
      expect(page(path)).not.toContain('COR-01');
  });

  it('tells the house which client copy it reached, and the public that there is none', () => {
    expect(page('amends/')).toMatch(/Client copies reached.*CR-01.*issue 1 for Client A: a new issue is owed/);
    const shown = makeBook({ files: demoFiles(), audience: 'public' });
    const held = /CR-01|Client A|Article B|Client copies/;
    // The guide shows how such a note is written, to everybody, and its words can be found.
    expect(shown.pages.filter((p) => p.kind !== 'guide' && held.test(JSON.stringify(p))).map((p) => p.path)).toEqual(
      [],
    );
    expect(
      shown.files.filter(({ path, text }) => path !== 'find/book.js' && held.test(text)).map((f) => f.path),
    ).toEqual([]);
    expect(held.test(JSON.stringify(shown.findings))).toBe(false);
  });

  it('leaves the raw file as it is, and says in every figure of the run what is read otherwise', () => {
    const figure = ledger.byId.get('H-09/final-rise')!;
    expect(figure.notes.join(' ')).toContain('ambient as corrected by COR-01: -3.4 K added');
    expect(readFileSync('demo-runs/hill-bowl/runs/H-09.csv', 'utf8')).toContain('24.');
  });
});

describe('the same with the noise switched off, the probe 3.4 K too warm', () => {
  const files = new Map(makeDemo({ seed: 2562, quiet: true, select: false }));
  const log = 'hill-bowl/runs/H-09.csv';
  const [head = '', ...rows] = files.get(log)!.trimEnd().split('\n');
  const at = head.split(',').findIndex((name) => /amb/i.test(name));
  const warmer = rows.map((row) =>
    row
      .split(',')
      .map((cell, i) => (i === at ? String(Number(cell) + 3.4) : cell))
      .join(','),
  );
  files.set(log, `${[head, ...warmer].join('\n')}\n`);
  files.set('hill-bowl/amendments/COR-01.md', readFileSync('demo-runs/hill-bowl/amendments/COR-01.md', 'utf8'));
  const [reach] = makeBook({ files: filesOf(files), audience: 'house' }).series[0]!.reaches as [Reach<Figure>];
  const pair = (id: string) => {
    const { before, after } = reach.figures.find((figure) => figure.id === id)!;
    return [before!.value!, after!.value!] as const;
  };

  it('is 79.5 K before and 82.9 K after', () => {
    const [before, after] = pair('H-09/final-rise');
    expect(Math.abs(before - 79.5)).toBeLessThan(0.1);
    expect(Math.abs(after - 82.9)).toBeLessThan(0.1);
  });

  it('leaves 1.3 K of 4.7 K below the rise that was planted for the baseline', () => {
    const [before, after] = pair('H-09/final-rise');
    const baseline = settled(
      { gear: hillGear, article: lawOf('P0'), oil: oilLaws['O1']!, level_mm: -53, oilMass_kg: 2.15, refit_Nm: 0 },
      { wheel_rpm: 290, powerOut_W: 22e3 },
      { air_m_s: 4, ambient_C: 21 },
    ).rise_K;
    expect(Math.abs(before - baseline + 4.7)).toBeLessThan(0.15);
    expect(Math.abs(after - baseline + 1.3)).toBeLessThan(0.15);
  });
});

describe('corrections of other kinds', () => {
  const head =
    'found-on: 2026-07-16\nfound-by: reader\npublished-on: 2026-07-20\nsince: 2026-03-02\nwhat: "w"\ncause: "c"\n';
  const reachOf = (kind: string, changes: string): Reach<Figure> => {
    const text = `---\nid: C-07\nkind: ${kind}\nshown-to: public\n${head}changes:\n  - ${changes}\n---\n`;
    const files = withText('hill-bowl/amendments/C-07.md', text, smallDemo());
    return makeBook({ files, audience: 'house' }).series[0]!.reaches[0]!;
  };

  it('a calibration reaches every run that the instrument was read in', () => {
    const reach = reachOf('calibration', '{ instrument: torque-low, times: 1.02 }');
    expect(reach.runs).toEqual(expect.arrayContaining(['S-01', 'S-07', 'S-08', 'S-15', 'S-18', 'S-30']));
    const one = reach.figures.find(({ id }) => id === 'S-01/spin-power@290rpm,60Cel')!;
    expect(one.after!.value! / one.before!.value!).toBeCloseTo(1.02, 2);
    const some = reachOf('calibration', '{ instrument: torque-low, times: 1.02, to: 2026-03-04 }');
    expect(some.figures.length).toBeLessThan(reach.figures.length);
  });

  it('an identity moves a run from one article to another', () => {
    const reach = reachOf('identity', '{ run: S-18, field: article, write: P0 }');
    const ids = reach.figures.map(({ id }) => id);
    expect(ids).toContain('P0/spin-power@290rpm,60Cel');
    expect(ids).toContain('P4/spin-power@290rpm,60Cel');
    expect(ids.some((id) => id.startsWith('S-07/spin-power@290rpm,60Cel'))).toBe(false);
  });

  it('words alone move nothing', () => {
    const text = `---\nid: C-07\nkind: text\nshown-to: public\n${head}---\n`;
    const { reaches: none, record } = makeBook({
      files: withText('hill-bowl/amendments/C-07.md', text, smallDemo()),
      audience: 'house',
    }).series[0]!;
    expect(record.corrections).toHaveLength(1);
    expect(none).toEqual([]);
  });
});

describe('a correction in a public build', () => {
  const build = (change: (note: string) => string): string => {
    const note = change(readFileSync('demo-runs/hill-bowl/amendments/COR-01.md', 'utf8')).replaceAll('H-09', 'H-10');
    const files = withText('hill-bowl/amendments/COR-01.md', note, smallDemo());
    const { pages, files: texts } = makeBook({ files, audience: 'public' });
    // the guide shows a correction of its own, and so do the words of it that can be found
    const own = texts.filter(({ path }) => !path.endsWith('find/book.js'));
    return JSON.stringify([pages.filter(({ kind }) => kind !== 'guide'), own]);
  };

  it('stands there when its note is for the public', () => {
    expect(build((note) => note)).toContain('the return of the fan');
  });

  it('for the house alone still corrects the figures, and no word of it is in any byte', () => {
    const said = build((note) => note.replace('shown-to: public', 'shown-to: house'));
    for (const word of ['COR-01', 'the return of the fan', '-3.4 K', '−3.4 K', 'trolley'])
      expect(said).not.toContain(word);
    expect(said).toContain('as corrected by the house');
  });
});
