import type { ChartData } from '../report/page.ts';
import { claimsSpec } from './claims.ts';
import type { Clock } from './clock.ts';
import { filmSpec } from './film.ts';
import { heatSpec } from './heat.ts';
import { levelSpec } from './level.ts';
import type { Spec } from './plot.ts';
import { sectionDrawing } from './section.ts';
import { markedDrawing } from './marked.ts';
import { settleSpec } from './settle.ts';
import { speedSpec } from './speed.ts';
import { standingSpec } from './standing.ts';
import type { Width } from './theme.ts';
import { traceSpec } from './trace.ts';

/** A picture as it is handed on: a specification still to be drawn, or the inside of a drawing. */
export type Picture =
  | { readonly kind: 'spec'; readonly spec: Spec; readonly clock?: Clock }
  | { readonly kind: 'drawing'; readonly height: number; readonly inside: string };

/** The plan grid is a table of words and marks and has no picture. */
export type DrawnData = Exclude<ChartData, { readonly kind: 'plan-grid' }>;

export function pictureOf(data: DrawnData, width: Width): Picture {
  switch (data.kind) {
    case 'trace':
      return { kind: 'spec', spec: traceSpec(data, width) };
    case 'speed':
      return { kind: 'spec', spec: speedSpec(data, width) };
    case 'heat':
      return { kind: 'spec', spec: heatSpec(data, width) };
    case 'standing':
      return { kind: 'spec', spec: standingSpec(data, width) };
    case 'claims':
      return { kind: 'spec', spec: claimsSpec(data, width) };
    case 'level':
      return { kind: 'spec', spec: levelSpec(data, width) };
    case 'section':
      return { kind: 'drawing', ...sectionDrawing(data, width) };
    case 'film':
      return { kind: 'spec', ...filmSpec(data, width) };
    case 'marked':
      return { kind: 'drawing', ...markedDrawing(data, width) };
    case 'settle':
      return { kind: 'spec', spec: settleSpec(data, width) };
  }
}
