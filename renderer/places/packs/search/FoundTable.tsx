import type { FoundPack } from '#core/compare/search/candidate.ts';
import { Button } from '../../../controls/Button.tsx';
import { DataTable } from '../../../controls/DataTable.tsx';
import { optionLimit } from '../../../state/option-actions.ts';
import { usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { searchTexts } from '../../../text/search.ts';
import { useText } from '../../../text/use-text.ts';
import { figureUnit, figureWords, searchFigures } from './found-figures.ts';

interface FoundTableProps {
  readonly found: readonly FoundPack[];
  readonly chosen: number | null;
  readonly onChoose: (index: number) => void;
  readonly onTake: (pack: FoundPack) => void;
}

/** The packs of the chart as a table; each can be taken from here. */
export const FoundTable = ({ found, chosen, onTake }: FoundTableProps) => {
  const text = useText(searchTexts);
  const { language, units } = useSettings();
  const currency = usePlan((plan) => plan.currency);
  const isFull = usePlan((plan) => plan.options.length >= optionLimit);
  const style = { language, units, currency };
  return (
    <>
      {isFull ? <p className="search-trouble">{text.full}</p> : null}
      <DataTable
        caption={text.title}
        hideCaption
        columns={[
          { id: 'pack', label: text.pack },
          ...searchFigures.map((figure) => ({
            id: figure,
            label: text.figures[figure],
            ...(figure === 'runTimeMin' ? {} : { unit: figureUnit(figure, style) }),
            isNumber: true,
          })),
          { id: 'bay', label: text.bayColumn },
          { id: 'best', label: text.best },
          { id: 'take', label: '' },
        ]}
        rows={found.map((pack) => ({
          id: String(pack.index),
          cells: {
            pack: <span data-chosen={pack.index === chosen}>{pack.option.name}</span>,
            ...Object.fromEntries(
              searchFigures.map((figure) => [
                figure,
                <span
                  key={figure}
                  title={figure === 'price' && pack.isPriceTypical ? text.rough : undefined}
                >
                  {figureWords(pack, figure, style)}
                </span>,
              ]),
            ),
            bay: text.bayWords[pack.bay],
            best: pack.isBest ? text.bestYes : '',
            take: (
              <Button
                label={text.takeNamed(pack.option.name)}
                isDisabled={isFull}
                onPress={() => onTake(pack)}
              >
                {text.take}
              </Button>
            ),
          },
        }))}
      />
    </>
  );
};
