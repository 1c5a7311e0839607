import { fliers } from './drops.ts';
import { bath, bubbles, grid } from './window-oil.ts';
import * as s from './window-shapes.ts';
import { wave } from './window-side.ts';
import { ink, oil, paper, rule, type Scene, tint } from './window-scene.ts';

/** Middle of this view on the canvas, as mm of the other one. */
const middle = (411 - s.px(0)) / s.scale;
const p = (x: number, z: number): s.Point => [middle + x, z];
const half = s.ring.face / 2;

/** The rim seen from behind: how much of its face the sheet covers, what leaves at the sides, and the tube lips. */
export function behindView(scene: Scene): string {
  const floor = scene.article === 'P1w' ? -158 : -128;
  const right: s.Point[] = [p(30, 132), p(46, 112), p(50, 60), p(50, 38), p(62, 38)];
  const low: s.Point[] = [
    p(62, -38),
    p(50, -38),
    p(50, -90),
    p(38, floor),
    p(-38, floor),
    p(-50, -90),
    p(-50, -38),
    p(-62, -38),
  ];
  const left: s.Point[] = [p(-62, 38), p(-50, 38), p(-50, 60), p(-46, 112), p(-30, 132)];
  const inside = s.path([...right, ...low, ...left], true);
  const surface = (): number => wave(scene, 0);
  return [
    `<defs><clipPath id="behind"><path d="${inside}"/></clipPath></defs>`,
    `<path d="${inside}" fill="${paper}" stroke="${ink}" stroke-width="9"/><path d="${inside}" fill="${paper}" stroke="${tint}" stroke-width="7"/>`,
    `<path d="${inside}" fill="${paper}"/>`,
    `<g clip-path="url(#behind)">`,
    grid(scene, [middle - 60, middle + 60], surface),
    gearFace(scene),
    bath(scene, [middle - 66, middle + 66], surface),
    bubbles(scene, { salt: 700, many: 0.34, within: [middle - 44, middle + 44], surface }),
    sheet(scene),
    shroudBox(scene),
    sides(scene),
    tubes(scene),
    '</g>',
    `<path d="${s.path([...right])}${s.path(low)}${s.path([...left, right[0]!])}" fill="none" stroke="${ink}" stroke-width="1.2"/>`,
  ].join('');
}

const box = (x0: number, z0: number, x1: number, z1: number): string =>
  s.path([p(x0, z0), p(x1, z0), p(x1, z1), p(x0, z1)], true);

function gearFace({ turned_rad, rpm }: Scene): string {
  const { radius, teeth } = s.ring;
  const seen = Math.max(0.12, Math.min(1, 1.3 - rpm / 260));
  const lines = Array.from({ length: teeth }, (_, i) => {
    const a = turned_rad + (2 * Math.PI * i) / teeth;
    return Math.cos(a) < 0 ? '' : s.path([p(-half, radius * Math.sin(a) - 2), p(half, radius * Math.sin(a) + 2)]);
  }).join('');
  return `<path d="${box(-half, -radius, half, radius)}" fill="${tint}" stroke="${ink}" stroke-width="1.2"/><path d="${lines}" stroke="${ink}" stroke-opacity="${seen.toFixed(2)}" stroke-width="1.1"/>`;
}

/** The sheet that goes over the top: drops, torn, closed, or wide. */
function sheet({ article, grades, level_mm, rpm, t_s }: Scene): string {
  const g = grades.reach;
  if (rpm < 1 || g < 0.5 || article === 'P4w') return '';
  const top = s.ring.radius;
  if (g < 1.5)
    return fliers(6, 410, t_s, 1.6)
      .map((f) => dot(10 * (f.a - 0.5), level_mm + (top - level_mm) * f.gone, 2))
      .join('');
  const width = s.ring.face * (g < 2.5 ? 0.3 : g < 3.5 ? 0.4 : 0.66);
  if (g >= 2.5)
    return `<path d="${box(-width / 2, level_mm, width / 2, top)}" fill="${oil}" fill-opacity="0.72"/>${streaks(width, level_mm, t_s, rpm)}`;
  const rags = fliers(7, 430, t_s, 1.5).map((f) => {
    const z = level_mm + (top - level_mm) * f.gone;
    const x = 6 * (f.a - 0.5);
    return `<path d="${box(x - width * (0.3 + 0.2 * f.b), z - 10, x + width * (0.3 + 0.2 * f.c), z + 8)}" fill="${oil}" fill-opacity="0.72"/>`;
  });
  return rags.join('');
}

