import { texts } from './spoken.ts';
import type { SheetPartId } from '#core/sheet/index.ts';

export interface SheetTexts {
  readonly option: string;
  readonly title: string;
  readonly parts: string;
  readonly part: Readonly<Record<SheetPartId, string>>;
  readonly all: string;
  readonly none: string;
  readonly paper: string;
  readonly papers: { readonly a4: string; readonly letter: string };
  readonly language: string;
  readonly languages: { readonly en: string; readonly de: string };
  readonly print: string;
  readonly pdf: string;
  readonly save: string;
  readonly saveHtml: string;
  readonly saveText: string;
  readonly saveCalendar: string;
  readonly saveJson: string;
  readonly saveTable: string;
  readonly copyQuestion: string;
  readonly questionCopied: string;
  readonly browserPdf: string;
  readonly noCalendar: string;
  readonly care: string;
  readonly making: string;
  readonly spreading: string;
  readonly ready: (parts: number) => string;
  readonly failed: string;
  readonly nothing: string;
  readonly nothingLead: string;
  readonly preview: string;
}

export const sheetTexts = texts('sheet', {
  option: 'Option',
  title: 'What is printed',
  parts: 'Pages',
  part: {
    build: 'Build sheet',
    diagram: 'One-line diagram',
    wires: 'Wire list',
    shopping: 'Shopping list',
    label: 'Battery label',
    'charge-card': 'Charge card',
    commissioning: 'Commissioning',
    monthly: 'Monthly check',
    handover: 'Handover note',
    log: 'Log sheet',
    question: 'Question block',
  },
  all: 'All',
  none: 'None',
  paper: 'Paper',
  papers: { a4: 'A4', letter: 'US Letter' },
  language: 'Language of the sheet',
  languages: { en: 'English', de: 'Deutsch' },
  print: 'Print…',
  pdf: 'Save as PDF…',
  save: 'Save as…',
  saveHtml: 'Web page (HTML)…',
  saveText: 'Text…',
  saveCalendar: 'Charging calendar (iCalendar)…',
  saveJson: 'Data (JSON)…',
  saveTable: 'Table as CSV',
  copyQuestion: 'Copy question block',
  questionCopied: 'Question block copied',
  browserPdf: 'For a PDF, print and choose “Save as PDF”.',
  noCalendar: 'No calendar: it needs a charger that fits and a week with use and charging windows.',
  care: 'Cautions are printed on every page. They cannot be switched off.',
  making: 'Making the sheet …',
  spreading: 'Working out low and high …',
  ready: (parts) =>
    parts === 1 ? '1 kind of page, up to date' : `${parts} kinds of page, up to date`,
  failed: 'The sheet could not be made:',
  nothing: 'No page is chosen',
  nothingLead: 'Switch on the pages you want; each prints on paper of its own.',
  preview: 'Preview',
});
