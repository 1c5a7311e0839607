import type { Clock } from '../../charts/clock.ts';
import { make } from '../element.ts';
import { clockText, timeAt_s } from './clocks.ts';

export interface FieldUse {
  /** The reader points at a time of the log, s. */
  readonly goTo: (log_s: number) => void;
  /** By so many seconds of the clip, or to the step before or after. */
  readonly move: (by: 'next step' | 'step before' | 'beginning' | 'end' | number) => void;
}

export interface Field {
  readonly tell: (log_s: number | null, step: string) => void;
}

/**
 * The part of a chart where time runs, to be pointed at and to be held by the keys of a slider. It lies over the drawing and is
 * no part of it, so that the drawing keeps its own name and description.
 */
export function fieldOver(svg: SVGSVGElement, clock: Clock, use: FieldUse): Field {
  const field = make('div', {
    class: 'film-field',
    tabindex: '0',
    role: 'slider',
    'aria-label': 'Time of the film on the log',
    'aria-valuemin': String(Math.floor(clock.from * 60)),
    'aria-valuemax': String(Math.ceil(clock.to * 60)),
    'aria-valuenow': String(Math.floor(clock.from * 60)),
  });
  svg.after(field);
  svg.parentElement?.classList.add('film-over');
  layOver(field, svg, clock);

  const point = (event: PointerEvent): void => {
    const { left, width } = field.getBoundingClientRect();
    const share = Math.min(1, Math.max(0, (event.clientX - left) / width));
    use.goTo(timeAt_s({ ...clock, left: 0, right: 1 }, share));
  };
  field.addEventListener('pointerdown', point);
  field.addEventListener('pointermove', (event) => {
    if (event.buttons === 1) point(event);
  });
  field.addEventListener('keydown', (event) => {
    const by = event.ctrlKey || event.altKey || event.metaKey ? undefined : keys[event.key];
    if (by === undefined) return;
    event.preventDefault();
    use.move(by);
  });
  return {
    tell: (log_s, step) => {
      if (log_s !== null) field.setAttribute('aria-valuenow', String(Math.round(log_s)));
      const text = [log_s === null ? 'no log here' : clockText(log_s), step].filter((part) => part !== '');
      field.setAttribute('aria-valuetext', text.join(', '));
    },
  };
}

const keys: Readonly<Record<string, Parameters<FieldUse['move']>[0]>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 'next step',
  PageDown: 'step before',
  Home: 'beginning',
  End: 'end',
};

/** The drawing is as wide as its column lets it be; the field goes with it. */
function layOver(field: HTMLElement, svg: SVGSVGElement, { left, right, top, bottom }: Clock): void {
  const lay = (): void => {
    const box = svg.viewBox.baseVal;
    const scale = svg.clientWidth / box.width;
    const around = svg.parentElement?.getBoundingClientRect();
    const drawn = svg.getBoundingClientRect();
    const [x, y] = [drawn.left - (around?.left ?? 0), drawn.top - (around?.top ?? 0)];
    field.style.left = `${x + (svg.parentElement?.scrollLeft ?? 0) + left * scale}px`;
    field.style.top = `${y + top * scale}px`;
    field.style.width = `${(right - left) * scale}px`;
    field.style.height = `${(bottom - top) * scale}px`;
  };
  lay();
  new ResizeObserver(lay).observe(svg);
}
