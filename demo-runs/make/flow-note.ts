import { clipTime_s, type Film, timecode } from './film.ts';
import { bubbleCourse, flowCourse } from './flow-truth.ts';
import { wordsOf } from './flow-words.ts';
import { held04 } from './law.ts';
import { type Block, gradeKinds, type Row } from './observers.ts';
import { still, stream } from './random.ts';
import type { MadeRun } from './run.ts';

/** Lines of a flow note's front matter that tell of its film. */
export const clipLines = (film: Film, flash_s: number): readonly string[] => [
  'clips:',
  `  - file: ${film.file}`,
  `    code: ${film.code}`,
  ...(film.pieces ? ['    shows: drawing'] : []),
  `    length: ${timecode(film.length_s)}`,
  `    sync: ${timecode(flash_s + film.ahead_s)}`,
  ...(film.captions === null ? [] : [`    captions: ${film.captions}`]),
  ...(film.pieces
    ? ['    pieces:', ...film.pieces.map((p) => `      - { clip: ${timecode(p.clip_s)}, film: ${timecode(p.film_s)} }`)]
    : ['    kept: "film shelf at the lab, not shipped with the demo"']),
];

export const observationLines = (run: string, film: Film, blocks: readonly Block[]): readonly string[] => [
  'observations:',
  ...blocks.flatMap((block) => [
    `  - observer: ${block.observer}`,
    ...(block.pass === 'joint' ? ['    pass: joint'] : []),
    ...(block.blind.length > 0 ? [`    blind: [${block.blind.join(', ')}]`] : []),
    `    clip: ${film.file}`,
    '    steps:',
    ...block.rows.map((row, i) => stepLine(film, row, wordsOf(run, block, i))),
  ]),
];

function stepLine(film: Film, row: Row, words: string | null): string {
  const { step } = row;
  const fields = [
    `at: ${timecode(clipTime_s(film, step.hold_s))}`,
    ...gradeKinds.map((kind) => `${kind}: ${row.grades[kind]}`),
    `view: ${row.view}`,
    ...(row.level_mm === null ? [] : [`level: ${row.level_mm} mm`]),
    ...(row.swing_mm === null ? [] : [`swing: ${row.swing_mm} mm`]),
    ...(row.foam_mm === null ? [] : [`foam: ${row.foam_mm} mm`]),
    ...(row.detach_deg === null ? [] : [`detach: ${row.detach_deg} °`]),
    ...(words === null ? [] : [`words: "${words}"`]),
  ];
  return `      ${step.wheel_rpm} rpm ${step.direction}: { ${fields.join(', ')} }`;
}

const looked_s = [0, 10, 30, 60, 120, 300, 600];

/** One look after the other by the same eye, which sees no bubble where there is none. */
export function settleLines(made: MadeRun, { seed, quiet }: { seed: number; quiet: boolean }): readonly string[] {
  const eye = (quiet ? still : stream(seed, made.plan.order, 11)).normal(0.35);
  const { stop_s } = flowCourse(made);
  const bubble = bubbleCourse(made);
  return [
    'settle:',
    ...looked_s.map((after_s) => {
      const now = bubble(stop_s + after_s);
      const grade = held04(Math.round(now + eye * Math.min(1, now)));
      return `  - { after: ${after_s} s, bubble: ${grade}, foam: 0 mm }`;
    }),
  ];
}
