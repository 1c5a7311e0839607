import { levelTable } from './levels.ts';
import { sampleLines, type Wanted } from './samples.ts';

const plainWall = '[[40, -128], [95, -118], [128, -80], [140, -20], [138, 30], [118, 85], [80, 120], [40, 132]]';
const deepWall =
  '[[40, -128], [60, -158], [120, -158], [158, -120], [166, -20], [150, 60], [118, 95], [80, 122], [40, 132]]';

const survey = (id: string): string =>
  ['level-table:', '  method: pour_and_dip', '  rows:']
    .concat(levelTable(id).map((r) => `    - { z: ${r.z_mm} mm, volume: ${r.volume_L.toFixed(2)} L }`))
    .join('\n');

const note = (id: string, fields: string, words: string): readonly [string, string] => [
  `articles/${id}.md`,
  `---\nid: ${id}\n${fields.trim()}\nshown-to: public\n---\n${words.trim()}\n`,
];

const liquid = (id: string, fields: string, words: string): readonly [string, string] => [
  `oils/${id}.md`,
  `---\nid: ${id}\n${fields.trim()}\nshown-to: public\n---\n${words.trim()}\n`,
];

export const pressedBowl = (): readonly [string, string] =>
  note(
    'P0',
    `
name: pressed bowl
kind: bowl
role: baseline
inside-shape: domed
material: steel
wall: 2.5 mm
outside-area: 0.10 m²
mass: 3.1 kg
heat-capacity: 1.43 kJ/K
obtained: bought_retail
samples: 1
condition: new
fill-advice: "to the plug"
${survey('P0')}
profile:
  wall: ${plainWall}`,
    `
The bowl the axle leaves the works with: pressed steel, painted, ten bolts, paper gasket. Bought over the counter in February; the one that came off the bus has a dent at the drain and was left on the shelf.

With 2.40 L in it the oil stands just under the filler lip.`,
  );

export const mineralOil = (opened = '2026-02-20', batch = 'B-0311', samples = ''): readonly [string, string] =>
  liquid(
    'O1',
    `
name: mineral 85W-90
grade: SAE 85W-90
base: mineral
viscosity: { at-40: 170 mm²/s, at-100: 15.6 mm²/s, source: measured }
density-15: 900 kg/m³
expansion: 0.0007 1/K
specific-heat: 2000 J/(kg·K)
max-sump: 120 °C
batch: ${batch}
opened: ${opened}
hours-used: 0 h
${samples}`,
    `
What the operator buys by the drum. Viscosity measured at both temperatures on a sample from the middle of the can. Fresh oil at every refit; what comes out is weighed and not put back.${samples === '' ? '' : ' One bottle came out of the middle of the drain after the first long run and its cool-down.'}`,
  );

const syntheticOil = (samples: string) =>
  liquid(
    'O2',
    `
name: synthetic 75W-80
grade: SAE 75W-80
base: synthetic
viscosity: { at-40: 58 mm²/s, at-100: 9.8 mm²/s, source: measured }
density-15: 866 kg/m³
expansion: 0.0007 1/K
specific-heat: 2000 J/(kg·K)
max-sump: 130 °C
batch: B-0318
opened: 2026-03-04
hours-used: 0 h
${samples}`,
    `
The thin one. Pours like water beside O1, and finds the drain washer if that was not done up with a spanner. Flushed with 1 L and drained hot each time the oil changed over, either way.`,
  );

const deepBowl = note(
  'P1',
  `
name: deep bowl
kind: bowl
role: candidate
inside-shape: deep
material: aluminium
wall: 5 mm
outside-area: 0.21 m²
mass: 4.6 kg
heat-capacity: 4.14 kJ/K
obtained: bought_retail
samples: 1
condition: new
fill-advice: "to the plug, about 3.6 L"
${survey('P1')}
profile:
  wall: ${deepWall}`,
  `
Cast aluminium with ribs outside and a pocket below the ring gear. Comes with its own filler plug. The leaflet says to fill to the plug and names no litres; a jug says 3.6 L. At 2.40 L the ring gear still dips, but the pinion race is a long way above the oil.

The sump probe has a port of its own in the pocket, 36 mm lower than in the other bowls.`,
);

