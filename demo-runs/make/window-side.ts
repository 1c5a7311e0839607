import { fliers } from './drops.ts';
import * as s from './window-shapes.ts';
import { bath, bubbles, grid } from './window-oil.ts';
import { ink, oil, paper, rule, type Scene, soft, tint } from './window-scene.ts';

/** The axle seen from the left: bowl behind, carrier and pinion in front, the ring gear turning over the top towards them. */
export function sideView(scene: Scene): string {
  const shape = s.shapeOf(scene.article);
  const inside = s.path([...shape.bowl, ...s.carrier.slice(1)], true);
  const tilt = (Math.atan(scene.tilt_pct / 100) * 180) / Math.PI;
  const nosedUp = `transform="rotate(${tilt.toFixed(2)},${s.px(0)},${s.py(0)})"`;
  const surface = (x: number): number => wave(scene, x);
  // Nose up, the low end of the nose would stand in the frame.
  const clear = scene.tilt_pct === 0 ? 0 : 8;
  return [
    `<g transform="translate(${clear},0)">`,
    `<defs><clipPath id="inside"><path ${nosedUp} d="${inside}"/></clipPath></defs>`,
    `<g ${nosedUp}>${walls(shape, inside)}${pinionAndPocket(scene)}</g>`,
    `<g clip-path="url(#inside)"><g ${nosedUp}>${gear(scene)}</g>`,
    grid(scene, [-190, 172], surface),
    bath(scene, [-190, 172], surface),
    bubbles(scene, { salt: 500, many: 1, within: [-118, 138], surface }),
    `<g ${nosedUp}>${wallHit(scene, shape)}${sideFall(scene, shape)}${insert(scene, shape)}${lip(scene)}${reach(scene, shape)}</g></g>`,
    `<g ${nosedUp}><path d="${inside}" fill="none" stroke="${ink}" stroke-width="1.3"/></g></g>`,
  ].join('');
}

const swings = (t_s: number): number => 0.7 * Math.sin(2.1 * t_s) + 0.3 * Math.sin(3.7 * t_s + 1);
/** Running level, its swing, and ripples that run with the gear. */
export function wave({ level_mm, swing_mm, rpm, t_s }: Scene, x: number): number {
  const ripple = rpm < 1 ? 0 : swing_mm * 0.35 * Math.sin(x / 11 - 4 * t_s) * Math.sin(x / 37 + 1.3 * t_s);
  return level_mm + (rpm < 1 ? 0 : swing_mm * swings(t_s)) + ripple;
}

/** A clear bowl in front of the lens is two lines; a casting is filled. */
function walls({ bowl }: s.Shape, inside: string): string {
  const wall = (d: string, width: number, fill: string): string =>
    `<path d="${d}" fill="none" stroke="${ink}" stroke-width="${width + 2}" stroke-linejoin="round"/>` +
    `<path d="${d}" fill="none" stroke="${fill}" stroke-width="${width}" stroke-linejoin="round"/>`;
  const flange = [134, -128].map((z) => {
    const out = Math.sign(z) * 17;
    return s.path([[33, z], [47, z], [47, z + out], [33, z + out]], true) + s.path([[40, z], [40, z + out]]); // prettier-ignore
  });
  return `${wall(s.path(s.carrier), 13, rule)}${wall(s.path(bowl), 13, tint)}<path d="${flange.join('')}" fill="${rule}" stroke="${ink}"/><path d="${inside}" fill="${paper}"/>`;
}

