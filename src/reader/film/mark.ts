import type { Clock } from '../../charts/clock.ts';
import { atTime } from '../../charts/clock.ts';
import type { ClipPiece } from '../../trial/derived.ts';
import { makeSvg, setText } from '../element.ts';
import { clockText, filmed } from './clocks.ts';

/** Where time runs on a drawing, as it says itself; null for a drawing without time. */
export function clockOf(svg: SVGSVGElement): Clock | null {
  const { timeFrom, timeTo, left, right, top, bottom } = svg.dataset;
  const [a, b, l, r, t, d] = [timeFrom, timeTo, left, right, top, bottom].map((text) => Number(text ?? NaN));
  if (![a, b, l, r, t, d].every((n) => Number.isFinite(n)) || b! <= a! || r! <= l!) return null;
  return { from: a!, to: b!, left: l!, right: r!, top: t!, bottom: d! };
}

export interface Mark {
  /** Log time, s; null takes the mark away. */
  readonly show: (log_s: number | null) => void;
}

/** A line across all panels with its time; along the axis a bar wherever there is film. */
export function markOn(svg: SVGSVGElement, clock: Clock, pieces: readonly ClipPiece[]): Mark {
  const line = makeSvg('line', { class: 'film-line', y1: String(clock.top), y2: String(clock.bottom) });
  const time = makeSvg('text', { class: 'film-time', y: String(clock.top + 10) });
  const group = makeSvg('g', { class: 'film-mark', 'aria-hidden': 'true', visibility: 'hidden' }, line, time);
  const bars = filmed(pieces)
    .map(({ from_s, to_s }) => [Math.max(from_s / 60, clock.from), Math.min(to_s / 60, clock.to)] as const)
    .filter(([from, to]) => to > from)
    .map(([from, to]) => `M${atTime(clock, from)},${clock.bottom}H${atTime(clock, to)}`);
  svg.append(makeSvg('path', { class: 'film-there', 'aria-hidden': 'true', d: bars.join('') }), group);

  return {
    show: (log_s) => {
      const there = log_s !== null && log_s / 60 >= clock.from && log_s / 60 <= clock.to;
      group.setAttribute('visibility', there ? 'visible' : 'hidden');
      if (!there) return;
      const x = atTime(clock, log_s / 60);
      const leftOfLine = x > (clock.left + clock.right) / 2;
      line.setAttribute('x1', String(x));
      line.setAttribute('x2', String(x));
      time.setAttribute('x', String(leftOfLine ? x - 6 : x + 6));
      time.setAttribute('text-anchor', leftOfLine ? 'end' : 'start');
      setText(time, clockText(log_s));
    },
  };
}
