/** One load of a break-in: power at the output, and the efficiency at its start, middle and end. */
export interface BrokenInLoad {
  readonly power_W: number;
  readonly start_ratio: number;
  readonly middle_ratio: number;
  readonly end_ratio: number;
}

/** How a gear set was broken in before a state of the rig. */
export interface BreakIn {
  /** By how much the end of a load may still lie off its middle, points of efficiency as a ratio. */
  readonly settledWithin_ratio: number;
  readonly loads: readonly BrokenInLoad[];
}

/** How far the end of a load lies off its middle; negative when it fell. */
export const lastMove_ratio = (load: BrokenInLoad): number => load.end_ratio - load.middle_ratio;

/**
 * Whether each load had settled:  |η_end − η_middle| ≤ criterion.  Null where no break-in is recorded.
 *
 * source  SAE J1266 reports efficiency at start, middle and end of each load of the break-in (read in a summary only); the
 *         criterion is the lab's own
 */
export const settledBy = (breakIn: BreakIn | null): boolean | null =>
  breakIn === null ? null : breakIn.loads.every((load) => hasSettled(load, breakIn));

/** What was typed to a tenth of a percent is held to it, whatever the last bit of a difference says. */
export const hasSettled = (load: BrokenInLoad, { settledWithin_ratio }: BreakIn): boolean =>
  Math.abs(lastMove_ratio(load)) <= settledWithin_ratio + 1e-9;
