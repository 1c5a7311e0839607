/** Placeholder until the physics helper commits this file with the real relation; overwrite it whole. */
export const jetPowerBand_W = (_at: {
  ring_rad_s: number;
  radius_m: number;
  face_m: number;
  toothHeight_m: number;
  immersion_m: number;
  nu_m2_s: number;
  density_kg_m3: number;
}): { low_W: number; high_W: number } | null => null;
