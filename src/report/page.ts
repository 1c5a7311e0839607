/**
 * What a page says: finished words and numbers, no HTML. One model, two ways out (site and paper); neither computes.
 * The wide column holds blocks; the margin beside a section says how sure it is, what it depends on, and where its raw file is.
 */

import type { Choice, Step, StressInput } from '../trial/stress.ts';
import type { AxleData } from '../trial/own-axle.ts';
import type { ChartData } from './chart-data.ts';
import type { AxleField, AxleTyped } from './own-axle-read.ts';

export type * from './chart-data.ts';

export type PageKind =
  | 'book'
  | 'series'
  | 'standing'
  | 'claims'
  | 'stress'
  | 'own-axle'
  | 'amends'
  | 'part'
  | 'asks'
  | 'not-looked-at'
  | 'usual-objections'
  | 'article'
  | 'oil'
  | 'rig'
  | 'plan'
  | 'cards'
  | 'card'
  | 'runs'
  | 'run'
  | 'grades'
  | 'side-by-side'
  | 'grading'
  | 'ledger'
  | 'working'
  | 'method'
  | 'cautions'
  | 'words'
  | 'guide'
  | 'find'
  | 'checks';

export interface Page {
  readonly kind: PageKind;
  /** Address below the site's root, with `/` at the end: `series/hill-bowl/runs/S-07/`; '' is the home page. */
  readonly path: string;
  readonly title: string;
  /** For the tab and the description: plain text. */
  readonly description: string;
  /** Small line above the title. */
  readonly whereabouts: readonly Span[];
  readonly lead: readonly Span[];
  /** Above everything, at most one or two: release not recorded, cap exceeded, invented data. */
  readonly banners: readonly Banner[];
  readonly sections: readonly Section[];
  /** Series the page belongs to, for the line of words at the top. */
  readonly series: string | null;
}

/** `code` names it for tests and styles: `release-not-recorded`, `cap-exceeded`, `left-out`. */
export interface Banner {
  readonly code: string;
  readonly text: readonly Span[];
}

export interface Section {
  /** What the index of the page calls it, where the heading is long; null where its parent section lists it. */
  readonly inIndex?: string | null;
  /** Anchor; unique on the page. */
  readonly id: string;
  readonly heading: string | null;
  readonly blocks: readonly Block[];
  readonly margin: readonly MarginNote[];
}

/** First words bold as its name: *How sure*, *Depends on*, *Before power*, *Raw file*. */
export interface MarginNote {
  readonly name: string;
  readonly text: readonly Span[];
  /** `caution` rows carry the code of their stage for tests. */
  readonly code?: string;
  readonly list?: readonly (readonly Span[])[];
}

export type Span =
  | string
  | { readonly kind: 'link'; readonly to: string; readonly text: string }
  /** A figure: its text links to its working. `to` is a site path with anchor. */
  | { readonly kind: 'figure'; readonly to: string; readonly text: string; readonly id: string }
  | { readonly kind: 'strong'; readonly text: string }
  | { readonly kind: 'verdict'; readonly text: string }
  | { readonly kind: 'code'; readonly text: string }
  /** Room to write in by hand; `text` says for the ear what belongs there. */
  | { readonly kind: 'blank'; readonly text: string }
  /** Article mark: colour, shape and its label. `mark` is an index into the marks of the house; 0 is the baseline. */
  | { readonly kind: 'article'; readonly mark: number; readonly text: string; readonly to: string | null };

export type Block =
  | { readonly kind: 'prose'; readonly text: readonly Span[] }
  /** Words of a note: CommonMark, raw HTML shown as text; rendered by the host. */
  | {
      readonly kind: 'words';
      readonly markdown: string;
      /** What stands in place of a link of the house's own, by its address: a figure, a word, a name. */
      readonly refs?: Readonly<Record<string, readonly Span[]>>;
    }
  | { readonly kind: 'list'; readonly items: readonly (readonly Span[])[] }
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'chart'; readonly chart: Chart }
  /** A relation in textbook form; `latex` for the host to set, `plain` for everything else. */
  | { readonly kind: 'formula'; readonly latex: string; readonly plain: string }
  | { readonly kind: 'notice'; readonly code: string; readonly text: readonly Span[] }
  | { readonly kind: 'code'; readonly language: string; readonly text: string }
  | { readonly kind: 'facts'; readonly rows: readonly { readonly name: string; readonly value: readonly Span[] }[] }
  | { readonly kind: 'fold'; readonly summary: string; readonly blocks: readonly Block[] }
  /** Two columns of equal width, one under the other on a phone. */
  | { readonly kind: 'pair'; readonly id: string; readonly sides: readonly [PairSide, PairSide] }
  | { readonly kind: 'stills'; readonly items: readonly StillView[] }
  | { readonly kind: 'clip'; readonly clip: ClipView }
  /** Two clips that start together at the same step. */
  | { readonly kind: 'two-clips'; readonly id: string; readonly clips: readonly [ClipView, ClipView] }
  | { readonly kind: 'grading'; readonly grading: GradingView }
  | { readonly kind: 'stress'; readonly stress: StressView }
  | { readonly kind: 'own-axle'; readonly axle: OwnAxleView }
  /** Script files that hold what is found, beside the page. */
  | { readonly kind: 'find'; readonly parts: readonly string[] };

