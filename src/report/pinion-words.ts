import type { Figure } from '../ledger/figure.ts';
import { shown } from '../trial/figures.ts';
import { cited, runFigures } from './cite.ts';
import { givenText, halfWidth, quantityText } from './digits.ts';
import type { Span } from './page.ts';
import type { FlowSheet } from './flow-steps.ts';
import type { View } from './view.ts';

/**
 * "With the nose up the surface 190 mm ahead of the axle stands 22.8 mm lower, at −76.1 mm: 0.9 mm above the lowest point
 * of the pinion race (−77 mm): the bath only just touches it." Empty where the rig sheet has no race.
 */
export function pinionSentence(view: View, { run, derived }: FlowSheet): Span[] {
  const front = view.rig.pinionFront;
  const [surface] = runFigures(view, run.id, 'level-at-pinion');
  const [over] = runFigures(view, run.id, 'bath-over-race');
  if (front === null || surface === undefined || over?.value == null) return [];
  const where = `the surface ${quantityText(front.ahead_m, 'mm', 0)} ahead of the axle stands `;
  const tilt = derived.cell.tilt_ratio;
  return [
    tilt === 0
      ? `At rest ${where}at `
      : `At rest, nose ${tilt > 0 ? 'up' : 'down'}, ${where}${dropWords(view, surface)}, at `,
    cited(view, surface),
    ...bathWords(view, over, lowestWords(view, over)),
  ];
}

/** Over the race by more than 3 mm and more than its ±; touching it within 3 mm; else short of it, or within its ± not to be told. */
function bathWords(view: View, over: Figure, lowest: string): Span[] {
  const [low, high] = over.interval;
  const doubt = low === null || high === null ? 0 : halfWidth([low, high]);
  const value = over.value ?? 0;
  const point = `the lowest point of the pinion race${lowest === '' ? '' : ` (${lowest})`}`;
  if (value > Math.max(touching, doubt)) return [': it stands ', cited(view, over), ` over ${point}.`];
  if (value >= 0 && value <= touching)
    return [': ', cited(view, over), ` above ${point}: the bath only just touches it.`];
  if (Math.abs(value) <= doubt)
    return [': ', cited(view, over), ` from ${point}: within this ± it cannot be told whether the bath reaches it.`];
  return [': ', cited(view, over), ` from ${point}: the bath does not reach it.`];
}

/** Less than this over the race is a touch: a tilt of the bench by a few minutes of arc undoes it (our rule), mm. */
const touching = shown('bath-over-race', 3e-3);

/** What the tilt takes from the surface there, as its working has it. */
function dropWords(view: View, surface: Figure): string {
  const step = view.input.ledger.workings.get(surface.id)?.steps[0];
  if (step === undefined) return 'elsewhere';
  return `${givenText(Math.abs(step.value), null, step.unit)} ${step.value > 0 ? 'lower' : 'higher'}`;
}

function lowestWords(view: View, over: Figure): string {
  const step = view.input.ledger.workings.get(over.id)?.steps.at(-1);
  return step === undefined ? '' : givenText(step.value, null, step.unit);
}
