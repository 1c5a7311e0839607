import { shown } from '../trial/figures.ts';
import { numberText } from './digits.ts';
import type { Block, SectionData } from './page.ts';
import { flat, mm, raceOf } from './section-shape.ts';
import { row, table } from './spans.ts';
import type { View } from './view.ts';

/** Dimensions of the rig alone: ring gear, pinion centreline, lips and floor. */
export function rigDrawing(view: View): Block {
  const { rig } = view;
  const heights = [
    ['tube lip', rig.tubeLip_z_m],
    ['filler lip', rig.fillerLip_z_m],
    ['floor', rig.floor_z_m],
  ] as const;
  const lips = heights.flatMap(([label, z_m]) => (z_m === null ? [] : [{ z: mm(z_m), label }]));
  const data: SectionData = {
    kind: 'section',
    ...flat,
    race: raceOf(view),
    dimensions: dimensions(view),
    ringRadius: mm(rig.ringRadius_m),
    wall: [],
    tray: null,
    shroud: null,
    levels: [],
    lips,
    pinion: { offset: mm(rig.offset_m) },
    mark: 0,
  };
  return {
    kind: 'chart',
    chart: {
      id: 'dimensions',
      title: 'Ring gear, pinion centreline and heights, to scale',
      alternative: `Seen along the axle, to scale in millimetres: the ring gear${lips.map(({ label }) => `, the ${label}`).join('')}, and the pinion centreline${view.rig.pinionFront === null ? '' : ' with the race of its front bearing'}.`,
      caption: ['To scale, seen along the axle. The articles’ own insides stand on their sheets.'],
      data,
      table: table(
        'dimensions-table',
        ['wide height', 'number mm from the axle centreline'],
        [
          ...lips.map(({ label, z }) => row(label, numberText(z, 0))),
          row('pinion centreline', numberText(mm(rig.offset_m), 0)),
          row('bottom of the ring gear', numberText(-mm(rig.ringRadius_m), 0)),
        ],
      ),
    },
  };
}

/** Radius (R, as drawings write it), offset and where the race lies: from the rig sheet, and nothing that a run gave. */
function dimensions(view: View): SectionData['dimensions'] {
  const { ringRadius_m, offset_m } = view.rig;
  const [radius, offset] = [mm(ringRadius_m), mm(offset_m)];
  const race = raceOf(view);
  const label = (length: number): string => `${numberText(Math.abs(length), 0)}\u202fmm`;
  return [
    { from: [0, 0], to: [radius * Math.SQRT1_2, radius * Math.SQRT1_2], label: `R\u00a0${label(radius)}` },
    ...(Math.abs(offset) < leastDrawn
      ? []
      : [{ from: [0, 0] as const, to: [0, offset] as const, label: `${label(offset)} offset` }]),
    ...(race === null
      ? []
      : [{ from: [race.x, -radius] as const, to: [0, -radius] as const, label: `${label(race.x)} ahead` }]),
  ];
}

/** A shorter dimension line has no room for its ends, mm. */
const leastDrawn = shown('static-level', 4e-3);
