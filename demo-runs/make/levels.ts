/** What the volume survey found: height above the axle centreline, mm, and litres below it. */
export const surveyHeights_mm = [-132, -124, -110, -95, -80, -65, -52, -45, -38, -32, -25] as const;

const plain_L = [0, 0.1, 0.4, 0.85, 1.38, 1.95, 2.45, 2.75, 3.05, 3.6, 4.45] as const;
const added_L: Readonly<Record<string, readonly number[]>> = {
  P0: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
  P1: [0.2, 0.28, 0.45, 0.7, 0.95, 1.1, 1.2, 1.25, 1.3, 1.3, 1.3],
  P2: [0, 0, -0.02, -0.05, -0.05, -0.05, -0.05, -0.05, -0.05, -0.05, -0.05],
  P3: [0, -0.02, -0.04, -0.06, -0.08, -0.08, -0.08, -0.08, -0.08, -0.08, -0.08],
  P5: [0, 0, 0, 0, 0, 0.01, 0.01, 0.01, 0.01, 0.01, 0.01],
  P4: [0, -0.01, -0.02, -0.03, -0.04, -0.04, -0.04, -0.04, -0.04, -0.04, -0.04],
};

export interface LevelRow {
  readonly z_mm: number;
  readonly volume_L: number;
}

export const levelTable = (article: string): readonly LevelRow[] =>
  surveyHeights_mm.map((z_mm, i) => ({ z_mm, volume_L: plain_L[i]! + added_L[article.replace(/w$/, '')]![i]! }));

export function levelAt_mm(table: readonly LevelRow[], volume_L: number): number {
  const above = table.findIndex((row) => row.volume_L > volume_L);
  const [low, high] = [table[above - 1]!, table[above]!];
  return low.z_mm + ((high.z_mm - low.z_mm) * (volume_L - low.volume_L)) / (high.volume_L - low.volume_L);
}
