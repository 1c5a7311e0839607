import type { Reading } from '../finding/finding.ts';
import type { Plan } from '../trial/plan.ts';
import { assumed, code, group, headFields, later, list, optional, quantity, required, whole, words } from './fields.ts';
import type { Note } from './note.ts';
import type { Into } from './read-value.ts';
import { readRecord, tellAt } from './record.ts';
import { readRerun, rerunKind } from './rerun.ts';
import * as say from './texts-check.ts';

export const trialWords = words('flow', 'spin', 'heat-up', 'cool-down', 'soak', 'check');
export const fillVolume = quantity('volume', '2.40 L', { hard: ['0.01 L', '200 L'], soft: ['0.3 L', '40 L'] });
export const sumpTemperature = quantity('temperature', '60 °C', {
  hard: ['-60 °C', '300 °C'],
  soft: ['-40 °C', '200 °C'],
});
export const outputSpeed = quantity('rotation', '290 rpm', {
  hard: ['0.1 rpm', '20000 rpm'],
  soft: ['20 rpm', '1500 rpm'],
});
export const tilt = quantity('ratio', '12 %', { hard: ['-100 %', '100 %'], soft: ['-40 %', '40 %'] });

/** `plan.md` */
export const planKind = group({
  factors: required(
    list(words('article', 'fill', 'oil', 'tilt', 'airflow'), 1),
    'A difference in a factor is what is looked for; a difference in anything else is a mismatch.',
  ),
  repeat: required(
    words('refit', 'refill', 'rerun'),
    'Only what was taken apart and put together again counts as a repeat.',
  ),
  order: required(words('random', 'fixed', 'latin'), 'Order guards against drift being taken for an effect.'),
  seed: optional(whole('20260302', [0, Number.MAX_SAFE_INTEGER]), 'With it the order can be drawn again.'),
  'baseline-rerun': required(
    later('{ start: true, middle: true, end: true }', 'start, middle, end or every-n, or a sentence', rerunKind),
    'Drift shows only where the baseline is run again.',
  ),
  steps: required(list(outputSpeed, 1), 'Speeds of the output (wheel) shaft at which loss is read.'),
  hold: required(
    quantity('time', '120 s', { hard: ['1 s', '24 h'], soft: ['60 s', '2 h'] }),
    'How long each step is held.',
  ),
  steady: required(
    group({
      window: required(quantity('time', '60 s', { hard: ['1 s', '24 h'] }), 'The end of the hold that is averaged.'),
      slope: assumed(
        quantity('temperature-rate', '0.5 K/min', { hard: ['0.001 K/min', '100 K/min'] }),
        '0.5 K/min',
        'How fast the sump may still change.',
      ),
    }),
    'Only a steady reading is one reading.',
  ),
  temperatures: required(list(sumpTemperature, 1), 'Sump temperatures at which the steps are run.'),
  limits: required(list(sumpTemperature, 1), 'Sump temperatures whose crossing is timed.'),
  sustained: required(
    quantity('time', '20 s', { hard: ['0 s', '1 h'] }),
    'How long a limit is passed before it counts as crossed.',
  ),
  'max-time': required(
    quantity('time', '150 min', { hard: ['1 min', '1000 h'] }),
    'A limit not reached by then is reported as a bound.',
  ),
  load: optional(
    group(
      {
        'wheel-speed': optional(outputSpeed, 'Speed of the wheels in the loaded trial.'),
        'output-speed': optional(outputSpeed, 'Speed of the output shaft of a box in the loaded trial.'),
        'power-out': required(
          quantity('power', '22 kW', { hard: ['1 W', '5000 kW'] }),
          'Power taken off at the output.',
        ),
      },
      [['wheel-speed', 'output-speed']],
    ),
    'The loaded point of the heat-up.',
  ),
  cells: required(
    list(
      group({
        trial: required(trialWords, 'What is run.'),
        article: required(code('P0'), 'With what fitted.'),
        oil: required(code('O1'), 'On what oil.'),
        fill: required(fillVolume, 'Filled to what.'),
        tilt: assumed(tilt, '0 %', 'At what tilt, nose up positive.'),
        wanted: required(whole('3', [1, 1000]), 'How many repeats are wanted.'),
      }),
      1,
    ),
    'What is done and what is still to do is counted against it.',
  ),
  ...headFields,
});

export const readPlan = (note: Note): Reading<Plan> =>
  readRecord(planKind, note, (v, head, into): Plan => {
    rising('steps', v.steps, into);
    rising('limits', v.limits, into);
    if (v.limits.length < 3) tellAt(into, 'limits', say.fewLimits(v.limits.length));
    if (v.steady.window.value > v.hold.value) tellAt(into, 'steady.window', say.windowLongerThanHold(v.hold.asWritten));
    const again = readRerun(v['baseline-rerun'], into);
    const speed = v.load?.['wheel-speed'] ?? v.load?.['output-speed'];
    return {
      ...head,
      factors: v.factors,
      repeatUnit: v.repeat,
      order: v.order,
      seed: v.seed,
      baselineRerun: again.words,
      rerun: again.rerun,
      steps_rad_s: v.steps.map((q) => q.value),
      hold_s: v.hold.value,
      steadyWindow_s: v.steady.window.value,
      steadySlope_K_s: v.steady.slope.value,
      temperatures_K: v.temperatures.map((q) => q.value),
      limits_K: v.limits.map((q) => q.value),
      sustained_s: v.sustained.value,
      maxTime_s: v['max-time'].value,
      load: v.load && speed ? { outputSpeed_rad_s: speed.value, powerOut_W: v.load['power-out'].value } : null,
      cells: v.cells.map((c) => ({
        trial: c.trial,
        article: c.article,
        oil: c.oil,
        fill_m3: c.fill.value,
        tilt_ratio: c.tilt.value,
        wanted: c.wanted,
      })),
    };
  });

/** Each value is above the one before; the first that is not is told. */
export function rising(path: string, list: readonly { value: number; asWritten: string }[], into: Into): void {
  const at = list.findIndex((q, i) => i > 0 && q.value <= (list[i - 1]?.value ?? -Infinity));
  if (at > 0)
    tellAt(into, `${path}.${at}`, say.notRising(path, list[at]?.asWritten ?? '', list[at - 1]?.asWritten ?? ''));
}
