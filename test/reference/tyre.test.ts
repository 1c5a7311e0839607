import { describe, expect, it } from 'vitest';
import { outsideRange } from '../../src/physics/relation.ts';
import { rollingRadius_m } from '../../src/physics/speeds.ts';
import { flattened, freeRadiusRelation, readTyre, rollingRadiusRelation } from '../../src/physics/tyre.ts';
import { agreesWithItsSources, expectNear, givesAFigureOrNone } from './agreement.ts';

describe('radius of a tyre by its marking (geometry; 0.97 is common practice, no source)', () => {
  agreesWithItsSources(freeRadiusRelation);
  agreesWithItsSources(rollingRadiusRelation);

  it.each(['265/70R17', '265/70 R17', '265/70-17', 'LT265/70R17', 'P 265/70 R 17', '265/70ZR17 115T'])(
    'reads %s as 265 mm, 0.70 and 17 in',
    (text) => {
      const tyre = readTyre(text)!;
      expectNear(freeRadiusRelation.of({ ...tyre })! * 1e3, 401.4, 1e-9);
      expectNear(rollingRadiusRelation.of({ ...tyre, flattening: flattened })! * 1e3, 389.358, 1e-9);
    },
  );

  it('reads a rim of half inches', () => {
    expectNear(readTyre('245/70R19.5')!.rim_m, 19.5 * 0.0254, 1e-12);
  });

  it.each(['31x10.5R15', '265', '265/70', '26/70R17', 'seventeen inches', '', '265/70R17and more'])(
    'does not read %s',
    (text) => {
      expect(readTyre(text)).toBeNull();
    },
  );

  it('turns counted over a mile give a radius back that the marking is within 3 percent of', () => {
    const rolling_m = rollingRadiusRelation.of({ ...readTyre('265/70R17')!, flattening: flattened })!;
    const turns = 1609.344 / (2 * Math.PI * rolling_m);
    expectNear(rollingRadius_m({ distance_m: 1609.344, turns }), rolling_m, 1e-12);
    expect(1 - rolling_m / freeRadiusRelation.of({ ...readTyre('265/70R17')! })!).toBeCloseTo(0.03, 12);
  });

  it('is larger for a wider tyre, a higher wall and a larger rim', () => {
    const tyre = { width_m: 0.245, aspect: 0.65, rim_m: 0.4318 };
    const radius_m = freeRadiusRelation.of(tyre)!;
    for (const key of ['width_m', 'aspect', 'rim_m'] as const)
      expect(freeRadiusRelation.of({ ...tyre, [key]: tyre[key] * 1.1 })!).toBeGreaterThan(radius_m);
  });

  it('is not there for a tyre of no size, and warns of a tyre that rolls on more than its free radius', () => {
    const tyre = { width_m: 0.265, aspect: 0.7, rim_m: 0.4318 };
    expect(freeRadiusRelation.of({ width_m: 0, aspect: 0.7, rim_m: 0 })).toBeNull();
    expect(rollingRadiusRelation.of({ ...tyre, flattening: 0 })).toBeNull();
    expect(outsideRange(rollingRadiusRelation, { ...tyre, flattening: 1.02 })).toHaveLength(1);
  });

  givesAFigureOrNone(freeRadiusRelation);
  givesAFigureOrNone(rollingRadiusRelation);
});
