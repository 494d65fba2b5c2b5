import type { ChartSeries } from '../../charts/chart-series.ts';
import type { OptionStudy, PlanStudy } from '#core/study/study.ts';
import { displaySymbol, toDisplay, type UnitSystem } from '#core/units/display.ts';
import type { RunQuantity } from './run-quantities.ts';

const minutes = (timeS: Float64Array): Float64Array => timeS.map((value) => value / 60);
const shown = (values: Float64Array, unit: string, units: UnitSystem): Float64Array =>
  displaySymbol(unit, units) === unit
    ? values
    : values.map((value) => toDisplay(value, unit, units));

/** Lines of a quantity, one for each option. */
export function optionSeries(
  study: PlanStudy,
  quantity: RunQuantity,
  units: UnitSystem,
): ChartSeries[] {
  return study.options.flatMap((option, index) => {
    const columns = quantity.read(option);
    if (columns === null) return [];
    return [
      {
        id: option.id,
        name: option.name,
        index,
        x: minutes(columns.timeS),
        y: shown(columns.values, quantity.unit, units),
        role: 'main' as const,
      },
    ];
  });
}

/** The lines as they were before the last edit, for the options it changed. */
export function ghostSeries(
  before: PlanStudy | null,
  now: PlanStudy,
  quantity: RunQuantity,
  units: UnitSystem,
  name: string,
): ChartSeries[] {
  if (before === null || before.outingId !== now.outingId) return [];
  const changed = (option: OptionStudy): boolean => {
    const same = now.options.find(({ id }) => id === option.id);
    return same !== undefined && same.run.runTimeMin !== option.run.runTimeMin;
  };
  return optionSeries({ ...before, options: before.options.filter(changed) }, quantity, units).map(
    (series) => ({
      ...series,
      id: `before ${series.id}`,
      name: `${series.name}, ${name}`,
      index: now.options.findIndex(({ id }) => id === series.id),
      role: 'ghost' as const,
    }),
  );
}

/** Voltages of the single blocks of one option. */
export function blockSeries(option: OptionStudy, index: number): ChartSeries[] {
  const x = minutes(option.run.series.timeS);
  return option.run.series.blocks.map((block, at) => ({
    id: `${option.id} block ${at}`,
    name: block.name,
    index,
    x,
    y: block.voltageV,
    role: 'detail' as const,
  }));
}
