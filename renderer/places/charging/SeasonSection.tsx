import { useCallback, useMemo, useState } from 'react';
import type { WeekStudy } from '#core/week/index.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { ChartSeries, ChartWindow } from '../../charts/chart-series.ts';
import { IconButton } from '../../controls/Button.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { Section } from '../../controls/Section.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatFigure, formatFixed } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

/** Lowest charge of each week of the season, one line a routine. */
export const SeasonSection = ({ study }: { readonly study: WeekStudy }) => {
  const all = useText(chargingTexts);
  const text = all.season;
  const language = useSettings((state) => state.language);
  const [asked, setAsked] = useState<ChartWindow | null>(null);
  const [cursor, setCursor] = useState<number | null>(null);
  const [isTable, setIsTable] = useState(false);
  const onWindow = useCallback((next: ChartWindow) => setAsked(next), []);
  const { seasons, proposal, week } = study;
  const series = useMemo<ChartSeries[]>(
    () =>
      seasons.map((season, index) => ({
        id: season.trigger,
        name: all.routine.triggers[season.trigger],
        index,
        x: Float64Array.from(season.weekLowestPercent, (_, at) => at + 1),
        y: season.weekLowestPercent,
        role: 'main',
      })),
    [seasons, all],
  );
  const whole = useMemo<ChartWindow>(
    () => ({ from: 1, to: Math.max(2, week.season.weeks) }),
    [week],
  );
  const levels = useMemo(
    () =>
      week.minimumPercent > 0
        ? [
            {
              id: 'minimum',
              label: `${text.lowest} ${formatFigure(week.minimumPercent, language)} %`,
              y: week.minimumPercent,
            },
          ]
        : [],
    [week, text, language],
  );
  const xAxis = useMemo(() => ({ label: text.seasonAxis, unit: text.weekUnit }), [text]);
  const yAxis = useMemo(() => ({ label: text.axis, unit: '%' }), [text]);
  const proposed = seasons.find(({ trigger }) => trigger === proposal?.trigger) ?? seasons[0]!;
  const summary = text.summary(
    proposed.failedOutings,
    proposed.outings,
    `${formatFigure(proposed.lowestPercent, language, 2)} %`,
  );
  return (
    <Section
      title={text.title}
      lead={text.lead}
      actions={
        <IconButton
          icon={isTable ? 'picture' : 'table'}
          label={isTable ? all.curve.chart : all.curve.table}
          isOn={isTable}
          onPress={() => setIsTable(!isTable)}
        />
      }
    >
      {isTable ? (
        <DataTable
          caption={text.axis}
          columns={[
            { id: 'week', label: text.weekNumber },
            { id: 'temperature', label: text.temperature, unit: '°C', isNumber: true },
            ...seasons.map(({ trigger }) => ({
              id: trigger,
              label: all.routine.triggers[trigger],
              unit: '%',
              isNumber: true,
            })),
            { id: 'failed', label: text.failed, isNumber: true },
          ]}
          rows={Array.from(proposed.weekTemperatureC, (temperatureC, at) => ({
            id: String(at),
            cells: {
              week: String(at + 1),
              temperature: formatFixed(temperatureC, language, 1),
              ...Object.fromEntries(
                seasons.map(({ trigger, weekLowestPercent }) => [
                  trigger,
                  formatFixed(weekLowestPercent[at] ?? 0, language, 0),
                ]),
              ),
              failed: String(proposed.weekFailed[at] ?? 0),
            },
          }))}
        />
      ) : (
        <LineChart
          title={text.title}
          summary={summary}
          howTo={all.curve.howTo}
          xAxis={xAxis}
          yAxis={yAxis}
          series={series}
          levels={levels}
          window={asked ?? whole}
          whole={whole}
          onWindow={onWindow}
          cursor={cursor}
          onCursor={setCursor}
          height="17rem"
        />
      )}
      <p className="soft">{summary}</p>
    </Section>
  );
};
