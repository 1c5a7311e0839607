import { litres } from '../ledger/ids.ts';
import type { RunCard } from '../trial/run-card.ts';
import { quantityText } from './digits.ts';

/**
 * The front matter that the note of this run begins with: all that is known is filled in, and what is read at the rig is
 * left blank. Once the blanks are filled it is a note that can be read.
 */
export function cardNote(card: RunCard): string {
  const { cell, zeros, map } = card;
  const plain = (text: string): string => text.replaceAll('\u202f', ' ').replaceAll('−', '-');
  const filled = (value: string | number | null): string => (value === null ? '' : ` ${String(value)}`);
  // Between braces a blank is followed by a comma.
  const within = (value: string | null): string => ` ${value ?? ''}`;
  return [
    '---',
    'id:',
    `trial: ${cell.trial}`,
    'status: draft # accepted, once it was looked at',
    'shown-to: house',
    `article: ${cell.article}`,
    `oil: ${cell.oil}`,
    `rig-state:${filled(card.rigState)}`,
    `refit:${filled(card.refit)}`,
    `order:${filled(card.order)}`,
    'started:',
    'ended:',
    'operators: []',
    'released-by:',
    'released-on:',
    `# ${plain(quantityText(card.mass_kg, 'g', 0))} is ${litres(cell.fill_m3)} L at 20 °C; write what was weighed`,
    `fill: { basis: volume, mass-in: , temperature: , wait:${within(card.wait_s === null ? null : plain(quantityText(card.wait_s, 'min', 0)))}, level-left: , level-right: }`,
    `ambient: { place:${within(card.ambientPlace === null ? null : JSON.stringify(card.ambientPlace))}, start: , end: }`,
    `airflow:${filled(card.airflow_m_s === null ? null : plain(quantityText(card.airflow_m_s, 'm/s', 1)))}`,
    ...(cell.tilt_ratio === 0 ? [] : [`tilt: ${plain(quantityText(cell.tilt_ratio, '%', 1))}`]),
    'rotation: forward',
    ...(cell.trial === 'cool-down' ? ['from-run:', 'gear-state:'] : []),
    ...(zeros.length === 0 ? [] : [`zeros: { ${zeros.map((zero) => `${zero}: { before: , after: }`).join(', ')} }`]),
    `log: { file: , map:${filled(map)} }`,
    '---',
  ].join('\n');
}
