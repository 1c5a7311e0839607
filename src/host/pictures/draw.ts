import { createHash } from 'node:crypto';
import * as vega from 'vega';
import * as vegaLite from 'vega-lite';
import type { Chart } from '../../report/page.ts';
import type { DrawnData } from '../../charts/picture.ts';
import { pictureOf } from '../../charts/picture.ts';
import type { Clock } from '../../charts/clock.ts';
import type { Spec } from '../../charts/plot.ts';
import { textWidth } from '../../charts/text-width.ts';
import type { Width } from '../../charts/theme.ts';
import { pictureWidth, textSize } from '../../charts/theme.ts';
import { dressed } from './dress.ts';

/** Drawings by the hash of what they draw: a rebuild draws only what changed, and the next series not what this one drew. */
export type PictureMemo = Map<string, Undressed>;

export interface Drawn {
  readonly wide: string;
  readonly narrow: string;
}

/** Draws a chart in both widths. Pictures must be drawn one after the other: the drawing library counts its ids. */
export async function drawChart(chart: Chart & { readonly data: DrawnData }, memo?: PictureMemo): Promise<Drawn> {
  const wide = await drawAt(chart, 'wide', memo);
  return { wide, narrow: await drawAt(chart, 'narrow', memo) };
}

async function drawAt(chart: Chart & { readonly data: DrawnData }, width: Width, memo?: PictureMemo): Promise<string> {
  const picture = pictureOf(chart.data, width);
  const drawn =
    picture.kind === 'drawing'
      ? { width: pictureWidth[width], height: picture.height, inside: picture.inside }
      : { ...(await drawnOnce(picture.spec, memo)), ...(picture.clock === undefined ? {} : { clock: picture.clock }) };
  return dressed(drawn, { id: `${chart.id}-${width}`, title: chart.title, alternative: chart.alternative });
}

async function drawnOnce(spec: Spec, memo: PictureMemo | undefined): Promise<Undressed> {
  if (memo === undefined) return drawSpec(spec);
  const key = createHash('sha256').update(JSON.stringify(spec)).digest('hex');
  const drawn = memo.get(key) ?? (await drawSpec(spec));
  memo.set(key, drawn);
  return drawn;
}

export interface Undressed {
  readonly width: number;
  readonly height: number;
  readonly inside: string;
  /** For the mark that follows a film. */
  readonly clock?: Clock;
}

/** Specification to the inside of an `svg`. Whatever the libraries would only warn of is an error: it means lost marks. */
export async function drawSpec(spec: Spec): Promise<Undressed> {
  const warnings: string[] = [];
  const logger = listening(warnings);
  const compiled = vegaLite.compile(spec as unknown as vegaLite.TopLevelSpec, { logger });
  metrics.width = (item, text) => textWidth(String(text), item.fontSize ?? textSize, item.fontWeight === 600);
  const view = new vega.View(vega.parse(compiled.spec, silent), {
    renderer: 'none',
    logger,
    loader: noOutside,
  });
  try {
    vega.resetSVGDefIds();
    const svg = await view.toSVG();
    if (warnings.length > 0) throw new Error(`A chart would lose something: ${warnings.join('; ')}`);
    return {
      width: spec.width + spec.padding.left + spec.padding.right,
      height: spec.height + spec.padding.top + spec.padding.bottom,
      inside: svg.slice(svg.indexOf('>') + 1, svg.lastIndexOf('</svg>')),
    };
  } finally {
    view.finalize();
  }
}

/** Without a canvas the library only guesses at widths; the bundled face's own are put in their place. */
const metrics = (vega as unknown as { readonly textMetrics: TextMetrics }).textMetrics;
interface TextMetrics {
  width: (item: { readonly fontSize?: number; readonly fontWeight?: number | string }, text: unknown) => number;
}

/** Role, name and description are put on the whole drawing once, in `dress.ts`. */
const silent: vega.Config & { readonly aria: boolean } = { aria: false };

const refuse = (address: string) => Promise.reject(new Error(`A chart asked for outside data: ${address}`));
const noOutside = Object.assign(vega.loader(), { load: refuse, sanitize: refuse, http: refuse, file: refuse });

function listening(warnings: string[]): vega.LoggerInterface {
  const keep = (...words: readonly unknown[]) => {
    warnings.push(words.map(String).join(' '));
    return logger;
  };
  const pass = () => logger;
  const level = ((given?: number) => (given === undefined ? vega.Warn : logger)) as vega.LoggerInterface['level'];
  const logger: vega.LoggerInterface = { level, error: keep, warn: keep, info: pass, debug: pass };
  return logger;
}
