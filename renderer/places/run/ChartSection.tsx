import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Chart } from 'chart.js';
import { LineChart } from '../../charts/LineChart.tsx';
import { zoomed, type ChartWindow } from '../../charts/chart-series.ts';
import { savePng } from '../../charts/copy-entries.ts';
import { saveCsv } from '../../charts/csv.ts';
import { Choice } from '../../controls/ChoiceField.tsx';
import { Section } from '../../controls/Section.tsx';
import { Toggle } from '../../controls/Toggle.tsx';
import { usePageCommand } from '../../app/page-commands.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { appTexts } from '../../text/app.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { compareTexts } from '../../text/compare.ts';
import { runTexts, type QuantityId } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import type { PlanStudy } from '#core/study/study.ts';
import { ChartTools } from './ChartTools.tsx';
import { QuantityTabs } from './QuantityTabs.tsx';
import { Readout } from './Readout.tsx';
import { runCsv } from './run-csv.ts';
import { RunTable } from './RunTable.tsx';
import { useRunBands } from './spread/use-run-bands.ts';
import { useRunLines } from './use-run-lines.ts';

/** The discharge of all options in one chart, with read-out, zoom, single blocks, ghost, table and copies. */
export const ChartSection = ({ study }: { readonly study: PlanStudy }) => {
  const text = useText(runTexts);
  const app = useText(appTexts);
  const compare = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const planName = usePlan((plan) => plan.name);
  const [wanted, setWanted] = useState<QuantityId>('bus');
  const [blocksOf, setBlocksOf] = useState<string | null>(null);
  const [isTable, setIsTable] = useState(false);
  const [asked, setAsked] = useState<ChartWindow | null>(null);
  const [cursor, setCursor] = useState<number | null>(null);
  const chart = useRef<Chart<'line'> | null>(null);
  const lines = useRunLines(study, wanted, blocksOf);
  const { quantity, unit, main } = lines;
  const bands = useRunBands(study, quantity);
  const wholeTo = Math.max(lines.whole.to, bands.untilMin);
  const whole = useMemo(() => ({ from: 0, to: wholeTo }), [wholeTo]);
  const window = asked ?? whole;
  const isZoomed = window.from > whole.from || window.to < whole.to;

  const saveSeries = useCallback(
    () => void saveCsv(`${planName} run`, runCsv(study)),
    [planName, study],
  );
  const saveChart = useCallback(
    () => void savePng({ name: `${planName} run`, chart: () => chart.current }),
    [planName],
  );
  const first = study.options[0]?.id ?? null;
  const toggleBlocks = useCallback(
    () => setBlocksOf((old) => (old === null ? first : null)),
    [first],
  );
  usePageCommand('export.series', saveSeries);
  usePageCommand('export.chart', saveChart);
  usePageCommand('view.blocks', toggleBlocks);
  const summary = useMemo(
    () =>
      text.summary(
        study.options
          .map(({ name, run }) =>
            text.summaryOf(
              name,
              formatMinutes(run.runTimeMin, language),
              app.ended[run.endedBy],
              `${formatFigure(run.minimumBusVoltageV, language)} V`,
            ),
          )
          .join(' '),
      ),
    [study, text, app, language],
  );
  const picture = {
    title: `${text.chartTitle}: ${text.axis[quantity]}`,
    summary,
    xAxis: lines.xAxis,
    yAxis: lines.yAxis,
    series: lines.series,
    bands: bands.bands,
    levels: lines.levels,
    events: lines.events,
    window,
  };
  const shown = useRef(picture);
  useEffect(() => {
    shown.current = picture;
  });
  // A pan draws the chart anew in every frame; what stands around it stays as it is.
  const tools = useMemo(
    () => (
      <ChartTools
        isZoomed={isZoomed}
        isTable={isTable}
        onZoom={(factor) => setAsked((old) => zoomed(old ?? whole, whole, factor))}
        onAll={() => setAsked(null)}
        onTable={() => setIsTable(!isTable)}
        copies={{
          name: `${planName} run`,
          csv: () => runCsv(study),
          copied: text.csvCopied,
          chart: () => chart.current,
          lines: () => shown.current,
        }}
      />
    ),
    [isZoomed, isTable, whole, planName, study, text],
  );
  const { isOffered, isOn, setOn } = bands;
  const choices = useMemo(
    () => (
      <div className="chart-tools">
        <QuantityTabs
          label={text.view}
          selected={quantity}
          entries={lines.offered.map(({ id }) => ({ id, label: text.quantities[id] }))}
          onSelect={setWanted}
        />
        <div className="chart-blocks">
          {isOffered ? <Toggle label={compare.band} isOn={isOn} onChange={setOn} /> : null}
          {quantity === 'bus' ? (
            <>
              <Toggle label={text.singleBlocks} isOn={blocksOf !== null} onChange={toggleBlocks} />
              {blocksOf === null ? null : (
                <Choice
                  label={text.blocksOf}
                  hideLabel
                  value={blocksOf}
                  entries={study.options.map(({ id, name }) => ({ value: id, label: name }))}
                  onChoose={setBlocksOf}
                />
              )}
            </>
          ) : null}
        </div>
      </div>
    ),
    [text, compare, quantity, lines.offered, isOffered, isOn, setOn, blocksOf, toggleBlocks, study],
  );
  return (
    <Section title={text.chartTitle} lead={text.chartLead} actions={tools}>
      {choices}
      {isTable ? (
        <RunTable caption={`${text.axis[quantity]}, ${unit}`} series={main} whole={whole} />
      ) : (
        <LineChart
          {...picture}
          howTo={text.howTo}
          whole={whole}
          onWindow={setAsked}
          cursor={cursor}
          onCursor={setCursor}
          ownCopies
          chartRef={(made) => {
            chart.current = made;
          }}
        />
      )}
      {bands.bands.length === 0 || isTable ? null : (
        <p className="soft chart-band-key">{compare.bandKey}</p>
      )}
      <Readout series={main} cursor={cursor} unit={unit} />
    </Section>
  );
};
