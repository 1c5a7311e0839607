import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import sharp from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import { readMedia } from '../../../src/host/disk/book.ts';
import { makeStills, type MadeStill, stillStore } from '../../../src/host/pictures/stills.ts';
import { stillsWithoutDecoder } from '../../../src/host/pictures/texts.ts';

const root = mkdtempSync(join(tmpdir(), 'dipmark-still-'));
const folder = join(root, 'book');
const pictures = join(folder, 'hill-bowl', 'pictures');
mkdirSync(pictures, { recursive: true });
const stores = [stillStore()];
afterAll(() => {
  for (const store of stores) store.close();
  rmSync(root, { recursive: true, force: true });
});

const plain = (width: number, height: number): sharp.Sharp =>
  sharp({ create: { width, height, channels: 3, background: '#7a5b2e' } });
const wanted = (name: string) => ({
  source: `hill-bowl/pictures/${name}`,
  address: `series/hill-bowl/stills/${name.replace(/\..*/, '')}`,
});

/** What becomes of one file in the pictures of a series. */
async function made(name: string, bytes?: Uint8Array, store = stores[0]!) {
  if (bytes !== undefined) writeFileSync(join(pictures, name), bytes);
  const { stills, findings } = await makeStills({
    folder,
    wanted: [wanted(name)],
    media: readMedia(folder),
    store,
  });
  return { still: stills.get(wanted(name).address) ?? null, findings };
}
const sizesOf = (still: MadeStill | null): readonly number[] => still?.sizes.map(({ width }) => width) ?? [];
const filesOf = (still: MadeStill | null): Buffer[] =>
  still?.sizes.flatMap(({ webp, jpeg }) => [readFileSync(webp), readFileSync(jpeg)]) ?? [];

describe('a still', () => {
  it('is made as WebP and JPEG for a page and for a fine screen', async () => {
    const { still, findings } = await made('wide.png', await plain(2000, 1500).png().toBuffer());
    expect(findings).toEqual([]);
    expect(still).toMatchObject({ width: 1280, height: 960 });
    expect(sizesOf(still)).toEqual([640, 1280]);
    for (const [i, { width, webp, jpeg }] of still!.sizes.entries()) {
      const height = [480, 960][i];
      expect(await sharp(webp).metadata()).toMatchObject({ format: 'webp', width, height });
      expect(await sharp(jpeg).metadata()).toMatchObject({ format: 'jpeg', width, height });
    }
  });

  it('is never enlarged, and has no second size that is hardly another', async () => {
    const of = async (width: number) =>
      sizesOf((await made(`w${width}.png`, await plain(width, 300).png().toBuffer())).still);
    expect(await of(500)).toEqual([500]);
    expect(await of(700)).toEqual([700]);
    expect(await of(1000)).toEqual([640, 1000]);
    expect(await of(1281)).toEqual([640, 1280]);
  });

  it('is turned the way the camera was held, and carries nothing that the camera wrote into it', async () => {
    // Red above blue as it is stored; orientation 6 says that it is to be turned a quarter to the right.
    const red = await plain(900, 300).modulate({ hue: 0 }).toColourspace('srgb').png().toBuffer();
    const stored = await sharp({ create: { width: 900, height: 600, channels: 3, background: '#0000ff' } })
      .composite([{ input: await sharp(red).tint('#ff0000').png().toBuffer(), left: 0, top: 0 }])
      .keepIccProfile()
      .withIccProfile('p3')
      .withExif({
        IFD0: { Make: 'Zinnober Optical', Artist: 'QZX' },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '59/1 20/1 0/1' },
      })
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    const told = await sharp(stored).metadata();
    expect(told.orientation).toBe(6);
    expect(told.exif).toBeDefined();
    const { still } = await made('held.jpg', stored);
    expect(still).toMatchObject({ width: 600, height: 900 });
    for (const file of filesOf(still)) {
      const { exif, icc, xmp, iptc, orientation, width, height } = await sharp(file).metadata();
      expect({ exif, icc, xmp, iptc, orientation }).toEqual({});
      expect(height! / width!).toBeCloseTo(1.5, 2);
      for (const word of ['Exif', 'ICC', 'GPS', 'Zinnober', 'QZX', 'http:'])
        expect(file.includes(word), word).toBe(false);
      const { data, info } = await sharp(file).raw().toBuffer({ resolveWithObject: true });
      const colourAt = (x: number): string =>
        data[x * info.channels]! > data[x * info.channels + 2]! ? 'red' : 'blue';
      // What was above is now at the right.
      expect([colourAt(5), colourAt(info.width - 5)]).toEqual(['blue', 'red']);
    }
  });

  it('stands on white where it is transparent', async () => {
    const clear = sharp({ create: { width: 64, height: 64, channels: 4, background: '#00000000' } });
    const { still } = await made('clear.png', await clear.png().toBuffer());
    for (const file of filesOf(still))
      expect([...(await sharp(file).raw().toBuffer()).subarray(0, 3)]).toEqual([255, 255, 255]);
  });

  it('is the same bytes whenever it is made, and is decoded once for a store', async () => {
    const other = stillStore();
    stores.push(other);
    const first = await made('wide.png');
    const again = await made('wide.png', undefined, other);
    expect(again.still?.sizes[0]?.webp).not.toBe(first.still?.sizes[0]?.webp);
    expect(filesOf(again.still).map((file) => file.toString('base64'))).toEqual(
      filesOf(first.still).map((file) => file.toString('base64')),
    );
    expect((await made('wide.png')).still).toBe(first.still);
    expect(readdirSync(other.folder())).toHaveLength(4);
  });
});

