import {
  cpSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { stillStore } from '../../src/host/pictures/stills.ts';
import { madeFrom, type MadeWhole } from '../../src/host/terminal/make.ts';
import { gradeKinds } from '../../src/trial/flow.ts';
import { takeSamplesOut } from './demo.ts';

/** Two flow trials of the demo on the disk, with their clips and stills; F-02 is spoilt, F-01 is not. */
const root = mkdtempSync(join(tmpdir(), 'dipmark-flow-spoils-'));
const book = join(root, 'book');
const [note, captions, still] = ['runs/F-02.md', 'runs/F-02.vtt', 'pictures/F-02-290.png'];
const at = (path: string): string => join(book, 'hill-bowl', path);
const text = (path: string): string => readFileSync(at(path), 'utf8');
const kept = new Map<string, unknown>();

const whole = async (): Promise<MadeWhole> => {
  const store = stillStore();
  const made = await madeFrom({
    ...{ folder: book, audience: 'house', tell: () => undefined, store },
    remember: (told, make) => {
      const key = told();
      if (!kept.has(key)) kept.set(key, make());
      return kept.get(key) as ReturnType<typeof make>;
    },
  }).finally(() => {
    store.close();
  });
  if (typeof made === 'string') throw new Error(made);
  return made;
};
/** Every figure that is no grade, by its id: what no mistake in captions or pictures may touch. */
const readings = (made: MadeWhole): Map<string, number | null> =>
  new Map(
    made.ledgers.flatMap(({ figures }) =>
      figures.flatMap(({ id, quantity, value }) =>
        [...gradeKinds, 'kappa', 'grades-equal', 'grades-within-one'].some((kind) => kind === quantity)
          ? []
          : [[id, value] as const],
      ),
    ),
  );

let good: MadeWhole;
const other = /\/(?:make|where-the-oil-stands)|\/runs\/(?!F-0[12]\.)[^/]+$|\/pictures\/(?!F-0[12]-)[^/]+$|truth\.json$/;
const fresh = (): void => {
  rmSync(book, { recursive: true, force: true });
  cpSync('demo-runs', book, { recursive: true, filter: (path) => !other.test(path) });
  takeSamplesOut(book);
};
beforeAll(async () => {
  fresh();
  good = await whole();
});
beforeEach(fresh);
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});
/** What would leave a mark in this process if anything in a file were run. */
afterEach(() => {
  expect('polluted' in {} || 'ranFromFile' in globalThis).toBe(false);
});

const replaced = (path: string, was: string | RegExp, is: string): void => {
  const before = text(path);
  const after = before.replace(was, () => is);
  if (after === before) throw new Error(`${path} does not hold ${String(was)}`);
  writeFileSync(at(path), after);
};
const spoil = (path: string, was: string | RegExp, is: string) => (): void => {
  replaced(path, was, is);
};

/** The signature of PNG and a first chunk that claims a size (ISO/IEC 15948, 5.2 and 11.2.2); no picture follows. */
const claimedPng = (width: number, height: number): Buffer => {
  const bytes = Buffer.alloc(33);
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]).copy(bytes);
  bytes.write('IHDR', 12, 'latin1');
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  bytes.set([8, 2], 24);
  return bytes;
};
const svg = '<svg xmlns="http://www.w3.org/2000/svg"><script>globalThis.ranFromFile = true</script></svg>';

interface Row {
  readonly title: string;
  readonly spoil: () => void;
  readonly finds: string;
  /** What the finding says to write or do. */
  readonly write: string;
}
const row = (title: string, spoilIt: () => void, finds: string, write: string): Row => ({
  ...{ title, spoil: spoilIt, finds, write },
});

