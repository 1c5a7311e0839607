import type { Block, ClipView, GradingView, StillView } from '../../report/page.ts';
import { captionsText, escaped } from '../../trial/cue.ts';
import type { MadeStill } from '../pictures/stills.ts';
import { relative } from './address.ts';
import type { SpansOf, SpanView } from './spans.ts';

/** What stands in the site beside its pages, by address. */
export interface BesideView {
  readonly stillOf: (address: string) => MadeStill | null;
  readonly hasClip: (address: string) => boolean;
  /** Whether a picture for other sites was drawn at this address. */
  readonly hasPicture: (address: string) => boolean;
  readonly language: string;
  /** Of a text file of the site; null when there is none of that name. */
  readonly textOf: (address: string) => string | null;
}

export interface StillFigure {
  readonly id: string;
  readonly drawing: boolean;
  readonly alternative: string;
  readonly caption: readonly SpanView[];
  /** Null when it could not be read. */
  readonly picture: null | {
    readonly width: number;
    readonly height: number;
    readonly webp: string;
    readonly jpeg: string;
    readonly plain: string;
    readonly sizes: string;
  };
}

export interface ClipFigure {
  readonly id: string;
  readonly title: string;
  readonly drawing: boolean;
  /** Name of the file, as it is saved. */
  readonly name: string;
  /** Null when the film is not in the folder. */
  readonly clip: string | null;
  readonly captions: string | null;
  readonly chapters: string | null;
  /** Captions within the address itself, in plain words: a page opened from the disk may load no other file as captions. */
  readonly track: string | null;
  readonly language: string;
  readonly traces: string;
  /** For the script of the page: JSON that cannot end its element. */
  readonly data: string;
}

export const stillFigure = (
  still: StillView,
  at: { readonly page: string; readonly spans: SpansOf; readonly beside: BesideView; readonly sizes: string },
): StillFigure => {
  const made = at.beside.stillOf(still.address);
  const href = (width: number, ending: string) => relative(at.page, `${still.address}-${width}.${ending}`);
  const set = (ending: string) => made?.sizes.map(({ width }) => `${href(width, ending)} ${width}w`).join(', ') ?? '';
  return {
    id: still.id,
    drawing: still.drawing,
    alternative: still.alternative,
    caption: at.spans(still.caption),
    picture:
      made === null
        ? null
        : {
            width: made.width,
            height: made.height,
            webp: set('webp'),
            jpeg: set('jpg'),
            plain: href(made.sizes[0]!.width, 'jpg'),
            sizes: at.sizes,
          },
  };
};

export function clipFigure(clip: ClipView, page: string, beside: BesideView): ClipFigure {
  const chapters = chaptersOf(clip.captions);
  const written = beside.textOf(clip.captions) !== null;
  const { pieces, steps, cues } = clip;
  return {
    id: `clip-${clip.id}`,
    title: clip.title,
    drawing: clip.drawing,
    name: clip.address.slice(clip.address.lastIndexOf('/') + 1),
    clip: beside.hasClip(clip.address) ? relative(page, clip.address) : null,
    captions: written ? relative(page, clip.captions) : null,
    chapters: beside.textOf(chapters) === null ? null : relative(page, chapters),
    track: cues.length === 0 ? null : trackOf(cues),
    language: beside.language,
    traces: clip.traces ?? '',
    data: scriptData({ pieces, steps, cues, captionsLabel: 'Observations' }),
  };
}

const trackOf = (cues: ClipView['cues']): string =>
  `data:text/vtt;charset=utf-8,${encodeURIComponent(captionsText(cues.map((cue) => ({ ...cue, text: escaped(cue.text) }))))}`;

/** Clips that are not there cannot be graded and are left out. */
export const gradingData = ({ clips, scales, views }: GradingView, page: string, beside: BesideView): string =>
  scriptData({
    clips: clips
      .filter(({ address }) => beside.hasClip(address))
      .map((clip) => ({ ...clip, address: relative(page, clip.address) })),
    scales,
    views,
  });

/** What the pictures and clips of these blocks came to: a page is laid out again when it changes. */
export const besideOf = (blocks: readonly Block[], { stillOf, hasClip, textOf }: BesideView): readonly unknown[] =>
  blocks.flatMap((block): readonly unknown[] => {
    if (block.kind === 'stills')
      return block.items.map(({ address }) => {
        const made = stillOf(address);
        return made && [made.width, made.height, made.sizes.map(({ width }) => width)];
      });
    if (block.kind === 'grading') return block.grading.clips.map(({ address }) => hasClip(address));
    const clips = block.kind === 'clip' ? [block.clip] : block.kind === 'two-clips' ? block.clips : [];
    return clips.map(({ address, captions }) => [hasClip(address), textOf(captions), textOf(chaptersOf(captions))]);
  });

/** The list of chapters stands beside the captions. */
const chaptersOf = (captions: string): string => captions.replace(/\.vtt$/, '.chapters.txt');

/** JSON for a script element: no sign in it can end the element or begin another one. */
export const scriptData = (data: object): string =>
  JSON.stringify(data).replace(
    /[<>&\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** Scripts that a page needs, by name. */
export const scriptsFor = (blocks: readonly Block[]): readonly string[] => [
  ...(blocks.some(({ kind }) => kind === 'clip' || kind === 'two-clips') ? ['film.js'] : []),
  ...(blocks.some(({ kind }) => kind === 'grading') ? ['grading.js'] : []),
  ...(blocks.some(({ kind }) => kind === 'stress') ? ['stress.js'] : []),
  ...(blocks.some(({ kind }) => kind === 'own-axle') ? ['axle.js'] : []),
  ...(blocks.some(({ kind }) => kind === 'find') ? ['find.js'] : []),
];
