import type { Words } from './words.ts';

const A = ['A'];
const B = ['B'];
const AB = ['A', 'B'];

export const loadWords: Words = {
  'H-01': {
    by: AB,
    text: 'First loaded run, frost on the yard. Smell of paint from the bowl in the second half hour. Nothing leaked. Fan belt squealed for the first minute, then not again.',
  },
  'H-02': {
    by: A,
    text: 'Deep bowl at the standard 2.40 L. Ribs look at the duct mouth squarely. Quiet run; one of us sat through it and wrote the parts list.',
  },
  'H-03': {
    by: AB,
    text: '3.20 L in the pressed bowl. A drop every few minutes at the left hub from about an hour on, caught and weighed, 4 g in all. Breather spat once, cloth put round it, not over it.',
  },
  'H-04': {
    by: B,
    text: 'Deep bowl filled to the height of the pressed one. Takes a long pour, the jug twice. Right-hand rib warm to the hand at a distance by the end. Dry underneath.',
  },
  'H-05': {
    by: A,
    text: 'O2. Flushed with a litre the evening before and drained hot; a little brown in the first of it, clear after. Sounds different on the thin oil, a higher hum from the pinion end.',
  },
  'H-06': {
    by: AB,
    text: 'Moulded bowl. The seal needs the bolts done up crosswise twice. Stop temperature agreed beforehand, below the limit the supplier states, and the trip was set to it. Surface felt dull and dry afterwards, no marks at the sleeves.',
  },
  'H-07': {
    by: ['K', 'A'],
    text: 'Deep bowl, thin oil. The flanges were plugged in again after the floor had been washed. Rain all morning, the hall a shade cooler by the door.',
  },
  'H-08': {
    by: B,
    text: 'Shroud with O2. A faint ticking at the start, gone within a minute; looked at the shroud afterwards, no shiny spot on it.',
  },
  'H-09': {
    by: ['K'],
    text: 'Catch tray, loaded. Hall being cleaned, so the ambient probe was hung where it was out of the way of the trolley. A still of the inlet with its dial thermometer was taken before the start. Tray rattled once at the first bump of load.',
  },
  'H-10': {
    by: AB,
    text: 'Shroud, O1. Bowl taken off once before the start because the gasket had slipped at the bottom; fresh one, same fill weighed in again. Nothing to see from outside for two and a half hours.',
  },
  'H-11': {
    by: B,
    text: 'Deep bowl at 3.20 L, between the two other fills. Phone rang a lot. Paste under the skin pad was the end of the old tube.',
  },
  'H-12': {
    by: AB,
    text: 'Baseline again, to close the loaded runs on the level. Same bowl, fourteenth time on; the bolt heads are getting round and were changed afterwards. Doors kept shut, two coats on the hook.',
  },
  'T-04': {
    by: AB,
    text: 'Pressed bowl nose up on the 12 % stop, loaded. Straps checked at every quarter of an hour. Oil ran to the rear on tilting, as the dip showed; both hub trays dry at the end.',
  },
  'T-05': {
    by: ['A', 'K'],
    text: 'Shroud nose up, loaded. The race was warm early and somebody asked whether to stop; agreed a stop at 120 there, it stayed under. Last run of the series. Sweets on the bench from the neighbours.',
  },
  'C-01': {
    by: AB,
    text: 'Straight on from H-01. Everything left as it stood, fan down to the mark, gears still. Lunch in turns.',
  },
  'C-02': {
    by: B,
    text: 'After H-04. The ribs tick as they cool. Hall door opened once for a delivery, a minute at most.',
  },
  'C-03': {
    by: AB,
    text: 'After H-06, moulded bowl left on. No smell, no drip. Sign hung until the probe said cool, not the clock.',
  },
  'C-04': { by: A, text: 'After H-10. Fan at the mark, gears still. Shroud left in. Sun on the roof by the end.' },
};
