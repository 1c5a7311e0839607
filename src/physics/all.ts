import { aeratedDensityRelation, airShareRelation } from './aeration.ts';
import { airConductivityRelation, airPrandtlRelation, airViscosityRelation } from './air.ts';
import { airShareByLevelRelation } from './air-in-oil.ts';
import { bareSurfaceRelation } from './bare-surface.ts';
import { bearingDragRelation, bearingLoadRelation, bearingViscousRelation } from './bearing-drag.ts';
import { bearingQuickRelation, bearingRollingRelation, bearingSlidingRelation } from './bearings.ts';
import { bubbleReynoldsRelation, riseCleanRelation, riseRigidRelation, riseTimeRelation } from './bubble-rise.ts';
import { cleanBubblesRelation, measuredBubblesRelation, rigidBubblesRelation } from './bubbly-viscosity.ts';
import {
  carriedFlowRelation,
  carryBoundaryLayerRelation,
  carryGravityRelation,
  carryTeethRelation,
} from './carry-over.ts';
import { churningPowerRelation, churningTorqueRelation } from './churning.ts';
import {
  enclosedDiscRelation,
  freeDiscLaminarRelation,
  freeDiscTurbulentRelation,
  hydraulicTorqueRelation,
} from './churning-others.ts';
import { conductivityRelation } from './conductivity.ts';
import { contactModulusRelation, ellipticityFitRelation, ellipticityRelation } from './contact.ts';
import { coverShareRelation } from './cover-share.ts';
import { densityByVcfRelation, densityRelation, volumeAt20Relation } from './density.ts';
import { dropDragRelation, dropReynoldsRelation, speedLostRelation } from './drop-drag.ts';
import { dynamicViscosityRelation } from './dynamic-viscosity.ts';
import { fallingFinalRelation, fallingLossRelation } from './falling-loss.ts';
import { fallingStoreRelation, fallingTimeRelation } from './falling-store.ts';
import { centralFilmRelation, leastFilmRelation, lineFilmRelation, lineFilmSecondRelation } from './film.ts';
import { airReynoldsRelation, filmCoefficientRelation } from './film-coefficient.ts';
import { filmChangeRelation, lambdaRelation, thermalFilmRelation } from './film-ratio.ts';
import { optimumFinGapRelation, optimumGapFilmRelation } from './fin-gap.ts';
import { finnedWallRelation, ringFinRelation, straightFinRelation } from './fins.ts';
import { crossFlowRelation, flatPlateRelation, hilpertRelation, zukauskasRelation } from './forced-convection.ts';
import { freeCylinderRelation, freePlateRelation, rayleighRelation } from './free-convection.ts';
import {
  co2PerDistanceRelation,
  electricPerDistanceRelation,
  energyPerDistanceRelation,
  fuelPerDistanceRelation,
} from './fuel.ts';
import { immersionRelation, levelRelation, tiltDropRelation } from './immersion.ts';
import {
  flatWallForceRelation,
  flingDropRelation,
  jetPowerBandRelation,
  kineticPowerRelation,
  pickUpPowerRelation,
} from './jets.ts';
import { finalRelation, oneStoreRelation, remainingRiseRelation, timeToLimitRelation } from './lumped.ts';
import {
  lossFactorRelation,
  meanFrictionRelation,
  meshCoastRelation,
  meshCoefficientRelation,
  meshDriveRelation,
  meshSlidingRelation,
} from './mesh.ts';
import { lifeByActivationRelation, lifeRatioRelation } from './oil-life.ts';
import { lossRelation, shaftPowerRelation } from './power.ts';
import { alphaMineralRelation, alphaPaoRelation, alphaRelation } from './pressure-viscosity.ts';
import { radiationByCubeRelation, radiationRelation, surfaceHeatRelation } from './radiation.ts';
import { answering, type Relation } from './relation.ts';
import { logMeanRelation } from './rise-split.ts';
import { mostOnRollerRelation, rollerLoadRelation } from './roller-film.ts';
import { sealPowerRelation, sealTorqueRelation } from './seals.ts';
import { specificHeatRelation } from './specific-heat.ts';
import {
  centrifugalRatioRelation,
  pinionAtRoadSpeedRelation,
  pitchLineRelation,
  ringReynoldsRelation,
} from './speeds.ts';
import { capillaryLengthRelation, capillaryNumberRelation, drawnFilmRelation } from './thin-film.ts';
import { fastConstantRelation, slowConstantRelation, twoStoreFinalRelation } from './two-store.ts';
import { twoStoreFallingFinalRelation, twoStoreFallingRelation } from './two-store-falling.ts';
import { freeRadiusRelation, rollingRadiusRelation } from './tyre.ts';
import { viscosityRelation, viscositySlopeRelation } from './viscosity.ts';
import { procedureARelation, procedureBRelation, viscosityIndexRelation } from './viscosity-index.ts';
import { longZRelation, shortZRelation, thinOilRelation, viscosityFromZRelation } from './viscosity-thin.ts';
import { housingGrowthRelation, volumeGrowthRelation } from './volume-growth.ts';
import { fallingFilmRelation, filmReynoldsRelation } from './wall-film.ts';
import { wallSeriesRelation } from './wall-series.ts';
import { halfAngleRelation, immersedFaceRelation } from './wetted.ts';

