import { clipTime_s, type Film, timecode } from './film.ts';
import { seenAs } from './flow-words.ts';
import { type TrueStep, trueSteps } from './flow-truth.ts';
import type { GradeKind } from './law.ts';
import { roundedTruth } from './observers.ts';
import type { MadeRun } from './run.ts';

/** A picture pulled from a film: drawn by `clips.ts`, named by the note. */
export interface StillPlan {
  readonly file: string;
  readonly step: TrueStep;
  /** After the hold begins. */
  readonly offset_s: number;
  readonly rule: 'offset' | 'event' | 'chosen';
  readonly event: string | null;
  readonly caption: string;
  readonly alt: string;
}

const offset_s = 5;
const pulled_rpm = [120, 290, 520];

/** Beside those at the fixed offset: two when something happened, and one that somebody liked. */
const others: Readonly<
  Record<string, { rpm: number; name: string; offset_s: number; event?: string; caption: string }>
> = {
  'F-04': {
    ...{ rpm: 520, name: 'lip', offset_s: 8.4, event: 'film over the tube lip' },
    caption: 'A thin film goes over the lip of the left tube.',
  },
  'F-05': {
    ...{ rpm: 520, name: 'mist', offset_s: 2.6, event: 'first mist off the back wall' },
    caption: 'What comes back off the wall hangs as mist.',
  },
  'F-02': {
    ...{ rpm: 390, name: 'edge', offset_s: 7 },
    caption: 'Oil leaves the front edge of the shroud and falls straight down.',
  },
};

export function stillsOf(made: Pick<MadeRun, 'plan' | 'setUp' | 'spin'>): readonly StillPlan[] {
  const { id, article } = made.plan;
  const up = trueSteps(made).filter(({ direction }) => direction === 'up');
  const at = (rpm: number): TrueStep => up.find(({ wheel_rpm }) => wheel_rpm === rpm)!;
  const pulled = pulled_rpm.map((rpm): StillPlan => {
    const step = at(rpm);
    const caption = `${sentence(said(step, 'reach'))}; ${said(step, 'wall')}.`;
    return {
      ...{ file: `${id}-${rpm}.png`, step, offset_s, rule: 'offset', event: null, caption },
      alt: alt(made, step),
    };
  });
  const more = others[id];
  if (more === undefined) return pulled;
  const step = at(more.rpm);
  const event = more.event ?? null;
  return [
    ...pulled,
    {
      ...{ file: `${id}-${more.name}.png`, step, offset_s: more.offset_s, rule: event === null ? 'chosen' : 'event' },
      ...{ event, caption: more.caption, alt: `${more.caption} ${alt(made, step)}` },
    },
  ];

  function alt({ plan }: Pick<MadeRun, 'plan'>, s: TrueStep): string {
    const tilt = plan.tilt_pct === 0 ? '' : ', nose up';
    const shown = (['reach', 'side', 'wall', 'bubble', 'tube'] as const).map((kind) => said(s, kind)).join('; ');
    const level = `oil at −${Math.abs(Math.round(s.level_mm))} mm on the window rule`;
    return `Drawing of ${article}${tilt} at ${s.wheel_rpm} rpm, way up: ${shown}; ${level}.`;
  }
}

const said = ({ grades }: TrueStep, kind: GradeKind): string => seenAs[kind][roundedTruth(grades)[kind] as 0];
const sentence = (text: string): string => text[0]!.toUpperCase() + text.slice(1);

/** Lines of the note's front matter. */
export const stillLines = (stills: readonly StillPlan[], film: Film): readonly string[] => [
  'stills:',
  ...stills.flatMap((s) => [
    `  - file: ${s.file}`,
    `    step: ${s.step.wheel_rpm} rpm up`,
    `    clip: ${film.file}`,
    `    at: ${timecode(clipTime_s(film, s.step.hold_s + s.offset_s))}`,
    `    rule: ${s.rule}`,
    ...(s.rule === 'offset' ? [`    offset: ${s.offset_s} s`] : []),
    ...(s.event === null ? [] : [`    event: "${s.event}"`]),
    '    shows: drawing',
    `    caption: "${s.caption}"`,
    `    alt: "${s.alt}"`,
  ]),
];
