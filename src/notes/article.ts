import type { Reading } from '../finding/finding.ts';
import type { Article, InsideProfile, LevelTable } from '../trial/article.ts';
import {
  code,
  group,
  headFields,
  list,
  optional,
  point,
  quantity,
  required,
  text,
  type ValuesOf,
  whole,
  words,
} from './fields.ts';
import type { Note } from './note.ts';
import type { Into } from './read-value.ts';
import { readRecord, tellAt } from './record.ts';
import * as say from './texts-check.ts';

const height = quantity('length', '-52 mm', { hard: ['-2 m', '2 m'], soft: ['-400 mm', '400 mm'] });

const levelTable = group({
  method: required(text('pour_and_dip'), 'A table from a drawing is worth less than one poured and dipped.'),
  rows: required(
    list(
      group({
        z: required(height, 'Height above the axle centreline, negative below.'),
        volume: required(
          quantity('volume', '2.45 L', { hard: ['0 L', '200 L'] }),
          'The litres standing below this height.',
        ),
      }),
      6,
    ),
    'Litres become a level, and a level litres, between its rows only.',
  ),
});

const profile = group({
  wall: required(list(point, 2), 'The inside of the wall, [x, z] in mm, x behind the axle centre.'),
  tray: optional(list(point, 2), 'A catch tray, [x, z] in mm.'),
  shroud: optional(
    group({
      radius: required(
        quantity('length', '131 mm', { hard: ['1 mm', '2 m'] }),
        'How far from the axle centre it stands.',
      ),
      from: required(quantity('angle', '-60°'), 'Where the arc begins, from the horizontal behind the axle, upwards.'),
      to: required(quantity('angle', '150°'), 'Where the arc ends.'),
    }),
    'An arc round the ring gear.',
  ),
});

/** `articles/<id>.md` */
export const articleKind = group({
  id: required(code('P1'), 'Runs name their article by it; it is also the name of the file.'),
  name: required(text('deep bowl'), 'Readers see it beside the id.'),
  kind: required(words('cover', 'bowl', 'insert', 'housing', 'window_copy', 'assembly'), 'It says what was exchanged.'),
  role: required(words('candidate', 'baseline', 'window_copy', 'modified'), 'It says what the article is compared as.'),
  'stands-in-for': optional(list(code('P1'), 1), 'A window copy shows the flow of the article it stands in for.'),
  differences: optional(list(text('clear plate set in the floor'), 1), 'What a copy does not share with its original.'),
  'inside-shape': required(
    words('domed', 'boxed', 'deep', 'ribbed', 'trough', 'shroud', 'none', 'other'),
    'The inside is what the oil meets.',
  ),
  material: required(
    words('steel', 'cast_iron', 'aluminium', 'magnesium', 'gf_polyamide', 'polycarbonate', 'acrylic', 'other'),
    'Wall material decides part of what is shed.',
  ),
  wall: optional(
    quantity('length', '5 mm', { hard: ['0.1 mm', '100 mm'], soft: ['0.5 mm', '20 mm'] }),
    'Thickness of the wall.',
  ),
  'outside-area': optional(
    quantity('area', '0.10 m²', { hard: ['0.0001 m²', '20 m²'] }),
    'Outside surface, fins and all; it bounds what the part can shed by itself.',
  ),
  mass: optional(quantity('mass', '4.6 kg', { hard: ['1 g', '500 kg'] }), 'The part stores heat by its mass.'),
  'heat-capacity': optional(
    quantity('heat-capacity', '4.14 kJ/K', { hard: ['0.001 kJ/K', '1000 kJ/K'] }),
    'What the part stores per kelvin.',
  ),
  obtained: required(
    words('bought_retail', 'lent', 'gift', 'made_here', 'used'),
    'Where an article came from is part of the result.',
  ),
  samples: required(whole('1', [1, 1000]), 'One sample says nothing about the next one off the shelf.'),
  condition: required(text('new'), 'A dented or painted part is another part.'),
  'max-sump': optional(
    quantity('temperature', '115 °C', { hard: ['0 °C', '300 °C'] }),
    'A run past the stated limit is flagged.',
  ),
  'fill-advice': optional(text('to the plug, about 3.6 L'), 'What the maker says to fill, in the maker’s sense.'),
  'level-table': optional(levelTable, 'It turns litres into a level and a level into litres.'),
  'level-table-of': optional(code('P0'), 'The article whose level table holds for this one too.'),
  profile: optional(profile, 'For the drawing only; no figure comes from it.'),
  ...headFields,
});

/** An article as its own note says it; the level table of another is looked up when all articles are read. */
export interface ArticleNote extends Article {
  readonly levelTableOf: string | null;
}

export const readArticle = (note: Note): Reading<ArticleNote> =>
  readRecord(articleKind, note, (v, head, into): ArticleNote => {
    const copy = v.kind === 'window_copy' || v.role === 'window_copy';
    if (copy && v['stands-in-for'] === null) tellAt(into, 'role', say.copyOfWhat());
    if (v['level-table'] && v['level-table-of'] !== null) tellAt(into, 'level-table-of', say.twoLevelTables());
    return {
      ...head,
      id: v.id,
      name: v.name,
      kind: v.kind,
      role: v.role,
      standsInFor: v['stands-in-for'] ?? [],
      differences: v.differences ?? [],
      insideShape: v['inside-shape'],
      material: v.material,
      wall_m: v.wall?.value ?? null,
      outsideArea_m2: v['outside-area']?.value ?? null,
      mass_kg: v.mass?.value ?? null,
      heatCapacity_J_K: v['heat-capacity']?.value ?? null,
      obtained: v.obtained,
      samples: v.samples,
      condition: v.condition,
      maxSump_K: v['max-sump']?.value ?? null,
      makerFillAdvice: v['fill-advice'],
      levelTable: v['level-table'] && toLevelTable(v['level-table'], into),
      profile: v.profile && toProfile(v.profile),
      levelTableOf: v['level-table-of'],
    };
  });

/** Both columns rise strictly: otherwise a level would have two volumes. The first row that does not is told. */
function toLevelTable(v: ValuesOf<(typeof levelTable)['fields']>, into: Into): LevelTable {
  const rows = v.rows.map((row) => ({ z_m: row.z.value, volume_m3: row.volume.value }));
  for (const [i, row] of rows.entries()) {
    const before = rows[i - 1];
    if (!before || (row.z_m > before.z_m && row.volume_m3 > before.volume_m3)) continue;
    const column = row.z_m > before.z_m ? 'volume' : 'z';
    tellAt(
      into,
      `level-table.rows.${i}.${column}`,
      say.rowNotRising(column, v.rows[i]?.[column].asWritten ?? '', v.rows[i - 1]?.[column].asWritten ?? ''),
    );
    break;
  }
  return { method: v.method, rows };
}

function toProfile(v: ValuesOf<(typeof profile)['fields']>): InsideProfile {
  const inMetres = ([x, z]: readonly [number, number]) => ({ x_m: x / 1000, z_m: z / 1000 });
  return {
    wall: v.wall.map(inMetres),
    tray: v.tray?.map(inMetres) ?? null,
    shroud: v.shroud && {
      radius_m: v.shroud.radius.value,
      from_rad: v.shroud.from.value,
      to_rad: v.shroud.to.value,
    },
  };
}