const streaks = (width: number, level_mm: number, t_s: number, rpm: number): string => {
  const run = (-t_s * (20 + rpm / 8)) % 22;
  const lines = [-0.25, 0.1, 0.35].map((part) => s.path([p(width * part, level_mm), p(width * part, s.ring.radius)]));
  return `<path d="${lines.join('')}" stroke="#e9cf9f" stroke-width="1" stroke-dasharray="9 13" stroke-dashoffset="${run.toFixed(1)}"/>`;
};

/** What does not get to the top: it leaves over the edges of the face and falls beside the gear. */
function sides({ article, grades, level_mm, rpm, t_s }: Scene): string {
  const g = grades.side;
  if (rpm < 1 || g < 0.5) return '';
  const edge = article === 'P4w' ? 25 : half;
  const both = [-1, 1] as const;
  if (g < 1.5)
    return both
      .flatMap((side) =>
        fliers(4, 460 + side, t_s, 1.3).map((f) =>
          dot(side * (edge + 2 + 7 * f.gone), 30 + 60 * f.a - (90 + level_mm / 3) * f.gone ** 1.6, 1.8),
        ),
      )
      .join('');
  const part = g < 2.5 ? 0.38 : g < 3.5 ? 0.62 : 0.85;
  const [inner, high, out] = [edge - (s.ring.face / 2) * part, 40 + 70 * part, 6 + 14 * part];
  const curtain = both.map((side) => {
    const rim = article === 'P4w' ? '' : `<path d="${s.path([p(side * inner, level_mm), p(side * edge, level_mm), p(side * edge, high), p(side * (inner + edge) * 0.5, high - 16)], true)}" fill="${oil}" fill-opacity="0.3"/>`; // prettier-ignore
    const fall = [p(side * edge, high), p(side * (edge + out * 0.7), high - 14), p(side * (edge + out), high - 45), p(side * (edge + out), level_mm), p(side * edge, level_mm)]; // prettier-ignore
    return `${rim}<path d="${s.path(fall, true)}" fill="${oil}" fill-opacity="${(0.3 + 0.25 * part).toFixed(2)}"/>`;
  });
  const run = (t_s * 46) % 20;
  const threads = both.flatMap(
    (side) =>
    [0.25, 0.6, 0.95].map((u) => s.path([p(side * (edge + out * u), high - 30 * u - 8), p(side * (edge + out * u), level_mm)])), // prettier-ignore
  );
  return `${curtain.join('')}<path d="${threads.join('')}" stroke="${oil}" stroke-width="1.1" stroke-dasharray="8 12" stroke-dashoffset="${(-run).toFixed(1)}"/>`;
}

function shroudBox({ article }: Scene): string {
  if (article !== 'P4w') return '';
  return `<path d="${box(-25, -113, 25, 131)}" fill="${rule}" stroke="${ink}" stroke-width="2"/><path d="${s.path([p(0, -113), p(0, 131)])}" stroke="${tint}" stroke-width="1.5"/>`;
}

/** The left tube is on the left: nobody turns the axle round to look from behind. */
function tubes({ grades, t_s }: Scene): string {
  const g = grades.tube;
  const lips = [-1, 1].map((side) => s.path([p(side * 50, -38), p(side * 50, -44)]));
  const edge = `<path d="${lips.join('')}" stroke="${ink}" stroke-width="3"/>`;
  if (g < 0.5) return edge;
  const thick = g < 1.5 ? 2.2 : g < 2.5 ? 4.5 : 9;
  const far = g < 1.5 ? 53 : 64;
  const run = (-t_s * 22) % 12;
  const film = `<path d="${s.path([p(-48, -42), p(-49.5, -36.5), p(-far, -36.5)])}" fill="none" stroke="${oil}" stroke-width="${thick}" stroke-linejoin="round"/>`;
  const shine = g < 1.5 ? '' : `<path d="${s.path([p(-49, -36), p(-64, -36)])}" stroke="#e9cf9f" stroke-width="1.2" stroke-dasharray="5 7" stroke-dashoffset="${run.toFixed(1)}"/>`; // prettier-ignore
  return edge + film + shine;
}

const dot = (x: number, z: number, r: number): string => {
  const [mx, mz] = p(x, z);
  return `<circle cx="${s.px(mx).toFixed(1)}" cy="${s.py(mz).toFixed(1)}" r="${(r * s.scale).toFixed(1)}" fill="${oil}"/>`;
};
