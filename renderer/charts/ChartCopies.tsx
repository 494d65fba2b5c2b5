import type { Chart } from 'chart.js';
import { IconButton } from '../controls/Button.tsx';
import { Menu } from '../controls/Menu.tsx';
import { theHost } from '../state/document-store.ts';
import { showToast } from '../state/toast-store.ts';
import { chartTexts } from '../text/charts.ts';
import { useText } from '../text/use-text.ts';
import { chartPicture, exportAs } from './export-chart.ts';

interface ChartCopiesProps {
  readonly title: string;
  /** Made only when asked for. */
  readonly csv: () => string;
  readonly chart: () => Pick<Chart, 'canvas'> | null;
}

/** A chart as CSV or as a picture, to the clipboard or into a file. */
export const ChartCopies = ({ title, csv, chart }: ChartCopiesProps) => {
  const text = useText(chartTexts);
  const copyCsv = (): void => {
    void theHost()
      .copyText(csv())
      .then((copied) => {
        if (copied.ok) showToast(text.copied);
      });
  };
  const savePng = (): void => {
    const drawn = chart();
    if (drawn === null) return;
    void chartPicture(drawn).then((bytes) =>
      bytes === null ? undefined : exportAs('png', title, bytes),
    );
  };
  return (
    <Menu
      label={text.copies(title)}
      groups={[
        [
          { id: 'copy', label: text.copyCsv, run: copyCsv },
          { id: 'csv', label: text.saveCsv, run: () => void exportAs('csv', title, csv()) },
          { id: 'png', label: text.savePng, run: savePng },
        ],
      ]}
    >
      <IconButton icon="copy" label={text.copies(title)} />
    </Menu>
  );
};
