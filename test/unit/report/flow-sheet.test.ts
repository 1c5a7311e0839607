import { describe, expect, it } from 'vitest';
import type { DerivedRun, FlowStep } from '../../../src/trial/derived.ts';
import type { ChartData, Page } from '../../../src/report/page.ts';
import { ahead_s, fileOf } from './fixture-flow.ts';
import { blocksOf } from './reading.ts';
import { firstOf, joined, leadOf, marginOf, pagesOf, plainSpaces, rowsOf, sectionOf, wordsIn } from './page-at.ts';

const { page } = pagesOf();
const sheet = page('runs/F-02/');

const chartOf = <K extends ChartData['kind']>(of: Page, id: string, kind: K): Extract<ChartData, { kind: K }> => {
  const found = blocksOf(of).find((block) => block.kind === 'chart' && block.chart.id === id);
  if (found?.kind !== 'chart' || found.chart.data.kind !== kind) throw new Error(`no ${kind} chart ${id}`);
  return found.chart.data as Extract<ChartData, { kind: K }>;
};

/** One run with other steps. */
const withSteps = (run: string, change: (steps: readonly FlowStep[]) => readonly FlowStep[]) =>
  pagesOf({
    derived: (all) =>
      all.map((d): DerivedRun => (d.run === run ? { ...d, flow: { ...d.flow!, steps: change(d.flow!.steps) } } : d)),
  }).page(`runs/${run}/`);

// Hand-made u of 0.5 mm by one cause with 14 degrees of freedom and 0.25 mm by a firm one: 0.559 mm, 22 of them, k = 2.07.
describe('the lead of a flow sheet', () => {
  it('says Reach over the steps, how far the level falls, and what is left open', () => {
    expect(leadOf(sheet)).toBe(
      'Reach is 1 at 150 wheel rpm and 3 at 300 on the way up. The running level falls from −60.0 ± 1.2 mm at 150 wheel rpm to −65.0 ± 1.2 mm at 300 wheel rpm, from the axle centreline. Left open between observers: everything at 150 rpm down.',
    );
  });

  it('says together what neighbouring steps have in common, and links each grade to its working', () => {
    const equal = withSteps('F-03', (steps) =>
      steps.map((step) => ({ ...step, grades: { ...step.grades!, reach: steps[0]!.grades!.reach } })),
    );
    expect(leadOf(equal)).toMatch(/^Reach is 0 from 150 to 300 wheel rpm on the way up\./);
    expect(sheet.lead).toContainEqual(expect.objectContaining({ kind: 'figure', id: 'F-02/reach@300rpm', text: '3' }));
  });

  it('says that nobody graded it, and that no step was found', () => {
    const nobody = withSteps('F-03', (steps) => steps.map((step) => ({ ...step, grades: null, observations: [] })));
    expect(leadOf(nobody)).toMatch(/^Nobody graded what was seen\./);
    expect(leadOf(withSteps('F-03', () => []))).toBe('No step of the plan was found in its log.');
  });

  it('names what could not be graded', () => {
    const blind = withSteps('F-03', (steps) =>
      steps.map((step, i) =>
        i === 0 ? { ...step, grades: { ...step.grades!, wall: { stands: 'ng', how: 'joint look', first: [] } } } : step,
      ),
    );
    expect(leadOf(blind)).toContain('Not gradable: Wall hit at 150 rpm up.');
  });
});

