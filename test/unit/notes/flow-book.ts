import type { Finding } from '../../../src/finding/finding.ts';
import { readNotes } from '../../../src/notes/book.ts';
import type { Run } from '../../../src/trial/run.ts';
import type { MediaFile } from '../../../src/trial/series.ts';
import { asFiles, type Files, goodBook } from './good-book.ts';

export const F01 = 'hill-bowl/runs/F-01.md';
export const vtt = 'hill-bowl/runs/F-01.vtt';

const note = `---
id: F-01
trial: flow
shown-to: public
status: accepted
article: P0w
oil: O1
rig-state: Q1-a
refit: 1
order: 1
started: 2026-03-02T09:10:00+01:00
ended: 2026-03-02T09:38:32+01:00
operators: [A, B]
fill: { basis: volume, mass-in: 2153 g, temperature: 21.3 °C, wait: 20 min, level-left: -54 mm, level-right: -53 mm }
ambient: { place: shielded, start: 20.9 °C, end: 21.2 °C }
airflow: 0 m/s
log: { file: F-01.csv, map: bench-low }
clips:
  - file: F-01.webm
    code: K7
    shows: drawing
    length: 00:02:10.000
    sync: 00:00:12.000
    captions: F-01.vtt
    pieces:
      - { clip: 00:00:00.000, film: 00:00:08.000 }
      - { clip: 00:01:00.000, film: 00:02:00.000 }
  - { file: F-01-b.mp4, kept: camera shelf 2 }
observations:
  - observer: B
    blind: [fill, oil]
    clip: F-01.webm
    for: 10 s
    steps:
      60 rpm up: { at: 00:00:36.000, reach: 1, side: 1, wall: 0, bubble: 0, tube: 0, view: 3, level: -57 mm, swing: 3 mm, foam: 0 mm, detach: 300 °, words: "single drops at the pocket" }
      120 rpm up: { reach: ng, side: 1, wall: 0, bubble: 0, tube: 0, view: 2 }
settle:
  - { after: 0 s, bubble: 1, foam: 0 mm }
  - { after: 30 s, level: -69 mm }
air-sample: { mass: 78.0 g, volume: 100 mL, temperature: 58 °C, step: 290 rpm up }
stills:
  - file: F-01-290.png
    step: 290 rpm up
    clip: F-01.webm
    at: 00:00:41.000
    rule: offset
    offset: 5 s
    shows: drawing
    alters: [crop, annotation]
    caption: "Closed sheet, narrower than half the face."
    alt: "P0w at 290 rpm, way up: closed sheet over the gear, narrower than half its face."
    rights: CC-BY-4.0
  - file: F-01-60.jpg
    step: 60 rpm up
    rule: event
    event: "first drops"
    caption: "Single drops."
    alt: "P0w at 60 rpm, way up: single drops at the pocket."
---
First day.
`;

const captions = `WEBVTT

NOTE graded from the clip

00:00:36.000 --> 00:00:46.000
run F-01 step 1 rpm 60 up | observer A | reach 1 side 1 wall 0 bubble 0 tube 0 view 3 | level -57 swing 3 | words: single drops at the pocket

00:01:10.000 --> 00:01:20.000
run K7 step 2 rpm 120 up | observer A | reach 2 side 1 wall 1 bubble 0 tube 0 view 2
`;

/** A good book with one flow trial in which nothing is wrong. */
export const flowBook: Files = {
  ...goodBook,
  [F01]: note,
  [vtt]: captions,
  'hill-bowl/runs/F-01.csv': 't_s,n_in,tq_in,T_sump,evt\n0,0,0,23,\n',
};

const bytes = (text: string): number[] => Array.from(text, (sign) => sign.charCodeAt(0));
const big = (n: number, size: number): number[] =>
  Array.from({ length: size }, (_, i) => (n / 256 ** (size - 1 - i)) & 255);

/** First bytes of a PNG: signature and its IHDR chunk (W3C PNG, 5.2 and 11.2.2). */
export const png = (width: number, height: number): Uint8Array =>
  Uint8Array.from([
    ...bytes('\x89PNG\r\n\x1a\n'),
    ...big(13, 4),
    ...bytes('IHDR'),
    ...big(width, 4),
    ...big(height, 4),
    8,
    2,
    0,
    0,
    0,
  ]);

/** First bytes of a JPEG: start of image, a JFIF segment, and a baseline frame header (ITU-T T.81, B.2.2). */
export const jpeg = (width: number, height: number, more: readonly number[] = []): Uint8Array =>
  Uint8Array.from([
    ...[0xff, 0xd8, 0xff, 0xe0, 0, 16],
    ...bytes('JFIF\0'),
    ...[1, 1, 0, 0, 1, 0, 1, 0, 0],
    ...more,
    ...[0xff, 0xc0, 0, 17, 8],
    ...[...big(height, 2), ...big(width, 2)],
    ...[3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1],
  ]);

/** First bytes of a WebM: EBML header with its DocType (RFC 8794). */
export const webm = Uint8Array.from([0x1a, 0x45, 0xdf, 0xa3, 0x87, 0x42, 0x82, 0x84, ...bytes('webm')]);

/** An MP4 that begins with a file type box and goes on with the boxes given (ISO/IEC 14496-12, 4.3). */
export const mp4 = (...boxes: readonly (readonly [name: string, content: string])[]): Uint8Array =>
  Uint8Array.from(
    [['ftyp', 'isom\0\0\0\0isom'] as const, ...boxes].flatMap(([name, content]) => [
      ...big(8 + content.length, 4),
      ...bytes(name),
      ...bytes(content),
    ]),
  );

export const media = (path: string, head: Uint8Array, size = head.length): MediaFile => ({
  path,
  head,
  size,
  sha256: null,
});

export const goodMedia: readonly MediaFile[] = [
  media('hill-bowl/runs/F-01.webm', webm),
  media('hill-bowl/pictures/F-01-290.png', png(1920, 1080)),
  media('hill-bowl/pictures/F-01-60.jpg', jpeg(1280, 720)),
];

/** The flow book with one text of one file replaced; the text has to be there. */
export function spoilFlow(path: string, was: string, is: string, book: Files = flowBook): Files {
  const text = book[path];
  if (typeof text !== 'string' || !text.includes(was)) throw new Error(`${path} does not hold ${was}`);
  return { ...book, [path]: text.replace(was, () => is) };
}

export interface FlowOutcome {
  readonly findings: readonly Finding[];
  readonly run: Run;
  /** `code file:line:column` of each, notices too. */
  readonly placed: readonly string[];
}

export function flowOutcome(files: Files, pictures: readonly MediaFile[] | null = goodMedia): FlowOutcome {
  const notes = readNotes(asFiles(files), pictures);
  const findings = [...notes.findings, ...notes.series.flatMap((s) => s.findings)];
  const placed = findings.map(
    (f) => `${f.code} ${f.place.file.replace(/^.*\//, '')}:${f.place.line}:${f.place.column}`,
  );
  return { findings, placed, run: notes.series[0]!.runs.find(({ id }) => id === 'F-01')! };
}
