import type { Figure } from '../ledger/figure.ts';
import { shown } from '../trial/figures.ts';
import { cited, runFigures, articleWords } from './cite.ts';
import { clipFiles, clipView, type ClipFile } from './clip-view.ts';
import { numberText, quantityText } from './digits.ts';
import type { FlowSheet } from './flow-steps.ts';
import { mm } from './section-shape.ts';
import type { Block, FilmData, MarginNote, Section, Span } from './page.ts';
import { capital, code, facts, link, prose, row, section, table } from './spans.ts';
import { celsius, minutes, traceNamed } from './traces.ts';
import { besides, type View } from './view.ts';

/** The clips of a run over what the logger wrote meanwhile; a mark runs on the traces while a clip plays. */
export function filmBlocks(view: View, sheet: FlowSheet): Block[] {
  const chart = filmChart(view, sheet);
  const clips = clipFiles(view, sheet.run, sheet.flow).flatMap((file, i): Block[] => {
    const clip = clipView(view, sheet, file, {
      id: i === 0 ? 'clip' : `clip-${String(i + 1)}`,
      title: `Clip of ${sheet.run.id}, ${articleWords(view, sheet.run.article)}`,
      traces: chart === null ? null : filmId,
    });
    return clip === null ? [] : [{ kind: 'clip', clip }];
  });
  return [...clips, ...(chart === null ? [] : [chart])];
}

/** The host names a chart "picture-" and its id. */
const filmId = 'picture-film';

function filmChart(view: View, { run, derived, flow }: FlowSheet): Block | null {
  const panels = panelsOf(view, { run, derived, flow });
  if (panels.length === 0) return null;
  const data: FilmData = {
    kind: 'film',
    xTitle: 'minutes on the logger’s clock',
    panels: panels.map(({ yTitle, points }) => ({ yTitle, mark: view.marks.get(run.article) ?? 0, points })),
    steps: flow.steps.map(({ name, from_s, to_s }) => ({ from: minutes(from_s), to: minutes(to_s), label: name })),
  };
  return {
    kind: 'chart',
    chart: {
      id: 'film',
      title: `Level, sump and speed of ${run.id} against time`,
      alternative: `${capital(panels.map(({ yTitle }) => yTitle).join('; '))}: one panel each, against minutes, with the ${String(flow.steps.length)} holds named. The table below holds some of the points.`,
      caption: ['Tinted: the holds. Each line is the mean of short stretches of the log.'],
      data,
      table: filmTable(panels),
    },
  };
}

interface Panel {
  readonly yTitle: string;
  readonly head: string;
  readonly decimals: number;
  readonly points: FilmData['panels'][number]['points'];
}

function panelsOf(view: View, { derived }: FlowSheet): Panel[] {
  const panel = (channel: string, yTitle: string, head: string, decimals: number, to: (si: number) => number) => {
    const trace = traceNamed(derived, channel);
    const points = (trace?.time_s ?? []).flatMap((t_s, i) => {
      const value = trace?.value[i];
      return value === undefined || !Number.isFinite(value) ? [] : [[minutes(t_s), to(value)] as const];
    });
    return points.length === 0 ? [] : [{ yTitle, head, decimals, points }];
  };
  return [
    ...panel('level', 'level, mm from the axle centreline', 'level, mm', 1, mm),
    ...panel('sump', 'sump, °C', 'sump, °C', 1, celsius),
    ...panel('output-speed', view.speed, view.speed, 0, (w) => Math.abs(shown('pinion-speed', w))),
  ];
}

