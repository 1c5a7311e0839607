import type { ClipPiece, FlowRun, TiedClip } from '../trial/derived.ts';
import { gradeKinds, type Clip, type Observation } from '../trial/flow.ts';
import { scales } from '../trial/grade-anchors.ts';
import type { Run } from '../trial/run.ts';
import { quantityText } from './digits.ts';
import type { FlowSheet } from './flow-steps.ts';
import { observerTitle } from './grade-words.ts';
import { clipAddresses, type ClipAddresses } from './media-address.ts';
import type { ClipView, GradingView } from './page.ts';
import { capital } from './spans.ts';
import { besides, type View } from './view.ts';

/** A clip of a run with where it stands in the folder and on the site. */
export interface ClipFile {
  readonly clip: Clip;
  readonly tied: TiedClip | undefined;
  /** Path in the book. */
  readonly source: string;
  readonly address: ClipAddresses;
  readonly present: boolean;
}

export function clipFiles(view: View, run: Run, flow: FlowRun | null): readonly ClipFile[] {
  const addresses = clipAddresses(view.series.id, run);
  return run.clips.map((clip, i) => {
    const source = besides(run.file, clip.file);
    return {
      clip,
      tied: flow?.clips.find((tied) => tied.clip.file === clip.file),
      source,
      address: addresses[i]!,
      present: view.input.media.has(source),
    };
  });
}

/** A clip as a page plays it, its steps and words in its own time; null when it is not in the folder. */
export function clipView(
  view: View,
  { run, flow, derived }: FlowSheet,
  file: ClipFile,
  of: { readonly id: string; readonly title: string; readonly traces: string | null },
): ClipView | null {
  if (!file.present) return null;
  const end_s = Math.max(0, ...derived.traces.map(({ time_s }) => time_s.at(-1) ?? 0), flow.steps.at(-1)?.to_s ?? 0);
  const pieces = piecesOf(file, end_s);
  const drawing = file.clip.shows === 'drawing';
  return {
    id: of.id,
    source: file.source,
    address: file.address.clip,
    captions: file.address.captions,
    title: drawing ? `${of.title}. A drawing, not a film` : of.title,
    drawing,
    cues: cuesOf(view, run, file),
    steps: stepsOf(flow, pieces),
    pieces,
    traces: pieces.length === 0 ? null : of.traces,
  };
}

/** Where the clip's last piece has no end of its own, it ends with the log: beyond it no trace has a mark. */
const piecesOf = ({ tied }: ClipFile, end_s: number): readonly ClipPiece[] =>
  (tied?.pieces ?? [])
    .map((piece) => ({ ...piece, to_clip_s: Math.min(piece.to_clip_s, end_s - piece.offset_s) }))
    .filter(({ clip_s, to_clip_s }) => to_clip_s > clip_s);

/** The holds as far as the clip shows them, in its time. */
function stepsOf(flow: FlowRun, pieces: readonly ClipPiece[]): ClipView['steps'] {
  return flow.steps.flatMap(({ name, from_s, to_s }) => {
    const seen = pieces
      .map(({ clip_s, to_clip_s, offset_s }) => ({
        from_s: Math.max(clip_s, from_s - offset_s),
        to_s: Math.min(to_clip_s, to_s - offset_s),
      }))
      .filter((part) => part.to_s > part.from_s);
    const [first] = seen;
    return first === undefined ? [] : [{ name, ...first }];
  });
}

/** What was seen, in plain words, at its time in the clip. */
function cuesOf(view: View, run: Run, { clip }: ClipFile): ClipView['cues'] {
  return run.observations
    .filter((seen) => seen.clip === clip.file || (seen.clip === null && run.clips.length === 1))
    .flatMap((seen) =>
      seen.from_s === null || seen.to_s === null
        ? []
        : [{ from_s: seen.from_s, to_s: seen.to_s, text: observationWords(view, seen) }],
    )
    .sort((a, b) => a.from_s - b.from_s);
}

/** "Observer A: Reach 3, Side fall 3, Wall hit 2, Bubble 2, Tube run 0, View 3; level −65 mm. Closed sheet over the gear." */
function observationWords(view: View, seen: Observation): string {
  const who = seen.pass === 'joint' ? 'joint look' : observerTitle(view, seen.observer);
  const grades = gradeKinds.map((kind) => `${scales[kind].name} ${String(seen.grades[kind])}`).join(', ');
  const read = readingsOf(seen);
  const words = seen.words === null ? '' : ` ${sentence(seen.words)}`;
  return `${capital(who)}: ${grades}, View ${String(seen.view)}${read === '' ? '' : `; ${read}`}.${words}`;
}

/** What an observer read off besides the grades. */
export const readingsOf = ({ level_z_m, swing_m, foam_m, detach_rad }: Observation): string =>
  [
    level_z_m === null ? '' : `level ${quantityText(level_z_m, 'mm', 0)}`,
    swing_m === null ? '' : `swing ${quantityText(swing_m, 'mm', 0)}`,
    foam_m === null ? '' : `foam ${quantityText(foam_m, 'mm', 0)}`,
    detach_rad === null ? '' : `sheet leaves the rim at ${quantityText(detach_rad, '°', 0)}`,
  ]
    .filter((part) => part !== '')
    .join(', ');

const sentence = (words: string): string => capital(/[.!?…]$/.test(words.trim()) ? words.trim() : `${words.trim()}.`);

/** For graders: the code, its address and its steps, and nothing that says whose clip it is. */
export function codedClip(sheet: FlowSheet, file: ClipFile): GradingView['clips'][number] | null {
  if (!file.present || file.clip.code === null) return null;
  return {
    code: file.clip.code,
    address: file.address.clip,
    steps: stepsOf(sheet.flow, piecesOf(file, Infinity)),
  };
}
