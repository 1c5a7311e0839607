/** A step as the page tells it, in clip time. */
export interface ClipStep {
  readonly name: string;
  readonly from_s: number;
  readonly to_s: number;
}

/** The step that is seen at a time of the clip; null between steps. */
export const stepAt = (steps: readonly ClipStep[], clip_s: number): ClipStep | null =>
  steps.findLast(({ from_s, to_s }) => from_s - slack_s <= clip_s && clip_s < to_s) ?? null;

/** The step before or after the one at a time; null at the ends. Within its first second, the one before is meant. */
export function stepFrom(steps: readonly ClipStep[], clip_s: number, way: -1 | 1): ClipStep | null {
  return way === 1
    ? (steps.find(({ from_s }) => from_s > clip_s + slack_s) ?? null)
    : (steps.findLast(({ from_s }) => from_s < clip_s - 1) ?? null);
}

/** A player may stop a little before the time it was sent to. */
const slack_s = 0.05;

/** "290 rpm up" as it stands on a button beside its fellows, whose unit is said once: "290 up". */
export const shortName = (name: string): string => name.replace(/\s+rpm\s+/, ' ');

/** "290 rpm up" as it stands in an address: "290-up". */
export const stepSlug = (name: string): string =>
  shortName(name)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}.]+/gu, '-')
    .replace(/^-+|-+$/g, '');

/** The step an address names (`#step=290-up`); null when it names none. */
export function stepInAddress<T extends { readonly name: string }>(hash: string, steps: readonly T[]): T | null {
  const named = new URLSearchParams(hash.replace(/^#/, '')).get('step');
  return named === null ? null : (steps.find(({ name }) => stepSlug(name) === named.toLowerCase()) ?? null);
}

export const addressOfStep = (name: string): string => `#step=${encodeURIComponent(stepSlug(name))}`;
