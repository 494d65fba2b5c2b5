import { texts } from './spoken.ts';

export interface ChartTexts {
  readonly copies: (chart: string) => string;
  readonly copyCsv: string;
  readonly saveCsv: string;
  readonly savePng: string;
  readonly saveSvg: string;
  readonly copied: string;
  readonly line: string;
}

export const chartTexts = texts('charts', {
  copies: (chart) => `Copy and save: ${chart}`,
  copyCsv: 'Copy as CSV',
  saveCsv: 'Save as CSV…',
  savePng: 'Save as picture…',
  saveSvg: 'Save as drawing (SVG)…',
  copied: 'Copied as CSV',
  line: 'line',
});
