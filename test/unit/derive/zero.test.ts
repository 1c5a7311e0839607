import { describe, expect, it } from 'vitest';
import { toBaseline } from '../../../src/derive/zero.ts';
import { logged, recordOf } from './logged.ts';

// S-07 lasts 57 min 10 s by its note; its log here ends with it.
const length_s = 3430;
const log = logged({ 'torque-in': () => 2 }, { length_s, step_s: 10 });
const record = recordOf('S-07', log);
const run = record.runs[0]!;
const instrument = (id: string) => record.rig.instruments.find((i) => i.id === id)!;
const less = (of: { id: string; before: number; after: number | null }) =>
  toBaseline({
    raw: log.channels.get('torque-in')!,
    log,
    run: { ...run, zeros: [{ instrument: of.id, before_Nm: of.before, after_Nm: of.after, step_Nm: 0.001 }] },
    instrument: instrument(of.id),
  });

describe('the zero of a torque channel', () => {
  it('goes straight from before to after over the run', () => {
    const out = less({ id: 'torque-low', before: 0.02, after: 0.06 });
    expect([out[0], out[171], out.at(-1)]).toEqual([
      2 - 0.02,
      expect.closeTo(2 - 0.02 - (0.04 * 1710) / length_s, 9),
      expect.closeTo(2 - 0.06, 9),
    ]);
  });
  it('counts from the first row of a logger that was counting before', () => {
    const late = { ...log, time_s: log.time_s.map((t) => t + 36_000) };
    const of = (used: typeof log) =>
      toBaseline({
        raw: log.channels.get('torque-in')!,
        log: used,
        run: { ...run, zeros: [{ instrument: 'torque-low', before_Nm: 0.02, after_Nm: 0.06, step_Nm: 0.001 }] },
        instrument: instrument('torque-low'),
      });
    expect(of(late)).toEqual(of(log));
  });
  it('is held where it was not read again', () => {
    const out = less({ id: 'torque-low', before: 0.02, after: null });
    expect(new Set(out)).toEqual(new Set([2 - 0.02]));
  });
  it('kept in the rig sheet is taken off every reading', () => {
    // the left hub flange of the demo: 1.8 N·m
    const out = toBaseline({ raw: log.channels.get('torque-in')!, log, run, instrument: instrument('torque-out-l') });
    expect([...new Set(out)]).toEqual([expect.closeTo(0.2, 12)]);
  });
  it('read at rest before the run holds the kept one too, which is not taken off again', () => {
    expect(less({ id: 'torque-out-l', before: 1.81, after: 1.81 })[0]).toBeCloseTo(0.19, 12);
  });
  it('leaves the raw readings as they were logged', () => {
    less({ id: 'torque-low', before: 1, after: 1 });
    expect(new Set(log.channels.get('torque-in'))).toEqual(new Set([2]));
  });
});
