import { useCallback, useMemo, useRef, useState } from 'react';
import type { Chart } from 'chart.js';
import { LineChart } from '../../charts/LineChart.tsx';
import { zoomed, type ChartLevel, type ChartWindow } from '../../charts/chart-series.ts';
import { chartPicture, exportAs } from '../../charts/export-chart.ts';
import { IconButton } from '../../controls/Button.tsx';
import { Choice } from '../../controls/ChoiceField.tsx';
import { Menu } from '../../controls/Menu.tsx';
import { Section } from '../../controls/Section.tsx';
import { Toggle } from '../../controls/Toggle.tsx';
import { usePageCommand } from '../../app/page-commands.ts';
import { theHost } from '../../state/document-store.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useStudyState } from '../../state/study-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { appTexts } from '../../text/app.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { runTexts, type QuantityId } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import { displaySymbol } from '#core/units/display.ts';
import type { PlanStudy } from '#core/study/study.ts';
import { QuantityTabs } from './QuantityTabs.tsx';
import { Readout } from './Readout.tsx';
import { runCsv } from './run-csv.ts';
import { runQuantities } from './run-quantities.ts';
import { blockSeries, ghostSeries, optionSeries } from './run-series.ts';
import { RunTable } from './RunTable.tsx';

/** The discharge of all options in one chart, with read-out, zoom, single blocks, ghost, table and copies. */
export const ChartSection = ({ study }: { readonly study: PlanStudy }) => {
  const text = useText(runTexts);
  const app = useText(appTexts);
  const { language, units } = useSettings();
  const before = useStudyState((state) => state.before);
  const planName = usePlan((plan) => plan.name);
  const cutoffV = usePlan((plan) => plan.machine.controller.cutoffVoltageV);
  const [quantityId, setQuantityId] = useState<QuantityId>('bus');
  const [blocksOf, setBlocksOf] = useState<string | null>(null);
  const [isTable, setIsTable] = useState(false);
  const [asked, setAsked] = useState<ChartWindow | null>(null);
  const [cursor, setCursor] = useState<number | null>(null);
  const chart = useRef<Chart<'line'> | null>(null);

  const offered = runQuantities.filter((entry) =>
    study.options.some((o) => entry.read(o) !== null),
  );
  const quantity = offered.find(({ id }) => id === quantityId) ?? offered[0] ?? runQuantities[0]!;
  const blockOption = study.options.findIndex(({ id }) => id === blocksOf);
  const main = useMemo(() => optionSeries(study, quantity, units), [study, quantity, units]);
  const series = useMemo(() => {
    const option = study.options[blockOption];
    return [
      ...ghostSeries(before, study, quantity, units, text.before),
      ...(quantity.id === 'bus' && option !== undefined ? blockSeries(option, blockOption) : []),
      ...main,
    ];
  }, [before, study, quantity, units, text, main, blockOption]);
  const whole = useMemo<ChartWindow>(
    () => ({ from: 0, to: Math.max(1, ...series.map(({ x }) => x.at(-1) ?? 0)) * 1.02 }),
    [series],
  );
  const window = asked ?? whole;
  const onWindow = useCallback((next: ChartWindow) => setAsked(next), []);
  const levels = useMemo<ChartLevel[]>(
    () =>
      quantity.id === 'bus' && cutoffV !== null
        ? [
            {
              id: 'cutoff',
              label: `${text.cutoff} ${formatFigure(cutoffV, language)} V`,
              y: cutoffV,
            },
          ]
        : [],
    [quantity, cutoffV, text, language],
  );
  const events = useMemo(
    () =>
      quantity.id === 'bus'
        ? study.options.flatMap((option, index) =>
            option.run.events.map((event, at) => ({
              id: `${option.id} ${at}`,
              label: text.event[event.kind],
              x: event.timeMin,
              y: event.busVoltageV,
              index,
            })),
          )
        : [],
    [quantity, study, text],
  );
  const xAxis = useMemo(() => ({ label: text.time, unit: 'min' }), [text]);
  const unit = displaySymbol(quantity.unit, units);
  const yAxis = useMemo(() => ({ label: text.axis[quantity.id], unit }), [text, quantity, unit]);
  const summary = text.summary(
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
  );
  const saveCsv = useCallback(
    () => void exportAs('csv', `${planName} run`, runCsv(study)),
    [planName, study],
  );
  const savePng = useCallback(() => {
    if (chart.current === null) return;
    void chartPicture(chart.current).then((bytes) =>
      bytes === null ? undefined : exportAs('png', `${planName} run`, bytes),
    );
  }, [planName]);
  const toggleBlocks = useCallback(
    () => setBlocksOf((old) => (old === null ? (study.options[0]?.id ?? null) : null)),
    [study],
  );
  usePageCommand('export.series', saveCsv);
  usePageCommand('export.chart', savePng);
  usePageCommand('view.blocks', toggleBlocks);
  const copyCsv = (): void => {
    void theHost()
      .copyText(runCsv(study))
      .then((copied) => {
        if (copied.ok) showToast(text.csvCopied);
      });
  };
  return (
    <Section
      title={text.chartTitle}
      lead={text.chartLead}
      actions={
        <>
          <IconButton
            icon="zoomIn"
            label={text.zoomIn}
            onPress={() => setAsked(zoomed(window, whole, 0.6))}
          />
          <IconButton
            icon="zoomOut"
            label={text.zoomOut}
            isDisabled={asked === null}
            onPress={() => setAsked(zoomed(window, whole, 1 / 0.6))}
          />
          <IconButton
            icon="fit"
            label={text.zoomAll}
            isDisabled={asked === null}
            onPress={() => setAsked(null)}
          />
          <IconButton
            icon={isTable ? 'picture' : 'table'}
            label={isTable ? text.showChart : text.showTable}
            isOn={isTable}
            onPress={() => setIsTable(!isTable)}
          />
          <Menu
            label={text.moreCopies}
            groups={[
              [
                { id: 'copy', label: text.copyCsv, run: copyCsv },
                { id: 'csv', label: text.saveCsv, run: saveCsv },
                { id: 'png', label: text.savePng, isDisabled: isTable, run: savePng },
              ],
            ]}
          >
            <IconButton icon="copy" label={text.moreCopies} />
          </Menu>
        </>
      }
    >
      <div className="chart-tools">
        <QuantityTabs
          label={text.view}
          selected={quantity.id}
          entries={offered.map(({ id }) => ({ id, label: text.quantities[id] }))}
          onSelect={(id) => setQuantityId(id)}
        />
        {quantity.id === 'bus' ? (
          <div className="chart-blocks">
            <Toggle label={text.singleBlocks} isOn={blockOption >= 0} onChange={toggleBlocks} />
            {blockOption >= 0 ? (
              <Choice
                label={text.blocksOf}
                hideLabel
                value={blocksOf ?? ''}
                entries={study.options.map(({ id, name }) => ({ value: id, label: name }))}
                onChoose={setBlocksOf}
              />
            ) : null}
          </div>
        ) : null}
      </div>
      {isTable ? (
        <RunTable caption={`${text.axis[quantity.id]}, ${unit}`} series={main} whole={whole} />
      ) : (
        <LineChart
          title={`${text.chartTitle}: ${text.axis[quantity.id]}`}
          summary={summary}
          howTo={text.howTo}
          xAxis={xAxis}
          yAxis={yAxis}
          series={series}
          levels={levels}
          events={events}
          window={window}
          whole={whole}
          onWindow={onWindow}
          cursor={cursor}
          onCursor={setCursor}
          chartRef={(made) => {
            chart.current = made;
          }}
        />
      )}
      <Readout series={main} cursor={cursor} unit={unit} />
    </Section>
  );
};
