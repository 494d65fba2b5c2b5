import { useCallback, useMemo, useState } from 'react';
import type { Option } from '#core/plan/schema/option.ts';
import type { OptionCharging } from '#core/study/study-charging.ts';
import { LineChart } from '../../charts/LineChart.tsx';
import type { ChartWindow } from '../../charts/chart-series.ts';
import { IconButton } from '../../controls/Button.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { Section } from '../../controls/Section.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts, type ChargeQuantity } from '../../text/charging.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import { QuantityTabs } from '../run/QuantityTabs.tsx';
import { chargeRows, chargeEvents, chargeSeries } from './charge-lines.ts';
import { ChargeFigures } from './ChargeFigures.tsx';
import { WaysTable } from './WaysTable.tsx';

interface CurveSectionProps {
  readonly option: Option;
  readonly index: number;
  readonly charging: OptionCharging;
}

const quantities = ['voltage', 'current', 'percent', 'cells'] as const;

/** The charge after the outing as a curve, with its times, energies and the ways to charge the blocks. */
export const CurveSection = ({ option, index, charging }: CurveSectionProps) => {
  const text = useText(chargingTexts).curve;
  const language = useSettings((state) => state.language);
  const [quantity, setQuantity] = useState<ChargeQuantity>('voltage');
  const [asked, setAsked] = useState<ChartWindow | null>(null);
  const [cursor, setCursor] = useState<number | null>(null);
  const [isTable, setIsTable] = useState(false);
  const onWindow = useCallback((next: ChartWindow) => setAsked(next), []);
  const charge = charging.charge!;
  const unequal = charge.units.length > 1;
  const offered = quantities.filter((entry) => entry !== 'cells' || unequal);
  const shown = offered.includes(quantity) ? quantity : 'voltage';
  const series = useMemo(
    () => chargeSeries(charge, shown, option.name, index, text),
    [charge, shown, option.name, index, text],
  );
  const events = useMemo(
    () => chargeEvents(charge, shown, index, text),
    [charge, shown, index, text],
  );
  const whole = useMemo<ChartWindow>(
    () => ({ from: 0, to: Math.max(0.5, charge.series.timeH.at(-1) ?? 1) * 1.01 }),
    [charge],
  );
  const xAxis = useMemo(() => ({ label: text.time, unit: 'h' }), [text]);
  const yAxis = useMemo(
    () => ({ label: text.quantities[shown], unit: text.units[shown] }),
    [text, shown],
  );
  const percent = (value: number) => `${formatFigure(value, language)} %`;
  const summary = text.summary(
    option.name,
    formatMinutes(charge.hours * 60, language),
    percent(charge.endPercent),
    text.ends[charge.endedBy],
  );
  const stage = (id: string): string => events.find((event) => event.id === id)?.label ?? '';
  return (
    <Section
      title={text.title}
      lead={text.lead(percent(charge.startPercent))}
      actions={
        <IconButton
          icon={isTable ? 'picture' : 'table'}
          label={isTable ? text.chart : text.table}
          isOn={isTable}
          onPress={() => setIsTable(!isTable)}
        />
      }
    >
      {option.charger === null ? null : (
        <ChargeFigures
          charge={charge}
          charger={option.charger}
          optionIndex={index}
          cost={charging.cost}
        />
      )}
      <QuantityTabs
        label={text.title}
        selected={shown}
        entries={offered.map((id) => ({ id, label: text.quantities[id] }))}
        onSelect={setQuantity}
      />
      {isTable ? (
        <DataTable
          caption={`${text.quantities[shown]}, ${text.units[shown]}`}
          columns={[
            { id: 'time', label: text.time },
            ...series.map(({ id, name }) => ({
              id,
              label: name,
              unit: text.units[shown],
              isNumber: true,
            })),
          ]}
          rows={chargeRows(series, whole, language)}
        />
      ) : (
        <>
          <LineChart
            title={text.title}
            summary={summary}
            howTo={text.howTo}
            xAxis={xAxis}
            yAxis={yAxis}
            series={series}
            events={events}
            window={asked ?? whole}
            whole={whole}
            onWindow={onWindow}
            cursor={cursor}
            onCursor={setCursor}
            height="19rem"
          />
          <p className="chart-legend">
            {events.map((event) => (
              <span
                key={event.id}
              >{`○ ${formatMinutes(event.x * 60, language)} ${stage(event.id)}`}</span>
            ))}
          </p>
        </>
      )}
      {charging.ways.length > 1 ? <WaysTable ways={charging.ways} /> : null}
    </Section>
  );
};
