/**
 * Draws the demo's stills and its two clips: `npm run demo:clips`, or `-- --stills` for the stills alone. Pictures go to
 * `hill-bowl/pictures/`, clips beside their notes. The clips need ffmpeg with VP9; `demo:make` needs neither. The same seed
 * draws the same pictures; bytes of a clip also depend on the encoder.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import sharp from 'sharp';
import { drawnRuns, filmOf } from './film.ts';
import { flownRuns } from './demo.ts';
import { sceneAt } from './scenes.ts';
import { stillsOf } from './stills.ts';
import { windowView } from './window-view.ts';
import type { MadeRun } from './run.ts';

const frames_s = 10;
const clip = { width: 480, height: 360, moving: true };
const still = { width: 640, height: 480, moving: false };

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '2562' },
    out: { type: 'string', default: join(import.meta.dirname, '..') },
    stills: { type: 'boolean', default: false },
  },
});

const made = flownRuns({ seed: Number(values.seed), quiet: false, select: true });
mkdirSync(join(values.out, 'hill-bowl/pictures'), { recursive: true });
for (const run of made) await drawStills(run);
if (!values.stills) for (const run of made.filter(({ plan }) => drawnRuns.includes(plan.id))) await drawClip(run);

async function drawStills(run: MadeRun): Promise<void> {
  for (const planned of stillsOf(run)) {
    const scene = sceneAt(run, planned.step.hold_s + planned.offset_s);
    const svg = windowView(scene, still);
    const bytes = await sharp(Buffer.from(svg))
      .png({ palette: true, colours: 16, dither: 0, effort: 10, compressionLevel: 9 })
      .toBuffer();
    writeFileSync(join(values.out, 'hill-bowl/pictures', planned.file), bytes);
    console.log(`${planned.file} ${(bytes.length / 1000).toFixed(1)} kB`);
  }
}

/** Frames go to the encoder as they are drawn. */
async function drawClip(run: MadeRun): Promise<void> {
  const film = filmOf(run, false);
  const target = join(values.out, 'hill-bowl/runs', film.file);
  const keys = film.pieces!.map((p) => p.clip_s.toFixed(3)).join(',');
  const encoder = spawn('ffmpeg', [
    ...['-hide_banner', '-loglevel', 'error', '-y', '-f', 'rawvideo', '-pix_fmt', 'rgb24'],
    ...['-s', `${clip.width}x${clip.height}`, '-r', String(frames_s), '-i', '-'],
    ...['-map_metadata', '-1', '-fflags', '+bitexact', '-flags', '+bitexact', '-an', '-c:v', 'libvpx-vp9'],
    ...['-pix_fmt', 'yuv420p', '-crf', '40', '-b:v', '48k', '-deadline', 'good', '-cpu-used', '1', '-tune-content', 'screen'],
    ...['-row-mt', '0', '-threads', '1', '-g', '120', '-force_key_frames', keys, target],
  ], { stdio: ['pipe', 'inherit', 'inherit'] }); // prettier-ignore
  for (const piece of film.pieces!)
    for (let i = 0; i < piece.length_s * frames_s; i++) {
      const scene = sceneAt(run, piece.film_s + i / frames_s);
      const frame = await sharp(Buffer.from(windowView(scene, clip)))
        .removeAlpha()
        .raw()
        .toBuffer();
      if (!encoder.stdin.write(frame)) await once(encoder.stdin, 'drain');
    }
  encoder.stdin.end();
  const [code] = (await once(encoder, 'close')) as [number];
  if (code !== 0) throw new Error(`ffmpeg ended with ${code} on ${film.file}`);
  console.log(film.file);
}