function pinionAndPocket({ grades }: Scene): string {
  const { z, race, from } = s.pinion;
  const box = (x0: number, z0: number, x1: number, z1: number): string =>
    s.path([[x0, z0], [x1, z0], [x1, z1], [x0, z1]], true); // prettier-ignore
  const full = grades.reach < 0.5 ? 0 : grades.reach < 1.5 ? 3 : grades.reach < 2.5 ? 7 : 12;
  return [
    `<path d="${box(from, z - 14, -140, z + 14)}" fill="${tint}" stroke="${ink}"/>`,
    `<path d="${box(-170, z + 14, -152, z + race)}${box(-170, z - race, -152, z - 14)}" fill="${rule}" stroke="${ink}"/>`,
    ...[z + 29, z - 29].map(
      (c) => `<circle cx="${s.px(-161)}" cy="${s.py(c)}" r="8.5" fill="${paper}" stroke="${ink}"/>`,
    ),
    `<path d="${s.path([[-144, z + 18], [s.pinion.to, z + 31], [s.pinion.to, z - 31], [-144, z - 18]], true)}" fill="${tint}" stroke="${ink}"/>`, // prettier-ignore
    full === 0 ? '' : `<path d="${box(-176, 13, -147, 13 + full)}" fill="${oil}" fill-opacity="0.75"/>`,
    `<path d="${s.path([
      [-147, 28],
      [-147, 13],
      [-176, 13],
    ])}" fill="none" stroke="${ink}" stroke-width="2"/>`,
  ].join('');
}

/** Teeth blur once they would pass faster than the eye, or the film, can follow; bolts and the paint mark go on showing. */
function gear({ rpm, turned_rad }: Scene): string {
  const { radius, tooth, teeth } = s.ring;
  const [cx, cy] = [s.px(0), s.py(0)];
  const circle = (r: number, more: string): string =>
    `<circle cx="${cx}" cy="${cy}" r="${(r * s.scale).toFixed(1)}" ${more}/>`;
  const round = (i: number, n: number): number => (-turned_rad * 180) / Math.PI + (360 * i) / n;
  const seen = Math.max(0.12, Math.min(1, 1.3 - rpm / 260));
  const marks = Array.from({ length: teeth }, (_, i) => {
    const a = round(i, teeth);
    return s.path([s.clock(a, radius), s.clock(a + 3.2, radius - tooth)]);
  }).join('');
  const bolts = Array.from({ length: 10 }, (_, i) => {
    const [x, z] = s.clock(round(i, 10), 84);
    return `<circle cx="${s.px(x).toFixed(1)}" cy="${s.py(z).toFixed(1)}" r="5" fill="${paper}" stroke="${ink}"/>`;
  }).join('');
  const paint = s.path([...s.arc(round(0.5, 10) - 5, round(0.5, 10) + 5, 107), ...s.arc(round(0.5, 10) + 4, round(0.5, 10) - 4, 64)], true); // prettier-ignore
  return [
    circle(radius, `fill="${tint}" stroke="${ink}" stroke-width="1.2"`),
    `<path d="${marks}" stroke="${ink}" stroke-opacity="${seen.toFixed(2)}" stroke-width="1.4"/>`,
    circle(radius - tooth, `fill="${tint}" stroke="${ink}" stroke-width="1"`),
    `<path d="${paint}" fill="${soft}" fill-opacity="0.55"/>`,
    bolts,
    circle(58, `fill="${paper}" stroke="${ink}" stroke-width="1"`),
    circle(s.tubeLip_mm, `fill="${tint}" stroke="${ink}" stroke-width="1.6"`),
    circle(20, `fill="${paper}" stroke="${soft}" stroke-width="1"`),
  ].join('');
}

/** What the rim carries over the top, and what becomes of it. */
function reach({ grades, level_mm, rpm, t_s }: Scene, { shroud }: s.Shape): string {
  const g = grades.reach;
  if (rpm < 1) return '';
  const from = shroud === null ? 90 - (Math.asin(level_mm / s.ring.radius) * 180) / Math.PI : 302;
  const to = 302;
  const thick = g < 1.5 ? 1.2 : g < 2.5 ? 3 : g < 3.5 ? 4.2 : 7.5;
  const rim = shroud === null ? s.arc(from, to - 360, s.ring.radius + thick / 2) : [];
  const run = t_s * (30 + rpm / 6);
  const broken = g < 2.5;
  const dash = (on: number, off: number): string =>
    `stroke-dasharray="${on} ${off}" stroke-dashoffset="${(-run % (on + off)).toFixed(1)}"`;
  const line = (d: string, width: number, how: string): string =>
    `<path d="${d}" fill="none" stroke="${oil}" stroke-width="${(width * s.scale).toFixed(1)}" stroke-linecap="round" ${how}/>`;
  const [p0, p1, p2] = s.pocket;
  const flight = `M${s.at(p0)}Q${s.at(p1)} ${s.at(p2)}`;
  const parts: string[] = [];
  if (rim.length > 0) parts.push(line(s.path(rim), thick, broken ? dash(g < 1.5 ? 2 : 12, g < 1.5 ? 13 : 9) : ''));
  if (shroud !== null) parts.push(...fallsFromEdge(g, t_s));
  if (g >= 2.5) parts.push(line(flight, thick + 1, ''), shimmer(flight, run));
  else if (g >= 1.5) parts.push(line(flight, 3.4, dash(9, 8)));
  else if (g >= 0.5) parts.push(singleDrops(p0, p1, p2, t_s));
  return parts.join('');
}

