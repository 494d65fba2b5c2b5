import { IconButton } from '../../controls/Button.tsx';
import { Menu } from '../../controls/Menu.tsx';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';

interface ChartToolsProps {
  readonly isZoomed: boolean;
  readonly isTable: boolean;
  readonly onZoom: (factor: number) => void;
  readonly onAll: () => void;
  readonly onTable: () => void;
  readonly copies: {
    readonly copyCsv: () => void;
    readonly saveCsv: () => void;
    readonly savePng: () => void;
  };
}

/** Zoom, table and copies of the chart as buttons: nothing needs wheel or drag. */
export const ChartTools = ({
  isZoomed,
  isTable,
  onZoom,
  onAll,
  onTable,
  copies,
}: ChartToolsProps) => {
  const text = useText(runTexts);
  return (
    <>
      <IconButton
        icon="zoomIn"
        label={text.zoomIn}
        isDisabled={isTable}
        onPress={() => onZoom(0.6)}
      />
      <IconButton
        icon="zoomOut"
        label={text.zoomOut}
        isDisabled={isTable || !isZoomed}
        onPress={() => onZoom(1 / 0.6)}
      />
      <IconButton
        icon="fit"
        label={text.zoomAll}
        isDisabled={isTable || !isZoomed}
        onPress={onAll}
      />
      <IconButton
        icon={isTable ? 'picture' : 'table'}
        label={isTable ? text.showChart : text.showTable}
        onPress={onTable}
      />
      <Menu
        label={text.moreCopies}
        groups={[
          [
            { id: 'copy', label: text.copyCsv, run: copies.copyCsv },
            { id: 'csv', label: text.saveCsv, run: copies.saveCsv },
            { id: 'png', label: text.savePng, isDisabled: isTable, run: copies.savePng },
          ],
        ]}
      >
        <IconButton icon="copy" label={text.moreCopies} />
      </Menu>
    </>
  );
};
