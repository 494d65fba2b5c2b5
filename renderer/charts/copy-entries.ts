import type { Chart } from 'chart.js';
import type { MenuEntry } from '../controls/Menu.tsx';
import { fetchAhead } from '../state/fetch-ahead.ts';
import type { Language } from '#core/plan/language.ts';
import { chartTexts } from '../text/charts.ts';
import { copyCsv, saveCsv, type CsvTable } from './csv.ts';
import { chartPicture, exportAs } from './export-chart.ts';
import type { LinePicture } from './chart-series.ts';

export interface ChartCopy {
  /** Suggested name of the files, without ending. */
  readonly name: string;
  /** Made only when asked for. */
  readonly csv: () => CsvTable;
  /** What is said once the table is in the clipboard, where the usual words would not do. */
  readonly copied?: string;
  readonly chart: () => Pick<Chart, 'canvas'> | null;
  /** Where the chart can be drawn in vectors. */
  readonly lines?: () => LinePicture;
  /** The table stands in place of the chart: there is nothing to take a picture of. */
  readonly isTable?: boolean;
}

const vectors = async () => (await import('./line-svg.ts')).lineSvg;
fetchAhead(vectors);

export async function savePng({ name, chart }: Pick<ChartCopy, 'name' | 'chart'>): Promise<void> {
  const drawn = chart();
  const bytes = drawn === null ? null : await chartPicture(drawn);
  if (bytes !== null) await exportAs('png', name, bytes);
}

/** The ways out of a chart: as CSV to the clipboard or into a file, as a picture, as a drawing. */
export function copyEntries(copy: ChartCopy, language: Language): MenuEntry[] {
  const text = chartTexts[language];
  const { name, csv, lines, isTable = false } = copy;
  const saveSvg = async (picture: LinePicture): Promise<void> =>
    exportAs('svg', name, (await vectors())(picture, language));
  return [
    { id: 'copy', label: text.copyCsv, run: () => void copyCsv(csv(), copy.copied ?? text.copied) },
    { id: 'csv', label: text.saveCsv, run: () => void saveCsv(name, csv()) },
    { id: 'png', label: text.savePng, isDisabled: isTable, run: () => void savePng(copy) },
    ...(lines === undefined
      ? []
      : [{ id: 'svg', label: text.saveSvg, run: () => void saveSvg(lines()) }]),
  ];
}
