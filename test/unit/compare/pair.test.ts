import { describe, expect, it } from 'vitest';
import { pairing } from '../../../src/compare/pair.ts';
import type { Cell, DerivedRun } from '../../../src/trial/derived.ts';
import { cell, derived, plan, series, type Some } from './runs.ts';

const baseline = { cell: cell(), run: derived({ run: 'H-01', trial: 'heat-up' }) };
const pair = (of: {
  cell?: Partial<Cell>;
  run?: Some;
  against?: Some;
  quantity?: 'final-rise' | 'spin-power';
  factors?: string[];
}) =>
  pairing({
    cell: cell(of.cell),
    against: baseline.cell,
    runs: [derived({ run: 'H-02', trial: 'heat-up', ...of.run })],
    againstRuns: [derived({ run: 'H-01', trial: 'heat-up', ...of.against })],
    quantity: of.quantity ?? 'final-rise',
    series,
    plan: { ...plan, factors: of.factors ?? plan.factors },
  });
const moved: DerivedRun['findings'] = [
  { code: 'ambient-moved', level: 'warning', place: { file: 'x', line: 1, column: 1 }, says: '', why: '', write: '' },
];

describe('two cells are compared', () => {
  it.each([
    ['two articles at the same litres and level', { cell: { article: 'P1' } }, 'same litres and level'],
    [
      'two articles at the same litres only',
      { cell: { article: 'P1' }, run: { conditions: { level_z_m: -0.078 } } },
      'same litres',
    ],
    ['two articles at the same level only', { cell: { article: 'P1', fill_m3: 3.59e-3 } }, 'same level'],
    [
      'one article at two fills',
      { cell: { fill_m3: 3.2e-3 }, run: { conditions: { level_z_m: -0.036 } } },
      'fill is the subject',
    ],
    [
      'spin in a hall that grew warm: its sump is held',
      { cell: { article: 'P1' }, run: { conditions: { ambient_K: 304 } }, quantity: 'spin-power' as const },
      'same litres and level',
    ],
  ])('%s', (_, of, basis) => {
    expect(pair(of)).toEqual({ ok: true, basis });
  });
});

describe('two cells are not compared, and the reason is named', () => {
  it.each([
    [
      'oil and article at once, though the plan varies both',
      { cell: { article: 'P1', oil: 'O2' }, factors: ['article', 'oil'] },
      /article and oil differ at once/,
    ],
    ['an oil that the plan does not vary', { cell: { oil: 'O2' } }, /oil differs and is no factor/],
    ['a tilt that the plan does not vary', { cell: { tilt_ratio: 0.12 } }, /tilt differs and is no factor/],
    [
      'neither the same litres nor the same level',
      { cell: { article: 'P1', fill_m3: 3.2e-3 }, run: { conditions: { level_z_m: -0.0617 } } },
      /neither the same litres \(0\.80 L apart\) nor the same level \(−8\.7 mm apart\)/,
    ],
    [
      'other litres and no level known',
      { cell: { article: 'P1', fill_m3: 3.2e-3 }, run: { conditions: { level_z_m: null } } },
      /no level is known/,
    ],
    [
      'ambient beyond the tolerance of 3 K',
      { cell: { article: 'P1' }, run: { conditions: { ambient_K: 297.5 } } },
      /ambient differs by 3\.5 K/,
    ],
    [
      'airflow beyond the tolerance',
      { cell: { article: 'P1' }, run: { conditions: { airflow_m_s: 0.5 } } },
      /airflow differs by 0\.50 m\/s/,
    ],
    ['another rig state', { cell: { article: 'P1' }, run: { rigState: 'Q1-b' } }, /rig states differ: Q1-a, Q1-b/],
    [
      'another rig state, spin too',
      { cell: { article: 'P1' }, run: { rigState: 'Q1-b' }, quantity: 'spin-power' as const },
      /rig states differ/,
    ],
    [
      'a run in which ambient moved',
      { cell: { article: 'P1' }, run: { findings: moved } },
      /ambient moved by more than 3 K during H-02/,
    ],
    ['a baseline in which ambient moved', { cell: { article: 'P1' }, against: { findings: moved } }, /during H-01/],
  ])('%s', (_, of, reason) => {
    const found = pair(of);
    expect(found.ok ? [] : found.reasons).toEqual([expect.stringMatching(reason)]);
  });

  it('and where several things are wrong all of them are named', () => {
    const found = pair({
      cell: { article: 'P1', oil: 'O2' },
      run: { rigState: 'Q1-b', conditions: { ambient_K: 300 } },
    });
    expect(found.ok ? 0 : found.reasons.length).toBeGreaterThanOrEqual(4);
  });
});
