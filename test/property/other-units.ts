import type { SourceFile } from '../../src/trial/series.ts';
import { filesOf } from '../scenario/demo.ts';
import { textOf } from '../scenario/small.ts';

/**
 * The same book as another lab would have typed it. Factors are the exact ones of NIST SP 811 (2008), appendix B:
 * 1 in = 25.4 mm, 1 US gal = 231 in³, 1 lb = 0.453 592 37 kg, 1 lbf = 1 lb × 9.806 65 m/s², 1 hp = 550 ft·lbf/s, 1 Btu/lb = 2326 J/kg.
 * They are typed here anew and not taken from the table that is under test.
 */
const inch_m = 0.0254;
const foot_m = 0.3048;
const pound_kg = 0.45359237;
const poundForce_N = pound_kg * 9.80665;
const quart_L = (231 * 2.54 ** 3) / 4000;
const btuPerPoundF_J_kgK = 2326 * 1.8;

type Restated = readonly [unit: string, value: (v: number) => number];
const times = (unit: string, factor: number): Restated => [unit, (v) => v * factor];
const restated: Readonly<Record<string, Restated>> = {
  mm: times('in', 1e-3 / inch_m),
  m: times('ft', 1 / foot_m),
  L: times('US qt', 1 / quart_L),
  g: times('lb', 1e-3 / pound_kg),
  kg: times('lb', 1 / pound_kg),
  '°C': ['°F', (v) => v * 1.8 + 32],
  K: times('Δ°F', 1.8),
  'K/s': times('Δ°F/s', 1.8),
  'K/min': times('°F/min', 1.8),
  'N·m': times('lbf·ft', 1 / (poundForce_N * foot_m)),
  kW: times('hp (mechanical)', 1000 / (550 * poundForce_N * foot_m)),
  'm/s': times('ft/min', 60 / foot_m),
  'kg/m³': times('lb/ft³', foot_m ** 3 / pound_kg),
  'kJ/K': times('Btu/°F', 1000 / (btuPerPoundF_J_kgK * pound_kg)),
  'J/(kg·K)': times('Btu/(lb·°F)', 1 / btuPerPoundF_J_kgK),
  '1/K': times('1/°F', 1 / 1.8),
  rpm: times('rad/s', Math.PI / 30),
  s: times('min', 1 / 60),
};

const escaped = Object.keys(restated)
  .sort((a, b) => b.length - a.length)
  .map((unit) => unit.replace(/[()/]/g, '\\$&'))
  .join('|');
const amount = new RegExp(`(?<![\\w.-])(-?\\d+(?:\\.\\d+)?) (${escaped})(?![\\w·/²³°(])`, 'g');

/** Fifteen digits: what a double holds and a note may carry. */
const typed = (value: number): string => {
  const text = value.toPrecision(15);
  return text.includes('e') ? value.toFixed(18) : text;
};

function restatedNote(text: string): string {
  const end = text.indexOf('\n---\n', 4);
  const fields = text
    .slice(0, end)
    .replace(
      amount,
      (_, number: string, unit: string) => `${typed(restated[unit]![1](Number(number)))} ${restated[unit]![0]}`,
    )
    // Columns and clock of a map say their unit without a number.
    .replace(/unit: (N·m|°C|m\/s|rpm|mm|s)(?=[,\s}])/g, (_, unit: string) => `unit: ${restated[unit]![0]}`);
  return fields + text.slice(end);
}

const columnUnits = ['s', 'rpm', 'N·m', 'rpm', 'N·m', 'N·m', '°C', '°C', '°C', '°C', 'm/s', 'mm', null] as const;

function restatedLog(text: string): string {
  const [head, ...rows] = text.split('\n');
  const turned = rows.map((row) =>
    row
      .split(',')
      .map((cell, i) => {
        const unit = columnUnits[i] ?? null;
        return cell === '' || unit === null ? cell : typed(restated[unit]![1](Number(cell)));
      })
      .join(','),
  );
  return [head, ...turned].join('\n');
}

export const inOtherUnits = (files: readonly SourceFile[]): SourceFile[] =>
  filesOf(
    new Map(
      files.map(({ path }) => {
        const text = textOf(path, files);
        return [path, path.endsWith('.csv') ? restatedLog(text) : restatedNote(text)];
      }),
    ),
  );