const rows: readonly Row[] = [
  row(
    'cues of one observer that overlap',
    spoil(captions, '00:00:23.000 --> 00:00:33.000', '00:00:20.000 --> 00:00:33.000'),
    `captions-overlap ${captions}:11:1`,
    'two observers, or two passes, may overlap',
  ),
  row('a grade of 5', spoil(captions, 'reach 1', 'reach 5'), `grade-off-scale ${captions}:15:62`, 'ng'),
  row('a grade of 2-3', spoil(captions, 'reach 1', 'reach 2-3'), `grade-off-scale ${captions}:15:62`, 'ng'),
  row(
    'a cue outside its clip',
    spoil(captions, /00:02:11\.000 --> 00:02:21\.000(?![^]*-->)/, '00:02:25.000 --> 00:02:45.000'),
    `clip-time-outside ${captions}:86:1`,
    'length of the clip',
  ),
  row('an unknown step', spoil(captions, 'rpm 120 up', 'rpm 125 up'), `step-unplanned ${captions}:12:19`, '120 rpm'),
  row('a missing alt text', spoil(note, / {4}alt: .*\n/, ''), `field-missing ${note}:51:5`, 'alt: "'),
  row(
    'a text that is called .png',
    () => {
      writeFileSync(at(still), 'a closed sheet\n');
    },
    `still-no-picture ${note}:60:11`,
    'Save the picture as PNG or JPEG',
  ),
  row(
    'a picture that is cut short',
    () => {
      truncateSync(at(still), 9000);
    },
    `still-not-decoded ${still}:1:1`,
    'take the still again',
  ),
  row(
    'a picture of 60 megapixels',
    () => {
      writeFileSync(at(still), claimedPng(10000, 6000));
    },
    `still-large ${note}:60:11`,
    'Save a smaller copy',
  ),
  row(
    'an SVG with script',
    () => {
      writeFileSync(at('pictures/F-02-290.svg'), svg);
      replaced(note, 'F-02-290.png', 'F-02-290.svg');
    },
    `still-svg ${note}:60:11`,
    'Write it out as PNG',
  ),
  row(
    'an SVG with script that is called .png',
    () => {
      writeFileSync(at(still), svg);
    },
    `still-svg ${note}:60:11`,
    'Write it out as PNG',
  ),
  row(
    'captions that are a link out of the book',
    () => {
      writeFileSync(join(root, 'elsewhere.vtt'), text(captions));
      unlinkSync(at(captions));
      symlinkSync(join(root, 'elsewhere.vtt'), at(captions));
    },
    `captions-missing ${note}:26:15`,
    'a link is not followed',
  ),
  row(
    'captions that are not there',
    () => {
      unlinkSync(at(captions));
    },
    `captions-missing ${note}:26:15`,
    'beside the note',
  ),
  row(
    'captions in UTF-16',
    () => {
      writeFileSync(at(captions), Buffer.from(`\uFEFF${text(captions)}`, 'utf16le'));
    },
    `captions-not-utf8 ${captions}:1:1`,
    'as UTF-8',
  ),
  row(
    'captions of 100 MB in one line',
    () => {
      truncateSync(at(captions), 100_000_000);
    },
    `captions-too-large ${captions}:1:1`,
    'Name the WebVTT file',
  ),
  row(
    'a step called __proto__',
    spoil(note, 'settle:', 'observations: [{ observer: C, steps: { __proto__: { polluted: 1 } } }]\nsettle:'),
    `step-form ${note}:42:40`,
    '290 rpm up',
  ),
  row(
    'an arrow in the words of a cue',
    spoil(captions, 'ring gear hidden', '--> </script><img src=x onerror=ranFromFile=1> hidden'),
    `captions-arrow ${captions}:9:109`,
    '--&gt;',
  ),
  row(
    'a clip named with signs of markup',
    spoil(note, /F-02\.webm/g, `'<b>&"F.webm'`),
    `media-outside ${note}:21:11`,
    'write its name alone',
  ),
  row(
    'a code of signs of markup',
    spoil(note, 'code: K7', 'code: "<img src=x onerror=ranFromFile=1>"'),
    `field-form ${note}:22:11`,
    'code: K7',
  ),
];

describe('a flow trial with one thing spoilt gives one finding at its place, and every reading of the book stays', () => {
  it('as it stands it has none', () => {
    expect(good.findings.filter(({ level }) => level !== 'notice')).toEqual([]);
    expect(readings(good).size).toBeGreaterThan(100);
  });

  it.each(rows)('for $title', async ({ spoil: spoilIt, finds, write }) => {
    spoilIt();
    const made = await whole();
    const loud = made.findings.filter(({ level }) => level !== 'notice');
    expect(
      loud.map(({ code, place }) => `${code} ${place.file.replace('hill-bowl/', '')}:${place.line}:${place.column}`),
    ).toEqual([finds]);
    const [only] = loud;
    expect(only!.write).toContain(write);
    expect([only!.says, only!.why, only!.write, only!.effect].join(' ')).not.toMatch(
      /undefined|NaN|\[object|\bat .*:\d/,
    );
    const [before, after] = [readings(good), readings(made)];
    // The clock of the camera goes with a clip that is left out.
    for (const [id, value] of before)
      if (id !== 'F-02/camera-ahead' || after.has(id)) expect([id, after.get(id)]).toEqual([id, value]);
  });
});

describe('words of a cue', () => {
  it('may hold markup and letters that run from right to left: they stay words', async () => {
    const words = 'שמן &lt;/script&gt;&lt;img src=x onerror=ranFromFile=1&gt; \u202eחם';
    replaced(captions, 'ring gear hidden', `${words} hidden`);
    const made = await whole();
    expect(made.findings.filter(({ level }) => level !== 'notice')).toEqual([]);
    const shown = made.files.find(({ path }) => path.endsWith('clips/K7.vtt'))!.text;
    expect(shown).not.toMatch(/<(?:img|\/script)/);
    expect(JSON.stringify(made.pages.find(({ path }) => path.endsWith('runs/F-02/')))).toContain('</script><img src=x');
  });
});
