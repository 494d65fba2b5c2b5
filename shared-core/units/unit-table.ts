import type { QuantityKind, Unit } from './unit.ts';

const unit = (
  kind: QuantityKind,
  symbol: string,
  factor: number,
  spellings: readonly string[] = [],
  offset = 0,
): Unit => ({ symbol, kind, factor, offset, spellings });

/** Exact by definition: international pound and inch, standard gravity (CGPM 1901). */
const poundKg = 0.45359237;
const inchM = 0.0254;
const gravity = 9.80665;

/**
 * Every unit a person may type or the core may name. The kept units are V, A, Ω, A·h, W·h, W, °C, K, m, mm², m³/h, m/s,
 * rpm, kg, N, N·m, s, 1/h, F and 1.
 */
export const unitTable: readonly Unit[] = [
  unit('voltage', 'V', 1, ['volt', 'volts', 'vdc']),
  unit('voltage', 'mV', 1e-3, ['millivolt', 'millivolts']),
  unit('current', 'A', 1, ['amp', 'amps', 'ampere', 'amperes']),
  unit('current', 'mA', 1e-3, ['milliamp', 'milliamps']),
  unit('current', 'µA', 1e-6, ['ua', 'μa', 'microamp', 'microamps']),
  unit('resistance', 'Ω', 1, ['ohm', 'ohms', 'Ω', 'r']),
  unit('resistance', 'mΩ', 1e-3, ['mohm', 'mohms', 'milliohm', 'milliohms', 'mΩ']),
  unit('resistance', 'kΩ', 1e3, ['kohm', 'kohms', 'kiloohm', 'kΩ']),
  unit('resistance', 'MΩ', 1e6, []),
  unit('charge', 'A·h', 1, ['ah', 'a*h', 'amp-hour', 'amp-hours', 'amp hours']),
  unit('charge', 'mA·h', 1e-3, ['mah', 'ma*h']),
  unit('charge', 'A·min', 1 / 60, ['amin', 'a*min']),
  unit('charge', 'C', 1 / 3600, ['coulomb', 'coulombs', 'a·s', 'as']),
  unit('energy', 'W·h', 1, ['wh', 'w*h', 'watt-hour', 'watt-hours', 'watt hours']),
  unit('energy', 'kW·h', 1e3, ['kwh', 'kw*h']),
  unit('energy', 'J', 1 / 3600, ['joule', 'joules', 'ws', 'w·s']),
  unit('energy', 'kJ', 1 / 3.6, []),
  unit('power', 'W', 1, ['watt', 'watts']),
  unit('power', 'mW', 1e-3, ['milliwatt', 'milliwatts']),
  unit('power', 'kW', 1e3, ['kilowatt', 'kilowatts']),
  unit('power', 'MW', 1e6, []),
  unit('power', 'hp', 550 * 12 * inchM * poundKg * gravity, ['horsepower', 'bhp']),
  unit('temperature', '°C', 1, ['degc', 'deg c', 'celsius', '° c', 'centigrade', 'c']),
  unit('temperature', '°F', 5 / 9, ['degf', 'deg f', 'fahrenheit', '° f', 'f'], -160 / 9),
  unit('temperature-difference', 'K', 1, ['kelvin', 'kelvins']),
  unit('length', 'm', 1, ['metre', 'metres', 'meter', 'meters']),
  unit('length', 'mm', 1e-3, ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
  unit('length', 'cm', 1e-2, ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  unit('length', 'km', 1e3, ['kilometre', 'kilometres', 'kilometer', 'kilometers']),
  unit('length', 'in', inchM, ['inch', 'inches', '"', '″']),
  unit('length', 'ft', 12 * inchM, ['foot', 'feet', "'", '′']),
  unit('length', 'yd', 36 * inchM, ['yard', 'yards']),
  unit('length', 'mi', 63360 * inchM, ['mile', 'miles']),
  unit('area', 'mm²', 1, ['mm2', 'mm^2', 'sq mm', 'sqmm']),
  unit('area', 'cm²', 100, ['cm2', 'cm^2', 'sq cm']),
  unit('area', 'm²', 1e6, ['m2', 'm^2', 'sq m']),
  unit('area', 'cmil', (Math.PI / 4) * 0.0254 ** 2, ['cmils', 'circular mil', 'circular mils']),
  unit('area', 'in²', (inchM * 1e3) ** 2, ['in2', 'in^2', 'sq in']),
  unit('volume-flow', 'm³/h', 1, ['m3/h', 'm^3/h']),
  unit('speed', 'm/s', 1, ['mps', 'm per s']),
  unit('speed', 'km/h', 1 / 3.6, ['kmh', 'kph', 'kmph']),
  unit('speed', 'mph', (63360 * inchM) / 3600, ['mi/h', 'miles per hour']),
  unit('speed', 'ft/s', 12 * inchM, ['fps']),
  unit('rotation', 'rpm', 1, ['r/min', 'turns/min']),
  unit('rotation', 'rad/s', 30 / Math.PI, []),
  unit('mass', 'kg', 1, ['kilogram', 'kilograms', 'kilo', 'kilos']),
  unit('mass', 'g', 1e-3, ['gram', 'grams']),
  unit('mass', 'lb', poundKg, ['lbs', 'pound', 'pounds']),
  unit('mass', 'oz', poundKg / 16, ['ounce', 'ounces']),
  unit('mass', 'st', 14 * poundKg, ['stone', 'stones']),
  unit('force', 'N', 1, ['newton', 'newtons']),
  unit('force', 'lbf', poundKg * gravity, []),
  unit('torque', 'N·m', 1, ['nm', 'n*m']),
  unit('torque', 'lbf·ft', poundKg * gravity * 12 * inchM, [
    'lb·ft',
    'lb-ft',
    'lbft',
    'ft-lb',
    'lbf-ft',
  ]),
  unit('torque', 'lbf·in', poundKg * gravity * inchM, ['lb·in', 'lb-in', 'in-lb', 'lbf-in']),
  unit('time', 's', 1, ['sec', 'secs', 'second', 'seconds']),
  unit('time', 'ms', 1e-3, ['millisecond', 'milliseconds']),
  unit('time', 'min', 60, ['mins', 'minute', 'minutes']),
  unit('time', 'h', 3600, ['hr', 'hrs', 'hour', 'hours']),
  unit('time', 'd', 86400, ['day', 'days']),
  unit('rate', '1/h', 1, ['/h', 'per h', 'per hour', '1/hr']),
  unit('rate', '1/min', 60, ['/min', 'per min', 'per minute']),
  unit('rate', '1/s', 3600, ['/s', 'per s', 'per second']),
  unit('capacitance', 'F', 1, ['farad', 'farads']),
  unit('capacitance', 'mF', 1e-3, ['millifarad']),
  unit('capacitance', 'µF', 1e-6, ['uf', 'μf', 'microfarad', 'microfarads']),
  unit('ratio', '1', 1, []),
  unit('ratio', '%', 0.01, ['percent', 'per cent', 'pct']),
];

/** Lower case; spaces and multiplication signs unified. */
function fold(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll(/\s+/g, ' ')
    .replaceAll('⋅', '·')
    .replaceAll('Ω', 'ω');
}

const bySymbol = new Map(unitTable.map((entry) => [entry.symbol, entry]));
const bySpelling = new Map<string, Unit[]>();
for (const entry of unitTable) {
  // Mega is read only when its capital is typed; folded, it would be taken for milli.
  const typed = entry.symbol.startsWith('M') ? [] : [entry.symbol, ...entry.spellings];
  for (const spelling of new Set(typed.map(fold))) {
    bySpelling.set(spelling, [...(bySpelling.get(spelling) ?? []), entry]);
  }
}

/** The unit of that exact symbol, as field documentation writes it. */
export function unitOf(symbol: string): Unit | undefined {
  return bySymbol.get(symbol);
}

/**
 * The unit a person means by what he typed, given what kind is asked for: `m` is metres for a length, `f` is Fahrenheit
 * for a temperature and farad for a capacitance.
 *
 * @returns undefined where nothing of that kind is spelled so; the first unit of another kind when `kind` is absent
 */
export function unitTyped(text: string, kind?: QuantityKind): Unit | undefined {
  const exact = bySymbol.get(text.trim());
  if (exact !== undefined && (kind === undefined || exact.kind === kind)) return exact;
  const candidates = bySpelling.get(fold(text)) ?? [];
  return kind === undefined ? candidates[0] : candidates.find((entry) => entry.kind === kind);
}
