import type { CsvTable } from '../../charts/csv.ts';
import type { PlanStudy } from '#core/study/study.ts';

/** The runs of all options as CSV, one row a time step, units in the heads, full precision. */
export function runCsv(study: PlanStudy): CsvTable {
  const rows: (string | number)[][] = [];
  for (const { name, run } of study.options) {
    const { series } = run;
    series.timeS.forEach((timeS, row) => {
      const at = (column: Float64Array): number => column[row] ?? 0;
      rows.push([
        name,
        timeS,
        at(series.busVoltageV),
        at(series.packVoltageV),
        at(series.packCurrentA),
        at(series.motorCurrentA),
        at(series.converterInputA),
        at(series.chargePercent),
      ]);
    });
  }
  return {
    fields: [
      'option',
      'time [s]',
      'bus voltage [V]',
      'pack voltage [V]',
      'pack current [A]',
      'motor current [A]',
      'converter input [A]',
      'charge left [%]',
    ],
    data: rows,
  };
}
