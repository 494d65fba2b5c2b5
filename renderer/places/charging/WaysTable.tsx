import type { ChargeWayResult } from '#core/charge/charge-ways.ts';
import { DataTable } from '../../controls/DataTable.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

/** Charging the string against charging its blocks singly. */
export const WaysTable = ({ ways }: { readonly ways: readonly ChargeWayResult[] }) => {
  const text = useText(chargingTexts).curve;
  const language = useSettings((state) => state.language);
  return (
    <DataTable
      caption={text.waysTitle}
      columns={[
        { id: 'way', label: text.way },
        { id: 'chargers', label: text.chargers, isNumber: true },
        { id: 'hours', label: text.hours, isNumber: true },
        { id: 'weakest', label: text.weakest, unit: '%', isNumber: true },
        { id: 'highest', label: text.highestBlock, unit: 'V', isNumber: true },
        { id: 'gassed', label: text.gassed, unit: 'A·h', isNumber: true },
      ]}
      rows={ways.map((way) => ({
        id: way.way,
        cells: {
          way: text.ways[way.way],
          chargers: String(way.chargersNeeded),
          hours: formatMinutes(way.hours * 60, language),
          weakest: formatFigure(way.weakestPercent, language),
          highest: formatFigure(way.highestBlockV, language, 4),
          gassed: formatFigure(way.mostGassedAh, language, 2),
        },
      }))}
    />
  );
};