export interface PairSide {
  readonly title: readonly Span[];
  readonly blocks: readonly Block[];
}

/** A still: the host makes WebP and JPEG of it in the sizes of the page, without what the camera wrote into it. */
export interface StillView {
  /** Anchor. */
  readonly id: string;
  /** Path in the book. */
  readonly source: string;
  /** Address of the made pictures below the site's root, without size and ending: `series/hill-bowl/stills/F-01-290`. */
  readonly address: string;
  readonly alternative: string;
  readonly caption: readonly Span[];
  readonly drawing: boolean;
}

/** A clip with its captions and steps in clip time; times in seconds. Every page works without it. */
export interface ClipView {
  readonly id: string;
  /** Path in the book. */
  readonly source: string;
  /** Addresses below the site's root. */
  readonly address: string;
  readonly captions: string;
  readonly title: string;
  readonly drawing: boolean;
  readonly cues: readonly { readonly from_s: number; readonly to_s: number; readonly text: string }[];
  readonly steps: readonly { readonly name: string; readonly from_s: number; readonly to_s: number }[];
  /** Log time = clip time + offset, within each piece; empty when clip and logger are not tied. */
  readonly pieces: readonly { readonly clip_s: number; readonly to_clip_s: number; readonly offset_s: number }[];
  /** Element of the film chart on the page that the mark runs on: `picture-` and the id of the chart. */
  readonly traces: string | null;
}

/** What the switches of the stress table need: plain data of the comparison, and the words of its rows. */
export interface StressView {
  readonly input: StressInput;
  readonly choices: readonly { readonly choice: Choice; readonly text: string }[];
  readonly claims: readonly string[];
  readonly steps: readonly { readonly step: Step; readonly text: string }[];
}

/** What the page of a reader's own axle works with, and what stands in its fields at first. */
export interface OwnAxleView {
  readonly data: AxleData;
  readonly typed: AxleTyped;
  readonly fields: readonly {
    readonly field: AxleField;
    readonly label: string;
    readonly hint: string;
    /** Of a list: what may be chosen. */
    readonly choices?: readonly { readonly value: string; readonly text: string }[];
  }[];
  readonly heads: readonly string[];
  readonly withUs: boolean;
}

/** What the grading page needs: coded clips, never the article, fill or oil. */
export interface GradingView {
  readonly clips: readonly {
    readonly code: string;
    readonly address: string;
    readonly steps: readonly { readonly name: string; readonly from_s: number; readonly to_s: number }[];
  }[];
  readonly scales: readonly {
    readonly key: string;
    readonly name: string;
    readonly of: string;
    readonly anchors: readonly string[];
  }[];
  readonly views: readonly string[];
}

export interface Table {
  readonly id: string;
  readonly caption: string | null;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
}

export interface TableColumn {
  readonly head: string;
  /** `number` is right-aligned with tabular figures; `wide` may take the rest. */
  readonly align: 'text' | 'number' | 'wide';
  readonly unit?: string;
  /** Cells are shares in percent, drawn as a bar beside the number. */
  readonly bar?: true;
}

export interface TableRow {
  readonly cells: readonly (readonly Span[])[];
  /** `baseline`, `left-out`, `total`, or a plain row. */
  readonly role?: 'baseline' | 'left-out' | 'total';
  readonly anchor?: string;
}

/** A chart as the page means it. Drawing is another room's business. Every chart has a table and a text alternative. */
export interface Chart {
  readonly id: string;
  /** Names the thing for the ear: one sentence. */
  readonly title: string;
  /** Text alternative: what is drawn, its range, what it shows. */
  readonly alternative: string;
  readonly caption: readonly Span[];
  readonly data: ChartData;
  readonly table: Table;
}
