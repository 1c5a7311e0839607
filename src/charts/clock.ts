/** Where time runs on a picture: minutes at its ends, and the field that all panels fill, in units of the viewBox. */
export interface Clock {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Place of a time, px. */
export const atTime = ({ from, to, left, right }: Omit<Clock, 'top' | 'bottom'>, time: number): number =>
  left + ((time - from) / (to - from)) * (right - left);
