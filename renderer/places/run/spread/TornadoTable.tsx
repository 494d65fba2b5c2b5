import { DataTable } from '../../../controls/DataTable.tsx';
import { useSettings } from '../../../state/settings-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import {
  formatDifference,
  formatFigure,
  formatFixed,
  formatMinutes,
} from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import { displaySymbol, toDisplay } from '#core/units/display.ts';
import type { InputEffect, OptionSensitivity } from '#core/compare/sensitivity/sensitivity.ts';
import { TornadoBar } from './TornadoBar.tsx';

interface TornadoTableProps {
  readonly sensitivity: OptionSensitivity;
  /** Position of the option, for its colour. */
  readonly index: number;
}

/** Bars and figures in one: an assumption a row, the widest swing on top. */
export const TornadoTable = ({ sensitivity, index }: TornadoTableProps) => {
  const text = useText(compareTexts);
  const { language, units } = useSettings();
  const { effects, plannedMin, name } = sensitivity;
  const ends = effects.flatMap(({ atLowMin, atHighMin }) => [atLowMin, atHighMin]);
  const from = Math.min(plannedMin, ...ends);
  const to = Math.max(plannedMin, ...ends);
  const room = Math.max(0.5, 0.03 * (to - from));
  const scale = { from: from - room, to: to + room };
  const minutes = (value: number): string => formatMinutes(value, language);
  const amount = (value: number, unit: string): string =>
    `${formatFigure(toDisplay(value, unit, units), language)} ${displaySymbol(unit, units)}`.trim();
  const perUnit = ({ minutesPerUnit, unit, low, high }: InputEffect): string => {
    if (minutesPerUnit === null) return '–';
    const shown = (toDisplay(high, unit, units) - toDisplay(low, unit, units)) / (high - low);
    const symbol = displaySymbol(unit, units);
    return `${formatDifference(minutesPerUnit / shown, language, 3)} min${symbol === '' ? '' : ` / ${symbol}`}`;
  };
  return (
    <DataTable
      caption={text.tornadoSummary(
        name,
        effects
          .slice(0, 3)
          .map(({ label, atLowMin, atHighMin }) =>
            text.tornadoPart(label[language], minutes(atLowMin), minutes(atHighMin)),
          )
          .join(' '),
      )}
      hideCaption
      columns={[
        { id: 'label', label: text.assumption },
        { id: 'bar', label: `${text.tornadoAxis}, ${text.planned} ${minutes(plannedMin)}` },
        { id: 'low', label: text.lowValue, isNumber: true },
        { id: 'high', label: text.highValue, isNumber: true },
        { id: 'atLow', label: text.atLow, isNumber: true },
        { id: 'atHigh', label: text.atHigh, isNumber: true },
        { id: 'unit', label: text.perUnit, isNumber: true },
        { id: 'share', label: text.share, unit: '%', isNumber: true },
        { id: 'class', label: text.rangeFrom },
      ]}
      rows={effects.map((effect) => ({
        id: effect.id,
        cells: {
          label: effect.label[language],
          bar: <TornadoBar effect={effect} plannedMin={plannedMin} scale={scale} index={index} />,
          low: amount(effect.low, effect.unit),
          high: amount(effect.high, effect.unit),
          atLow: minutes(effect.atLowMin),
          atHigh: minutes(effect.atHighMin),
          unit: perUnit(effect),
          share: formatFixed(effect.sharePercent, language, 0),
          class: <span title={effect.source}>{text.rangeClass[effect.rangeClass]}</span>,
        },
      }))}
    />
  );
};