describe('a still that will not do', () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';
  const cases: readonly { title: string; name: string; bytes: () => Promise<Uint8Array> | Uint8Array; says: RegExp }[] =
    [
      {
        title: 'a drawing with a script in it, under a name of its own',
        name: 'a.svg',
        bytes: () => Buffer.from(svg),
        says: /no PNG, JPEG or WebP/,
      },
      {
        title: 'a drawing with a script in it, named as a PNG',
        name: 'b.png',
        bytes: () => Buffer.from(svg),
        says: /no PNG, JPEG or WebP/,
      },
      {
        title: 'words named as a picture',
        name: 'c.jpg',
        bytes: () => Buffer.from('single drops'),
        says: /no PNG, JPEG or WebP/,
      },
      { title: 'nothing', name: 'd.png', bytes: () => Buffer.alloc(0), says: /no PNG, JPEG or WebP/ },
      { title: 'a head alone', name: 'e.png', bytes: () => Buffer.from('89504e470d0a1a0a', 'hex'), says: /damaged/ },
      {
        title: 'a JPEG that ends early',
        name: 'f.jpg',
        bytes: async () => (await plain(800, 600).jpeg().toBuffer()).subarray(0, 700),
        says: /damaged/,
      },
      { title: 'a PNG with a spoilt middle', name: 'g.png', bytes: () => spoiltPng(), says: /damaged/ },
      {
        title: '60 megapixels',
        name: 'h.png',
        bytes: () => plain(10_000, 6_000).png().toBuffer(),
        says: /60 megapixels/,
      },
      { title: 'an animation', name: 'i.webp', bytes: () => animated(), says: /animation/ },
      {
        title: 'an animation that decoders take for one picture',
        name: 'k.png',
        bytes: () => animatedPng(),
        says: /animation/,
      },
      {
        title: '48 megapixels in passes',
        name: 'j.png',
        bytes: () => inPasses(),
        says: /stored in passes and needs 384 MB/,
      },
    ];

  it.each(cases)('$title: one finding, at the picture, and nothing in its place', async ({ name, bytes, says }) => {
    const { still, findings } = await made(name, await bytes());
    expect(still).toBeNull();
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      code: 'still-not-decoded',
      level: 'error',
      place: { file: `hill-bowl/pictures/${name}`, line: 1, column: 1 },
    });
    expect(findings[0]!.says).toMatch(says);
  });

  it('is told once, on however many pages it stands', async () => {
    const same = wanted('c.jpg');
    const { findings } = await makeStills({
      folder,
      wanted: [same, same],
      media: readMedia(folder),
      store: stores[0]!,
    });
    expect(findings).toHaveLength(1);
  });

  it('is not told here when it is not in the folder, and not followed when it is a link', async () => {
    writeFileSync(join(root, 'outside.png'), await plain(32, 32).png().toBuffer());
    symlinkSync(join(root, 'outside.png'), join(pictures, 'link.png'));
    for (const name of ['link.png', 'nowhere.png']) expect(await made(name)).toEqual({ still: null, findings: [] });
  });

  it('would stand in the place of another that has its name but for the ending', async () => {
    writeFileSync(join(pictures, 'wide.jpg'), await plain(64, 64).jpeg().toBuffer());
    const { stills, findings } = await makeStills({
      folder,
      wanted: [wanted('wide.png'), wanted('wide.jpg')],
      media: readMedia(folder),
      store: stores[0]!,
    });
    expect(stills.get('series/hill-bowl/stills/wide')).toMatchObject({ width: 1280 });
    expect(findings.map(({ code, place }) => [code, place.file])).toEqual([
      ['still-name-twice', 'hill-bowl/pictures/wide.jpg'],
    ]);
  });
});

