import type { Grade, GradeKind, View } from './flow.ts';

/** The printed scale: what a grade means, so that two people mean the same. Window: the ten seconds after the hold begins. */
export interface Scale {
  readonly name: string;
  readonly of: string;
  readonly anchors: Readonly<Record<Grade, string>>;
}

export const scales: Readonly<Record<GradeKind, Scale>> = {
  reach: {
    name: 'Reach',
    of: 'oil carried over to the pinion pocket',
    anchors: {
      0: 'nothing arrives in 10 s',
      1: 'single drops, at least one arrival in 10 s',
      2: 'broken sheet, arrivals in at least half of the frames',
      3: 'closed sheet, narrower than half the face',
      4: 'closed sheet, half the face or wider',
    },
  },
  side: {
    name: 'Side fall',
    of: 'oil that leaves the gear at its sides before the top',
    anchors: {
      0: 'none leaves before the top',
      1: 'drops, under a quarter of the gear face',
      2: 'a sheet, a quarter to half of the face',
      3: 'a sheet, half to three quarters of the face',
      4: 'more than three quarters leaves at the sides',
    },
  },
  wall: {
    name: 'Wall hit',
    of: 'oil that strikes the wall or the roof',
    anchors: {
      0: 'wall dry',
      1: 'wetted, no rebound',
      2: 'a steady film turning, no rebound',
      3: 'rebound seen as separate drops',
      4: 'rebound breaks up to mist',
    },
  },
  bubble: {
    name: 'Bubble',
    of: 'air in the oil, by the grid behind it',
    anchors: {
      0: 'grid lines behind the oil are sharp',
      1: 'single bubbles, fewer than 20 in 20 × 20 mm',
      2: 'many, the grid still readable',
      3: 'milky, grid lost, the shape of the lamp visible',
      4: 'opaque, a foam layer of 5 mm or more',
    },
  },
  tube: {
    name: 'Tube run',
    of: 'oil past the lip of the axle tube',
    anchors: {
      0: 'lip dry',
      1: 'lip wet',
      2: 'a thin film passes',
      3: 'a running stream',
      4: 'the level stands over the lip',
    },
  },
};

/** View 0 or 1: every grade of that step is ng. */
export const viewAnchors: Readonly<Record<View, string>> = {
  0: 'blind',
  1: 'partly seen',
  2: 'good',
  3: 'clear, the grid readable',
};
