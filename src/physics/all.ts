import { aeratedDensityRelation, airShareRelation } from './aeration.ts';
import {
  carriedFlowRelation,
  carryBoundaryLayerRelation,
  carryGravityRelation,
  carryTeethRelation,
} from './carry-over.ts';
import { coverShareRelation } from './cover-share.ts';
import { densityByVcfRelation, densityRelation, volumeAt20Relation } from './density.ts';
import { immersionRelation, levelRelation, tiltDropRelation } from './immersion.ts';
import {
  flatWallForceRelation,
  flingDropRelation,
  jetPowerBandRelation,
  kineticPowerRelation,
  pickUpPowerRelation,
} from './jets.ts';
import { finalRelation, oneStoreRelation, remainingRiseRelation, timeToLimitRelation } from './lumped.ts';
import { lossRelation, shaftPowerRelation } from './power.ts';
import type { Relation } from './relation.ts';
import { logMeanRelation } from './rise-split.ts';
import { specificHeatRelation } from './specific-heat.ts';
import {
  centrifugalRatioRelation,
  pinionAtRoadSpeedRelation,
  pitchLineRelation,
  ringReynoldsRelation,
} from './speeds.ts';
import { fastConstantRelation, slowConstantRelation, twoStoreFinalRelation } from './two-store.ts';
import { procedureARelation, procedureBRelation, viscosityIndexRelation } from './viscosity-index.ts';
import { viscosityRelation, viscositySlopeRelation } from './viscosity.ts';
import { fallingFilmRelation, filmReynoldsRelation } from './wall-film.ts';
import { halfAngleRelation, immersedFaceRelation } from './wetted.ts';

/** The chapters of the method page, each with its relations in reading order. */
export const chapters: readonly { readonly title: string; readonly relations: readonly Relation[] }[] = [
  {
    title: 'Oil',
    relations: [
      viscosityRelation,
      viscositySlopeRelation,
      viscosityIndexRelation,
      procedureARelation,
      procedureBRelation,
      densityRelation,
      densityByVcfRelation,
      volumeAt20Relation,
      specificHeatRelation,
      aeratedDensityRelation,
      airShareRelation,
    ],
  },
  {
    title: 'Speeds',
    relations: [pinionAtRoadSpeedRelation, pitchLineRelation, centrifugalRatioRelation, ringReynoldsRelation],
  },
  {
    title: 'Level',
    relations: [levelRelation, immersionRelation, tiltDropRelation, halfAngleRelation, immersedFaceRelation],
  },
  {
    title: 'Oil in flight',
    relations: [
      carryGravityRelation,
      carryBoundaryLayerRelation,
      carryTeethRelation,
      carriedFlowRelation,
      flingDropRelation,
      kineticPowerRelation,
      flatWallForceRelation,
      pickUpPowerRelation,
      jetPowerBandRelation,
      fallingFilmRelation,
      filmReynoldsRelation,
    ],
  },
  { title: 'Power', relations: [shaftPowerRelation, lossRelation] },
  {
    title: 'Heat',
    relations: [
      oneStoreRelation,
      finalRelation,
      timeToLimitRelation,
      remainingRiseRelation,
      twoStoreFinalRelation,
      fastConstantRelation,
      slowConstantRelation,
      logMeanRelation,
      coverShareRelation,
    ],
  },
];

export const allRelations: readonly Relation[] = chapters.flatMap((chapter) => chapter.relations);
