import { expect, it } from 'vitest';
import { deriveSeries } from '../../src/derive/series.ts';
import type { Finding } from '../../src/finding/finding.ts';
import { readLog } from '../../src/logs/log.ts';
import { readNotes } from '../../src/notes/book.ts';
import { smallDemo, textOf } from '../scenario/small.ts';
import { chance, legalLogSpoils, logSpoils } from './structural.ts';
import { turns } from './turns.ts';

const run = 'S-07';
const [notes] = readNotes(smallDemo().filter(({ path }) => !/^where|\/runs\/(?!S-07\.)/.test(path))).series;
const map = notes!.rig.maps.find(({ id }) => id === notes!.runs[0]!.log!.map)!;
const whole = textOf(`hill-bowl/runs/${run}.csv`);

/** Every figure of the run, and everything that was said of its file. */
function reduced(bytes: Uint8Array): {
  readonly figures: ReadonlyMap<string, number>;
  readonly findings: readonly Finding[];
} {
  const log = readLog({ file: `${run}.csv`, bytes, sha256: '', map });
  const { runs, findings } = deriveSeries({ ...notes!, logs: new Map(log.ok ? [[run, log.value]] : []) });
  const derived = runs.get(run);
  const figures = (derived?.results ?? []).flatMap(({ quantity, at, estimate }) =>
    estimate === null ? [] : [[`${quantity} ${JSON.stringify(at)}`, estimate.value] as const],
  );
  return { figures: new Map(figures), findings: [...log.findings, ...findings, ...(derived?.findings ?? [])] };
}

const sound = reduced(new TextEncoder().encode(whole));
const bytesOf = (text: string | Uint8Array): Uint8Array =>
  typeof text === 'string' ? new TextEncoder().encode(text) : text;
/** A figure that is another, or that was not there. */
const differs = (figures: ReadonlyMap<string, number>): boolean =>
  [...figures].some(([key, value]) => {
    const before = sound.figures.get(key);
    return before === undefined || Math.abs(value - before) > 1e-9 * Math.abs(before);
  });

it('a whole log gives its figures with nothing to find', () => {
  expect(sound.figures.size).toBeGreaterThan(40);
  expect(sound.findings).toEqual([]);
});

/**
 * Nothing that goes wrong with the shape of a logger file is taken without a word and gives other figures. What no file can
 * show by itself is counted apart: it stands in the checksum of the input, and in then and now.
 */
it('no spoilt shape of a log gives another figure without a finding', () => {
  let [cases, told, equal, fewer] = [0, 0, 0, 0];
  const silent: string[] = [];
  for (const [name, spoil] of Object.entries(logSpoils)) {
    for (let turn = 0; turn < 6 * turns; turn++) {
      const spoilt = bytesOf(spoil(whole, chance(turn * 7919 + name.length * 31)));
      const { figures, findings } = reduced(spoilt);
      cases++;
      if (findings.length > 0) told++;
      else if (differs(figures)) silent.push(`${name}, turn ${String(turn)}`);
      else if (figures.size < sound.figures.size) fewer++;
      else equal++;
    }
  }
  console.log(
    `${String(cases)} spoilt logs: ${String(told)} told, ${String(equal)} with the same figures, ${String(fewer)} with fewer and no word, ${String(silent.length)} silently wrong (${((100 * silent.length) / cases).toFixed(2)} %)`,
  );
  expect(silent).toEqual([]);
  expect(fewer).toBe(0);
});

it('what no file shows by itself changes the bytes, and so its checksum', () => {
  const silent = Object.entries(legalLogSpoils).flatMap(([name, spoil]) => {
    const spoilt = spoil(whole, chance(name.length));
    expect(spoilt).not.toBe(whole);
    const { figures, findings } = reduced(bytesOf(spoilt));
    return findings.length === 0 && differs(figures) ? [name] : [];
  });
  console.log(`taken as they stand, and seen only by their checksum: ${silent.join('; ')}`);
  expect(silent.length).toBeGreaterThan(0);
});

it.each([
  ['torque', 'temperature of the bearing', 2, 8, 'beyond-range'],
  ['torque', 'ambient', 2, 9, 'loss-far-from-models'],
  ['sump', 'skin', 6, 7, 'skin-above-sump'],
])('exchanged readings of %s and %s are told', (_, __, a, b, code) => {
  const exchanged = whole
    .split('\n')
    .map((line, at) => {
      const cells = line.split(',');
      return at === 0 || cells.length < 10 ? line : cells.with(a, cells[b]!).with(b, cells[a]!).join(',');
    })
    .join('\n');
  expect(reduced(bytesOf(exchanged)).findings.map((f) => f.code)).toContain(code);
});

it('a log that ends at a whole line in the middle of its run is told', () => {
  const lines = whole.split('\n');
  const { figures, findings } = reduced(bytesOf(`${lines.slice(0, Math.floor(lines.length / 2)).join('\n')}\n`));
  expect(figures.size).toBeLessThan(sound.figures.size);
  expect(findings.map((f) => f.code)).toContain('log-ends-early');
});

/** The last step, 520 rpm, is held from 3306 s to the last line at 3430 s, after a way up from 390 rpm of some seconds. */
it.each([
  [1, '520 rpm is held for'],
  [40, '520 rpm is held for'],
  [61, 'on its way up from 390 rpm'],
  [64, '520 rpm is missing at 80 °C, and held at 40, 60 °C'],
])('%i lines cut off its end are told', (cut, says) => {
  const lines = whole.trimEnd().split('\n');
  const { findings } = reduced(bytesOf(`${lines.slice(0, -cut).join('\n')}\n`));
  expect(findings.filter((f) => f.code === 'log-ends-in-step').map((f) => f.says)).toEqual([
    expect.stringContaining(says),
  ]);
});
