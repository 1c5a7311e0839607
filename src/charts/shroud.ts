import type { SectionData } from '../report/page.ts';

type Point = readonly [number, number];
type Shroud = NonNullable<SectionData['shroud']>;

/** A shroud as a line about the axle centre. Angles from straight back, upward positive. */
export const shroudLine = ({ radius, from, to }: Shroud): readonly Point[] =>
  Array.from({ length: 41 }, (_, i) => onArc(radius, from + ((to - from) * i) / 40));

/** The point of the shroud that is nearest to an angle. */
export const shroudAt = ({ radius, from, to }: Shroud, wanted: number): Point =>
  onArc(radius, Math.min(Math.max(wanted, from), to));

const onArc = (radius: number, degrees: number): Point => {
  const angle = (degrees * Math.PI) / 180;
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
};
