import type { Article, InsideProfile } from '../trial/article.ts';
import { shown } from '../trial/figures.ts';
import type { SectionData } from './page.ts';
import type { View } from './view.ts';

/** What every section drawing shows, whatever stands in it. Lengths in mm from the axle centreline. */

export const mm = (z_m: number): number => shown('static-level', z_m);

/** A drawing that stands alone, level, with nothing running in it. */
export const flat = { frame: null, tilt: 0, running: [], dimensions: [], race: null } as const;

/** Lines of the inside, and whose they are where they are not the article's own. */
export interface Inside {
  readonly profile: InsideProfile;
  readonly drawnAs: string | null;
}

/** "The inside is drawn as that of P0. Lines of the inside are for the drawing only; no figure comes from them." */
export function insideWords(insides: readonly (Inside | null)[]): string {
  const as = [...new Set(insides.flatMap((inside) => inside?.drawnAs ?? []))];
  const whose = as.length === 0 ? '' : `The inside is drawn as that of ${as.join(' and ')}. `;
  return `${whose}Lines of the inside are for the drawing only; no figure comes from them.`;
}

/** An article's own lines; a window copy without any is drawn as what it stands in for. */
export function insideOf(view: View, article: Article): Inside | null {
  const drawn = (profile: InsideProfile | null | undefined): profile is InsideProfile =>
    profile != null && profile.wall.length > 0;
  if (drawn(article.profile)) return { profile: article.profile, drawnAs: null };
  for (const id of article.role === 'window_copy' ? article.standsInFor : []) {
    const profile = view.articles.get(id)?.profile;
    if (drawn(profile)) return { profile, drawnAs: id };
  }
  return null;
}

type Shape = Pick<SectionData, 'ringRadius' | 'wall' | 'tray' | 'shroud' | 'lips' | 'pinion' | 'mark'>;

export function shapeOf(view: View, { profile }: Inside, article: string): Shape {
  const line = (points: readonly { x_m: number; z_m: number }[]): [number, number][] =>
    points.map(({ x_m, z_m }) => [mm(x_m), mm(z_m)]);
  return {
    ringRadius: mm(view.rig.ringRadius_m),
    wall: line(profile.wall),
    tray: profile.tray === null ? null : line(profile.tray),
    shroud:
      profile.shroud === null
        ? null
        : {
            radius: mm(profile.shroud.radius_m),
            from: degrees(profile.shroud.from_rad),
            to: degrees(profile.shroud.to_rad),
          },
    lips: heights(view),
    pinion: { offset: mm(view.rig.offset_m) },
    mark: view.marks.get(article) ?? 0,
  };
}

/** The front pinion bearing's race ahead of the axle, where the rig sheet has it. */
export const raceOf = ({ rig: { pinionFront } }: View): SectionData['race'] =>
  pinionFront === null
    ? null
    : { x: -mm(pinionFront.ahead_m), z: -mm(pinionFront.below_m), radius: mm(pinionFront.raceRadius_m) };

export const heights = ({ rig }: View): { z: number; label: string }[] =>
  [
    { z_m: rig.tubeLip_z_m, label: 'tube lip' },
    { z_m: rig.fillerLip_z_m, label: 'filler lip' },
  ].flatMap(({ z_m, label }) => (z_m === null ? [] : [{ z: mm(z_m), label }]));

/** Drawings that stand side by side are drawn to one scale: the extent of all of them. */
export function frameOf(drawings: readonly SectionData[]): SectionData['frame'] {
  const points = drawings.flatMap((data): (readonly [number, number])[] => {
    const reach = Math.max(data.ringRadius, data.shroud?.radius ?? 0);
    const race = data.race;
    return [
      [-reach, reach],
      [reach, -reach],
      ...data.wall,
      ...(data.tray ?? []),
      ...(race === null ? [] : [[race.x - race.radius, race.z - race.radius] as const]),
    ];
  });
  const [xs, zs] = [points.map(([x]) => x), points.map(([, z]) => z)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.max(...zs), bottom: Math.min(...zs) };
}

const degrees = (rad: number): number => (rad * 180) / Math.PI;
