import { convert } from './convert.ts';
import { formatSignificant } from './format-number.ts';
import { unitOf } from './unit-table.ts';

/** Units shown on screen. What is stored never changes with it. */
export type UnitSystem = 'metric' | 'us';

/** Units that are shown as another one, per system. Electrical units are the same everywhere. */
const shown: Readonly<Record<UnitSystem, Readonly<Record<string, string>>>> = {
  metric: { 'm/s': 'km/h' },
  us: {
    'm/s': 'mph',
    'km/h': 'mph',
    kg: 'lb',
    g: 'oz',
    '°C': '°F',
    mm: 'in',
    cm: 'in',
    m: 'ft',
    km: 'mi',
    'cm²': 'in²',
    N: 'lbf',
    N·m: 'lbf·ft',
  },
};

/** Symbol under which a quantity stored in `symbol` is shown. */
export function displaySymbol(symbol: string, system: UnitSystem): string {
  return shown[system][symbol] ?? symbol;
}

/** Stored value in the unit that is shown. */
export function toDisplay(value: number, symbol: string, system: UnitSystem): number {
  const from = unitOf(symbol);
  const to = unitOf(displaySymbol(symbol, system));
  return from === undefined || to === undefined ? value : convert(value, from, to);
}

/** Shown value in the unit that is stored. */
export function fromDisplay(value: number, symbol: string, system: UnitSystem): number {
  const to = unitOf(symbol);
  const from = unitOf(displaySymbol(symbol, system));
  return from === undefined || to === undefined ? value : convert(value, from, to);
}

/**
 * A stored quantity as text in the chosen system: `12.6 V`, `7.5 mph`.
 *
 * @param symbol unit in which the value is stored; `1` and an empty symbol are not written
 * @param digits significant digits
 */
export function formatQuantity(
  value: number,
  symbol: string,
  options: { readonly system: UnitSystem; readonly locale: string; readonly digits?: number },
): string {
  const figures = formatSignificant(
    toDisplay(value, symbol, options.system),
    options.digits ?? 3,
    options.locale,
  );
  const unit = displaySymbol(symbol, options.system);
  return unit === '1' || unit === '' ? figures : `${figures} ${unit}`;
}
