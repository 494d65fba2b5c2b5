import { IconButton } from '../controls/Button.tsx';
import { Menu } from '../controls/Menu.tsx';
import { useSettings } from '../state/settings-store.ts';
import { chartTexts } from '../text/charts.ts';
import { useText } from '../text/use-text.ts';
import { copyEntries, type ChartCopy } from './copy-entries.ts';

/** A chart as CSV, as a picture or as a drawing, to the clipboard or into a file. */
export const ChartCopies = (copy: ChartCopy) => {
  const text = useText(chartTexts);
  const language = useSettings((state) => state.language);
  return (
    <Menu label={text.copies(copy.name)} groups={[copyEntries(copy, language)]}>
      <IconButton icon="copy" label={text.copies(copy.name)} />
    </Menu>
  );
};
