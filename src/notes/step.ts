import { readQuantity } from '../quantity/read.ts';
import type { StepName } from '../trial/flow.ts';

/** `290 rpm up`: a speed of the output (wheel) shaft, and whether it was come to on the way up or down; null for anything else. */
export function readStep(text: string): StepName | null {
  const parts = /^\s*(\S.*?)\s+(up|down)\s*$/.exec(text);
  const speed = parts && readQuantity(parts[1]!, 'rotation');
  if (!parts || !speed?.ok || !(speed.value.value > 0)) return null;
  return { outputSpeed_rad_s: speed.value.value, direction: parts[2] === 'up' ? 'up' : 'down' };
}

/** The planned step within 1 %, and else the nearest one; null when nothing is planned. */
export function plannedSpeed(
  speed_rad_s: number,
  steps_rad_s: readonly number[],
): { readonly speed_rad_s: number; readonly planned: boolean } | null {
  const [near] = [...steps_rad_s].sort((a, b) => Math.abs(a - speed_rad_s) - Math.abs(b - speed_rad_s));
  if (near === undefined) return null;
  return { speed_rad_s: near, planned: Math.abs(near - speed_rad_s) <= 0.01 * near * (1 + 1e-9) };
}
