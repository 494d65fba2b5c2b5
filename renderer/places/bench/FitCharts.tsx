import { useMemo, useRef, useState } from 'react';
import type { Chart } from 'chart.js';
import type { Prediction } from '#core/bench/index.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import { zoomed, type ChartWindow } from '../../charts/chart-series.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatFigure } from '../../text/format.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import { ChartTools } from '../run/ChartTools.tsx';
import { QuantityTabs } from '../run/QuantityTabs.tsx';
import { Readout } from '../run/Readout.tsx';
import { RunTable } from '../run/RunTable.tsx';
import { fitCsv, residualLine, voltLines } from './fit-lines.ts';

interface FitChartsProps {
  readonly replays: readonly Prediction[];
  /** Each run predicted from the others; empty with one run. */
  readonly leftOut: readonly Prediction[];
  readonly rmsMv: number;
}

/** Logged volts of every run against the fit, or against the prediction from the other runs, and what is left between. */
export const FitCharts = ({ replays, leftOut, rmsMv }: FitChartsProps) => {
  const text = useText(benchTexts).fit;
  const run = useText(runTexts);
  const language = useSettings((state) => state.language);
  const planName = usePlan((plan) => plan.name);
  const [view, setView] = useState<'fit' | 'test'>('fit');
  const [isTable, setIsTable] = useState(false);
  const [asked, setAsked] = useState<ChartWindow | null>(null);
  const [cursor, setCursor] = useState<number | null>(null);
  const chart = useRef<Chart<'line'> | null>(null);
  const isTest = view === 'test' && leftOut.length > 0;
  const shown = isTest ? leftOut : replays;
  const volts = useMemo(
    () => shown.flatMap((replay, index) => voltLines(replay, index, text)),
    [shown, text],
  );
  const left = useMemo(() => shown.map(residualLine), [shown]);
  const whole = useMemo<ChartWindow>(
    () => ({
      from: 0,
      to: Math.max(0.1, ...shown.map((replay) => replay.timeS.at(-1)! / 60)) * 1.01,
    }),
    [shown],
  );
  const xAxis = useMemo(() => ({ label: text.time, unit: 'min' }), [text]);
  const voltAxis = useMemo(() => ({ label: text.voltage, unit: 'V' }), [text]);
  const leftAxis = useMemo(() => ({ label: text.difference, unit: 'mV' }), [text]);
  const window = asked ?? whole;
  const misfitMv = isTest
    ? Math.hypot(...leftOut.map((entry) => entry.rmsMv)) / Math.sqrt(leftOut.length)
    : rmsMv;
  const fileName = `${planName} ${isTest ? 'prediction' : 'fit'}`;
  const shared = {
    summary: text.summary(shown.length, `${formatFigure(misfitMv, language, 2)} mV`),
    howTo: text.howTo,
    xAxis,
    window,
    whole,
    onWindow: setAsked,
    cursor,
    onCursor: setCursor,
  };
  return (
    <div className="fit-charts">
      <div className="fit-chart-head">
        <h3 className="bench-head">{text.voltsTitle}</h3>
        <div className="fit-chart-tools">
          <ChartTools
            isZoomed={asked !== null}
            isTable={isTable}
            onZoom={(factor) => setAsked(zoomed(window, whole, factor))}
            onAll={() => setAsked(null)}
            onTable={() => setIsTable(!isTable)}
            copies={{
              name: fileName,
              csv: () => fitCsv(shown),
              copied: run.csvCopied,
              chart: () => chart.current,
              lines: () => ({ ...shared, title: text.voltsTitle, yAxis: voltAxis, series: volts }),
            }}
          />
        </div>
      </div>
      {leftOut.length === 0 ? null : (
        <QuantityTabs
          label={text.shown}
          selected={view}
          entries={[
            { id: 'fit', label: text.ofFit },
            { id: 'test', label: text.ofTest },
          ]}
          onSelect={setView}
        />
      )}
      {isTable ? (
        <RunTable caption={`${text.voltsTitle}, V`} series={volts} whole={whole} />
      ) : (
        <>
          <LineChart
            {...shared}
            title={text.voltsTitle}
            yAxis={voltAxis}
            series={volts}
            height="17rem"
            ownCopies
            chartRef={(made) => {
              chart.current = made;
            }}
          />
          <Readout series={volts} cursor={cursor} unit="V" />
        </>
      )}
      <h3 className="bench-head">{text.residualTitle}</h3>
      {isTable ? (
        <RunTable caption={`${text.residualTitle}, mV`} series={left} whole={whole} />
      ) : (
        <LineChart
          {...shared}
          title={text.residualTitle}
          yAxis={leftAxis}
          series={left}
          height="11rem"
        />
      )}
    </div>
  );
};
