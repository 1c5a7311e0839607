import type { Dimension } from './quantity.ts';

/** SI = number × factor + zero. `name` is how it is printed and the key everywhere; `ucum` is for data files. */
export interface Unit {
  readonly name: string;
  /** Further spellings that are read and never written. */
  readonly spellings: readonly string[];
  readonly dimension: Dimension;
  readonly factor: number;
  readonly zero: number;
  readonly ucum: string;
  readonly system: 'si' | 'us' | 'other';
  readonly source: string;
}

const brochure = 'SI Brochure, 9th ed. (2019)';
const accepted = 'SI Brochure, 9th ed. (2019), Table 8: non-SI unit accepted for use with the SI';
const sp811 = 'NIST SP 811 (2008), Appendix B.8';
const yardAndPound =
  'international yard and pound (1959): 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg; NIST SP 811 (2008), B.8';
const gallonUS = 'US gallon = 231 in³, exact; NIST SP 811 (2008), B.8';
const gallonUK = 'imperial gallon = 4.546 09 L, exact; NIST SP 811 (2008), B.8';
const fahrenheit = 't/°F = 1.8 t/°C + 32, exact; NIST SP 811 (2008), B.8';
const poundForce = 'lb × 9.806 65 m/s², exact; NIST SP 811 (2008), B.8';
const ucumTurn = '1 rev = 2π rad, by definition';
const product = 'product of the units above, by definition';

/** Force of one pound under standard gravity, N: 0.453 592 37 × 9.806 65. */
const lbf = 4.4482216152605;
const foot = 0.3048;
const mile = 1609.344;
const btu = 1055.05585262;
const turn = 2 * Math.PI;
const degreeF = 5 / 9;

