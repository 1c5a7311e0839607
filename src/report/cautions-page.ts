import { cautions } from './cautions.ts';
import type { Page } from './page.ts';
import { facts, listOf, prose, section, strong } from './spans.ts';

/** All rows in one place, and whose word counts above them. */
export function cautionsPage(): Page {
  return {
    kind: 'cautions',
    path: 'cautions/',
    title: 'Cautions',
    description: 'What to mind at each stage of an axle trial, and whose word counts.',
    whereabouts: ['The book · cautions'],
    lead: [
      'These rows remind the people at the rig. They release nothing and permit nothing: a person does, by name, before power.',
    ],
    banners: [],
    series: null,
    sections: [
      section('whose-word', 'Whose word counts', [
        prose('Where a row and one of these differ, the row gives way.'),
        listOf([
          [strong('The maker’s data'), ' of axle, vehicle, rig, absorber, fan, part and plastic.'],
          [strong('The lab’s own procedures'), ' and its risk assessment for this rig.'],
          [strong('Local law'), ' on machines, work equipment, lockout, noise, lifting, fire, roads and used oil.'],
          [
            strong('Licensed practice'),
            ' for high voltage, lifting and whatever else the law reserves for trained people.',
          ],
          [strong('The oil’s data sheet'), ' for flash point, skin contact and disposal.'],
        ]),
        prose(
          'Numbers in the rows are quoted for orientation only. The standards named give thresholds or methods; read them, not this page, before a number is used.',
        ),
      ]),
      ...cautions.map((row) =>
        section(row.stage, row.name, [
          prose(row.caution),
          facts([
            ['Hazard', [row.hazard]],
            ['Whose word counts', [row.deferral]],
          ]),
        ]),
      ),
      section('what-sheets-show', 'What the run sheets show', [
        listOf([
          ['The rows of a run’s kind, rig and conditions stand in the margin of its sheet.'],
          [
            strong('Release not recorded'),
            ' stands above a sheet whose note names nobody who released the run to power.',
          ],
          [strong('Cap exceeded'), ' stands above a run behind a window whose sump passed the cap of that window.'],
        ]),
      ]),
    ],
  };
}