const shimmer = (d: string, run: number): string =>
  `<path d="${d}" fill="none" stroke="#e9cf9f" stroke-width="1.3" stroke-dasharray="7 9" stroke-dashoffset="${(-run % 16).toFixed(1)}"/>`;

function singleDrops(p0: s.Point, p1: s.Point, p2: s.Point, t_s: number): string {
  return fliers(2, 40, t_s, 2.2, 0.75)
    .map(({ gone: u }) => {
      const x = (1 - u) ** 2 * p0[0] + 2 * u * (1 - u) * p1[0] + u * u * p2[0];
      const z = (1 - u) ** 2 * p0[1] + 2 * u * (1 - u) * p1[1] + u * u * p2[1];
      return drop(x, z, 2.6);
    })
    .join('');
}

/** Out of the shroud's front edge, straight down. */
function fallsFromEdge(g: number, t_s: number): string[] {
  const n = g < 0.5 ? 2 : g < 1.5 ? 6 : 14;
  const [x, z] = s.clock(300, 129);
  return fliers(n, 61, t_s, 1.1).map((f) => drop(x - 1 + 5 * f.a, z - 4 - 115 * f.gone ** 1.6, 1.5 + f.b));
}

export const drop = (x: number, z: number, r: number, fill = oil): string =>
  `<circle cx="${s.px(x).toFixed(1)}" cy="${s.py(z).toFixed(1)}" r="${(r * s.scale).toFixed(1)}" fill="${fill}"/>`;

/** Streaks down the flank of the gear on its rising side. */
function sideFall({ grades, rpm, t_s }: Scene, { shroud }: s.Shape): string {
  const g = grades.side;
  if (rpm < 1 || g < 0.5 || shroud !== null) return '';
  const n = g < 1.5 ? 7 : g < 2.5 ? 14 : g < 3.5 ? 24 : 36;
  const long = g < 1.5 ? 5 : g < 2.5 ? 14 : 22;
  return fliers(n, 80, t_s, 1.5)
    .map((f) => {
      const [x, z] = s.clock(12 + 95 * f.a, s.ring.radius - 5 - 20 * f.b);
      const top = z - (z + 40) * f.gone ** 1.5;
      const width = (g < 1.5 ? 2.2 : 2.6 + f.c).toFixed(1);
      return `<path d="${s.path([[x, top], [x - 0.04 * long, top - long]])}" stroke="${oil}" stroke-opacity="0.62" stroke-width="${width}" stroke-linecap="round"/>`; // prettier-ignore
    })
    .join('');
}

/** Thrown off the rising side onto the wall and the roof: film, drops back, mist. */
function wallHit({ grades, rpm, t_s }: Scene, { bowl, shroud }: s.Shape): string {
  const g = grades.wall;
  if (rpm < 1 || g < 0.5) return '';
  const high = bowl.filter(([x, z]) => z > -40 && x > 30);
  const run = t_s * (16 + rpm / 9);
  const width = g < 1.5 ? 1.6 : g < 2.5 ? 4.5 : 6;
  const film = `<path d="${s.path(high)}" fill="none" stroke="${oil}" stroke-opacity="${g < 1.5 ? 0.55 : 0.72}" stroke-width="${width}" ${g < 1.5 ? 'stroke-dasharray="16 7"' : ''}/>`;
  const turning =
    g < 1.5
      ? ''
      : `<path d="${s.path(high)}" fill="none" stroke="#e9cf9f" stroke-width="1.2" stroke-dasharray="10 14" stroke-dashoffset="${(-run % 24).toFixed(1)}"/>`;
  const thrown = fliers(shroud === null ? Math.round(3 + 4 * g) : 4, 120, t_s, 0.9).map((f) => {
    const [x, z] = s.clock(40 + 50 * f.a, s.ring.radius + 2);
    const [to, up] = along(high, 0.25 + 0.7 * f.a);
    return drop(x + (to - x) * f.gone, z + (up - z) * f.gone, 1.3 + f.b);
  });
  const back = g < 2.5 ? [] : fliers(g < 3.5 ? 22 : 16, 160, t_s, 1.2).map((f) => {
    const [x, z] = along(high, 0.15 + 0.8 * f.a);
    const out = 34 * f.gone;
    return drop(x - out * (0.5 + 0.6 * f.b), z - out * (0.1 + 0.5 * f.c) - 22 * f.gone ** 2, 2.3 - 0.8 * f.gone);
  }); // prettier-ignore
  return film + turning + thrown.join('') + back.join('') + (g < 3.5 ? '' : mist(high, t_s));
}