/** Spellings are parted by `|`. The signs · ⋅ * - and a space between letters are one sign, and so are ² and ^2 and 2. */
export const units: readonly Unit[] = [
  ...of('length', [
    si('m', 1, 'm', brochure, 'meter|metre|meters|metres'),
    si('cm', 1e-2, 'cm', brochure),
    si('mm', 1e-3, 'mm', brochure, 'millimeter|millimetre|millimeters|millimetres'),
    si('µm', 1e-6, 'um', brochure, 'um|micron|microns'),
    si('km', 1e3, 'km', brochure),
    us('in', 0.0254, '[in_i]', yardAndPound, 'inch|inches|″|"'),
    us('ft', foot, '[ft_i]', yardAndPound, 'foot|feet'),
    us('mi', mile, '[mi_i]', yardAndPound, 'mile|miles'),
  ]),
  ...of('area', [
    si('m²', 1, 'm2', brochure),
    si('cm²', 1e-4, 'cm2', brochure),
    si('mm²', 1e-6, 'mm2', brochure),
    us('in²', 0.0254 ** 2, '[sin_i]', yardAndPound, 'sq in'),
    us('ft²', foot ** 2, '[sft_i]', yardAndPound, 'sq ft'),
  ]),
  ...of('volume', [
    si('m³', 1, 'm3', brochure),
    si('L', 1e-3, 'L', accepted, 'l|liter|litre|liters|litres|dm³'),
    si('mL', 1e-6, 'mL', accepted, 'ml|cm³|cc|ccm'),
    us('US gal', 3.785411784e-3, '[gal_us]', gallonUS, 'US gallon|US gallons|gal (US)|U.S. gal'),
    us('US qt', 0.946352946e-3, '[qt_us]', gallonUS, 'US quart|US quarts|qt (US)|U.S. qt'),
    us('US pt', 0.473176473e-3, '[pt_us]', gallonUS, 'US pint|US pints|pt (US)|U.S. pt'),
    us('US fl oz', 29.5735295625e-6, '[foz_us]', gallonUS, 'fl oz (US)|U.S. fl oz'),
    other('imp gal', 4.54609e-3, '[gal_br]', gallonUK, 'imp gallon|imperial gal|imperial gallon|UK gal|gal (imp)'),
    other('imp qt', 1.1365225e-3, '[qt_br]', gallonUK, 'imp quart|imperial qt|imperial quart|UK qt|qt (imp)'),
    other('imp pt', 0.56826125e-3, '[pt_br]', gallonUK, 'imp pint|imperial pt|imperial pint|UK pt|pt (imp)'),
    other('imp fl oz', 28.4130625e-6, '[foz_br]', gallonUK, 'imperial fl oz|UK fl oz|fl oz (imp)'),
    us('in³', 0.0254 ** 3, '[cin_i]', yardAndPound, 'cu in'),
  ]),
  ...of('flow', [si('m³/s', 1, 'm3/s', brochure), si('L/s', 1e-3, 'L/s', accepted, 'l/s')]),
  ...of('mass', [
    si('kg', 1, 'kg', brochure, 'kilogram|kilograms|kilo|kilos'),
    si('g', 1e-3, 'g', brochure, 'gram|grams|gramme|grammes'),
    si('mg', 1e-6, 'mg', brochure),
    si('t', 1e3, 't', accepted, 'tonne|tonnes'),
    us('lb', 0.45359237, '[lb_av]', yardAndPound, 'lbs|lbm|pound|pounds'),
    us('oz', 0.45359237 / 16, '[oz_av]', yardAndPound, 'ounce|ounces'),
  ]),
  ...of('time', [
    si('s', 1, 's', brochure, 'sec|secs|second|seconds'),
    si('ms', 1e-3, 'ms', brochure),
    si('min', 60, 'min', accepted, 'mins|minute|minutes'),
    si('h', 3600, 'h', accepted, 'hr|hrs|hour|hours'),
    si('d', 86400, 'd', accepted, 'day|days'),
  ]),
  ...of('angle', [si('rad', 1, 'rad', brochure), si('°', Math.PI / 180, 'deg', accepted, 'deg|degree|degrees')]),
  ...of('speed', [
    si('m/s', 1, 'm/s', brochure),
    si('km/h', 1 / 3.6, 'km/h', accepted, 'kmh|kph|km/hr'),
    us('mph', 0.44704, '[mi_i]/h', yardAndPound, 'mi/h|miles/h|miles per hour'),
    us('ft/s', foot, '[ft_i]/s', yardAndPound, 'fps'),
    us('ft/min', foot / 60, '[ft_i]/min', yardAndPound, 'fpm'),
  ]),
  ...of('rotation', [
    si('rpm', turn / 60, '{rev}/min', ucumTurn, 'rev/min|r/min|1/min|/min|min-1|RPM|U/min'),
    si('rad/s', 1, 'rad/s', brochure),
    si('rev/s', turn, '{rev}/s', ucumTurn, 'r/s|rps'),
  ]),
  ...of('force', [
    si('N', 1, 'N', brochure, 'newton|newtons'),
    si('kN', 1e3, 'kN', brochure),
    us('lbf', lbf, '[lbf_av]', poundForce),
  ]),
  ...of('torque', [
    si('N·m', 1, 'N.m', brochure, 'Nm|nm|m·N'),
    si('mN·m', 1e-3, 'mN.m', brochure, 'mNm'),
    si('kN·m', 1e3, 'kN.m', brochure, 'kNm'),
    us('lbf·ft', lbf * foot, '[lbf_av].[ft_i]', poundForce, 'ft·lbf|lb·ft|ft·lb|ft·lbs|lbs·ft|lbft|ftlb|lbfft|ftlbf'),
    us('lbf·in', lbf * 0.0254, '[lbf_av].[in_i]', poundForce, 'in·lbf|lb·in|in·lb|in·lbs|lbs·in|lbin|inlb'),
    us('ozf·in', (lbf * 0.0254) / 16, '[lbf_av].[in_i]/16', poundForce, 'oz·in|in·oz'),
  ]),
  ...of('power', [
    si('W', 1, 'W', brochure, 'watt|watts'),
    si('mW', 1e-3, 'mW', brochure),
    si('kW', 1e3, 'kW', brochure, 'kilowatt|kilowatts'),
    us('hp (mechanical)', 550 * lbf * foot, '[HP]', `550 ft·lbf/s; ${sp811}`, 'mechanical hp|hp mech|hp (mech)'),
    other('hp (metric)', 735.49875, '75.kgf.m/s', `75 kgf·m/s; ${sp811}`, 'metric hp|hp metric|PS'),
    us('hp (electric)', 746, '746.W', sp811, 'electric hp|hp electric'),
    us('Btu/h', btu / 3600, '[Btu_IT]/h', `International Table Btu; ${sp811}`, 'BTU/h|Btu/hr|BTU/hr|BTUH|btu/h'),
  ]),
  ...of('pressure', [
    si('Pa', 1, 'Pa', brochure, 'pascal|pascals'),
    si('hPa', 100, 'hPa', brochure),
    si('kPa', 1e3, 'kPa', brochure),
    si('MPa', 1e6, 'MPa', brochure),
    si('GPa', 1e9, 'GPa', brochure),
    other('mbar', 100, 'mbar', sp811, 'millibar'),
    other('bar', 1e5, 'bar', sp811),
    us('psi', lbf / 0.0254 ** 2, '[psi]', poundForce, 'lbf/in²|lb/in²|PSI'),
    us('inH₂O', 249.08891, "[in_i'H2O]", `conventional inch of water, 2.490 889 E+02 in ${sp811}`, 'in H₂O|inH2O|"H2O'),
  ]),
  ...of('temperature', [
    si('°C', 1, 'Cel', brochure, 'degC|deg C|ºC|˚C|C|Cel|celsius|degrees C|degrees Celsius|° C', 273.15),
    us(
      '°F',
      degreeF,
      '[degF]',
      fahrenheit,
      'degF|deg F|ºF|˚F|F|fahrenheit|degrees F|degrees Fahrenheit|° F',
      459.67 / 1.8,
    ),
    si('K', 1, 'K', brochure, 'kelvin|kelvins'),
  ]),
  ...of('temperature-difference', [
    si('K', 1, 'K', brochure, 'kelvin|kelvins|Δ°C|delta °C|delta C|°C difference'),
    si('mK', 1e-3, 'mK', brochure),
    us('Δ°F', degreeF, '[degR]', fahrenheit, 'delta °F|delta F|°F difference|°R|degR|rankine'),
  ]),
  ...of('temperature-rate', [
    si('K/s', 1, 'K/s', brochure, '°C/s|degC/s|C/s'),
    si('K/min', 1 / 60, 'K/min', accepted, '°C/min|degC/min|C/min'),
    si('K/h', 1 / 3600, 'K/h', accepted, '°C/h|degC/h|C/h|°C/hr|K/hr'),
    us('°F/min', degreeF / 60, '[degR]/min', fahrenheit, 'degF/min|F/min'),
  ]),
  ...of('kinematic-viscosity', [
    si('mm²/s', 1e-6, 'mm2/s', brochure),
    si('m²/s', 1, 'm2/s', brochure),
    other('cSt', 1e-6, 'cSt', sp811, 'cst|centistokes|centistoke'),
  ]),
  ...of('dynamic-viscosity', [
    si('mPa·s', 1e-3, 'mPa.s', brochure),
    si('Pa·s', 1, 'Pa.s', brochure),
    other('cP', 1e-3, 'cP', sp811, 'cp|centipoise'),
  ]),
  ...of('pressure-viscosity', [
    si('1/GPa', 1e-9, '/GPa', brochure, '/GPa|GPa-1|GPa⁻¹|per GPa'),
    si('1/Pa', 1, '/Pa', brochure, '/Pa|Pa-1|Pa⁻¹|m²/N|per Pa'),
  ]),
  ...of('surface-tension', [
    si('mN/m', 1e-3, 'mN/m', brochure),
    si('N/m', 1, 'N/m', brochure),
    other('dyn/cm', 1e-3, 'dyn/cm', sp811, 'dyne/cm'),
  ]),
  ...of('mass-fraction', [
    si('mg/kg', 1e-6, 'mg/kg', brochure, 'µg/g|ppm (m/m)|ppm by mass'),
    si('g/kg', 1e-3, 'g/kg', brochure, 'mg/g'),
    si('% (m/m)', 1e-2, '%', brochure, '% by mass|mass %|% m/m'),
  ]),
  ...of('acid-number', [si('mg KOH/g', 1e-3, 'mg/g', product, 'mgKOH/g|mg(KOH)/g|g KOH/kg')]),
  ...of('density', [
    si('kg/m³', 1, 'kg/m3', brochure, 'kg m-3'),
    si('g/cm³', 1e3, 'g/cm3', brochure, 'g/cc|g/ccm'),
    si('g/mL', 1e3, 'g/mL', accepted, 'g/ml'),
    si('kg/L', 1e3, 'kg/L', accepted, 'kg/l|kg/dm³'),
    si('g/L', 1, 'g/L', accepted, 'g/l'),
    us('lb/ft³', 0.45359237 / foot ** 3, '[lb_av]/[cft_i]', yardAndPound),
    us('lb/US gal', 0.45359237 / 3.785411784e-3, '[lb_av]/[gal_us]', gallonUS, 'lb/gal (US)'),
    us('g/US gal', 1e-3 / 3.785411784e-3, 'g/[gal_us]', gallonUS, 'g/gal (US)'),
  ]),
  ...of('heat-capacity', [
    si('J/K', 1, 'J/K', brochure, 'J/°C'),
    si('kJ/K', 1e3, 'kJ/K', brochure, 'kJ/°C'),
    us('Btu/°F', btu * 1.8, '[Btu_IT]/[degR]', sp811, 'BTU/°F|BTU/F|Btu/F'),
  ]),
  ...of('specific-heat', [
    si('J/(kg·K)', 1, 'J/(kg.K)', brochure, 'J/kg/K|J/kgK|J/kg·K|J/(kgK)|J/(kg·°C)'),
    si('kJ/(kg·K)', 1e3, 'kJ/(kg.K)', brochure, 'kJ/kg/K|kJ/kgK|kJ/kg·K|kJ/(kgK)|kJ/(kg·°C)|J/(g·K)'),
    us('Btu/(lb·°F)', 4186.8, '[Btu_IT]/([lb_av].[degR])', sp811, 'BTU/(lb·°F)|Btu/lb/°F|Btu/lb·°F'),
  ]),
  ...of('conductance', [
    si('W/K', 1, 'W/K', brochure, 'W/°C'),
    us('Btu/(h·°F)', (btu * 1.8) / 3600, '[Btu_IT]/(h.[degR])', sp811, 'BTU/(h·°F)|Btu/h/°F|Btu/(hr·°F)'),
  ]),
  ...of('conductivity', [
    si('W/(m·K)', 1, 'W/(m.K)', brochure, 'W/m/K|W/mK|W/m·K|W/(mK)|W/(m·°C)'),
    us('Btu/(h·ft·°F)', (btu * 1.8) / 3600 / foot, '[Btu_IT]/(h.[ft_i].[degR])', sp811, 'BTU/(h·ft·°F)|Btu/(hr·ft·°F)'),
  ]),
  ...of('film-coefficient', [
    si('W/(m²·K)', 1, 'W/(m2.K)', brochure, 'W/m²/K|W/m²K|W/m²·K|W/(m²K)|W/(m²·°C)'),
    us('Btu/(h·ft²·°F)', (btu * 1.8) / 3600 / foot ** 2, '[Btu_IT]/(h.[sft_i].[degR])', sp811, 'BTU/(h·ft²·°F)'),
  ]),
  ...of('voltage', [si('V', 1, 'V', brochure, 'volt|volts'), si('mV', 1e-3, 'mV', brochure, 'millivolt|millivolts')]),
  ...of('energy', [
    si('J', 1, 'J', brochure, 'joule|joules'),
    si('kJ', 1e3, 'kJ', brochure),
    si('MJ', 1e6, 'MJ', brochure),
    si('Wh', 3600, 'W.h', product, 'W·h'),
    si('kWh', 3.6e6, 'kW.h', product, 'kW·h'),
    us('Btu', btu, '[Btu_IT]', `International Table Btu; ${sp811}`, 'BTU|btu'),
  ]),
  ...of('energy-per-distance', [
    si('kWh/100 km', 36, 'kW.h/(100.km)', product, 'kWh/100km|kW·h/100 km|kWh per 100 km'),
    si('Wh/km', 3.6, 'W.h/km', product, 'W·h/km'),
    si('J/m', 1, 'J/m', brochure),
    si('MJ/km', 1e3, 'MJ/km', brochure),
    us('kWh/100 mi', 36e3 / mile, 'kW.h/(100.[mi_i])', product, 'kWh/100mi'),
  ]),
  ...of('fuel-per-distance', [
    si('L/100 km', 1e-8, 'L/(100.km)', product, 'L/100km|l/100 km|l/100km|litres per 100 km|liters per 100 km'),
    si('mL/km', 1e-9, 'mL/km', product, 'ml/km'),
  ]),
  ...of('mass-per-distance', [
    si('g/km', 1e-6, 'g/km', product),
    us('g/mi', 1e-3 / mile, 'g/[mi_i]', product, 'g/mile'),
    si('kg/m', 1, 'kg/m', brochure),
  ]),
  ...of('distance-per-fuel', [
    us('mi/US gal', mile / 3.785411784e-3, '[mi_i]/[gal_us]', gallonUS, 'mpg (US)|US mpg|mpg US'),
    other('mi/imp gal', mile / 4.54609e-3, '[mi_i]/[gal_br]', gallonUK, 'mpg (imp)|imp mpg|imperial mpg|UK mpg|mpg UK'),
    si('km/L', 1e6, 'km/L', product, 'km/l'),
  ]),
  ...of('fuel-per-energy', [
    si('L/kWh', 1e-3 / 3.6e6, 'L/(kW.h)', product, 'l/kWh'),
    si('mL/kWh', 1e-6 / 3.6e6, 'mL/(kW.h)', product, 'ml/kWh'),
  ]),
  ...of('acceleration', [
    si('m/s²', 1, 'm/s2', brochure, 'm/s/s'),
    us('ft/s²', foot, '[ft_i]/s2', yardAndPound, 'ft/s/s'),
  ]),
  ...of('expansion', [
    si('1/K', 1, '/K', brochure, '/K|K-1|K⁻¹|per K|1/°C|/°C'),
    us('1/°F', 1.8, '/[degR]', fahrenheit, '/°F|1/F'),
  ]),
  ...of('heat-flux', [si('W/m²', 1, 'W/m2', brochure)]),
  ...of('line-load', [si('N/mm', 1e3, 'N/mm', brochure)]),
  ...of('ratio', [
    si('%', 1e-2, '%', brochure, 'percent|per cent|pct'),
    si('‰', 1e-3, '[ppth]', brochure, 'permille'),
    si('1', 1, '1', brochure),
  ]),
];

type Row = Omit<Unit, 'dimension'>;
type Maker = (name: string, factor: number, ucum: string, source: string, spellings?: string, zero?: number) => Row;

function of(dimension: Dimension, rows: readonly Row[]): Unit[] {
  return rows.map((row) => ({ ...row, dimension }));
}

function inSystem(system: Unit['system']): Maker {
  return (name, factor, ucum, source, spellings, zero = 0) => ({
    name,
    spellings: spellings?.split('|') ?? [],
    factor,
    zero,
    ucum,
    system,
    source,
  });
}

// Hoisted as functions because the table above, the story of this file, is built while the module loads.
function si(...row: Parameters<Maker>): Row {
  return inSystem('si')(...row);
}
function us(...row: Parameters<Maker>): Row {
  return inSystem('us')(...row);
}
function other(...row: Parameters<Maker>): Row {
  return inSystem('other')(...row);
}