async function spoiltPng(): Promise<Buffer> {
  const noise = sharp({
    create: {
      width: 400,
      height: 300,
      channels: 3,
      background: '#808080',
      noise: { type: 'gaussian', mean: 128, sigma: 30 },
    },
  });
  const bytes = await noise.png().toBuffer();
  return bytes.fill(0, Math.floor(bytes.length / 2), Math.floor(bytes.length / 2) + 400);
}

/** Two frames of one point each, black and white. */
const animated = (): Promise<Buffer> => {
  const frame = (points: string) => `21f904000a0000002c0000000001000100000202${points}0100`;
  const gif = Buffer.from(`47494638396101000100800000000000ffffff${frame('44')}${frame('4c')}3b`, 'hex');
  return sharp(gif, { animated: true }).webp().toBuffer();
};

/** A PNG with the head of an animation before its pixels. */
async function animatedPng(): Promise<Buffer> {
  const png = await plain(32, 32).png().toBuffer();
  const before = png.indexOf('IDAT') - 4;
  const chunk = Buffer.from('000000086163544c000000020000000000000000', 'hex');
  return Buffer.concat([png.subarray(0, before), chunk, png.subarray(before)]);
}

const inPasses = (): Promise<Buffer> =>
  sharp({ create: { width: 8_000, height: 6_000, channels: 4, background: '#80808080' } })
    .toColourspace('rgb16')
    .png({ progressive: true })
    .toBuffer();

describe('the largest picture that is decoded', () => {
  // `npm test` compiles first; a process of its own, so that its peak of memory is its own.
  it('leaves the memory well under 1 GB', async () => {
    const place = join(root, 'largest.jpg');
    await plain(8_300, 6_000).jpeg({ progressive: true, chromaSubsampling: '4:4:4' }).toFile(place);
    const encode = pathToFileURL(resolve('dist/host/pictures/encode.js')).href;
    const script = `import { encodeStill } from ${JSON.stringify(encode)};
      const made = await encodeStill(${JSON.stringify({ place, into: root, name: 'largest' })});
      console.log(made.width, Math.round(process.resourceUsage().maxRSS / 1024));`;
    const { stdout } = await promisify(execFile)(process.execPath, ['--input-type=module', '-e', script]);
    const [width, peak_MiB] = stdout.trim().split(' ').map(Number);
    expect(width).toBe(1280);
    expect(peak_MiB).toBeLessThan(600);
  });
});

describe('a tool without its native parts, as in a pack', () => {
  it('says once that no still can be decoded, as a warning: every figure stands', () => {
    const told = stillsWithoutDecoder('hill-bowl/pictures/F-01-290.png', 30);
    expect(told).toMatchObject({ code: 'stills-not-decoded', level: 'warning' });
    expect(told.says).toContain('30 stills cannot be decoded');
  });
});
