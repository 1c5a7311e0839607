import type { Words } from './words.ts';

const A = ['A'];
const K = ['K'];

export const laterWords: Words = {
  'U-11': {
    by: ['A', 'K'],
    text: 'Pressed bowl first, before the new one comes out of its box. Gears rebuilt in the winter, so the old figures are worth nothing until this one is read. 60 °C only.',
  },
  'U-12': {
    by: A,
    text: 'Thin cast bowl. Light, smooth inside, flange a little wavy; pulled down evenly it was dry.',
  },
  'U-13': { by: K, text: 'Pressed bowl between. New gasket from the same packet as last year.' },
  'U-14': { by: A, text: 'Thin cast bowl, second fitting. Rings when tapped; the bench hears no difference.' },
  'U-15': { by: K, text: 'Thin cast bowl, third. One thread took two goes. No leak.' },
  'U-16': { by: A, text: 'Pressed bowl to close. Same hands, same can of oil, level read twice.' },
};
