import type { ChartTexts } from '../charts.ts';

export const charts: ChartTexts = {
  copies: (chart) => `Kopieren und sichern: ${chart}`,
  copyCsv: 'Als CSV kopieren',
  saveCsv: 'Als CSV sichern …',
  savePng: 'Als Bild sichern …',
  saveSvg: 'Als Zeichnung sichern (SVG) …',
  copied: 'Als CSV kopiert',
  line: 'Linie',
};
