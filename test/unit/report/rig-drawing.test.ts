import { describe, expect, it } from 'vitest';
import { rigDrawing } from '../../../src/report/rig-drawing.ts';
import { viewOf } from '../../../src/report/view.ts';
import { input } from './fixture.ts';
import { plainSpaces } from './page-at.ts';

describe('the dimensions on a rig sheet', () => {
  const block = rigDrawing(viewOf(input()));
  const data = block.kind === 'chart' && block.chart.data.kind === 'section' ? block.chart.data : null;

  // by hand from the note: radius 111 mm, offset 30 mm below, race 190 mm ahead
  it('are the radius, the offset and how far ahead the race lies, as long as they say', () => {
    const drawn = data!.dimensions.map(({ from, to, label }) => [
      plainSpaces(label),
      Math.round(Math.hypot(to[0] - from[0], to[1] - from[1])),
    ]);
    expect(drawn).toEqual([
      ['R 111 mm', 111],
      ['30 mm offset', 30],
      ['190 mm ahead', 190],
    ]);
  });

  it('hold no level: nothing on it comes from a run', () => {
    expect([data!.levels, data!.running]).toEqual([[], []]);
  });
});
