import { gradeLimits, readGrade } from '../physics/grades.ts';
import type { Figure } from '../ledger/figure.ts';
import type { Oil } from '../trial/oil.ts';
import { articleSpan, cellDetail, classWord, citedValue, doubtOf, figureWords, toWorking } from './cite.ts';
import { dateWords } from './dates.ts';
import { quantityText } from './digits.ts';
import { doseSection, isDose } from './dose.ts';
import { noteSection } from './note-fields.ts';
import type { MarginNote, Page, Section, Span } from './page.ts';
import { samplesSection } from './samples.ts';
import { facts, link, listNote, listOf, prose, row, section, tableBlock } from './spans.ts';
import { groupBy, type View } from './view.ts';

/** Every band the grade names, and whether the oil's own viscosity lies in it. */
function gradeWords(oil: Oil): Span[] {
  const grade = readGrade(oil.grade);
  if (grade === null) return ['not a grade of SAE J306 or ISO 3448: nothing to hold it against'];
  const words = gradeLimits({ ...oil, grade }).map((limit) => {
    const at = limit.of === 'nu40' ? '40' : '100';
    const to = Number.isFinite(limit.to_m2_s) ? ` to ${viscosityText(limit.to_m2_s)}` : ' or more';
    return `${limit.grade}: ${viscosityText(limit.from_m2_s)}${to} at ${at}\u202f°C, ${limit.holds ? 'kept' : 'not kept'}`;
  });
  return [`${words.join('; ')} (SAE J306, 2019; ISO 3448).`];
}

const sourceWords: Readonly<Record<Oil['nuSource'], string>> = {
  measured: 'measured',
  data_sheet: 'from its data sheet',
  typical: 'typical of its grade, not of this batch',
};

/** One lubricant: two viscosities with their source, what follows from them, and where it was used. */
export function oilPage(view: View, oil: Oil): Page {
  const figures = (view.figuresOf.get(oil.id) ?? []).filter(
    (figure) => !isDose(figure) && figure.at.sample === undefined,
  );
  return {
    kind: 'oil',
    path: `${view.base}oils/${oil.id}/`,
    title: `${oil.id} ${oil.name}`,
    description: `Oil sheet of ${oil.id} ${oil.name} in ${view.series.title}.`,
    whereabouts: [link(view.base, view.series.title), ` · oil sheet · ${oil.grade}`],
    lead: [
      `${oil.grade}, ${oil.base === 'semi' ? 'part synthetic' : oil.base === 'unknown' ? 'base not known' : oil.base}: ${viscosityText(oil.nu40_m2_s)} at 40\u202f°C and ${viscosityText(oil.nu100_m2_s)} at 100\u202f°C, ${sourceWords[oil.nuSource]}.`,
    ],
    banners: [],
    series: view.series.id,
    sections: [
      section(
        'facts',
        'What it is',
        [
          facts([
            ['Grade as typed', [oil.grade]],
            ['What the grade promises', gradeWords(oil)],
            oil.nu100_m2_s < 2e-6 ? ['Viscosity index', ['not defined below 2 mm²/s at 100 °C']] : null,
            ['Base', [oil.base]],
            ['Density at 15 °C', [quantityText(oil.density15_kg_m3, 'kg/m³', 0, view.withUs)]],
            ['Specific heat', [quantityText(oil.specificHeat_J_kgK, 'J/(kg·K)', 0)]],
            oil.maxSump_K === null ? null : ['Stated sump limit', [quantityText(oil.maxSump_K, '°C', 0, view.withUs)]],
            ['Batch', [oil.batch]],
            oil.openedOn === null ? null : ['Opened', [dateWords(oil.openedOn)]],
            oil.hoursUsed_s === null ? null : ['Used before', [quantityText(oil.hoursUsed_s, 'h', 1)]],
          ]),
        ],
        [
          {
            name: 'How sure.',
            text: [
              oil.nuSource === 'measured'
                ? 'Its viscosities were measured.'
                : `Its viscosities are ${sourceWords[oil.nuSource]}; another batch may differ.`,
            ],
          },
        ],
      ),
      figures.length === 0
        ? null
        : section(
            'what-it-gives',
            'What follows',
            [
              tableBlock(
                'figures',
                ['wide figure', 'number value', 'number 95 %', 'class', ''],
                figures.map((f) =>
                  row(figureWords(f), citedValue(view, f), doubtOf(f), classWord(f), toWorking(view, f)),
                ),
              ),
            ],
            [
              outsideNote(figures),
              {
                name: 'Between the two.',
                text: [
                  'By the straight line through both in the double logarithm of viscosity; see ',
                  link('method/', 'Method'),
                  '.',
                ],
              },
            ],
          ),
      doseSection(view, oil),
      samplesSection(view, oil),
      usedSection(view, oil),
      noteSection(view, oil),
    ].filter((s) => s !== null),
  };
}

/** Where a relation behind a figure is outside of its range: the figure stands, and this beside it. */
function outsideNote(figures: readonly Figure[]): MarginNote | null {
  const outside = figures.flatMap((f) => f.notes.map((note) => `${figureWords(f)}: ${note}`));
  return outside.length === 0 ? null : listNote('Outside its range.', outside);
}

const viscosityText = (nu_m2_s: number): string => quantityText(nu_m2_s, 'mm²/s', nu_m2_s < 1e-4 ? 1 : 0);

function usedSection(view: View, oil: Oil): Section {
  const runs = view.runs.filter((run) => run.oil === oil.id);
  const byCell = [
    ...groupBy(runs, ({ article, id }) => {
      const cell = view.input.derived.get(id)?.cell;
      return `${article}|${cell ? cellDetail(cell) : ''}`;
    }),
  ].sort(([a], [b]) => (a < b ? -1 : 1));
  return section('runs', 'Where it was used', [
    byCell.length === 0
      ? prose('In no run that can be shown.')
      : listOf(
          byCell.map(([key, list]): Span[] => {
            const [article = '', detail = ''] = key.split('|');
            return [
              articleSpan(view, article),
              detail === '' ? ': ' : `, ${detail}: `,
              ...list.flatMap(({ id }, i): Span[] => [...(i === 0 ? [] : [', ']), link(`${view.base}runs/${id}/`, id)]),
            ];
          }),
        ),
  ]);
}
