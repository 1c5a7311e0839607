import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { MediaFile } from '../../../src/trial/series.ts';
import { pictureKind, pictureSize } from '../../../src/notes/picture.ts';
import { F01, flowBook, flowOutcome, goodMedia, jpeg, media, mp4, png, spoilFlow, webm } from './flow-book.ts';

const still = 'hill-bowl/pictures/F-01-290.png';
const film = 'hill-bowl/runs/F-01.webm';
const ascii = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

/** The media of the good run with one file another, or gone. */
const withMedia = (path: string, is: MediaFile | null): MediaFile[] => [
  ...goodMedia.filter((file) => file.path !== path),
  ...(is ? [is] : []),
];
const told = (files: typeof flowBook, pictures: readonly MediaFile[]) => {
  const { findings, run, placed } = flowOutcome(files, pictures);
  return {
    finding: findings[0],
    placed,
    stills: run.stills.length,
    clips: run.clips.length,
    seen: run.observations.length,
  };
};

describe('a still that cannot be shown is left out, and the run keeps everything else', () => {
  const left = { stills: 1, clips: 2, seen: 4 };
  it.each<[title: string, code: string, head: MediaFile | null, says: RegExp]>([
    ['is not in the folder', 'still-missing', null, /no picture "F-01-290.png"/],
    [
      'is an SVG by its bytes',
      'still-svg',
      media(still, ascii('<?xml version="1.0"?>\n<!-- x -->\n<svg xmlns="">')),
      /SVG can carry script/,
    ],
    ['is a text', 'still-no-picture', media(still, ascii('a closed sheet')), /no PNG, JPEG or WebP/],
    ['is a film', 'still-no-picture', media(still, webm), /no PNG, JPEG or WebP/],
    ['is empty', 'still-no-picture', media(still, new Uint8Array()), /no PNG, JPEG or WebP/],
    ['has 50.4 megapixels', 'still-large', media(still, png(8400, 6000)), /8400 × 6000, 50.4 megapixels/],
    ['has 40.1 MB', 'still-heavy', media(still, png(1920, 1080), 40_100_000), /has 40.1 MB/],
    [
      'has no size in its beginning',
      'still-size-unknown',
      media(still, jpeg(0, 0).subarray(0, 20), 90_000),
      /first 256 KiB/,
    ],
    ['ends early', 'still-size-unknown', media(still, png(1, 1).subarray(0, 18)), /damaged or ends early/],
    ['is nothing wide', 'still-size-unknown', media(still, png(0, 1080)), /cannot be read/],
  ])('when it %s: %s', (_, code, head, says) => {
    const { finding, placed, ...kept } = told(flowBook, withMedia(still, head));
    expect(placed).toEqual([`${code} F-01.md:42:11`]);
    expect([finding?.says, finding?.why, finding?.write].join(' ')).toMatch(says);
    expect(finding?.effect).toBe('This still is left out; the run stands without it.');
    expect(kept).toEqual(left);
  });

  it.each([
    '../F-01-290.png',
    'pictures/F-01-290.png',
    '/tmp/F-01-290.png',
    'C:F-01-290.png',
    '~/F-01.png',
    '..\\F-01.png',
    '.hidden.png',
    'a?b.png',
  ])('when its name is %s: media-outside', (name) => {
    const { placed, ...kept } = told(
      spoilFlow(F01, 'file: F-01-290.png', `file: "${name.replace('\\', '\\\\')}"`),
      goodMedia,
    );
    expect(placed).toEqual(['media-outside F-01.md:42:11']);
    expect(kept).toMatchObject(left);
  });

  it('when it ends in .svg, whatever it holds and whether or not it is there: still-svg', () => {
    for (const name of ['F-01.svg', 'F-01.SVGZ']) {
      const { placed, stills } = told(spoilFlow(F01, 'F-01-290.png', name), [
        ...goodMedia,
        media(`hill-bowl/pictures/${name}`, png(100, 100)),
      ]);
      expect([placed, stills]).toEqual([['still-svg F-01.md:42:11'], 1]);
    }
  });

  it('and names the picture whose name is nearest', () => {
    const { finding } = told(spoilFlow(F01, 'F-01-290.png', 'F-01-29O.png'), goodMedia);
    expect(finding?.write).toBe('Did you mean  file: F-01-290.png ?');
  });

  it('but a picture of just 50 megapixels, or a JPEG that is called .png, is shown', () => {
    for (const head of [png(8000, 6250), jpeg(640, 480)])
      expect(told(flowBook, withMedia(still, media(still, head)))).toMatchObject({ placed: [], stills: 2 });
  });

  it('and where nobody looked at the folder nothing is said of it', () => {
    const { placed, run } = flowOutcome(flowBook, null);
    expect([placed, run.stills.length]).toEqual([[], 2]);
  });
});

