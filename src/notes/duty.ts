import type { Drive, Series } from '../trial/book.ts';
import { assumed, group, list, optional, quantity, required, words, type ValueOf } from './fields.ts';
import type { Into } from './read-value.ts';
import { tellAt } from './record.ts';
import * as say from './texts-check.ts';

/** What the vehicle does all day. */
export const dutyKind = group({
  drive: required(words('electric', 'petrol', 'petrol-charged', 'diesel'), 'What more or less power is paid with.'),
  'drive-efficiency': optional(
    quantity('ratio', '88 %', { hard: ['1 %', '100 %'], soft: ['60 %', '98 %'] }),
    'Of an electric drive, from the battery to the axle.',
  ),
  consumption: optional(
    quantity('energy-per-distance', '62 kWh/100 km', { hard: ['0.1 kWh/100 km', '2000 kWh/100 km'] }),
    'What an electric vehicle uses in all.',
  ),
  'fuel-consumption': optional(
    quantity('fuel-per-distance', '9.5 L/100 km', { hard: ['0.1 L/100 km', '500 L/100 km'] }),
    'What a vehicle with an engine uses in all.',
  ),
  'trip-scatter': assumed(
    quantity('ratio', '5 %', { hard: ['0 %', '100 %'] }),
    '5 %',
    'How far ordinary trips differ; a saving within it is not noticed.',
  ),
  mix: required(
    list(
      group({
        share: required(quantity('ratio', '40 %', { hard: ['0.1 %', '100 %'] }), 'Its share of the time.'),
        speed: required(quantity('speed', '30 km/h', { hard: ['0.1 km/h', '400 km/h'] }), 'The road speed.'),
      }),
      1,
    ),
    'Watts cost by the time that a speed is driven.',
  ),
});

const drives: Readonly<Record<string, Drive>> = {
  electric: 'electric',
  petrol: 'petrol',
  'petrol-charged': 'petrolTurbo',
  diesel: 'diesel',
};

/** Shares have to be the whole of the time; an electric drive has to say what is lost before the axle. */
export function dutyOf(v: ValueOf<typeof dutyKind> | null, into: Into): Series['duty'] {
  if (v === null) return null;
  const whole = v.mix.reduce((sum, { share }) => sum + share.value, 0);
  if (Math.abs(whole - 1) > 0.005) tellAt(into, 'duty.mix', say.dutyShares(whole));
  const efficiency = v['drive-efficiency']?.value ?? null;
  if (v.drive === 'electric' && efficiency === null) tellAt(into, 'duty.drive', say.noDriveEfficiency());
  return {
    drive: drives[v.drive]!,
    driveEfficiency: v.drive === 'electric' ? (efficiency ?? 1) : 1,
    consumption_J_m: v.consumption?.value ?? null,
    fuel_m2: v['fuel-consumption']?.value ?? null,
    tripScatter: v['trip-scatter'].value,
    mix: v.mix.map(({ share, speed }) => ({ share: share.value / whole, speed_m_s: speed.value })),
  };
}
