import { expect, it } from 'vitest';
import { rungeKutta4 } from '../../../src/statistics/ode.ts';

const cooling = { f: (_: number, [T]: readonly number[]) => [-(T! - 293) / 1000], y0: [363], t0: 0 };

it('follows a sump cooling at rest as the exact curve does', () => {
  const [T] = rungeKutta4({ ...cooling, t1: 3600, step: 10 });
  expect(T).toBeCloseTo(293 + 70 * Math.exp(-3.6), 7);
});

it('cuts its last step to end where it was told, and shows every point on the way', () => {
  const seen: number[] = [];
  rungeKutta4({ ...cooling, t1: 25, step: 10, visit: (t) => seen.push(t) });
  expect(seen).toEqual([0, 10, 20, 25]);
});

it('takes no extra step where steps of 0.1 add up to the end', () => {
  const seen: number[] = [];
  rungeKutta4({ ...cooling, t1: 0.3, step: 0.1, visit: (t) => seen.push(t) });
  expect(seen).toHaveLength(4);
  expect(seen.at(-1)).toBe(0.3);
});

it('answers the start for no time at all', () => {
  expect(rungeKutta4({ ...cooling, t1: 0, step: 10 })).toEqual([363]);
});