const tray = note(
  'P2',
  `
name: catch tray
kind: insert
role: candidate
inside-shape: trough
material: steel
wall: 2.5 mm
outside-area: 0.10 m²
mass: 3.8 kg
heat-capacity: 1.75 kJ/K
obtained: made_here
samples: 1
condition: new
${survey('P2')}
profile:
  wall: ${plainWall}
  tray: [[72, 18], [122, 36]]`,
  `
A folded tray, 1.5 mm, welded inside a bowl of the P0 kind behind the ring gear, with two 8 mm holes at its low end. It takes oil off the gear and lets it back in its own time. Welded here, pickled and flushed twice.`,
);

const moulded = note(
  'P3',
  `
name: moulded bowl
kind: bowl
role: candidate
inside-shape: domed
material: gf_polyamide
wall: 4.5 mm
outside-area: 0.10 m²
mass: 1.2 kg
heat-capacity: 1.90 kJ/K
obtained: lent
samples: 1
condition: new
max-sump: 115 °C
${survey('P3')}
profile:
  wall: ${plainWall}`,
  `
Glass-filled polyamide with moulded-in bolt sleeves and a rubber seal instead of the paper gasket. Inside it follows the pressed bowl, a little tighter low down. Lent by the operator, who had it from a supplier. The supplier states a service limit of 115 °C.`,
);

const shroud = note(
  'P4',
  `
name: ring gear shroud
kind: insert
role: candidate
inside-shape: shroud
material: steel
wall: 1 mm
outside-area: 0.10 m²
mass: 3.7 kg
heat-capacity: 1.69 kJ/K
obtained: made_here
samples: 1
condition: new
${survey('P4')}
profile:
  wall: ${plainWall}
  shroud: { radius: 131 mm, from: -60°, to: 150° }`,
  `
A 1 mm sheet shroud, 7 mm clear of the ring gear's rim and 5 mm of its flanks, hung on three of the bowl bolts inside a bowl of the P0 kind. Mass is given with the bowl. It keeps the gear out of most of the oil, and most of the oil off the gear.`,
);

const thinBowl = note(
  'P5',
  `
name: thin cast bowl
kind: bowl
role: candidate
inside-shape: domed
material: aluminium
wall: 3 mm
outside-area: 0.10 m²
mass: 2.2 kg
heat-capacity: 1.98 kJ/K
obtained: lent
samples: 1
condition: new
${survey('P5')}
profile:
  wall: ${plainWall}`,
  `
Cast aluminium, thin and smooth inside, without ribs. It came fourteen months after the first run of the series, when the gears had done another winter on other work. Inside it follows the pressed bowl to a few millilitres.`,
);

const clear = (id: string, of: string, standsInFor: string, differences: string, words: string) =>
  note(
    id,
    `
name: window copy of ${of}
kind: window_copy
role: window_copy
stands-in-for: [${standsInFor}]
differences: [${differences}]
inside-shape: ${{ P1: 'deep', P2: 'trough', P4: 'shroud' }[of] ?? 'domed'}
material: polycarbonate
wall: 8 mm
obtained: made_here
samples: 1
condition: new
max-sump: 60 °C
level-table-of: ${of}`,
    words,
  );

const windows = [
  clear(
    'P0w',
    'P0',
    'P0, P3',
    '"clear moulded bowl, 8 mm wall", "no paint, no gasket bead inside"',
    'Clear bowl of the same inside as the pressed one, checked with a jug at three heights. Also stands in for the moulded bowl, which has no copy of its own. A 20 mm grid is scribed behind the oil on the left.',
  ),
  clear(
    'P1w',
    'P1',
    'P1',
    '"clear plate set in its floor", "ribs cut away around the plate"',
    'The deep bowl itself with a clear plate let into its floor and another in its back. Seen from below, so the wall above the axle is out of view.',
  ),
  clear(
    'P2w',
    'P2',
    'P2',
    '"clear moulded bowl, 8 mm wall", "tray screwed in, not welded"',
    'Clear bowl with the tray screwed to two bosses. The screw heads stand 3 mm into the oil on the left.',
  ),
  clear(
    'P4w',
    'P4',
    'P4',
    '"clear moulded bowl, 8 mm wall", "shroud cut back 12 mm at the filler to see in"',
    'Clear bowl over the same shroud that P4 uses. The shroud hides the gear, so what can be graded is what comes out of it.',
  ),
];

export const articleTexts = (wanted: Wanted): readonly (readonly [string, string])[] => [
  pressedBowl(),
  deepBowl,
  tray,
  moulded,
  shroud,
  thinBowl,
  ...windows,
  mineralOil(undefined, undefined, sampleLines('O1', wanted)),
  syntheticOil(sampleLines('O2', wanted)),
];
