import type { CsvTable } from '../../charts/csv.ts';
import type { Prediction } from '#core/bench/index.ts';
import type { ChartSeries } from '../../charts/chart-series.ts';

/** Logged and modelled volts of a run as two lines. */
export function voltLines(
  replay: Prediction,
  index: number,
  text: { readonly measured: (run: string) => string; readonly model: (run: string) => string },
): ChartSeries[] {
  const minutes = replay.timeS.map((time) => time / 60);
  const count = replay.measuredV.length;
  return [
    {
      id: `${index} log`,
      name: text.measured(replay.run),
      index,
      x: minutes.slice(0, count),
      y: replay.measuredV.slice(0, minutes.length),
      role: 'ghost',
    },
    {
      id: `${index} model`,
      name: text.model(replay.run),
      index,
      x: minutes,
      y: replay.modelV,
      role: 'main',
    },
  ];
}

/** What is left between model and log, in millivolts. */
export function residualLine(replay: Prediction, index: number): ChartSeries {
  const count = Math.min(replay.measuredV.length, replay.modelV.length);
  return {
    id: String(index),
    name: replay.run,
    index,
    x: Float64Array.from({ length: count }, (_, row) => replay.timeS[row]! / 60),
    y: Float64Array.from(
      { length: count },
      (_, row) => (replay.modelV[row]! - replay.measuredV[row]!) * 1000,
    ),
    role: 'main',
  };
}

/** Log and model of all runs as CSV, full precision; the log ends where its column runs empty. */
export function fitCsv(replays: readonly Prediction[]): CsvTable {
  return {
    fields: ['run', 'time [s]', 'logged voltage [V]', 'model voltage [V]'],
    data: replays.flatMap(({ run, timeS, measuredV, modelV }) =>
      Array.from(timeS, (time, row) => [run, time, measuredV[row] ?? '', modelV[row] ?? '']),
    ),
  };
}
