import { describe, expect, it } from 'vitest';
import { cautions, cautionsFor } from '../../../src/report/cautions.ts';
import { seriesPages } from '../../../src/report/pages.ts';
import type { Page } from '../../../src/report/page.ts';
import { findingOf, input, rig, run } from './fixture.ts';

const stages = (...of: Parameters<typeof cautionsFor>): string[] => cautionsFor(...of).map(({ stage }) => stage);
const sheet = (pages: readonly Page[], id: string): Page =>
  pages.find(({ path }) => path === `series/pan/runs/${id}/`)!;
const notes = (page: Page): (string | undefined)[] =>
  page.sections.flatMap(({ margin }) => margin.map(({ code }) => code));
const banners = (page: Page): string[] => page.banners.map(({ code }) => code);

describe('cautions of a run', () => {
  it('warns of turning parts in every driven run, and of standing heat in a still cool-down', () => {
    for (const kind of ['flow', 'spin', 'heat-up'] as const)
      expect(stages(run('X-1', kind, 'A0'), undefined, rig)).toContain('rotation');
    const still = stages(run('C-9', 'cool-down', 'A0', { gearState: 'still' }), undefined, rig);
    expect(still).toContain('cool-down');
    expect(still).toContain('hot-parts');
    expect(still).not.toContain('rotation');
    expect(stages(run('C-9', 'cool-down', 'A0', { gearState: 'slow-roll' }), undefined, rig)).toContain('rotation');
  });

  it('warns of a window only where one is worn, of tilt only where the rig is tilted, of the fan only where it blows', () => {
    expect(stages(run('F-9', 'flow', 'A1w'), undefined, rig)).toContain('window');
    expect(stages(run('F-9', 'flow', 'A0'), undefined, rig)).not.toContain('window');
    expect(stages(run('F-9', 'flow', 'A0', { tilt_ratio: 0.12 }), undefined, rig)).toContain('tilt');
    expect(stages(run('F-9', 'flow', 'A0'), undefined, rig)).not.toContain('tilt');
    expect(stages(run('H-9', 'heat-up', 'A0', { airflow_m_s: 4 }), undefined, rig)).toContain('fan');
    expect(stages(run('H-9', 'heat-up', 'A0'), undefined, rig)).not.toContain('fan');
  });

  it.each([
    ['vehicle_on_rollers', 'rollers'],
    ['vehicle_on_stands', 'stands'],
    ['road', 'road'],
    ['axle_bench', 'bench'],
  ] as const)('a %s brings its own row', (kind, stage) => {
    const own = stages(run('S-9', 'spin', 'A0'), undefined, { ...rig, kind });
    expect(own).toContain(stage);
    for (const other of ['rollers', 'stands', 'road', 'bench'].filter((s) => s !== stage))
      expect(own).not.toContain(other);
  });

  it('defers in every row to somebody else’s word', () => {
    expect(cautions.map(({ deferral }) => deferral.length).every((length) => length > 10)).toBe(true);
    expect(new Set(cautions.map(({ stage }) => stage)).size).toBe(cautions.length);
  });
});

describe('cautions on the sheets', () => {
  const pages = seriesPages(input({ findings: [findingOf('cap-exceeded', { run: 'F-01' })] }));

  it('stand in the margin of the run’s sheet', () => {
    expect(notes(sheet(pages, 'S-01'))).toEqual(
      expect.arrayContaining(['caution-rotation', 'caution-breather', 'caution-bench', 'caution-fire']),
    );
    expect(notes(sheet(pages, 'F-01'))).toEqual(
      expect.arrayContaining(['caution-window', 'caution-tilt', 'caution-filming']),
    );
    expect(notes(sheet(pages, 'H-01'))).toEqual(
      expect.arrayContaining(['caution-fan', 'caution-hot-parts', 'caution-cool-down']),
    );
    expect(notes(sheet(pages, 'C-01'))).toContain('caution-cool-down');
    expect(notes(sheet(pages, 'C-01'))).not.toContain('caution-rotation');
  });

  it('are joined by a banner where nobody released the run', () => {
    expect(banners(sheet(pages, 'S-02'))).toEqual(['release-not-recorded']);
    expect(banners(sheet(pages, 'S-01'))).toEqual([]);
  });

  it('are joined by a banner where a window’s cap was passed', () => {
    expect(banners(sheet(pages, 'F-01'))).toEqual(['cap-exceeded']);
  });
});
