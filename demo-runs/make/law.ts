/**
 * The invented physics that the demo's readings are made from. Chosen shapes with invented numbers: a test bed for the
 * tool, no evidence about axles. Nothing here is shared with the tool, so that the tool cannot agree with itself.
 */

/** What an article does in the invented world. */
export interface ArticleLaw {
  /** Factor on the level-dependent torque. */
  readonly churning: number;
  /** Constants of the flow grades. */
  readonly reach: number;
  readonly side: number;
  readonly wall: number;
  readonly bubble: number;
  /** Heat shed by the part itself: still + moving·u^0.8, W/K. */
  readonly shedStill_W_K: number;
  readonly shedMoving_W_K: number;
  readonly store_J_K: number;
  /** Oil a tray holds up while running, as a fall of the running level, mm. */
  readonly heldUp_mm: number;
}

export interface OilLaw {
  /** log10 log10(ν + 0.7) = A − B·log10(T/K), ν in mm²/s. */
  readonly A: number;
  readonly B: number;
  readonly density15_kg_m3: number;
  readonly loadLoss: number;
  /** Half-time of the level after the stop, s. */
  readonly settleHalf_s: number;
  /** Air let in at speed leaves with this time constant, s. */
  readonly airGone_s: number;
}

export interface Gear {
  readonly ratio: number;
  readonly ringRadius_mm: number;
  /** Bearings and seals, N·m at the pinion. */
  readonly constant_Nm: number;
  readonly viscous_Nm: number;
  readonly level_Nm: number;
  readonly levelRef_mm: number;
  readonly speedRef_rad_s: number;
}

const pi2 = 2 * Math.PI;
const pressed = { shedStill_W_K: 0.45, shedMoving_W_K: 0.345, heldUp_mm: 0 };
export const articleLaws: Readonly<Record<string, ArticleLaw>> = {
  P0: { ...pressed, churning: 1, reach: 0.9, side: 0.6, wall: 0.2, bubble: 0, store_J_K: 1430 },
  P1: {
    churning: 0.95,
    reach: 0.7,
    side: 0.8,
    wall: 0.6,
    bubble: -0.1,
    shedStill_W_K: 0.95,
    shedMoving_W_K: 0.745,
    store_J_K: 4140,
    heldUp_mm: 0,
  },
  P2: { ...pressed, churning: 0.72, reach: 1.2, side: 0.2, wall: 0.4, bubble: -0.2, store_J_K: 1750, heldUp_mm: 9 },
  P3: {
    churning: 1,
    reach: 0.9,
    side: 0.6,
    wall: 0.2,
    bubble: 0,
    shedStill_W_K: 0.38,
    shedMoving_W_K: 0.222,
    store_J_K: 1900,
    heldUp_mm: 0,
  },
  P5: { ...pressed, churning: 0.96, reach: 0.9, side: 0.6, wall: 0.2, bubble: 0, store_J_K: 1980 },
  P4: { ...pressed, churning: 0.62, reach: -0.3, side: -0.2, wall: -0.6, bubble: -0.5, store_J_K: 1690 },
};

/** A window copy moves oil as the article it stands in for. */
export const lawOf = (article: string): ArticleLaw => articleLaws[article.replace(/w$/, '')]!;

export const oilLaws: Readonly<Record<string, OilLaw>> = {
  O1: { A: 9.04162, B: 3.48307, density15_kg_m3: 900, loadLoss: 0.033, settleHalf_s: 45, airGone_s: 70 },
  O2: { A: 8.0673, B: 3.13319, density15_kg_m3: 866, loadLoss: 0.031, settleHalf_s: 20, airGone_s: 25 },
};

export const hillGear: Gear = {
  ratio: 41 / 9,
  ringRadius_mm: 124,
  constant_Nm: 0.55,
  viscous_Nm: 0.6,
  level_Nm: 0.62,
  levelRef_mm: 70.7,
  speedRef_rad_s: ((pi2 * 390) / 60) * (41 / 9),
};

export const shaft_rad_s = (rpm: number): number => (pi2 * rpm) / 60;

export const viscosity_mm2_s = (oil: OilLaw, temp_C: number): number =>
  10 ** (10 ** (oil.A - oil.B * Math.log10(temp_C + 273.15))) - 0.7;

export const density_kg_m3 = (oil: OilLaw, temp_C: number): number =>
  oil.density15_kg_m3 * (1 - 0.0007 * (temp_C - 15));

/** What a run has of its own. */
export interface SetUp {
  readonly gear: Gear;
  readonly article: ArticleLaw;
  readonly oil: OilLaw;
  readonly level_mm: number;
  readonly oilMass_kg: number;
  readonly refit_Nm: number;
}

export function spinTorque_Nm(s: SetUp, at: { wheel_rpm: number; temp_C: number }): number {
  const { gear } = s;
  const nu = viscosity_mm2_s(s.oil, at.temp_C);
  const thick = nu / (1 + nu / 2000) / 40;
  const speed = (shaft_rad_s(at.wheel_rpm) * gear.ratio) / gear.speedRef_rad_s;
  const depth = (gear.ringRadius_mm + s.level_mm) / gear.levelRef_mm;
  const churned = gear.level_Nm * s.article.churning * thick ** 0.25 * speed ** 0.8 * depth ** 1.2;
  return gear.constant_Nm + s.refit_Nm + gear.viscous_Nm * (thick * speed) ** (2 / 3) + churned;
}

