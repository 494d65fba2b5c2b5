import type { Option } from '../../plan/schema/option.ts';
import type { LoggedRun } from '../log/logged-run.ts';
import type { LogResult } from '../log/mapping.ts';
import type { UnitLayout } from './fit-run.ts';

/**
 * What the voltage columns of a log are in an option's pack: every cell group of a string, every block of it, or the pack
 * as a whole. A number of columns that matches neither groups nor blocks falls back to the pack's volts.
 */
export function layoutFor(option: Option, run: LoggedRun): LogResult<UnitLayout> {
  const { block, seriesCount, parallelCount, linkResistanceOhm } = option.pack;
  const groups = block.cellGroups * seriesCount;
  const units = run.unitVoltageV.length;
  const common = { strings: parallelCount, linkOhm: 0 };
  if (units > 1 && units === groups)
    return { ok: true, value: { ...common, kind: 'group', count: groups, cells: 1 } };
  if (units > 1 && units === seriesCount)
    return {
      ok: true,
      value: { ...common, kind: 'block', count: seriesCount, cells: block.cellGroups },
    };
  if (run.voltageV !== null)
    return {
      ok: true,
      value: {
        strings: parallelCount,
        linkOhm: linkResistanceOhm,
        kind: 'pack',
        count: 1,
        cells: groups,
      },
    };
  return {
    ok: false,
    problem: {
      field: 'voltage',
      problem: `the log holds ${units} columns of volts, but a string of option "${option.name}" has ${seriesCount} blocks with ${groups} cell groups`,
      remedy:
        'map the volts of the whole pack, or all blocks, or all cell groups, or correct the pack of the option',
      de: {
        problem: `das Protokoll enthält ${units} Spalten mit Spannung, ein Strang der Option „${option.name}“ aber ${seriesCount} Blöcke mit ${groups} Zellgruppen`,
        remedy:
          'die Spannung des ganzen Packs, aller Blöcke oder aller Zellgruppen zuordnen oder den Pack der Option berichtigen',
      },
    },
  };
}