describe('the steps of a flow sheet', () => {
  it('have a row each, up and then down, with sump, level, ± and swing', () => {
    expect(rowsOf(sheet, 'step-levels')).toEqual([
      ['150 rpm up', '58.0 °C', '−60.0 mm', '± 1.2', '3.00 mm', '± 0.70'],
      ['300 rpm up', '58.0 °C', '−65.0 mm', '± 1.2', '3.00 mm', '± 0.70'],
      ['150 rpm down', '58.0 °C', '−62.0 mm', '± 1.2', '3.00 mm', '± 0.70'],
    ]);
  });

  it('say where the sump probe hung in the mist, and where the level was not at rest', () => {
    expect(rowsOf(page('runs/F-04/'), 'step-levels')[0]!.at(-1)).toBe(
      'Sump probe above the level: it reads mist, not oil',
    );
    const moving = withSteps('F-03', (steps) => steps.map((step) => ({ ...step, steady: false })));
    expect(rowsOf(moving, 'step-levels')[0]!.at(-1)).toMatch(/^Not steady: the level still moved faster than 1 mm/);
  });

  it('say how each grade came to stand: a joint look, everybody alike, or left open', () => {
    const grades = rowsOf(sheet, 'step-grades');
    expect(grades.map(([step, reach]) => [step, reach])).toEqual([
      ['150 rpm up', '1'],
      ['300 rpm up', '3 joint'],
      ['150 rpm down', '1 or ng open'],
    ]);
    expect(grades[2]!.at(-1)).toBe('1 or 3');
  });

  it('label a kind that may not be used, in its head and in the margin', () => {
    expect(wordsIn(sheet, 'steps')).toContain('Wall hit (not usable)');
    expect(marginOf(sheet, 'steps', 'Not to lean on.')).toBe('Wall hit: kappa 0.42 is under the 0.60 of the series.');
  });

  it('keep the first grades of each observer in a fold, and the joint look beside them', () => {
    expect(rowsOf(sheet, 'first-grades').map((cells) => cells.slice(0, 3))).toEqual([
      ['150 rpm up', 'KZQ', '1'],
      ['150 rpm up', 'XZQ', '1'],
      ['300 rpm up', 'KZQ', '2'],
      ['300 rpm up', 'XZQ', '3'],
      ['150 rpm down', 'KZQ', '1'],
      ['150 rpm down', 'XZQ', 'ng'],
    ]);
    expect(rowsOf(sheet, 'first-grades')[0]!.at(-1)).toBe('single drops at the pocket');
    expect(rowsOf(sheet, 'joint-look')).toHaveLength(1);
    expect(marginOf(sheet, 'steps', 'Graded by.')).toBe(
      'Observer KZQ did not know the fill and the oil. Observer XZQ did not know the fill and the oil.',
    );
  });

  it('tell the way down apart from the way up, level and grades, and average neither', () => {
    expect(rowsOf(sheet, 'up-and-down')).toEqual([
      [
        '150',
        '2.00 ± 0.70 mm',
        '1 then 1 or ng',
        '1 then 1 or ng',
        '1 then 1 or ng',
        '1 then 1 or ng',
        '1 then 1 or ng',
      ],
    ]);
    expect(wordsIn(sheet, 'ways')).toContain(
      'At 150 wheel rpm the level differs between the two ways by more than its ±.',
    );
    expect(page('runs/F-04/').sections.map(({ id }) => id)).not.toContain('ways');
  });
});

describe('film and trace of a flow sheet', () => {
  const clip = firstOf(sheet, 'clip')!.clip;

  it('is called a drawing where it is one', () => {
    expect(clip.drawing).toBe(true);
    expect(clip.title).toMatch(/A drawing, not a film$/);
  });

  it('put the clip over the chart that its mark runs on', () => {
    expect(clip).toMatchObject({
      source: 'pan/runs/F-02.webm',
      address: 'series/pan/clips/K7.webm',
      captions: 'series/pan/clips/K7.vtt',
      traces: 'picture-film',
      drawing: true,
    });
    const film = chartOf(sheet, 'film', 'film');
    expect(film.panels.map(({ yTitle }) => yTitle)).toEqual([
      'level, mm from the axle centreline',
      'sump, °C',
      'wheel rpm',
    ]);
    expect(film.panels[2]!.points.map(([, y]) => Math.round(y))).toEqual([0, 150, 300, 0]);
    expect(film.steps.map(({ label }) => label)).toEqual(['150 rpm up', '300 rpm up', '150 rpm down']);
  });

  it('move steps into the time of the clip: log 60 s + 5 s ahead − 9 s cut off is 56 s', () => {
    expect(clip.steps[0]).toEqual({ name: '150 rpm up', from_s: 56, to_s: 146 });
    expect(clip.cues[0]).toMatchObject({ from_s: 56, to_s: 66 });
  });

  it('end an open piece of a clip with the log, so that no time is without end', () => {
    expect(clip.pieces).toEqual([{ clip_s: 0, to_clip_s: 476, offset_s: 4 }]);
  });

  it('cut a step off where the clip ends', () => {
    const shroud = firstOf(page('runs/F-03/'), 'clip')!.clip;
    expect(shroud.steps.at(-1)).toEqual({ name: '150 rpm down', from_s: 296, to_s: 386 });
    expect(shroud.pieces[0]!.to_clip_s).toBe(400);
  });

  it('say an observation in plain words, whose it is, and what was seen', () => {
    expect(clip.cues[0]!.text).toBe(
      'Observer KZQ: Reach 1, Side fall 1, Wall hit 1, Bubble 1, Tube run 1, View 3. Single drops at the pocket.',
    );
    expect(clip.cues.map(({ text }) => text.split(':')[0])).toContain('Joint look');
  });

  it('say how far the camera was ahead, and how that is known', () => {
    expect(marginOf(sheet, 'picture', 'Camera clock.')).toMatch(
      new RegExp(`^The camera is ${String(ahead_s)}\\.0 ± 1\\.2 s ahead of the logger, found from the sync event\\.`),
    );
    expect(marginOf(page('runs/F-01/'), 'picture', 'Camera clock.')).toBe(
      'F-01.mp4: no sync event ties it to the logger, so no mark runs on the traces.',
    );
  });

  it('say of a clip that is not in the folder where it is kept, and give its captions and chapters all the same', () => {
    const words = wordsIn(page('runs/F-01/'), 'clips');
    expect(firstOf(page('runs/F-01/'), 'clip')).toBeUndefined();
    expect(words).toContain('not in the folder: camera shelf 2');
    const links = JSON.stringify(sectionOf(page('runs/F-01/'), 'clips'));
    expect(links).toContain('series/pan/clips/F-01.vtt');
    expect(links).toContain('series/pan/clips/F-01.chapters.txt');
  });
});

