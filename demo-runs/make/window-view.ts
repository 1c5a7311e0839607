import { letters } from './lettering.ts';
import { behindView } from './window-behind.ts';
import { ink, oil, paper, rule, type Scene, slowed, soft, tint } from './window-scene.ts';
import { py } from './window-shapes.ts';
import { sideView } from './window-side.ts';

/** A window view of 480 × 360, from the side and from behind. A drawing, and it says so. */
export function windowView(scene: Scene, as: { width: number; height: number; moving: boolean }): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${as.width}" height="${as.height}" viewBox="0 0 480 360">`,
    frame(scene),
    as.moving ? howItTurns() : '',
    sideView(scene),
    behindView(scene),
    windowRule(),
    scene.flash ? flash() : lamp(),
    '</svg>',
  ].join('\n');
}

function frame({ label, clock }: Scene): string {
  const hatch = Array.from({ length: 61 }, (_, i) => `M${i * 14 - 5},365l-370,-370`).join('');
  return [
    `<rect width="480" height="360" fill="${rule}"/>`,
    `<path shape-rendering="crispEdges" d="${hatch}" stroke="${soft}" stroke-width="2" fill="none"/>`,
    `<rect x="9" y="9" width="462" height="342" fill="${paper}" stroke="${ink}" stroke-width="1"/>`,
    `<path d="M9,331.5H471" stroke="${ink}" stroke-width="1"/>`,
    letters('DRAWING, NOT A FILM', { x: 20, y: 345.5, size: 12.5, fill: oil, strong: true, spaced: 1.1 }),
    letters(clock, { x: 460, y: 345.5, size: 12, fill: soft, anchor: 'end' }),
    letters(label, { x: 20, y: 29, size: 17, fill: ink, strong: true }),
    letters('from the left', { x: 20, y: 325, size: 11, fill: soft }),
    letters('from behind', { x: 411, y: 325, size: 11, fill: soft, anchor: 'middle' }),
  ].join('');
}

const howItTurns = (): string =>
  letters(`turning drawn ${slowed} times slower`, { x: 460, y: 27, size: 11, fill: soft, anchor: 'end' });

/** One rule for both views, mm over the axle centre. */
function windowRule(): string {
  const ticks = Array.from({ length: 8 }, (_, i) => -40 - 10 * i);
  const line = ticks.map((z) => `M${z % 20 === 0 ? 353 : 356},${py(z).toFixed(1)}H359.5`).join('');
  const named = ticks.filter((z) => z % 20 === 0);
  return [
    `<path d="M359.5,${py(-40)}V${py(-110)}${line}" stroke="${ink}" stroke-width="1" fill="none"/>`,
    ...named.map((z) => letters(`−${-z}`, { x: 351.5, y: py(z) + 3.4, size: 9.5, fill: ink, anchor: 'end' })),
    letters('mm', { x: 359.5, y: py(-122), size: 9.5, fill: soft, anchor: 'end' }),
  ].join('');
}

const lamp = (): string =>
  `<path d="M17,58l10,-6v18l-10,-6z" fill="${tint}" stroke="${ink}" stroke-width="1"/><path d="M27,50v22" stroke="${ink}" stroke-width="2"/>${letters('lamp', { x: 17, y: 84, size: 11, fill: soft })}`;

/** The sync lamp goes off in front of the window. */
const flash = (): string => {
  const rays = Array.from({ length: 16 }, (_, i) => {
    const [c, s] = [Math.cos((i * Math.PI) / 8), Math.sin((i * Math.PI) / 8)];
    const far = i % 2 === 0 ? 23 : 18;
    return `M${(36 + 12 * c).toFixed(1)},${(65 + 12 * s).toFixed(1)}L${(36 + far * c).toFixed(1)},${(65 + far * s).toFixed(1)}`;
  }).join('');
  return [
    `<rect x="9.5" y="34" width="461" height="297" fill="#ffffff" opacity="0.45"/>`,
    `<circle cx="36" cy="65" r="9" fill="#ffffff" stroke="${oil}" stroke-width="2.5"/><path d="${rays}" stroke="${oil}" stroke-width="2.5"/>`,
    letters('sync', { x: 26, y: 101, size: 11, fill: oil, strong: true }),
  ].join('');
};
