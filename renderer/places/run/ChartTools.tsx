import { copyEntries, type ChartCopy } from '../../charts/copy-entries.ts';
import { IconButton } from '../../controls/Button.tsx';
import { Menu } from '../../controls/Menu.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';

interface ChartToolsProps {
  readonly isZoomed: boolean;
  readonly isTable: boolean;
  readonly onZoom: (factor: number) => void;
  readonly onAll: () => void;
  readonly onTable: () => void;
  readonly copies: ChartCopy;
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
  const language = useSettings((state) => state.language);
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
      <Menu label={text.moreCopies} groups={[copyEntries({ ...copies, isTable }, language)]}>
        <IconButton icon="copy" label={text.moreCopies} />
      </Menu>
    </>
  );
};