describe('stills of a flow sheet', () => {
  const items = firstOf(sheet, 'stills')!.items;

  it('say their rule, and label the one that was chosen', () => {
    expect(items.map(({ caption }) => joined(caption))).toEqual([
      '300 wheel rpm, way up. Closed sheet. 5 s into the hold. A drawing, not a photograph.',
      '300 wheel rpm, way up. Closed sheet. Chosen by hand. Cropped.',
    ]);
    expect(items[1]!.caption).toContainEqual({ kind: 'strong', text: 'Chosen' });
    expect(items[0]).toMatchObject({
      source: 'pan/pictures/F-02-300.png',
      address: 'series/pan/stills/F-02-300',
      alternative: 'Picture F-02-300.png: a closed sheet over the gear',
      drawing: true,
    });
  });

  it('name the one that is not in the folder', () => {
    expect(wordsIn(sheet, 'stills')).toContain(
      'F-02-lost.png: 150 wheel rpm, way up. Closed sheet. Event: first mist.',
    );
  });
});

describe('where the oil stands on a flow sheet', () => {
  it('draws the window copy as what it stands in for, with a running level a step and the race ahead of the axle', () => {
    const data = chartOf(sheet, 'section', 'section');
    expect(data.running.map(({ z, label }) => [Math.round(z), plainSpaces(label)])).toEqual([
      [-60, '150 rpm −60.0 mm'],
      [-65, '300 rpm −65.0 mm'],
    ]);
    expect(data.running[0]!.swing).toBeCloseTo(3, 6);
    expect(data.race).toEqual({ x: -190, z: -32, radius: 45 });
    expect(data.tilt).toBe(0);
    expect(data.wall.length).toBeGreaterThan(1);
    expect(wordsIn(sheet, 'section-drawing')).toContain('The inside is drawn as that of A0.');
    expect(chartOf(page('runs/F-01/'), 'section', 'section').tilt).toBe(0.12);
  });

  it('says by how much the bath clears the race of a level axle, and that a tilted one only just touches it', () => {
    expect(wordsIn(sheet, 'section-drawing')).toContain(
      'At rest the surface 190 mm ahead of the axle stands at −53.3 ± 1.1 mm: it stands 23.7 ± 1.1 mm over the lowest point of the pinion race (−77 mm).',
    );
    // 53.3 + 190 · 0.12 = 76.1; 77 − 76.1 = 0.9
    expect(wordsIn(page('runs/F-01/'), 'section-drawing')).toContain(
      'At rest, nose up, the surface 190 mm ahead of the axle stands 22.8 mm lower, at −76.1 ± 1.1 mm: 0.9 ± 1.1 mm above the lowest point of the pinion race (−77 mm): the bath only just touches it.',
    );
  });
});

describe('settling on a flow sheet', () => {
  it('has readings, the curve, the level before, and bubbles over their times', () => {
    const data = chartOf(sheet, 'settling', 'settle');
    expect(data.points).toHaveLength(4);
    // by hand: −54 − 4 · 2^(−600/45) is −54.0004
    expect(data.fit.at(-1)![0]).toBe(600);
    expect(data.fit.at(-1)![1]).toBeCloseTo(-54.0004, 4);
    expect(data.fit[0]![1]).toBeCloseTo(-58, 9);
    expect(data.bubbles).toEqual([
      { x: 0, text: '2' },
      { x: 60, text: '1' },
    ]);
    const words = wordsIn(sheet, 'settle');
    expect(words).toMatch(/Half-time of the level45\.0 ± 4\.\d s/);
    expect(words).toContain('Air in the oil: not identifiable — no sample was weighed.');
  });

  it('is left out where nothing was read after the stop', () => {
    expect(page('runs/F-03/').sections.map(({ id }) => id)).not.toContain('settle');
  });
});

