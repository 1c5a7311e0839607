import type { ClipPiece, FlowRun, TiedClip } from '../trial/derived.ts';
import type { Clip } from '../trial/flow.ts';

/** A stretch at the head of a piece that is shorter than this is the run-up to what follows. */
const runUp_s = 5;

/**
 * Steps of a clip as a list of chapters in plain text, ready for the description of a published film: `00:36 60 rpm, up`.
 * Times are those of the clip, the offset between logger and camera applied; whole seconds, none before its step begins
 * by more than one. Where nothing ties clip and logger, a sentence that says so and what to write.
 */
export function chaptersOf(input: {
  readonly run: string;
  readonly clip: Clip;
  readonly flow: FlowRun | null;
}): string {
  const { run, clip, flow } = input;
  if (flow === null) return `No chapters: no steps were read from a logger file of run ${run}.\n`;
  const tied = flow.clips.find((each) => each.clip.file === clip.file);
  if (tied === undefined || tied.pieces.length === 0) return notTied(clip);
  const lines = chapters(tied, flow).map(({ from_s, name }, i) => `${clockText(i === 0 ? 0 : from_s)} ${name}`);
  return lines.join('\n') + '\n';
}

interface Chapter {
  readonly from_s: number;
  readonly name: string;
}

/** One list over all pieces; a step that goes on from one piece into the next is named once. */
function chapters({ pieces }: TiedClip, flow: FlowRun): readonly Chapter[] {
  const marks = marksOf(flow);
  const all = pieces.flatMap((piece) => chaptersIn(piece, marks));
  return all.filter(({ name }, i) => i === 0 || name !== all[i - 1]!.name);
}

function chaptersIn(piece: ClipPiece, marks: readonly Chapter[]): readonly Chapter[] {
  const starts = marks.map(({ from_s, name }) => ({ name, from_s: from_s - piece.offset_s }));
  const before = starts.findLast(({ from_s }) => from_s <= piece.clip_s);
  const inside = starts.filter(({ from_s }) => from_s > piece.clip_s && from_s < piece.to_clip_s);
  const [first, ...rest] = inside;
  if (first !== undefined && first.from_s - piece.clip_s < runUp_s)
    return [{ name: first.name, from_s: piece.clip_s }, ...rest];
  return before === undefined ? inside : [{ name: before.name, from_s: piece.clip_s }, ...inside];
}

/** What begins when on the logger's clock. */
const marksOf = ({ steps, settled }: FlowRun): readonly Chapter[] => [
  { from_s: -Infinity, name: 'At rest' },
  ...steps.map(({ from_s, name }) => ({ from_s, name: name.replace(/ (up|down)$/, ', $1') })),
  ...(settled === null ? [] : [{ from_s: settled.stop_s, name: 'Stopped, settling' }]),
];

const notTied = ({ file }: Clip): string =>
  `No chapters: nothing ties ${file} to the logger. Write  sync: 00:00:12.000  under its clip, the time on the film at which the event "sync" of the log is seen.\n`;

/** `00:36`, `1:02:09`: seconds are cut, not rounded, so that a chapter never begins inside its step. */
function clockText(time_s: number): string {
  // A millisecond of rounding in a sum of offsets must not take a whole second away.
  const whole = Math.max(0, Math.floor(time_s + 0.001));
  const two = (n: number): string => String(n).padStart(2, '0');
  const hours = Math.floor(whole / 3600);
  const rest = `${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`;
  return hours === 0 ? rest : `${String(hours)}:${rest}`;
}
