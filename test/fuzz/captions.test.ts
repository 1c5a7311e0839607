import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/finding/finding.ts';
import { readCaptions } from '../../src/notes/captions.ts';
import { pictureKind, pictureSize } from '../../src/notes/picture.ts';
import { filmKind, saysWhereFilmed } from '../../src/notes/film.ts';
import { readCue } from '../../src/trial/read-cue.ts';
import { flowBook, flowOutcome, jpeg, mp4, png, vtt, webm } from '../unit/notes/flow-book.ts';
import { everyCase, turns } from './turns.ts';

const clip = flowOutcome(flowBook).run.clips[0]!;
const good = new TextEncoder().encode(flowBook[vtt]!.toString());
const seed = 20260731;
const numRuns = 150 * turns;

/** Nothing throws; every place that is told or kept stands in the text; no observation comes of nothing. */
function holds(bytes: Uint8Array): void {
  const file = { path: vtt, bytes, sha256: '' };
  const read = readCaptions(file, {
    run: 'F-01',
    clip,
    steps_rad_s: [60, 120].map((n) => (n * Math.PI) / 30),
    before: [],
  });
  const lines = new TextDecoder().decode(bytes).split(/\r\n|\n|\r/);
  const places = [...read.findings, ...read.observations].map(({ place }) => place);
  expect(places.filter((place) => !isInside(place, lines))).toEqual([]);
  for (const o of read.observations) {
    expect(o.to_s).toBeGreaterThan(o.from_s!);
    expect(Object.values(o.grades).every((g) => g === 'ng' || (g >= 0 && g <= 4))).toBe(true);
  }
}

const isInside = ({ line, column, length = 1 }: Place, lines: readonly string[]): boolean => {
  const text = lines[line - 1];
  return text !== undefined && column >= 1 && length >= 1 && column - 1 + length <= text.length + 1;
};

const always = (arbitrary: fc.Arbitrary<Uint8Array>): void => {
  everyCase('captions files', arbitrary, holds, { seed, numRuns });
};
const two = fc
  .tuple(fc.nat(good.length), fc.nat(good.length))
  .map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
const joined = (...parts: readonly Uint8Array[]): Uint8Array => Uint8Array.from(parts.flatMap((p) => [...p]));

describe('no captions file throws, and each finding stands inside its text', () => {
  it('when it is cut', () => {
    always(fc.nat(good.length).map((at) => good.subarray(0, at)));
  });
  it('when a piece is taken out', () => {
    always(two.map(([at, to]) => joined(good.subarray(0, at), good.subarray(to))));
  });
  it('when a piece is doubled', () => {
    always(two.map(([at, to]) => joined(good.subarray(0, to), good.subarray(at))));
  });
  it('when bytes of it are others', () => {
    always(
      fc.array(fc.tuple(fc.nat(good.length - 1), fc.nat(255)), { maxLength: 6 }).map((put) => {
        const bytes = good.slice();
        for (const [at, byte] of put) bytes[at] = byte;
        return bytes;
      }),
    );
  });
  it('when its lines end with CR or CRLF behind a byte order mark, and signs of its grammar are put in', () => {
    const signs = fc.array(
      fc.constantFrom(
        '-->',
        '|',
        '\n',
        '\r',
        '\n\n',
        'NOTE ',
        'run ',
        'words:',
        'reach',
        '&amp;',
        '<',
        '\0',
        'é',
        '\u2028',
        ' ',
      ),
      { maxLength: 5 },
    );
    always(
      fc.tuple(signs, fc.nat(good.length), fc.constantFrom('\n', '\r\n', '\r')).map(([put, at, end]) => {
        const text = new TextDecoder().decode(good);
        return new TextEncoder().encode(
          `\uFEFF${text.slice(0, at)}${put.join('')}${text.slice(at)}`.replaceAll('\n', end),
        );
      }),
    );
  });
  it('when it is any text under a header, or any bytes', () => {
    always(fc.string({ unit: 'binary', maxLength: 300 }).map((t) => new TextEncoder().encode(`WEBVTT\n\n${t}`)));
    always(fc.uint8Array({ maxLength: 300 }));
  });
});

describe('no cue throws, and each trouble stands inside it', () => {
  it('whatever words follow each other', () => {
    const word = fc.constantFrom(
      ...'run step rpm observer pass blind reach side view level words: | 60 up ng -57 F-01 constructor __proto__'.split(
        ' ',
      ),
    );
    everyCase(
      'cues',
      fc.array(fc.oneof(word, fc.string({ maxLength: 5 })), { maxLength: 25 }),
      (list) => {
        const text = list.join(' ');
        const read = readCue(text);
        expect(read.noted === null).toBe(read.troubles.length > 0);
        for (const t of read.troubles) expect(t.offset + t.length).toBeLessThanOrEqual(Math.max(1, text.length));
      },
      { seed, numRuns: 500 * turns },
    );
  });
});

describe('no picture and no clip throws', () => {
  const heads = [
    png(10, 10),
    jpeg(10, 10),
    webm,
    mp4(['moov', '\0\0\0\x1e\xa9xyz']),
    new TextEncoder().encode('RIFF\0\0\0\0WEBPVP8X'),
  ];
  it('when its first bytes are cut, or go on with any others', () => {
    const any = fc
      .tuple(fc.constantFrom(...heads), fc.nat(60), fc.uint8Array({ maxLength: 200 }))
      .map(([head, at, rest]) => joined(head.subarray(0, at), rest));
    everyCase(
      'pictures and clips',
      any,
      (head) => {
        const size = pictureSize(head);
        expect(size === null || (size.width > 0 && size.height > 0)).toBe(true);
        expect(['PNG', 'JPEG', 'WebP', 'SVG', null]).toContain(pictureKind(head));
        expect(['WebM', 'MP4', 'Ogg', null]).toContain(filmKind(head));
        expect(typeof saysWhereFilmed(head)).toBe('boolean');
      },
      { seed, numRuns: 500 * turns },
    );
  });
});