/** Some sixteen times of the first panel; another panel is read at the point nearest to each. */
function filmTable(panels: readonly Panel[]) {
  const times = (panels[0]?.points ?? []).map(([x]) => x);
  const every = Math.max(1, Math.ceil(times.length / 16));
  return table(
    'film-table',
    ['number min', ...panels.map(({ head }) => `number ${head}`)],
    times
      .filter((_, i) => i % every === 0 || i === times.length - 1)
      .map((time) =>
        row(
          numberText(time, 1),
          ...panels.map(({ points, decimals }) => {
            const near = [...points].sort((a, b) => Math.abs(a[0] - time) - Math.abs(b[0] - time))[0];
            return near === undefined ? '' : numberText(near[1], decimals);
          }),
        ),
      ),
    'Some of the points that are drawn; all of them are in the raw file.',
  );
}

/** How far the camera's clock is from the logger's, and how that is known. */
export function cameraNote(view: View, { run, flow }: FlowSheet): MarginNote | null {
  if (run.clips.length === 0) return null;
  const [figure] = runFigures(view, run.id, 'camera-ahead');
  const untied = flow.clips.filter(({ ahead_s }) => ahead_s === null).map(({ clip }) => clip.file);
  const text: Span[] = [
    ...(figure === undefined ? [] : [...aheadSpans(view, figure), ' Cues, chapters and the mark go by it.']),
    ...(untied.length === 0
      ? []
      : [
          `${figure === undefined ? '' : ' '}${untied.join(', ')}: no sync event ties it to the logger, so no mark runs on the traces.`,
        ]),
  ];
  return text.length === 0 ? null : { name: 'Camera clock.', text };
}

/** "The camera is 7.4 ± 1.1 s ahead of the logger, found from the sync event." */
function aheadSpans(view: View, figure: Figure): Span[] {
  const [low, high] = figure.interval;
  const value = figure.value ?? 0;
  const together = low !== null && high !== null ? low <= 0 && high >= 0 : value === 0;
  if (together) return ['Camera and logger run together: ', cited(view, figure), ' apart by the sync event.'];
  const way = value > 0 ? ' ahead of the logger' : ' against the logger, behind it';
  return ['The camera is ', cited(view, figure), `${way}, found from the sync event.`];
}

/** Every file of the film: where it is or where it is kept, what was written of it, and its checksum. */
export function clipsSection(view: View, { run, flow }: FlowSheet): Section | null {
  const files = clipFiles(view, run, flow);
  if (files.length === 0) return null;
  return section(
    'clips',
    'Clips and captions',
    files.flatMap((file) => [prose(code(file.clip.file)), fileFacts(view, run.file, file)]),
    [
      {
        name: 'Ready to publish.',
        text: ['Captions are WebVTT, chapters plain text; both run on the clock of the clip.'],
      },
    ],
  );
}

function fileFacts(view: View, note: string, { clip, source, address, present, tied }: ClipFile): Block {
  const sum = view.input.sums.get(source);
  const captions = clip.captions === null ? undefined : view.input.sums.get(besides(note, clip.captions));
  return facts([
    [
      'Kept',
      present
        ? [link(address.clip, 'in the folder')]
        : [clip.kept === null ? 'not in the folder; where it is kept is not said' : `not in the folder: ${clip.kept}`],
    ],
    clip.shows === 'drawing' ? ['Shows', ['a drawing that moves, not a film of the rig']] : null,
    clip.length_s === null ? null : ['Length', [quantityText(clip.length_s, 's', 0)]],
    tied?.ahead_s == null ? null : ['Camera ahead', [quantityText(tied.ahead_s, 's', 1)]],
    clip.pieces.length < 2 ? null : ['Cut', [`${String(clip.pieces.length)} pieces of the film`]],
    view.house && clip.code !== null ? ['Code for graders', [code(clip.code)]] : null,
    ['Captions', [link(address.captions, 'WebVTT'), ', ', link(address.chapters, 'chapters')]],
    clip.captions === null || captions === undefined
      ? null
      : ['Written in', [code(clip.captions), ', sha-256 ', code(brief(captions))]],
    present ? ['SHA-256', [sum === undefined ? 'not summed: the file is too large' : code(sum)]] : null,
  ]);
}

const brief = (sum: string): string => `${sum.slice(0, 4)}…${sum.slice(-4)}`;