/** Relations that belong together, in reading order. */
export interface Chapter {
  readonly id: string;
  readonly title: string;
  readonly relations: readonly Relation[];
}

const written: readonly Chapter[] = [
  {
    id: 'oil',
    title: 'Oil',
    relations: [
      viscosityRelation,
      viscositySlopeRelation,
      shortZRelation,
      viscosityFromZRelation,
      thinOilRelation,
      longZRelation,
      dynamicViscosityRelation,
      viscosityIndexRelation,
      procedureARelation,
      procedureBRelation,
      densityRelation,
      densityByVcfRelation,
      volumeAt20Relation,
      volumeGrowthRelation,
      housingGrowthRelation,
      specificHeatRelation,
      conductivityRelation,
      lifeRatioRelation,
      lifeByActivationRelation,
    ],
  },
  {
    id: 'film',
    title: 'Film in the contact',
    relations: [
      alphaRelation,
      alphaMineralRelation,
      alphaPaoRelation,
      contactModulusRelation,
      ellipticityRelation,
      ellipticityFitRelation,
      leastFilmRelation,
      centralFilmRelation,
      lineFilmRelation,
      lineFilmSecondRelation,
      thermalFilmRelation,
      lambdaRelation,
      filmChangeRelation,
    ],
  },
  {
    id: 'air-in-oil',
    title: 'Air in the oil',
    relations: [
      aeratedDensityRelation,
      airShareRelation,
      airShareByLevelRelation,
      rigidBubblesRelation,
      cleanBubblesRelation,
      measuredBubblesRelation,
      riseRigidRelation,
      riseCleanRelation,
      riseTimeRelation,
      bubbleReynoldsRelation,
    ],
  },
  {
    id: 'speeds',
    title: 'Speeds',
    relations: [
      pinionAtRoadSpeedRelation,
      rollingRadiusRelation,
      freeRadiusRelation,
      pitchLineRelation,
      centrifugalRatioRelation,
      ringReynoldsRelation,
    ],
  },
  {
    id: 'level',
    title: 'Level',
    relations: [levelRelation, immersionRelation, tiltDropRelation, halfAngleRelation, immersedFaceRelation],
  },
  {
    id: 'oil-in-flight',
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
      dropReynoldsRelation,
      dropDragRelation,
      speedLostRelation,
      fallingFilmRelation,
      filmReynoldsRelation,
      rollerLoadRelation,
      mostOnRollerRelation,
      capillaryNumberRelation,
      capillaryLengthRelation,
      drawnFilmRelation,
    ],
  },
  { id: 'power', title: 'Power', relations: [shaftPowerRelation, lossRelation] },
  {
    id: 'losses',
    title: 'Where loss comes from',
    relations: [
      churningTorqueRelation,
      churningPowerRelation,
      hydraulicTorqueRelation,
      freeDiscLaminarRelation,
      freeDiscTurbulentRelation,
      enclosedDiscRelation,
      meshDriveRelation,
      meshCoastRelation,
      meshSlidingRelation,
      meanFrictionRelation,
      lossFactorRelation,
      meshCoefficientRelation,
      bearingQuickRelation,
      bearingRollingRelation,
      bearingSlidingRelation,
      bearingDragRelation,
      bearingViscousRelation,
      bearingLoadRelation,
      sealTorqueRelation,
      sealPowerRelation,
    ],
  },
  {
    id: 'heat',
    title: 'Heat',
    relations: [
      oneStoreRelation,
      finalRelation,
      timeToLimitRelation,
      remainingRiseRelation,
      fallingLossRelation,
      fallingFinalRelation,
      fallingStoreRelation,
      fallingTimeRelation,
      twoStoreFinalRelation,
      fastConstantRelation,
      slowConstantRelation,
      twoStoreFallingFinalRelation,
      twoStoreFallingRelation,
      logMeanRelation,
      coverShareRelation,
    ],
  },
  {
    id: 'heat-to-air',
    title: 'Heat to the air',
    relations: [
      airViscosityRelation,
      airConductivityRelation,
      airPrandtlRelation,
      rayleighRelation,
      freePlateRelation,
      freeCylinderRelation,
      airReynoldsRelation,
      crossFlowRelation,
      zukauskasRelation,
      hilpertRelation,
      flatPlateRelation,
      filmCoefficientRelation,
      radiationRelation,
      radiationByCubeRelation,
      surfaceHeatRelation,
      bareSurfaceRelation,
      wallSeriesRelation,
      straightFinRelation,
      ringFinRelation,
      finnedWallRelation,
      optimumFinGapRelation,
      optimumGapFilmRelation,
    ],
  },
  {
    id: 'cost',
    title: 'What it costs',
    relations: [
      energyPerDistanceRelation,
      fuelPerDistanceRelation,
      co2PerDistanceRelation,
      electricPerDistanceRelation,
    ],
  },
];

/** The chapters of the method, each a page of its own. */
export const chapters: readonly Chapter[] = written.map((chapter) => ({
  ...chapter,
  relations: chapter.relations.map(answering),
}));

export const allRelations: readonly Relation[] = chapters.flatMap((chapter) => chapter.relations);
