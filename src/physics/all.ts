import { bearingDragRelation, bearingLoadRelation, bearingViscousRelation } from './bearing-drag.ts';
import { bearingQuickRelation, bearingRollingRelation, bearingSlidingRelation } from './bearings.ts';
import {
  bubbleReynoldsRelation,
  cleanBubblesRelation,
  measuredBubblesRelation,
  mobileBubbleRelation,
  rigidBubbleRelation,
  rigidBubblesRelation,
} from './bubbles.ts';
import {
  enclosedDiscRelation,
  freeDiscLaminarRelation,
  freeDiscTurbulentRelation,
  hydraulicTorqueRelation,
} from './churning-others.ts';
import { churningPowerRelation, churningTorqueRelation } from './churning.ts';
import { conductivityRelation } from './conductivity.ts';
import {
  crossFlowPowerRelation,
  crossFlowRelation,
  filmCoefficientRelation,
  flatPlateRelation,
  freeCylinderRelation,
  freePlateRelation,
  rayleighRelation,
} from './convection.ts';
import { capillaryNumberRelation, drawnFilmRelation, dropDragRelation } from './drawn-film.ts';
import { filmHeatRelation, filmRatioRelation, lambdaRelation, oilLifeRelation } from './film-ratios.ts';
import { centralFilmRelation, lineFilmRelation, lineFilmSecondRelation, pointFilmRelation } from './film.ts';
import { annularFinRelation, finnedConductanceRelation, finSpacingRelation, straightFinRelation } from './fins.ts';
import {
  co2PerDistanceRelation,
  electricPerDistanceRelation,
  energyPerDistanceRelation,
  fuelPerDistanceRelation,
} from './fuel.ts';
import {
  lossFactorRelation,
  meanFrictionRelation,
  meshCoastRelation,
  meshCoefficientRelation,
  meshDriveRelation,
  meshSlidingRelation,
} from './mesh.ts';
import { goldRelation, woosterRelation } from './pressure-viscosity.ts';
import { blackBodyRelation, radiationCubicRelation, radiationRelation } from './radiation.ts';
import { sealPowerRelation, sealTorqueRelation } from './seals.ts';
import { thinOilInverseRelation, thinOilRelation } from './thin-oil.ts';
import { rollingRadiusRelation } from './tyre.ts';
import { wallRelation } from './wall.ts';
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
import { answering, type Relation } from './relation.ts';
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
      viscosityIndexRelation,
      procedureARelation,
      procedureBRelation,
      densityRelation,
      densityByVcfRelation,
      volumeAt20Relation,
      specificHeatRelation,
      conductivityRelation,
      woosterRelation,
      goldRelation,
      thinOilRelation,
      thinOilInverseRelation,
      aeratedDensityRelation,
      airShareRelation,
      rigidBubbleRelation,
      mobileBubbleRelation,
      bubbleReynoldsRelation,
      cleanBubblesRelation,
      rigidBubblesRelation,
      measuredBubblesRelation,
      oilLifeRelation,
    ],
  },
  {
    id: 'speeds',
    title: 'Speeds',
    relations: [
      rollingRadiusRelation,
      pinionAtRoadSpeedRelation,
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
      fallingFilmRelation,
      filmReynoldsRelation,
      capillaryNumberRelation,
      drawnFilmRelation,
      dropDragRelation,
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
    id: 'film',
    title: 'Film between metal',
    relations: [
      pointFilmRelation,
      centralFilmRelation,
      lineFilmRelation,
      lineFilmSecondRelation,
      filmHeatRelation,
      lambdaRelation,
      filmRatioRelation,
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
      twoStoreFinalRelation,
      fastConstantRelation,
      slowConstantRelation,
      logMeanRelation,
      coverShareRelation,
    ],
  },
  {
    id: 'air',
    title: 'Air, radiation, fins and walls',
    relations: [
      wallRelation,
      rayleighRelation,
      freePlateRelation,
      freeCylinderRelation,
      crossFlowRelation,
      crossFlowPowerRelation,
      flatPlateRelation,
      filmCoefficientRelation,
      blackBodyRelation,
      radiationRelation,
      radiationCubicRelation,
      straightFinRelation,
      annularFinRelation,
      finnedConductanceRelation,
      finSpacingRelation,
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
