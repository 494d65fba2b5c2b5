import { packGroups } from '../../charge/charge-wishes.ts';
import type { OptionContext } from '../context.ts';

/** Pack voltage at which every cell group stands at the BMS limit [V]; null without a BMS. */
export function bmsOpensAtV({ option }: OptionContext): number | null {
  const { bms } = option.pack.block;
  return bms === null ? null : bms.groupLowV * packGroups(option.pack);
}

/** Lowest voltage the bus meets before something stops the machine [V]; null where nothing is known to. */
export function lowestBusVoltageV(entry: OptionContext): number | null {
  const known = [entry.controller.cutoffVoltageV, bmsOpensAtV(entry)].filter(
    (volts) => volts !== null,
  );
  return known.length === 0 ? null : Math.max(...known);
}
