import { useMemo, useState } from 'react';
import { blockHealth } from '#core/bench/index.ts';
import { yearOf, type BlockHealth } from '#core/bench/readings/health.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { ChartSeries, ChartWindow } from '../../charts/chart-series.ts';
import { QuantityTabs } from '../run/QuantityTabs.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { Section } from '../../controls/Section.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatDifference, formatFigure } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

interface HealthSectionProps {
  readonly option: Option;
}

/** Each block over the years, with what to do about it. */
export const HealthSection = ({ option }: HealthSectionProps) => {
  const bench = useText(benchTexts);
  const text = bench.health;
  const language = useSettings((state) => state.language);
  const plan = usePlan((whole) => whole);
  const blocks = useMemo(
    () => blockHealth(plan).filter(({ optionId }) => optionId === option.id),
    [plan, option],
  );
  if (blocks.length === 0) return null;
  const percent = (value: number | null): string =>
    value === null ? '–' : formatFigure(value, language);
  const nameOf = ({ string, position }: BlockHealth): string =>
    bench.readings.place(string, position);
  return (
    <Section title={text.title} lead={text.lead}>
      <DataTable
        caption={text.title}
        hideCaption
        columns={[
          { id: 'block', label: text.block },
          { id: 'date', label: text.date },
          { id: 'capacity', label: text.capacity, unit: '%', isNumber: true },
          { id: 'resistance', label: text.resistance, unit: '%', isNumber: true },
          { id: 'trend', label: text.trend },
          { id: 'advice', label: text.advice },
        ]}
        rows={blocks.map((block) => ({
          id: nameOf(block),
          cells: {
            block: nameOf(block),
            date: block.latest.date,
            capacity: percent(block.latest.capacityPercent),
            resistance: percent(block.latest.resistancePercent),
            trend:
              block.lossPerYearPercent === null
                ? '–'
                : text.perYear(`${formatDifference(-block.lossPerYearPercent, language)} %`),
            advice: text.advices[block.advice],
          },
        }))}
      />
      {blocks.some(({ points }) => new Set(points.map(({ date }) => date)).size > 1) ? (
        <HealthChart blocks={blocks} nameOf={nameOf} />
      ) : null}
    </Section>
  );
};

interface HealthChartProps {
  readonly blocks: readonly BlockHealth[];
  readonly nameOf: (block: BlockHealth) => string;
}

const HealthChart = ({ blocks, nameOf }: HealthChartProps) => {
  const bench = useText(benchTexts);
  const text = bench.health;
  const [asked, setAsked] = useState<ChartWindow | null>(null);
  const [cursor, setCursor] = useState<number | null>(null);
  const [figure, setFigure] = useState<'capacityPercent' | 'resistancePercent'>('capacityPercent');
  const series = useMemo(
    () =>
      blocks.flatMap((block, index): ChartSeries[] => {
        const known = block.points.filter((point) => point[figure] !== null);
        if (known.length === 0) return [];
        return [
          {
            id: nameOf(block),
            name: nameOf(block),
            index,
            x: Float64Array.from(known, ({ date }) => yearOf(date)),
            y: Float64Array.from(known, (point) => point[figure]!),
            role: 'main',
          },
        ];
      }),
    [blocks, nameOf, figure],
  );
  const years = blocks.flatMap(({ points }) => points.map(({ date }) => yearOf(date)));
  const [from, to] = [Math.min(...years) - 0.1, Math.max(...years) + 0.3];
  const whole = useMemo<ChartWindow>(() => ({ from, to }), [from, to]);
  const xAxis = useMemo(() => ({ label: text.year, unit: 'a' }), [text]);
  const label = figure === 'capacityPercent' ? text.capacity : text.resistance;
  const yAxis = useMemo(() => ({ label, unit: '%' }), [label]);
  return (
    <>
      <QuantityTabs
        label={text.figureOf}
        selected={figure}
        entries={[
          { id: 'capacityPercent', label: text.capacity },
          { id: 'resistancePercent', label: text.resistance },
        ]}
        onSelect={setFigure}
      />
      <LineChart
        title={text.chart}
        summary={text.summary(blocks.length)}
        howTo={bench.fit.howTo}
        xAxis={xAxis}
        yAxis={yAxis}
        series={series}
        window={asked ?? whole}
        whole={whole}
        onWindow={setAsked}
        cursor={cursor}
        onCursor={setCursor}
        height="12rem"
      />
    </>
  );
};
