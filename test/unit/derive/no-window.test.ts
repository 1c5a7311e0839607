import { expect, it } from 'vitest';
import { noWindow } from '../../../src/derive/no-window.ts';
import type { Reading } from '../../../src/derive/reading.ts';
import type { Plan } from '../../../src/trial/plan.ts';

const rpm = (n: number): number => (n * Math.PI) / 30;
const plan = { steps_rad_s: [rpm(290)], temperatures_K: [333.15], hold_s: 120 } as unknown as Plan;
const reading = (sump: Float64Array | null): Reading =>
  ({
    rig: { teethRing: 40, teethPinion: 10, hubReduction: 1 },
    channel: (kind: string) =>
      kind === 'pinion-speed' ? Float64Array.of(0, NaN, rpm(1200)) : kind === 'sump' ? sump : null,
  }) as unknown as Reading;

it('a run without a window says what it held and what the plan asks for', () => {
  expect(noWindow(reading(Float64Array.of(293.15, 371.15)), plan)).toMatch(
    /output shaft reads 0 to 300 rpm and the sump 20 to 98 °C, the plan asks for 290 rpm at 60 °C held 120 s/u,
  );
});

it('a run without a sump channel says nothing was read there', () => {
  expect(noWindow(reading(null), plan)).toMatch(/the sump nothing °C/u);
});
