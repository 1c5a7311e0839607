import type { Words } from './words.ts';

const A = ['A'];

export const olderWords: Words = {
  'W-1': {
    by: A,
    text: 'First trial on the cradle since the bearing was changed. Pressed bowl, 2.40 L. Pump of the heater loop hums along with the motor at 200.',
  },
  'W-2': {
    by: A,
    text: '2.00 L. Poured from the small jug in one go. Level well under the plug, read with the wire on both sides.',
  },
  'W-3': {
    by: A,
    text: '2.80 L, so plug in before the last of it and the rest through the breather boss. A drip at the plug, turned up a little.',
  },
  'W-4': {
    by: A,
    text: '2.40 L again. Gasket kept from the first time, no weep. Warm afternoon coming, started before it.',
  },
  'W-5': {
    by: A,
    text: '2.80 L, second. Bowl cleaned with a cloth only. A pigeon in the rafters, shooed out before the start.',
  },
  'W-6': {
    by: A,
    text: '2.00 L, second. Short of a jug: weighed straight into the bowl on the scale, then fitted level.',
  },
  'W-7': {
    by: A,
    text: '2.40 L. Bowl off and on, nothing else touched. Thunder about, lights dipped once before the run.',
  },
  'W-8': { by: A, text: '2.40 L to close. Same hands, same gasket kind. Bench swept, book closed for the autumn.' },
};
