import type { Texts } from './use-text.ts';

interface ChartTexts {
  readonly copies: (chart: string) => string;
  readonly copyCsv: string;
  readonly saveCsv: string;
  readonly savePng: string;
  readonly copied: string;
  readonly line: string;
}

export const chartTexts: Texts<ChartTexts> = {
  en: {
    copies: (chart) => `Copy and save: ${chart}`,
    copyCsv: 'Copy as CSV',
    saveCsv: 'Save as CSV…',
    savePng: 'Save as picture…',
    copied: 'Copied as CSV',
    line: 'line',
  },
  de: {
    copies: (chart) => `Kopieren und sichern: ${chart}`,
    copyCsv: 'Als CSV kopieren',
    saveCsv: 'Als CSV sichern …',
    savePng: 'Als Bild sichern …',
    copied: 'Als CSV kopiert',
    line: 'Linie',
  },
};
