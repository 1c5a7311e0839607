import { describe, expect, it } from 'vitest';
import {
  equalLevelVolume_m3,
  hotRise_m,
  immersion_m,
  levelSlope_1_m2,
  level_z_m,
  tiltDrop_m,
  volumeBelow_m3,
} from '../../../src/physics/immersion.ts';

const survey = [
  { z_m: -0.13, volume_m3: 0.0002 },
  { z_m: -0.09, volume_m3: 0.001 },
  { z_m: -0.05, volume_m3: 0.002 },
];
const deeper = [
  { z_m: -0.15, volume_m3: 0.0002 },
  { z_m: -0.09, volume_m3: 0.0018 },
  { z_m: -0.04, volume_m3: 0.0033 },
];

describe('the static level', () => {
  it('of both ends is in the table, beyond them there is none', () => {
    expect(level_z_m({ survey, volume_m3: 0.0002 })).toBeCloseTo(-0.13, 12);
    expect(level_z_m({ survey, volume_m3: 0.002 })).toBeCloseTo(-0.05, 12);
    expect(level_z_m({ survey, volume_m3: 0.00019 })).toBeNull();
    expect(level_z_m({ survey, volume_m3: 0.00201 })).toBeNull();
    expect(volumeBelow_m3({ survey, z_m: -0.131 })).toBeNull();
    expect(volumeBelow_m3({ survey, z_m: -0.049 })).toBeNull();
  });

  it('is not there for no number, no table and a single row', () => {
    expect(level_z_m({ survey, volume_m3: NaN })).toBeNull();
    expect(level_z_m({ survey: [], volume_m3: 0.001 })).toBeNull();
    expect(level_z_m({ survey: survey.slice(0, 1), volume_m3: 0.0002 })).toBeNull();
  });

  it('is not read off two rows of one volume', () => {
    const flat = [
      { z_m: -0.1, volume_m3: 0.001 },
      { z_m: -0.09, volume_m3: 0.001 },
    ];
    expect(level_z_m({ survey: flat, volume_m3: 0.001 })).toBeNull();
  });

  it('turned round gives the volume back', () => {
    for (const volume_m3 of [0.0003, 0.001, 0.0017]) {
      expect(volumeBelow_m3({ survey, z_m: level_z_m({ survey, volume_m3 })! })).toBeCloseTo(volume_m3, 15);
    }
  });

  it('rises by its slope, segment by segment', () => {
    expect(levelSlope_1_m2({ survey, volume_m3: 0.0005 })).toBeCloseTo(50, 9);
    expect(levelSlope_1_m2({ survey, volume_m3: 0.0015 })).toBeCloseTo(40, 9);
    expect(levelSlope_1_m2({ survey, volume_m3: 0.003 })).toBeNull();
  });

  it('more litres stand higher and dip the ring gear deeper', () => {
    const dip = (volume_m3: number) => immersion_m({ ringRadius_m: 0.124, z_m: level_z_m({ survey, volume_m3 })! });
    expect(dip(0.0018)).toBeGreaterThan(dip(0.0012));
  });
});

describe('the volume for the baseline level', () => {
  it('of the baseline itself is its own', () => {
    expect(equalLevelVolume_m3({ survey, baseline: survey, baselineVolume_m3: 0.0013 })).toBeCloseTo(0.0013, 15);
  });

  it('is more in a deeper bowl', () => {
    expect(equalLevelVolume_m3({ survey: deeper, baseline: survey, baselineVolume_m3: 0.001 })).toBeCloseTo(0.0018, 12);
  });

  it('is not there when either table ends before', () => {
    expect(equalLevelVolume_m3({ survey: deeper, baseline: survey, baselineVolume_m3: 0.0021 })).toBeNull();
    expect(equalLevelVolume_m3({ survey, baseline: deeper, baselineVolume_m3: 0.0032 })).toBeNull();
  });
});

describe('tilt and warmth', () => {
  it('no tilt is no drop, nose down is a rise', () => {
    expect(tiltDrop_m({ distance_m: 0.19, tilt_ratio: 0 })).toBe(0);
    expect(tiltDrop_m({ distance_m: 0.19, tilt_ratio: -0.12 })).toBeCloseTo(-0.0228, 12);
  });

  it('a warm fill stands higher, and is refused when it leaves the table', () => {
    const fill = { survey, expansion_1_K: 0.0007, from_K: 293.15, to_K: 363.15 };
    expect(hotRise_m({ ...fill, volume_m3: 0.0015 })).toBeGreaterThan(0);
    expect(hotRise_m({ ...fill, volume_m3: 0.00199 })).toBeNull();
    expect(hotRise_m({ ...fill, volume_m3: 0.0001 })).toBeNull();
  });
});
