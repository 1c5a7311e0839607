import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildSite, pageMemo } from '../../src/host/site/build.ts';
import { flowPages, flowTexts } from './sample-flow.ts';
import { noFilm, sampleMedia } from './sample-media.ts';
import { frame } from './sample-parts.ts';

const folder = mkdtempSync(join(tmpdir(), 'dipmark-media-'));
const out = join(folder, 'site');
const series = 'series/hill-bowl/';
const read = (path: string): string => readFileSync(join(out, path), 'utf8');
const run = (): string => read(`${series}runs/F-01/index.html`);
const pair = (): string => read(`${series}side-by-side/F-01~F-02/index.html`);
const grading = (): string => read(`${series}grading/index.html`);

let media: Awaited<ReturnType<typeof sampleMedia>>;
beforeAll(async () => {
  media = await sampleMedia(join(folder, 'book'), flowPages);
  await buildSite({ pages: flowPages, files: flowTexts, frame, shown: media.shown, out });
});
afterAll(() => {
  media.close();
  rmSync(folder, { recursive: true, force: true });
});

const figure = (html: string, id: string): string =>
  new RegExp(`<(figure|div)[^>]* id="${id}"[^>]*>.*?</\\1>`, 's').exec(html)?.[0] ?? '';
const value = (tag: string, name: string): string => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
/** Data for a script as a browser takes it: everything up to the first end of a script element. */
const dataIn = (html: string, name: string): unknown =>
  JSON.parse(new RegExp(`<script type="application/json" class="${name}">(.*?)</script`, 's').exec(html)![1]!);

describe('a still on a page', () => {
  it('comes in two sizes and two kinds, every one of them in the site, with its shape known before it is loaded', () => {
    const html = figure(run(), 'still-F-01-290');
    const [, source = '', img = ''] = /<picture>\s*(<source[^>]*>)\s*(<img[^>]*>)/.exec(html) ?? [];
    expect([value(source, 'type'), value(img, 'width'), value(img, 'height')]).toEqual(['image/webp', '1280', '960']);
    // what is loaded only when it is scrolled to is not there yet on paper
    expect(img).not.toContain('loading=');
    expect(value(img, 'alt')).toContain('a closed sheet climbs the gear');
    const addresses = [value(source, 'srcset'), value(img, 'srcset')].flatMap((set) => set.split(', '));
    expect(addresses.map((each) => each.split(' ')[1])).toEqual(['640w', '1280w', '640w', '1280w']);
    for (const address of [...addresses.map((each) => each.split(' ')[0]!), value(img, 'src')])
      expect(existsSync(join(out, series, 'runs', 'F-01', address)), address).toBe(true);
  });

  it('that cannot be decoded says so, and what it was to show, and the rest of the page stands', () => {
    expect(media.findings.map(({ code, place }) => [code, place.file])).toEqual([
      ['still-not-decoded', 'hill-bowl/pictures/F-01-cut.jpg'],
    ]);
    const html = figure(run(), 'still-F-01-cut');
    expect(html).toContain('Still could not be read.');
    expect(html).toContain('F-01-cut: a closed sheet');
    expect(html).not.toContain('<img');
    expect(run()).toContain('After the stop');
  });

  it('is published as it was made, and never as the camera wrote it', () => {
    expect(existsSync(join(out, series, 'stills', 'F-01-cut.jpg'))).toBe(false);
    expect(readFileSync(join(out, series, 'stills', 'F-01-290-640.jpg')).includes('Exif')).toBe(false);
  });
});

