import { chance } from './drops.ts';
import * as s from './window-shapes.ts';
import { oil, type Scene, soft } from './window-scene.ts';

export type Surface = (x: number) => number;
export type Span = readonly [from: number, to: number];

const floor_mm = -170;

/** Oil up to its surface; the more air in it, the paler and the thicker. */
export function bath(scene: Scene, [from, to]: Span, surface: Surface): string {
  const b = scene.grades.bubble;
  const top: s.Point[] = [];
  for (let x = from; x <= to; x += 6) top.push([x, surface(x)]);
  const d = s.path([...top, [to, floor_mm], [from, floor_mm]], true);
  const milk = b < 0.5 ? 0 : b < 1.5 ? 0.05 : b < 2.5 ? 0.18 : b < 3.5 ? 0.72 : 0.95;
  const foam =
    b < 2.5 ? '' : `<path d="${s.path(top)}" fill="none" stroke="#fdf6e6" stroke-width="${b < 3.5 ? 4 : 8}"/>`;
  return [
    `<path d="${d}" fill="#c4872b" fill-opacity="0.5"/>`,
    milk === 0 ? '' : `<path d="${d}" fill="#e8d3ab" fill-opacity="${milk}"/>`,
    lamp(b),
    foam,
    `<path d="${s.path(top)}" fill="none" stroke="${oil}" stroke-width="1.6"/>`,
  ].join('');
}

/** A lamp behind the oil: a sharp disc in clear oil, a glow in milky oil, gone in opaque oil. */
function lamp(bubble: number): string {
  if (bubble >= 3.5) return '';
  const [r, shine, edge] = bubble < 2.5 ? [10, 0.35, 0.5] : [14, 0.6, 0];
  return `<circle cx="${s.px(84).toFixed(1)}" cy="${s.py(-104).toFixed(1)}" r="${r}" fill="#fff6dc" fill-opacity="${shine}" stroke="${oil}" stroke-opacity="${edge}" stroke-width="0.8"/>`;
}

/** The 20 mm grid behind the oil. */
export function grid(scene: Scene, [from, to]: Span, surface: Surface): string {
  const b = scene.grades.bubble;
  const clear = b < 0.5 ? 1 : b < 1.5 ? 0.85 : b < 2.5 ? 0.55 : 0;
  const lines: string[] = [];
  for (let x = Math.ceil(from / 20) * 20; x <= to; x += 20) lines.push(s.path([[x, surface(x)], [x, floor_mm]])); // prettier-ignore
  for (let z = -160; z < scene.level_mm; z += 20) lines.push(s.path([[from, z], [to, z]])); // prettier-ignore
  return clear === 0
    ? ''
    : `<path d="${lines.join('')}" stroke="${soft}" stroke-opacity="${clear}" stroke-width="0.8"/>`;
}

export interface Bubbling {
  readonly salt: number;
  /** Share of the full number, for a narrower view. */
  readonly many: number;
  readonly within: Span;
  readonly surface: Surface;
}

/** Bubbles drift with the gear, from the front to the bowl, and rise a little on their way. */
export function bubbles(scene: Scene, { salt, many, within: [from, to], surface }: Bubbling): string {
  const b = scene.grades.bubble;
  const n = Math.round(many * (b < 0.5 ? 8 * b : b < 1.5 ? 18 : b < 2.5 ? 70 : b < 3.5 ? 150 : 60));
  const drift = scene.t_s * (scene.rpm < 1 ? 0 : 6 + scene.rpm / 24);
  const pale = b < 2.5;
  return Array.from({ length: n }, (_, i) => {
    const u = (chance(i, salt) + (drift * (0.6 + 0.8 * chance(i, salt + 1))) / (to - from)) % 1;
    const x = from + u * (to - from);
    const depth = 4 + (chance(i, salt + 2) * 0.9 + 0.1 * (1 - u)) * 68;
    const r = (pale ? 1.5 + 1.1 * chance(i, salt + 3) : 1.1 + 0.7 * chance(i, salt + 3)).toFixed(1);
    return `<circle cx="${s.px(x).toFixed(1)}" cy="${s.py(surface(x) - depth).toFixed(1)}" r="${r}" fill="#fdf6e6" fill-opacity="${pale ? 0.85 : 0.6}" stroke="${oil}" stroke-opacity="${pale ? 0.75 : 0.35}" stroke-width="0.7"/>`;
  }).join('');
}
