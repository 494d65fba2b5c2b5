import { useMemo } from 'react';
import type {
  ChartAxis,
  ChartEvent,
  ChartLevel,
  ChartSeries,
  ChartWindow,
} from '../../charts/chart-series.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useStudyBefore } from '../../state/shown-study.ts';
import { formatFigure } from '../../text/format.ts';
import { runTexts, type QuantityId } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import { displaySymbol } from '#core/units/display.ts';
import type { PlanStudy } from '#core/study/study.ts';
import { offeredQuantities, type RunQuantity } from './run-quantities.ts';
import { blockSeries, ghostSeries, optionSeries } from './run-series.ts';

interface RunLines {
  readonly offered: readonly RunQuantity[];
  readonly quantity: QuantityId;
  readonly unit: string;
  /** One line for each option. */
  readonly main: readonly ChartSeries[];
  /** Those, the single blocks asked for, and the ghosts of the state before the edit. */
  readonly series: readonly ChartSeries[];
  readonly levels: readonly ChartLevel[];
  readonly events: readonly ChartEvent[];
  readonly whole: ChartWindow;
  readonly xAxis: ChartAxis;
  readonly yAxis: ChartAxis;
}

/** Everything the discharge chart draws for a quantity. */
export function useRunLines(
  study: PlanStudy,
  wanted: QuantityId,
  blocksOf: string | null,
): RunLines {
  const text = useText(runTexts);
  const { language, units } = useSettings();
  const before = useStudyBefore();
  const cutoffV = usePlan((plan) => plan.machine.controller.cutoffVoltageV);
  return useMemo(() => {
    const offered = offeredQuantities(study);
    const quantity = offered.find(({ id }) => id === wanted) ?? offered[0];
    if (quantity === undefined) throw new Error('Every run has a bus voltage');
    const isBus = quantity.id === 'bus';
    const main = optionSeries(study, quantity, units);
    const at = study.options.findIndex(({ id }) => id === blocksOf);
    const blockOption = isBus ? study.options[at] : undefined;
    const series = [
      ...ghostSeries(before, study, quantity, units, text.before),
      ...(blockOption === undefined ? [] : blockSeries(blockOption, at)),
      ...main,
    ];
    const unit = displaySymbol(quantity.unit, units);
    const longest = Math.max(1, ...series.map(({ x }) => x.at(-1) ?? 0));
    return {
      offered,
      quantity: quantity.id,
      unit,
      main,
      series,
      levels:
        isBus && cutoffV !== null
          ? [
              {
                id: 'cutoff',
                label: `${text.cutoff} ${formatFigure(cutoffV, language)} V`,
                y: cutoffV,
              },
            ]
          : [],
      events: isBus ? runEvents(study) : [],
      whole: { from: 0, to: 1.02 * longest },
      xAxis: { label: text.time, unit: 'min' },
      yAxis: { label: text.axis[quantity.id], unit },
    };
  }, [study, wanted, blocksOf, before, cutoffV, text, language, units]);
}

const runEvents = (study: PlanStudy): ChartEvent[] =>
  study.options.flatMap((option, index) =>
    option.run.events.map((event, at) => ({
      id: `${option.id} ${at}`,
      label: event.kind,
      x: event.timeMin,
      y: event.busVoltageV,
      index,
    })),
  );