function mist(wall: readonly s.Point[], t_s: number): string {
  const dots = fliers(110, 220, t_s, 2.4).map((f) => {
    const [wx, wz] = along(wall, 0.1 + 0.88 * f.a);
    const out = 4 + 40 * f.b;
    return drop(wx - out + 3 * Math.sin(6 * f.gone), wz - out * 0.45 + 6 * f.gone, 0.8 + 0.3 * f.c);
  });
  return dots.join('');
}

/** A place on a run of points, `part` of the way along. */
export function along(points: readonly s.Point[], part: number): s.Point {
  const at = Math.max(0, Math.min(0.9999, part)) * (points.length - 1);
  const [a, b] = [points[Math.floor(at)]!, points[Math.floor(at) + 1]!];
  const u = at - Math.floor(at);
  return [a[0] + (b[0] - a[0]) * u, a[1] + (b[1] - a[1]) * u];
}

/** Shroud or tray. */
function insert({ rpm, t_s }: Scene, { shroud, tray }: s.Shape): string {
  if (shroud !== null) {
    const { radius, from_deg, to_deg } = shroud;
    const outer = s.arc(90 - from_deg, 90 - to_deg, radius);
    const cheek = s.path([...outer, ...s.arc(90 - to_deg, 90 - from_deg, 62)], true);
    const holes = [130, 50, -30].map((deg) => drop(...s.clock(deg, 95), 4, paper)).join('');
    return `<path d="${cheek}" fill="${rule}" stroke="${soft}" stroke-width="1"/>${holes}<path d="${s.path(outer)}" fill="none" stroke="${ink}" stroke-width="3.2" stroke-linecap="round"/>`;
  }
  if (tray === null) return '';
  const [[x0, z0], [x1, z1]] = tray;
  const deep = 15 * (1 - Math.exp(-rpm / 150));
  const held = s.path([[x0, z0 + 2], [x1, z1 + 2], [x1, z0 + 4 + deep], [x0 - 1, z0 + 4 + deep]], true); // prettier-ignore
  const drips = rpm < 1 ? [] : fliers(5, 300, t_s, 0.9).map((f) => drop(x0 + 5 + 9 * Math.round(f.a), z0 - 3 - 70 * f.gone ** 1.7, 1.7)); // prettier-ignore
  return `${rpm < 1 ? '' : `<path d="${held}" fill="${oil}" fill-opacity="0.7"/>`}${drips.join('')}<path d="${s.path([[x0 - 1, z0 + 16], [x0, z0], [x1, z1]])}" fill="none" stroke="${ink}" stroke-width="3" stroke-linecap="round" stroke-linejoin="round"/>`; // prettier-ignore
}

/** The lip is the lowest point of the tube's mouth. */
function lip({ grades }: Scene): string {
  if (grades.tube < 0.5) return '';
  const half = grades.tube < 1.5 ? 14 : grades.tube < 2.5 ? 30 : 42;
  const width = grades.tube < 1.5 ? 2.6 : 4.5;
  return `<path d="${s.path(s.arc(180 - half, 180 + half, s.tubeLip_mm - 1))}" fill="none" stroke="${oil}" stroke-width="${width}" stroke-linecap="round"/>`;
}