describe('a clip on a page', () => {
  it("plays the user's own file, byte by byte, and links it with its captions and chapters", () => {
    const html = figure(run(), 'clip-clip');
    expect(html).toMatch(/<video controls preload="metadata" playsinline /);
    expect(html).toMatch(/^<figure class="clip drawing" id="clip-clip" data-traces="picture-film">/);
    expect(run()).toContain('id="picture-film"');
    const hrefs = [...html.matchAll(/<span class="files">.*?<\/span>/gs)].flatMap(([span]) =>
      [...span.matchAll(/href="([^"]*)"/g)].map(([, href]) => href!),
    );
    expect(hrefs.map((href) => href.replace(/.*\//, ''))).toEqual(['F-01.webm', 'F-01.vtt', 'F-01.chapters.txt']);
    for (const href of hrefs) expect(existsSync(join(out, series, 'runs', 'F-01', href)), href).toBe(true);
    expect(readFileSync(join(out, series, 'clips', 'F-01.webm')).equals(noFilm)).toBe(true);
  });

  it('has its captions in the page as well, since a page from the disk may load no file as captions', () => {
    const track = /<track[^>]*>/.exec(figure(run(), 'clip-clip'))?.[0] ?? '';
    expect([value(track, 'kind'), value(track, 'srclang'), value(track, 'label')]).toEqual([
      'captions',
      'en',
      'Observations',
    ]);
    const [, text = ''] = /^data:text\/vtt;charset=utf-8,(.*)$/.exec(value(track, 'src')) ?? [];
    // As WebVTT has it: the three signs of its markup are written out.
    expect(decodeURIComponent(text)).toMatch(
      /^WEBVTT\n\n00:00:08\.000 --> 00:00:18\.000\nObserver A: Reach 3 at 60 rpm up\. &lt;\/script&gt;\n\n00:00:28/,
    );
    expect(read(`${series}clips/F-01.vtt`)).toBe(flowTexts[0]!.text);
  });

  it('gives its script data that no word of a note can break out of', () => {
    const html = run();
    expect(dataIn(html, 'clip-data')).toMatchObject({
      captionsLabel: 'Observations',
      pieces: [{ clip_s: 0, to_clip_s: 130, offset_s: 4.6 }],
      steps: [{ name: '60 rpm up', from_s: 8, to_s: 26 }, {}, {}, {}, {}, {}],
      cues: [{ from_s: 8, to_s: 18, text: 'Observer A: Reach 3 at 60 rpm up. </script>' }, {}, {}, {}, {}, {}],
    });
    expect(html.match(/<script type/g)).toHaveLength(1);
    expect(html).not.toContain('<!--');
    expect(html).toContain('&lt;/script&gt;&lt;!-- &quot;quoted&quot;');
  });

  it('that is not in the folder is named, and nothing is played', () => {
    const html = figure(run(), 'clip-away');
    expect(html).toContain('F-09.webm is not in this folder.');
    expect(html).not.toContain('<video');
    expect(existsSync(join(out, series, 'clips', 'F-09.webm'))).toBe(false);
  });

  it('is on paper a line that says where its words stand', () => {
    expect(figure(run(), 'clip-clip')).toContain(
      '<p class="on-paper">Clip F-01.webm: what was seen in it stands below.</p>',
    );
  });
});

describe('two runs side by side', () => {
  it('stand in two columns under one heading a step, and their steps are listed', () => {
    const html = pair();
    expect([...html.matchAll(/<div class="pair" id="([^"]+)">/g)].map(([, id]) => id)).toHaveLength(6);
    const [, first = ''] = /<div class="pair" id="60rpm-pair">(.*?)<div class="pair"/s.exec(html) ?? [];
    expect(first.match(/<div class="side">/g)).toHaveLength(2);
    expect(first).toContain('picture-section-60');
    const nav = /<nav class="steps".*?<\/nav>/s.exec(html)?.[0] ?? '';
    expect([...nav.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id)).toEqual(
      [60, 120, 200, 290, 390, 520].map((rpm) => `${rpm}rpm`),
    );
  });

  it('play together: both clips, and room for what starts them', () => {
    const html = pair();
    expect(html).toMatch(/<div class="two-clips" id="clips">/);
    expect(html.match(/<figure class="clip/g)).toHaveLength(2);
    expect(html).toContain('<div class="together"></div>');
  });
});

describe('the page for graders', () => {
  it('is given the clips that are there by their addresses from the page, the scale and the views', () => {
    const data = dataIn(grading(), 'grading-data') as {
      clips: { code: string; address: string }[];
      scales: unknown[];
      views: unknown[];
    };
    expect(data.clips.map(({ code }) => code)).toEqual(['F-01']);
    expect(existsSync(join(out, series, 'grading', data.clips[0]!.address))).toBe(true);
    expect([data.scales.length, data.views.length]).toEqual([5, 4]);
    expect(grading()).toMatch(/<noscript>.*scripts.*<\/noscript>/s);
  });
});

describe('scripts', () => {
  it('stand on the pages that need them and on no other, and are in the site', () => {
    const scripts = (path: string) =>
      [...read(path).matchAll(/<script defer src="([^"]+)">/g)].map(([, src]) => [path, src!] as const);
    const all = flowPages.flatMap(({ path }) => scripts(`${path}index.html`));
    expect(all.map(([path, src]) => [path.split('/')[2], src.replace(/.*\//, '')])).toEqual([
      ['runs', 'film.js'],
      ['side-by-side', 'film.js'],
      ['grading', 'grading.js'],
    ]);
    for (const [path, src] of all) expect(statSync(join(out, dirname(path), src)).isFile()).toBe(true);
  });
});

describe('a site that is built again', () => {
  it('lays a page out again when its still or its clip changed, and then only that page', async () => {
    const laidOut: number[] = [];
    const kept = pageMemo();
    const again = async (shown = media.shown): Promise<void> => {
      const told: number[] = [];
      await buildSite({
        ...{ pages: flowPages, files: flowTexts, frame, shown, kept, out: join(folder, 'again') },
        tell: (_, all, what) => {
          if (what === 'pages') told.push(all);
        },
      });
      laidOut.push(told[0]!);
    };
    await again();
    await again();
    const stills = new Map([...media.shown.stills, [`${series}stills/F-01-60`, null]]);
    await again({ ...media.shown, stills });
    await again({ ...media.shown, clips: new Map([...media.shown.clips].filter(([path]) => !path.includes('F-02'))) });
    // The still stands on the run sheet alone; then it is back there, and the clip is gone from the page of the pair.
    expect(laidOut).toEqual([4, 0, 1, 2]);
    expect(readFileSync(join(folder, 'again', series, 'side-by-side/F-01~F-02/index.html'), 'utf8')).toContain(
      'F-02.webm is not in this folder.',
    );
  });
});
