import type { Words } from './words.ts';

const A = ['A'];
const B = ['B'];
const K = ['K'];
const AB = ['A', 'B'];

export const spinWords: Words = {
  'S-01': {
    by: AB,
    text: 'Baseline to begin with. Low flange on, spacer out, zero read twice. Heater mat takes its time to the first level; after that it holds without a hand on it.',
  },
  'S-02': {
    by: A,
    text: 'Catch tray. Sounds duller than the plain bowl at the top step. New paper gasket, sits flat all round.',
  },
  'S-03': {
    by: B,
    text: 'Shroud with O2, first fitting of it on the real bowl. Turned by hand through two full turns before power: no rub. Thin oil, drain washer done up again after a drip.',
  },
  'S-04': {
    by: A,
    text: 'Deep bowl at 3.20 L. Bottom two bolts are awkward behind the ribs, done with the long key. No leak.',
  },
  'S-05': {
    by: AB,
    text: 'Pressed bowl, 3.20 L. The plug stands under oil at that height, so it was poured through the breather boss. Somebody leaned on the cable tray at the sump end; nothing came off.',
  },
  'S-06': {
    by: B,
    text: 'O2 in the pressed bowl. Flushed and drained hot first. Pours to the last drop, jug weighed back at 1 g.',
  },
  'S-07': {
    by: A,
    text: 'Second refit of the shroud. Breather looked at, open. Nothing leaked; the new gasket sat a touch proud at the lower left bolt, see the still.',
  },
  'S-08': {
    by: A,
    text: 'Baseline between. Off and on again the same day as the shroud; hands know the way by now. Wind on the roof, no draught at the bench.',
  },
  'S-09': {
    by: B,
    text: 'Deep bowl at 2.40 L after the loaded run of the morning; housing left to come down first. Dip wire only just wets at the rear.',
  },
  'S-10': {
    by: A,
    text: 'Moulded bowl for the first time. Weighs nothing in the hand. Seal greased, crosswise twice, dry.',
  },
  'S-11': {
    by: A,
    text: 'Deep bowl to the height of the pressed one, O2. Oil changed over between the two runs of the day, flush weighed out. Left-hand dip read first and last, the same.',
  },
  'S-12': {
    by: AB,
    text: 'Deep bowl, O1 again, 3.59 L. One poured, the other read. A hair in the gasket at the top, taken off and done again before filling.',
  },
  'S-13': {
    by: B,
    text: 'Deep bowl with O2. Second of the day and the jug still had a film of the other oil in it when we began; wiped out, weighed again, started over.',
  },
  'S-14': { by: AB, text: 'Pressed bowl, O2. Quiet from start to end on the bench; someone welding two doors down.' },
  'S-15': { by: B, text: 'Baseline between. Fitted in 22 minutes. Heater mat moved 20 mm to the rear, it had crept.' },
  'S-16': {
    by: A,
    text: 'Moulded bowl. One sleeve turned in its seat while tightening, stopped and eased by hand. No drip at any level.',
  },
  'S-17': {
    by: K,
    text: 'Deep bowl at 3.20 L. Our newest on the logger for the first time alone. Logger settings had been put back to those it came with after the battery was changed; the trigger was set up again from the card.',
  },
  'S-18': {
    by: AB,
    text: 'Shroud, third fitting. Clearance at the rim gone round with a feeler, 7 mm everywhere. Frost in the morning, hall warm by ten.',
  },
  'S-19': {
    by: B,
    text: 'Shroud with O2, after the loaded run of the morning. Cooled with the fan, then fan off a good half hour before the start.',
  },
  'S-20': {
    by: A,
    text: 'Pressed bowl at 3.20 L. Clocks went forward at the weekend, logger and camera both set. Wept at the plug until the washer was turned over.',
  },
  'S-21': {
    by: A,
    text: 'Catch tray. Holes of the tray looked through with a lamp before fitting, both open. Gasket from a new packet, a shade thicker to the eye.',
  },
  'S-22': {
    by: K,
    text: 'Baseline between. One fitted it, the other checked the bolts. Cleaners still in the hall, trolley kept behind the line.',
  },
  'S-23': {
    by: B,
    text: 'Deep bowl, 2.40 L. Clear morning; the roof light had to be covered for the level reading.',
  },
  'S-24': {
    by: B,
    text: 'Deep bowl, 3.59 L. Needed a second can of the same batch for the last 200 g. Dry all round.',
  },
  'S-25': {
    by: AB,
    text: 'Moulded bowl, first run after the holiday. Rig turned by hand before power, nothing stiff. The logger beeped once in the third level and went on by itself.',
  },
  'S-26': {
    by: A,
    text: 'Catch tray, last time. Tray drained slowly before the bowl came off, ten minutes with a cup under it.',
  },
  'S-27': {
    by: B,
    text: 'Pressed bowl at 3.20 L. Midday sun on the door side, blind down. Left hub flange cable tied back, it had come near the shaft guard.',
  },
  'S-28': { by: A, text: 'Deep bowl, 2.40 L. Long key has lost its ball, done with the plain one. No leak, no noise.' },
  'S-29': {
    by: A,
    text: 'Baseline between. Bowl wiped out and looked at inside: a bright ring where the oil stands, paint whole.',
  },
  'S-30': {
    by: B,
    text: 'Shroud. Early start. One of the three hanging bolts had a lock washer missing, found on the floor, put back.',
  },
  'S-31': {
    by: ['B', 'K'],
    text: 'Deep bowl with O2, third. A visitor asked what it was for. Flushed twice because the first litre came out dark.',
  },
  'S-32': { by: A, text: 'Pressed bowl with O2, the third of three. Poured at once and slowly, no froth in the jug.' },
  'S-33': {
    by: AB,
    text: 'Deep bowl, 3.59 L, O1. Rain on the roof, loud enough that the hum could not be heard at the low steps.',
  },
  'S-34': {
    by: B,
    text: 'Deep bowl, 3.20 L, the last of it. Drain plug magnet had a grey fur on it, wiped and kept in a bag.',
  },
  'S-35': { by: A, text: 'Shroud with O2 to finish the round. Same feeler check, same 7 mm. The can is nearly empty.' },
  'S-36': {
    by: AB,
    text: 'Baseline to close. New bolts since Monday. Both of us read the level, both wrote the same.',
  },
};