describe('numbers beside the picture', () => {
  it('say what turns together, Reynolds here and in the loaded run, and the ceiling as a band', () => {
    // 41/11 · 150 = 559.1; U = 15.708 · 0.111 = 1.744 m/s; Fr = 15.708² · 0.111/9.80665 = 2.793
    expect(rowsOf(sheet, 'step-speeds')[0]).toEqual(['150', '150 rpm', '559.1 rpm', '1.744 m/s', '2.793']);
    expect(rowsOf(sheet, 'step-numbers')[0]).toEqual(['150 rpm up', '2100 ± 32', '11 000 ± 120', '3 to 18 W']);
    expect(rowsOf(sheet, 'step-numbers')[2]![2]).toBe('—');
  });

  it('say in a sentence that a cold picture does not stand for the hot axle', () => {
    expect(wordsIn(sheet, 'beside-the-picture')).toContain(
      'Oil here is 5.2 times thicker for its speed than in H-01: this picture does not stand for the hot axle.',
    );
  });

  it('say that nothing is known of likeness where no Reynolds number can be formed, and blame no missing run', () => {
    const none = pagesOf({
      derived: (all) =>
        all.map((d) => ({ ...d, results: d.results.filter(({ quantity }) => !quantity.startsWith('reynolds')) })),
    }).page('runs/F-02/');
    const words = wordsIn(none, 'beside-the-picture');
    expect(words).toContain('No Reynolds number can be formed');
    expect(words).not.toContain('No loaded run');
  });

  it('say that no loaded run is there, that a picture is near enough, and that one is too thin', () => {
    expect(wordsIn(page('runs/F-03/'), 'beside-the-picture')).toContain(
      'No loaded run of this article, oil, fill and tilt',
    );
    const as = (times: number) =>
      wordsIn(
        pagesOf({
          derived: (all) =>
            all.map((d) =>
              d.run === 'F-02'
                ? { ...d, flow: { ...d.flow!, standsFor: { run: 'H-01', reynoldsTimesLower: times } } }
                : d,
            ),
        }).page('runs/F-02/'),
        'beside-the-picture',
      );
    expect(as(1.4)).toContain('are within a factor of two of those of H-01, 1.4 times lower.');
    expect(as(0.7)).toContain('1.4 times higher');
    expect(as(0.25)).toContain('Oil here is 4.0 times thinner for its speed than in H-01');
  });

  it('say that the estimate is no result, whose oil it is of, and Reach and the bearing of the loaded article beside it', () => {
    const estimate = marginOf(sheet, 'beside-the-picture', 'An estimate, no result.');
    expect(estimate).toContain('a model estimate from momentum');
    expect(estimate).toContain('Carrier, bolt heads, pinion and bearings move oil too and are not in it');
    expect(marginOf(sheet, 'beside-the-picture', 'Beside the loss.')).toMatch(
      /^Reach at 300 wheel rpm: 3\. Pinion bearing above sump: 6\.80 ± 0\.\d+ K\. Graded in F-02, without load\.$/,
    );
  });
});

describe('a flow sheet links to', () => {
  it('the runs it stands side by side with, and the printed scale', () => {
    expect(wordsIn(sheet, 'section-drawing')).toContain('Side by side with A1w 2.40 L (F-03) and A1w 3.59 L (F-04).');
    expect(JSON.stringify(sectionOf(sheet, 'steps'))).toContain('series/pan/grades/#scale');
  });

  it('nothing that is not there when no run was graded', () => {
    const none = pagesOf({
      runs: (all) => all.map((run) => ({ ...run, observations: [] })),
      derived: (all) =>
        all.map((d) =>
          d.flow === null
            ? d
            : { ...d, flow: { ...d.flow, steps: d.flow.steps.map((s) => ({ ...s, grades: null, observations: [] })) } },
        ),
    });
    expect(none.at('grades/')).toBeUndefined();
    expect(none.at('side-by-side/')).toBeUndefined();
    expect(JSON.stringify(none.pages)).not.toContain('series/pan/grades/');
  });

  it('no clip where the folder holds none, and keeps the rest of the sheet', () => {
    const bare = pagesOf({ media: new Map([fileOf('pan/runs/other.webm')]) }).page('runs/F-02/');
    expect(firstOf(bare, 'clip')).toBeUndefined();
    expect(chartOf(bare, 'film', 'film').panels).toHaveLength(3);
  });
});

describe('the fields of a flow run as they were typed', () => {
  const fieldsOf = (audience: 'house' | 'public'): (readonly [string, string])[] =>
    blocksOf(pagesOf({ audience }).page('runs/F-02/'))
      .flatMap((block) => (block.kind === 'facts' ? block.rows : []))
      .filter(({ name }) => name.startsWith('observations'))
      .map(({ name, value }) => [name, joined(value)] as const);

  it('have a row an observer and a row a step', () => {
    expect(fieldsOf('house')).toEqual([
      ['observations 1', 'observer KZQ, blind fill, blind oil'],
      ['observations 1, 150 rpm up', 'reach 1, view 3'],
    ]);
  });

  it('name no observer to the public', () => {
    expect(fieldsOf('public')[0]).toEqual(['observations 1', 'blind fill, blind oil']);
  });
});
