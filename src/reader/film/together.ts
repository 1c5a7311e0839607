import type { ClipStep } from './steps.ts';

/** A step that both clips hold. `length_s` is the time that both show of it. */
export interface SharedStep {
  readonly name: string;
  readonly first_s: number;
  readonly second_s: number;
  readonly length_s: number;
}

/** Steps of one name in both clips, in the order of the first. */
export const sharedSteps = (first: readonly ClipStep[], second: readonly ClipStep[]): readonly SharedStep[] =>
  first
    .flatMap((one): SharedStep[] => {
      const other = second.find(({ name }) => name === one.name);
      if (other === undefined) return [];
      const length_s = Math.min(one.to_s - one.from_s, other.to_s - other.from_s);
      return [{ name: one.name, first_s: one.from_s, second_s: other.from_s, length_s }];
    })
    .sort((a, b) => a.first_s - b.first_s);

/** The shared step that the first clip stands in; null when it stands in none. */
export const sharedAt = (steps: readonly SharedStep[], first_s: number): SharedStep | null =>
  steps.findLast((step) => step.first_s - slack_s <= first_s && first_s < step.first_s + step.length_s) ?? null;

export type Course =
  | { readonly kind: 'run on' }
  /** Both stop, go to these times and start again together. */
  | { readonly kind: 'line up'; readonly first_s: number; readonly second_s: number }
  | { readonly kind: 'stop' };

/**
 * What two running clips do next: they run on while they are within a tenth of a second of each other in one step, are
 * lined up when they are not, go to the next shared step at the end of one, and stop after the last.
 */
export function course(steps: readonly SharedStep[], first_s: number, second_s: number): Course {
  const now = sharedAt(steps, first_s);
  if (now !== null) {
    const meant_s = now.second_s + Math.max(0, first_s - now.first_s);
    if (Math.abs(second_s - meant_s) <= apart_s) return { kind: 'run on' };
    return { kind: 'line up', first_s: Math.max(first_s, now.first_s), second_s: meant_s };
  }
  const next = steps.find((step) => step.first_s > first_s);
  return next === undefined ? { kind: 'stop' } : { kind: 'line up', first_s: next.first_s, second_s: next.second_s };
}

const apart_s = 0.1;
/** A player may stop a little before the time it was sent to. */
const slack_s = 0.05;
