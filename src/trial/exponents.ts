import type { QuantityName } from './figures.ts';

/** A fit of how spin power goes with speed and viscosity, and how well its exponents are told apart. */
export interface FittedExponents {
  /** The whole of the spin power, or what stands above a part of the torque that neither moves. */
  readonly of: 'whole' | 'above a constant';
  /** Of the fit, columns at unit length. */
  readonly condition: number;
  /** The figures that hold them; there is none where the condition number is too high. */
  readonly speed: QuantityName;
  readonly viscosity: QuantityName;
}
