import type { BlockFit, Prediction } from '../bench/index.ts';
import type { FitRemark } from '../bench/fit/fit-remark.ts';
import { remarkText } from '../bench/index.ts';
import type { Option } from '../plan/schema/option.ts';
import { alignedTable } from './aligned-table.ts';

/** Report of a fit for a terminal. */
export function fitText(
  option: Option,
  fit: BlockFit,
  tests: readonly Prediction[],
  words: (remark: FitRemark) => string,
): string {
  const parts = [
    `Fit of the block of "${option.name}", at ${fit.fitted.temperatureC.toFixed(1)} °C`,
    alignedTable(
      ['Value', 'Fitted', 'Low', 'High', 'Unit', 'Told by the data'],
      fit.values.map((value) => [
        value.name,
        figure(value.value),
        figure(value.low),
        figure(value.high),
        value.unit,
        value.identified ? 'yes' : 'no: usual value',
      ]),
    ),
  ];
  if (fit.units.length > 0)
    parts.push(
      alignedTable(
        ['Unit', 'Capacity %', 'Resistance %', 'Start %'],
        fit.units.map((unit, index) => [
          String(index + 1),
          unit.capacityPercent.toFixed(1),
          unit.resistancePercent.toFixed(0),
          unit.startPercent.toFixed(1),
        ]),
      ),
    );
  parts.push(
    `Against the label: capacity ${fit.health.capacityPercent.toFixed(0)} %, resistance ${fit.health.resistancePercent.toFixed(0)} % of a new block.`,
    `Runs of the fit\n${predictionTable(fit.replays)}`,
  );
  if (tests.length > 0) parts.push(`Each run predicted from the others\n${predictionTable(tests)}`);
  parts.push(fit.remarks.map((remark) => `- ${words(remark)}`).join('\n'));
  return `${parts.map((part) => part.trimEnd()).join('\n\n')}\n`;
}

function predictionTable(predictions: readonly Prediction[]): string {
  return alignedTable(
    ['Run', 'To V', 'Measured min', 'Model min', 'Off %', 'Measured A·h', 'Model A·h', 'rms mV'],
    predictions.map((prediction) => [
      prediction.run,
      prediction.end.voltageV.toFixed(2) +
        (prediction.end.unit === null ? '' : ` (unit ${prediction.end.unit + 1})`),
      prediction.measuredMin.toFixed(1),
      prediction.predictedMin.toFixed(1),
      prediction.timePercent.toFixed(2),
      prediction.measuredAh.toFixed(3),
      prediction.predictedAh.toFixed(3),
      prediction.rmsMv.toFixed(0),
    ]),
  );
}

function brief(prediction: Prediction): Record<string, unknown> {
  return {
    run: prediction.run,
    endVoltageV: prediction.end.voltageV,
    endUnit: prediction.end.unit === null ? null : prediction.end.unit + 1,
    measuredMin: prediction.measuredMin,
    predictedMin: prediction.predictedMin,
    timePercent: prediction.timePercent,
    measuredAh: prediction.measuredAh,
    predictedAh: prediction.predictedAh,
    rmsMv: prediction.rmsMv,
  };
}

/** The same as one JSON document. */
export function fitRecordJson(
  option: Option,
  fit: BlockFit,
  tests: readonly Prediction[],
): Record<string, unknown> {
  return {
    option: { id: option.id, name: option.name },
    fitted: fit.fitted,
    values: fit.values,
    units: fit.units,
    health: fit.health,
    rmsMv: fit.rmsMv,
    runs: fit.replays.map(brief),
    leftOut: tests.map(brief),
    remarks: fit.remarks.map((remark) => remarkText(remark)),
  };
}

function figure(value: number | null): string {
  return value === null ? '' : Number(value.toPrecision(4)).toString();
}
