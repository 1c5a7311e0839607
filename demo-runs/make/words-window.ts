import type { Words } from './words.ts';

const A = ['A'];
const AB = ['A', 'B'];
const KB = ['K', 'B'];

export const windowWords: Words = {
  'F-01': {
    by: AB,
    text: 'First day. Grey outside, shutters closed for the camera. Single drops at the pinion pocket at 60, a closed sheet from 200 on, narrower than half the face until the top step. Lamp flash at 00:00:12.0 on the film. One lamp had to be turned down, it lit the bubbles from behind and made more of them than there were.',
  },
  'F-02': {
    by: AB,
    text: 'Shroud behind the clear bowl. Nothing arrives at the pocket at 60 for the whole hold; drops at 120 and 200, a broken sheet at 290 and 390, a closed one at 520. What comes out at the front edge falls straight down. Flash at 00:00:12.000. One observer says that the ring gear cannot be seen at all, and is right.',
  },
  'F-03': {
    by: ['B', 'A'],
    text: 'Tray fills at the second step and stays full. Sheet over the gear wide and quiet from 390 on; at 60 nothing leaves at the sides, at 390 and 520 more than half does. After the stop the two holes ran for minutes; we waited the ten and it was still dripping. Sump kept lower than for the others because the plastic on this one has a stress mark by the left boss. Flash at 00:00:12.0.',
  },
  'F-04': {
    by: A,
    text: '3.20 L. Left tube lip wet from 120 on, a thin film over it at 520. Milky from the fourth step, the grid behind was lost but the lamp could be made out. The heater was already off and the sump went on rising past the mark on the way down the steps; did not stop, window looked over afterwards, no crazing. Flash at 00:00:12.0.',
  },
  'F-05': {
    by: AB,
    text: 'Deep bowl with the floor plate, filled to the same height as the pressed one. Rebound off the back wall in drops from 290 on, mist at 520. Floor plate wept at one corner, wiped twice, 3 g on the cloth. Flash at 00:00:12.0.',
  },
  'F-06': {
    by: ['B'],
    text: 'Same bowl, 2.40 L. The floor pocket stays clear enough to see the far bolts at every step. Late start, the camera had to be begun again after a full card. Lamp flash at 00:00:19.4 on the film, sync in the log at 12 s.',
  },
  'T-01': {
    by: AB,
    text: 'Cradle on the 12 % stop, nose up, both pins in. Filled and dipped level, then tilted, then waited another ten minutes. Nothing at the pocket at 60 now. Trays under both hubs, dry at the end. Flash at 00:00:12.0.',
  },
  'T-02': {
    by: AB,
    text: 'Tray nose up, its low end lower still; it fills from that end. Nothing at the pocket at 60. Bubbles can be counted as far as 200, many from 290 on, the grid read through them at every step. Sump kept down again for the marked boss. Flash at 00:00:12.0.',
  },
  'T-03': {
    by: KB,
    text: 'Shroud nose up. Watched the pocket through all six steps: no drop at 60, 120 and 200, then single ones to the end. One of us held the lamp stand after somebody kicked it at the third step; picture moves there. Flash at 00:00:12.0.',
  },
};
