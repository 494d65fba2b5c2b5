import type { Prediction } from '#core/bench/index.ts';
import type { FittedUnit } from '#core/bench/fit/fit-block.ts';
import type { FittedValue } from '#core/plan/schema/bench.ts';
import { DataTable } from '../../controls/DataTable.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatDifference, formatFigure, formatFixed, formatMinutes } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

/** Fitted values with their limits and whether the data told them. */
export const ValueTable = ({ values }: { readonly values: readonly FittedValue[] }) => {
  const text = useText(benchTexts).fit;
  const language = useSettings((state) => state.language);
  const figure = (value: number | null): string =>
    value === null ? '' : formatFigure(value, language);
  return (
    <DataTable
      caption={text.fitted}
      hideCaption
      columns={[
        { id: 'value', label: text.value },
        { id: 'fitted', label: text.fitted, isNumber: true },
        { id: 'limits', label: text.limits, isNumber: true },
        { id: 'unit', label: '' },
        { id: 'told', label: text.told },
      ]}
      rows={values.map((value) => ({
        id: value.name,
        cells: {
          value: text.values[value.name] ?? value.name,
          fitted: figure(value.value),
          limits: `${figure(value.low)} – ${figure(value.high)}`,
          unit: value.unit,
          told: value.identified ? text.yes : text.usual,
        },
      }))}
    />
  );
};

interface UnitTableProps {
  readonly caption: string;
  readonly units: readonly FittedUnit[];
}

/** Blocks or cell groups against their mean. */
export const UnitTable = ({ caption, units }: UnitTableProps) => {
  const text = useText(benchTexts).fit;
  const language = useSettings((state) => state.language);
  return (
    <DataTable
      caption={caption}
      columns={[
        { id: 'unit', label: '#' },
        { id: 'capacity', label: text.capacity, unit: '%', isNumber: true },
        { id: 'resistance', label: text.resistance, unit: '%', isNumber: true },
        { id: 'start', label: text.startCharge, unit: '%', isNumber: true },
      ]}
      rows={units.map((unit, index) => ({
        id: String(index),
        cells: {
          unit: index + 1,
          capacity: formatFixed(unit.capacityPercent, language, 1),
          resistance: formatFixed(unit.resistancePercent, language, 0),
          start: formatFixed(unit.startPercent, language, 1),
        },
      }))}
    />
  );
};

/** Runs predicted from the others against what was logged. */
export const PredictionTable = ({
  predictions,
}: {
  readonly predictions: readonly Prediction[];
}) => {
  const bench = useText(benchTexts);
  const text = bench.fit;
  const language = useSettings((state) => state.language);
  return (
    <DataTable
      caption={text.testTitle}
      hideCaption
      columns={[
        { id: 'run', label: bench.logs.run },
        { id: 'to', label: text.to, unit: 'V', isNumber: true },
        { id: 'measured', label: text.measuredMin, isNumber: true },
        { id: 'predicted', label: text.predictedMin, isNumber: true },
        { id: 'off', label: text.off, unit: '%', isNumber: true },
        { id: 'rms', label: text.rms, unit: 'mV', isNumber: true },
      ]}
      rows={predictions.map((prediction) => ({
        id: prediction.run,
        cells: {
          run: prediction.run,
          to: formatFixed(prediction.end.voltageV, language, 2),
          measured: formatMinutes(prediction.measuredMin, language),
          predicted: formatMinutes(prediction.predictedMin, language),
          off: formatDifference(prediction.timePercent, language),
          rms: formatFixed(prediction.rmsMv, language, 0),
        },
      }))}
    />
  );
};