export const spinPower_W = (s: SetUp, at: { wheel_rpm: number; temp_C: number }): number =>
  spinTorque_Nm(s, at) * shaft_rad_s(at.wheel_rpm) * s.gear.ratio;

export interface Load {
  readonly wheel_rpm: number;
  readonly powerOut_W: number;
}

export function powerIn_W(s: SetUp, load: Load, temp_C: number): number {
  const lost = s.oil.loadLoss * (1 + 1.5 / viscosity_mm2_s(s.oil, temp_C));
  return (load.powerOut_W + spinPower_W(s, { wheel_rpm: load.wheel_rpm, temp_C })) / (1 - lost);
}

export const heatMade_W = (s: SetUp, load: Load, temp_C: number): number =>
  powerIn_W(s, load, temp_C) - load.powerOut_W;

/** Oil and gears, and the housing: two stores, J/K. */
export const oilStore_J_K = (s: SetUp): number => 10_100 + s.oilMass_kg * 2000;
export const housingStore_J_K = (s: SetUp): number => 17_500 + s.article.store_J_K;
export const turning_W_K = 110;
export const resting_W_K = 25;

export const shed_W_K = (s: SetUp, air_m_s: number): number =>
  5.5 + s.article.shedStill_W_K + (2.1 + s.article.shedMoving_W_K) * air_m_s ** 0.8;

/** Where sump and ambient stay, when the heat made is that of the final sump temperature. */
export function settled(s: SetUp, load: Load, around: { air_m_s: number; ambient_C: number }) {
  const resistance_K_W = 1 / turning_W_K + 1 / shed_W_K(s, around.air_m_s);
  let temp_C = 100;
  for (let i = 0; i < 60; i++) temp_C = around.ambient_C + heatMade_W(s, load, temp_C) * resistance_K_W;
  return { temp_C, rise_K: temp_C - around.ambient_C, heat_W: heatMade_W(s, load, temp_C) };
}

/** The slow one of the two time constants at rest. */
export function slowTime_s(s: SetUp, air_m_s: number): number {
  const [c1, c2, ua] = [oilStore_J_K(s), housingStore_J_K(s), shed_W_K(s, air_m_s)];
  const trace = resting_W_K / c1 + (resting_W_K + ua) / c2;
  const product = (resting_W_K * ua) / (c1 * c2);
  return 2 / (trace - Math.sqrt(trace * trace - 4 * product));
}

export type GradeKind = 'reach' | 'side' | 'wall' | 'bubble' | 'tube';
export type Grades = Readonly<Record<GradeKind, number>>;
const octaves = (wheel_rpm: number): number => Math.log2(wheel_rpm / 60);
const fuller = (s: SetUp): number => (s.gear.ringRadius_mm + s.level_mm - s.gear.levelRef_mm) / 10;

/** Flow grades before they are held to the scale: what an observer's own scatter is added to. */
export function rawGrades(s: SetUp, at: { wheel_rpm: number; tilt_pct: number; temp_C: number }): Grades {
  const [L, k] = [octaves(at.wheel_rpm), fuller(s)];
  return {
    reach: s.article.reach + 0.95 * L + 0.25 * k - 0.1 * at.tilt_pct,
    side: s.article.side + 0.9 * L + 0.35 * k,
    wall: s.article.wall + 0.95 * L + 0.2 * k,
    bubble: s.article.bubble + 0.8 * L + 0.45 * k + 0.5 * Math.log10(viscosity_mm2_s(s.oil, at.temp_C) / 62),
    tube: (s.level_mm + 38) / 4 + 0.4 * L,
  };
}

export const held04 = (grade: number): number => Math.min(4, Math.max(0, grade));

export const reach = (s: SetUp, wheel_rpm: number, tilt_pct: number): number =>
  held04(rawGrades(s, { wheel_rpm, tilt_pct, temp_C: 60 }).reach);

/** Air comes in at once and leaves slowly: Bubble a while later, when it stood at `before`. Oil at rest clears for good. */
export function bubbleAfter(
  s: SetUp,
  before: number,
  now: { wheel_rpm: number; temp_C: number },
  while_s: number,
): number {
  const settled = held04(rawGrades(s, { ...now, tilt_pct: 0 }).bubble);
  return settled >= before ? settled : settled + (before - settled) * Math.exp(-while_s / s.oil.airGone_s);
}

/** Mean level while turning, and how far it swings to either side, mm. */
export const runningLevel_mm = (s: SetUp, wheel_rpm: number): number =>
  s.level_mm - 6 * Math.log2(1 + wheel_rpm / 100) - s.article.heldUp_mm * (1 - Math.exp(-wheel_rpm / 150));
export const swing_mm = (wheel_rpm: number): number => (wheel_rpm === 0 ? 0 : 1 + wheel_rpm / 150);

/** What stays on the walls and in the corners after the stop, as a fall of the level, mm. */
export const heldAfter_mm = 1;
/** A tray drains through its holes. */
export const levelHalf_s = (s: SetUp): number => (s.article.heldUp_mm > 0 ? 180 : s.oil.settleHalf_s);

/** Pinion bearing above sump once the lag of 240 s is over; nothing rubs at a standstill. */
export const bearingRise_K = (s: SetUp, wheel_rpm: number, tilt_pct: number): number =>
  wheel_rpm < 1 ? 0 : 4 + 3 * (4 - reach(s, wheel_rpm, tilt_pct));
