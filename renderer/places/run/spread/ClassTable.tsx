import { DataTable } from '../../../controls/DataTable.tsx';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { useSettings } from '../../../state/settings-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import { formatFigure, formatFixed } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import type { PlanSpread } from '#core/compare/spread/spread.ts';

/** The histograms as tables. */
export const ClassTable = ({ spread }: { readonly spread: PlanSpread }) => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  return (
    <Disclosure title={text.classes}>
      <div className="spread-classes">
        {spread.options.map(({ id, name, histogram: { edgesMin, counts } }) => (
          <DataTable
            key={id}
            caption={text.histogramOf(name)}
            columns={[
              { id: 'class', label: text.classColumn, unit: 'min' },
              { id: 'count', label: text.countColumn, isNumber: true },
            ]}
            rows={Array.from(counts, (count, at) => ({
              id: String(at),
              cells: {
                class: `${formatFigure(edgesMin[at]!, language, 4)}–${formatFigure(edgesMin[at + 1]!, language, 4)}`,
                count: formatFixed(count, language, 0),
              },
            }))}
          />
        ))}
      </div>
    </Disclosure>
  );
};
