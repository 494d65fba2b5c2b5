import { convert } from '#core/units/convert.ts';
import { displaySymbol, type UnitSystem } from '#core/units/display.ts';
import { unitOf } from '#core/units/unit-table.ts';

/** Resistances of links, cables and blocks: thousandths of an ohm. Loads are whole ohms. */
const milliohmField = /resistanceOhm$/i;
const ohmField = /load\.resistanceOhm$|windingOhm$|resistor\.resistanceOhm$/;

/**
 * Unit in which a plan field is shown. Stored values never change by showing them in another unit.
 *
 * @param path path of the field
 * @param stored unit of the schema
 */
export function shownUnit(path: string, stored: string | undefined, system: UnitSystem): string {
  if (stored === undefined) return '';
  if (stored === 'Ω' && milliohmField.test(path) && !ohmField.test(path)) return 'mΩ';
  return displaySymbol(stored, system);
}

/** Converts where both units are known and of one kind; otherwise the number stays. */
export function convertShown(value: number, from: string, to: string): number {
  const source = unitOf(from);
  const target = unitOf(to);
  if (from === to || source === undefined || target?.kind !== source.kind) return value;
  // Takes away the dust of floating point: 8.000000000000002 is 8.
  return Number(convert(value, source, target).toPrecision(12));
}