// Pictures made by libvips (through sharp), which is not ours
describe('kind and size of a picture as another program wrote it', () => {
  const raw = { create: { width: 321, height: 123, channels: 3, background: '#456' } } as const;
  it.each(['png', 'jpeg', 'webp'] as const)('%s is known by its bytes, 321 wide and 123 high', async (format) => {
    const head = new Uint8Array(await sharp(raw).toFormat(format).toBuffer());
    expect(pictureKind(head)?.toLowerCase()).toBe(format);
    expect(pictureSize(head)).toEqual({ width: 321, height: 123 });
  });

  it('is found behind a preview of the camera, as long as that is not cut off', () => {
    const preview = [0xff, 0xe1, 0xff, 0xff, ...Array.from({ length: 0xfffd }, () => 0)];
    const head = jpeg(640, 480, preview);
    expect(pictureSize(head)).toEqual({ width: 640, height: 480 });
    expect(pictureSize(head.subarray(0, 0x8000))).toBeNull();
  });
});

describe('a clip', () => {
  it('that is not in the folder is worth a word, with the nearest name: clip-missing', () => {
    const gone = told(flowBook, withMedia(film, media('hill-bowl/runs/F-01.wemb', webm)));
    expect(gone.placed).toEqual(['clip-missing F-01.md:19:11']);
    expect(gone.finding?.level).toBe('notice');
    expect(gone.finding?.write).toContain('file: F-01.wemb ?');
    expect(gone).toMatchObject({ clips: 2, seen: 4 });
  });

  it.each([
    ['a text', ascii('not a film'), 'no WebM, MP4 or Ogg'],
    [
      'a Matroska file',
      Uint8Array.from([0x1a, 0x45, 0xdf, 0xa3, 0x8b, 0x42, 0x82, 0x88, ...ascii('matroska')]),
      'no WebM',
    ],
    ['a film in a container that browsers do not share', ascii('\0\0\0\x14ftypqt  \0\0\0\0qt  '), 'no WebM'],
    ['an MP4 that is called .webm', mp4(), 'Name it F-01.mp4'],
  ])('that is %s is left out: clip-no-film', (_, head, says) => {
    const { finding, placed, ...kept } = told(flowBook, withMedia(film, media(film, head)));
    expect(placed).toEqual(['clip-no-film F-01.md:19:11']);
    expect([finding?.says, finding?.write].join(' ')).toContain(says);
    expect(kept).toEqual({ stills: 2, clips: 1, seen: 4 });
  });

  const b = 'hill-bowl/runs/F-01-b.mp4';
  it.each<[string, readonly (readonly [string, string])[]]>([
    ['a box loci', [['moov', '\0\0\0\x20loci\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0\0']]],
    ['a box ©xyz', [['udta', '\0\0\0\x1e\xa9xyz\0\x12\x15\xc7+52.0000+013.0000/']]],
    ['a key of location by ISO 6709', [['moov', 'x.location.ISO6709']]],
  ])('that carries the place where it was filmed in %s is kept, with a warning: clip-says-where', (_, boxes) => {
    const { finding, placed, clips } = told(flowBook, [...goodMedia, media(b, mp4(...boxes))]);
    expect(placed).toEqual(['clip-says-where F-01.md:28:13']);
    expect([finding?.level, clips]).toEqual(['warning', 2]);
  });

  it('that only happens to hold the letters says nothing', () => {
    expect(
      told(flowBook, [...goodMedia, media(b, mp4(['mdat', 'a film of velocities: loci in the plane']))]).placed,
    ).toEqual([]);
  });

  it.each(['../F-01.webm', '/F-01.webm', 'x/F-01.webm', 'https://x.example/F-01.webm'])(
    'named %s is left out: media-outside',
    (name) => {
      const { placed, clips } = told(spoilFlow(F01, 'file: F-01-b.mp4', `file: ${name}`), goodMedia);
      expect([placed, clips]).toEqual([['media-outside F-01.md:28:13'], 1]);
    },
  );

  it('shares its code with no other: clip-code-twice, in any case of letters', () => {
    const { finding, placed, clips } = told(spoilFlow(F01, 'kept: camera', 'code: k7, kept: camera'), goodMedia);
    expect([placed, clips]).toEqual([['clip-code-twice F-01.md:28:31'], 2]);
    expect(finding?.effect).toBe('The clip is kept without its code.');
  });

  it.each(['S-07', 's-08', 'F-01', 'F-01-2'])(
    'is not called %s, as a run or a further clip of one is: clip-code-is-run',
    (name) => {
      const { placed } = told(spoilFlow(F01, 'kept: camera', `code: ${name}, kept: camera`), goodMedia);
      expect(placed).toEqual(['clip-code-is-run F-01.md:28:31']);
    },
  );

  it('keeps its captions when its code is refused', () => {
    const { run } = flowOutcome(
      spoilFlow(F01, 'code: K7', 'code: S-07', {
        ...flowBook,
        'hill-bowl/runs/F-01.vtt': flowBook['hill-bowl/runs/F-01.vtt']!.toString().replace('run K7', 'run S-07'),
      }),
    );
    expect([run.clips[0]?.code, run.observations.length]).toEqual([null, 4]);
  });
});
