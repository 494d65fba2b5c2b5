import { useMemo, useState } from 'react';
import type { Prediction } from '#core/bench/index.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { ChartSeries, ChartWindow } from '../../charts/chart-series.ts';
import { useSettings } from '../../state/settings-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatFigure } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

interface FitChartsProps {
  readonly replays: readonly Prediction[];
  readonly rmsMv: number;
}

/** Logged and fitted volts of every run, and under them what is left between the two. */
export const FitCharts = ({ replays, rmsMv }: FitChartsProps) => {
  const text = useText(benchTexts).fit;
  const language = useSettings((state) => state.language);
  const [asked, setAsked] = useState<ChartWindow | null>(null);
  const [cursor, setCursor] = useState<number | null>(null);
  const volts = useMemo(
    () => replays.flatMap((replay, index) => voltLines(replay, index, text)),
    [replays, text],
  );
  const left = useMemo(() => replays.map(residualLine), [replays]);
  const whole = useMemo<ChartWindow>(
    () => ({
      from: 0,
      to: Math.max(0.1, ...replays.map((replay) => replay.timeS.at(-1)! / 60)) * 1.01,
    }),
    [replays],
  );
  const xAxis = useMemo(() => ({ label: text.time, unit: 'min' }), [text]);
  const voltAxis = useMemo(() => ({ label: text.voltage, unit: 'V' }), [text]);
  const leftAxis = useMemo(() => ({ label: text.difference, unit: 'mV' }), [text]);
  const summary = text.summary(replays.length, `${formatFigure(rmsMv, language, 2)} mV`);
  const shared = {
    summary,
    howTo: text.howTo,
    xAxis,
    window: asked ?? whole,
    whole,
    onWindow: setAsked,
    cursor,
    onCursor: setCursor,
  };
  return (
    <div className="fit-charts">
      <h3 className="bench-head">{text.voltsTitle}</h3>
      <LineChart
        {...shared}
        title={text.voltsTitle}
        yAxis={voltAxis}
        series={volts}
        height="17rem"
      />
      <h3 className="bench-head">{text.residualTitle}</h3>
      <LineChart
        {...shared}
        title={text.residualTitle}
        yAxis={leftAxis}
        series={left}
        height="11rem"
      />
    </div>
  );
};

function voltLines(
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

function residualLine(replay: Prediction, index: number): ChartSeries {
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
