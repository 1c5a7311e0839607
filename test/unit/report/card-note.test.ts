import { describe, expect, it } from 'vitest';
import { runCards } from '../../../src/compare/run-cards.ts';
import { readNotes } from '../../../src/notes/book.ts';
import { cardNote } from '../../../src/report/card-note.ts';
import type { Plan } from '../../../src/trial/plan.ts';
import type { SeriesRecord } from '../../../src/trial/series.ts';
import { planned } from '../compare/planned.ts';
import { asFiles, goodBook } from '../notes/good-book.ts';

const noteOf = (cell: string, more: Pick<Partial<SeriesRecord>, 'runs'> = {}, plan: Partial<Plan> = {}): string =>
  cardNote(runCards({ record: { ...planned([cell], plan), ...more }, runs: new Map() })[0]!);

/** What a person writes into each blank; a key that has no blank is left as it is. */
const written: Readonly<Record<string, string>> = {
  id: 'X-01',
  refit: '4',
  order: '40',
  started: '2026-05-04T10:05:00+01:00',
  ended: '2026-05-04T11:52:00+01:00',
  'released-by': 'A',
  'released-on': '2026-05-04T09:58:00+01:00',
  'mass-in': '2150 g',
  temperature: '20.5 °C',
  wait: '20 min',
  'level-left': '-52 mm',
  'level-right': '-52 mm',
  place: 'shielded',
  start: '20.8 °C',
  end: '21.3 °C',
  airflow: '0 m/s',
  before: '0.02 N·m',
  after: '0.03 N·m',
  'from-run': 'H-01',
  'gear-state': 'still',
  file: 'X-01.csv',
  map: 'bench-low',
};
const filledIn = (note: string): string =>
  note
    .replaceAll(/([a-z-]+):(?= *(?:$|[,}]))/gm, (blank, key: string) =>
      written[key] === undefined ? blank : `${key}: ${written[key]}`,
    )
    .replace('operators: []', 'operators: [A]');

const logOf = (sump: number): string => goodBook['hill-bowl/runs/S-08.csv']!.replace(',22,', `,${sump},`);

/** The good book with this note among its runs. */
function readBack(note: string) {
  const { series } = readNotes(
    asFiles({
      ...goodBook,
      'hill-bowl/runs/H-01.md': goodBook['hill-bowl/runs/S-08.md']!.replaceAll('S-08', 'H-01')
        .replace('trial: spin', 'trial: heat-up')
        .replace('order: 20', 'order: 21')
        .replace('refit: 3', 'refit: 4'),
      'hill-bowl/runs/H-01.csv': logOf(23),
      'hill-bowl/runs/X-01.md': `${note}\n`,
      'hill-bowl/runs/X-01.csv': logOf(24),
    }),
  );
  const about = series[0]!.findings.filter(({ place }) => place.file.endsWith('X-01.md'));
  return {
    run: series[0]!.runs.find(({ id }) => id === 'X-01'),
    about,
    loud: about.filter((f) => f.level !== 'notice'),
  };
}

describe('the front matter on a card', () => {
  it.each([
    'spin P1 2.40 O1',
    'heat-up P0 2.40 O1',
    'cool-down P0 2.40 O1',
    'flow P0w 2.40 O1',
    'spin P0 2.40 O1 12 %',
  ])('of %s is a note that is read without a fault once its blanks are filled', (cell) => {
    const { run, loud } = readBack(filledIn(noteOf(cell)));
    expect(loud).toEqual([]);
    expect(run).toMatchObject({ trial: cell.split(' ')[0], article: cell.split(' ')[1], oil: 'O1', status: 'draft' });
    expect(run!.tilt_ratio).toBe(cell.endsWith('12 %') ? 0.12 : 0);
  });

  it('is told its blanks where they were forgotten, and is read no further than that', () => {
    const { run, loud } = readBack(noteOf('spin P1 2.40 O1'));
    expect(run).toBeUndefined();
    expect(loud.length).toBeGreaterThan(0);
  });

  it('leaves nothing to write that the plan, the rig or the runs before it know', () => {
    const note = noteOf('spin P1 2.40 O1');
    for (const line of ['article: P1', 'oil: O1', 'rig-state: Q1-a', 'refit: 1', 'order: 1', 'shown-to: house'])
      expect(note.split('\n')).toContain(line);
    expect(note).toContain('zeros: { torque-low: { before: , after: } }');
    expect(note).toContain('map: bench-low }');
    expect(noteOf('spin P1 2.40 O1', { runs: readNotes(asFiles(goodBook)).series[0]!.runs })).toMatch(/order: 21\n/);
  });

  it('never fills in a reading: what was weighed, read or released stands blank', () => {
    const note = noteOf('heat-up P0 2.40 O1');
    for (const key of ['mass-in', 'level-left', 'level-right', 'start', 'end'])
      expect(note).toMatch(new RegExp(`${key}: ?[,}]`));
    for (const key of ['started', 'ended', 'released-by', 'released-on'])
      expect(note).toMatch(new RegExp(`^${key}:$`, 'm'));
    expect(note).toContain('operators: []');
  });

  it('asks of a cool-down which run it follows and how the gears stood', () => {
    expect(noteOf('cool-down P0 2.40 O1')).toMatch(/^from-run:$/m);
    expect(noteOf('cool-down P0 2.40 O1')).toMatch(/^gear-state:$/m);
    expect(noteOf('spin P0 2.40 O1')).not.toMatch(/from-run|gear-state/);
  });
});
