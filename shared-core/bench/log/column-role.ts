import type { TimeFormat } from './parse-time.ts';

export type ColumnRole =
  | 'time'
  | 'current'
  | 'voltage'
  | 'unit-voltage'
  | 'temperature'
  | 'speed'
  | 'run'
  | 'other';

/** What a header alone says about its column. */
export interface HeaderReading {
  readonly role: ColumnRole;
  /** Factor to the core's unit. */
  readonly scale: number;
  /** Number in the name, such as 3 of `cell3_V`; null without one. */
  readonly index: number | null;
  readonly timeUnit: TimeFormat | null;
  readonly fahrenheit: boolean;
  readonly sense: 'discharge-positive' | 'charge-positive' | null;
}

const timeUnits: Readonly<Record<string, TimeFormat>> = {
  s: 's',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  sek: 's',
  sekunden: 's',
  ms: 'ms',
  millis: 'ms',
  milliseconds: 'ms',
  min: 'min',
  mins: 'min',
  minute: 'min',
  minutes: 'min',
  minuten: 'min',
  h: 'h',
  hr: 'h',
  hrs: 'h',
  hour: 'h',
  hours: 'h',
  std: 'h',
  stunden: 'h',
  d: 'days',
  day: 'days',
  days: 'days',
  tage: 'days',
};
const timeWords = new Set([
  'time',
  'zeit',
  'elapsed',
  'timestamp',
  'date',
  'datetime',
  'datum',
  'uhrzeit',
  'zeitstempel',
  'seconds',
  't',
]);
const currentWords = new Set(['current', 'strom', 'amps', 'amp', 'amperes', 'i', 'ampere', 'curr']);
const voltageWords = new Set([
  'voltage',
  'spannung',
  'volts',
  'volt',
  'u',
  'v',
  'vbat',
  'vpack',
  'vbatt',
  'ubat',
  'pack',
  'bus',
]);
const unitWords = new Set([
  'cell',
  'group',
  'block',
  'zelle',
  'gruppe',
  'monobloc',
  'batt',
  'battery',
]);
const temperatureWords = new Set(['temp', 'temperature', 'temperatur', 'tcell', 'tbat']);
const speedWords = new Set(['speed', 'velocity', 'kmh', 'geschwindigkeit', 'tempo']);
const airWords = new Set(['ambient', 'air', 'room', 'chamber', 'umgebung', 'luft']);
const runWords = new Set([
  'run',
  'rate',
  'test',
  'lauf',
  'versuch',
  'cell',
  'label',
  'name',
  'file',
  'cycle',
  'zyklus',
  'discharge',
  'id',
]);
const otherWords = new Set([
  'power',
  'energy',
  'capacity',
  'leistung',
  'energie',
  'kapazitat',
  'soc',
  'step',
  'index',
  'charge',
]);

/** Words and unit of a header: `pack voltage [mV]`, `current_A_pos_discharge`, `Cell 3 (V)` and the like. */
export function readHeader(header: string): HeaderReading {
  const words = header
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/([a-z]{2})([A-Z])/g, '$1 $2')
    .replaceAll(/([A-Za-z])(\d)/g, '$1 $2')
    .replaceAll(/(\d)([A-Za-z])/g, '$1 $2')
    .split(/[^A-Za-z0-9°Ω]+/)
    .filter((word) => word !== '');
  const lower = words.map((word) => word.toLowerCase());
  const has = (set: ReadonlySet<string>) => lower.some((word) => set.has(word));
  const number = words.find((word) => /^\d+$/.test(word));
  const unit =
    words.findLast((word) =>
      [
        'V',
        'mV',
        'A',
        'mA',
        'C',
        'F',
        'K',
        '°C',
        '°F',
        'Ah',
        'mAh',
        'Wh',
        'W',
        'kW',
        'Ohm',
        'Ω',
      ].includes(word),
    ) ?? null;
  const timeUnit =
    lower.map((word) => timeUnits[word]).find((found) => found !== undefined) ?? null;
  const sense = readSense(lower);
  const base = {
    scale: 1,
    index: number === undefined ? null : Number(number),
    timeUnit,
    fahrenheit: false,
    sense,
  };
  const quantityUnit = unit === null ? null : unit.replace('°', '');
  if (quantityUnit !== null && ['Ah', 'mAh', 'Wh', 'W', 'kW', 'Ohm', 'Ω'].includes(quantityUnit))
    return { ...base, role: 'other' };
  if (has(speedWords)) return { ...base, role: 'speed', scale: speedScale(lower) };
  if (has(temperatureWords) && !has(airWords))
    return { ...base, role: 'temperature', fahrenheit: quantityUnit === 'F' };
  if (has(airWords)) return { ...base, role: 'other' };
  if (has(currentWords) || quantityUnit === 'A' || quantityUnit === 'mA')
    return { ...base, role: 'current', scale: quantityUnit === 'mA' ? 0.001 : 1 };
  if (has(voltageWords) || quantityUnit === 'V' || quantityUnit === 'mV') {
    const role = has(unitWords) && number !== undefined ? 'unit-voltage' : 'voltage';
    return { ...base, role, scale: quantityUnit === 'mV' ? 0.001 : 1 };
  }
  if (has(timeWords) || (timeUnit !== null && words.length === 1)) return { ...base, role: 'time' };
  if (has(unitWords) && number !== undefined) return { ...base, role: 'unit-voltage' };
  if (has(runWords)) return { ...base, role: 'run' };
  if (has(otherWords)) return { ...base, role: 'other' };
  return { ...base, role: 'other' };
}

/** Factor to km/h of the unit in a header; km/h where it names none. */
function speedScale(lower: readonly string[]): number {
  if (lower.includes('mph')) return 1.609344;
  const perSecond = lower.includes('mps') || (lower.includes('m') && lower.includes('s'));
  return perSecond ? 3.6 : 1;
}

function readSense(lower: readonly string[]): HeaderReading['sense'] {
  const positive = lower.includes('pos') || lower.includes('positive');
  if (lower.includes('discharge'))
    return lower.includes('neg') || lower.includes('negative')
      ? 'charge-positive'
      : 'discharge-positive';
  if (lower.includes('charge'))
    return positive || !lower.includes('neg') ? 'charge-positive' : 'discharge-positive';
  if (lower.includes('entladestrom')) return 'discharge-positive';
  if (lower.includes('ladestrom')) return 'charge-positive';
  return null;
}
