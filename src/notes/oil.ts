import type { Reading } from '../finding/finding.ts';
import type { Oil } from '../trial/oil.ts';
import { assumed, code, day, group, headFields, optional, quantity, required, text, words } from './fields.ts';
import type { Note } from './note.ts';
import { readRecord, tellAt } from './record.ts';
import { readSamples, samplesKind } from './samples.ts';
import * as say from './texts-check.ts';

/** `oils/<id>.md` */
export const oilKind = group({
  id: required(code('O1'), 'Runs name their oil by it; it is also the name of the file.'),
  name: required(text('mineral 85W-90'), 'Readers see it beside the id.'),
  grade: required(text('SAE 85W-90'), 'The designation on the drum is checked against the viscosity at 100 °C.'),
  base: required(
    words('mineral', 'synthetic', 'semi', 'unknown'),
    'The base decides which typical values may stand beside it.',
  ),
  viscosity: required(
    group({
      'at-40': required(
        quantity('kinematic-viscosity', '170 mm²/s', {
          hard: ['1 mm²/s', '5000 mm²/s'],
          soft: ['15 mm²/s', '700 mm²/s'],
        }),
        'With the one at 100 °C it gives the viscosity at any sump temperature.',
      ),
      'at-100': required(
        quantity('kinematic-viscosity', '15.6 mm²/s', {
          hard: ['0.5 mm²/s', '500 mm²/s'],
          soft: ['3 mm²/s', '60 mm²/s'],
        }),
        'With the one at 40 °C it gives the viscosity at any sump temperature.',
      ),
      source: required(words('measured', 'data_sheet', 'typical'), 'It decides how far the two values are trusted.'),
    }),
    'Spin loss follows viscosity more than anything else.',
  ),
  'density-15': required(
    quantity('density', '900 kg/m³', { hard: ['500 kg/m³', '1500 kg/m³'], soft: ['820 kg/m³', '930 kg/m³'] }),
    'It turns the grams poured in into litres.',
  ),
  expansion: assumed(
    quantity('expansion', '0.0007 1/K', { hard: ['0 1/K', '0.01 1/K'], soft: ['0.0006 1/K', '0.0009 1/K'] }),
    '0.0007 1/K',
    'It carries the density from 15 °C to the sump temperature.',
  ),
  'specific-heat': required(
    quantity('specific-heat', '2000 J/(kg·K)', {
      hard: ['500 J/(kg·K)', '5000 J/(kg·K)'],
      soft: ['1670 J/(kg·K)', '2100 J/(kg·K)'],
    }),
    'The oil holds part of the heat that a heat-up stores.',
  ),
  'max-sump': optional(
    quantity('temperature', '120 °C', { hard: ['0 °C', '300 °C'] }),
    'A run past the stated limit is flagged.',
  ),
  batch: required(text('B-0311'), 'Two drums of one oil need not be one oil.'),
  opened: optional(day, 'Oil ages from the day its drum is opened.'),
  'hours-used': required(
    quantity('time', '0 h', { hard: ['0 h', '100000 h'] }),
    'Used oil is thinner or thicker than the drum says.',
  ),
  samples: optional(samplesKind, 'Before and after: what the runs did to the oil.'),
  ...headFields,
});

export const readOil = (note: Note): Reading<Oil> =>
  readRecord(oilKind, note, (v, head, into): Oil => {
    const { 'at-40': at40, 'at-100': at100 } = v.viscosity;
    if (at40.value <= at100.value) tellAt(into, 'viscosity.at-40', say.viscosityOrder());
    return {
      ...head,
      id: v.id,
      name: v.name,
      grade: v.grade,
      base: v.base,
      nu40_m2_s: at40.value,
      nu100_m2_s: at100.value,
      ...(at40.plusMinus ? { nu40PlusMinus: at40.plusMinus } : {}),
      ...(at100.plusMinus ? { nu100PlusMinus: at100.plusMinus } : {}),
      nuSource: v.viscosity.source,
      density15_kg_m3: v['density-15'].value,
      expansion_1_K: v.expansion.value,
      specificHeat_J_kgK: v['specific-heat'].value,
      maxSump_K: v['max-sump']?.value ?? null,
      batch: v.batch,
      openedOn: v.opened,
      hoursUsed_s: v['hours-used'].value,
      samples: readSamples(v.samples, into),
    };
  });
