import type { Texts } from './use-text.ts';
import type { SheetPartId } from '#core/sheet/index.ts';

interface SheetTexts {
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

export const sheetTexts: Texts<SheetTexts> = {
  en: {
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
    noCalendar:
      'No calendar: it needs a charger that fits and a week with use and charging windows.',
    care: 'Cautions are printed on every page. They cannot be switched off.',
    making: 'Making the sheet …',
    spreading: 'Working out low and high …',
    ready: (parts) =>
      parts === 1 ? '1 kind of page, up to date' : `${parts} kinds of page, up to date`,
    failed: 'The sheet could not be made:',
    nothing: 'No page is chosen',
    nothingLead: 'Switch on the pages you want; each prints on paper of its own.',
    preview: 'Preview',
  },
  de: {
    option: 'Variante',
    title: 'Was gedruckt wird',
    parts: 'Seiten',
    part: {
      build: 'Baublatt',
      diagram: 'Übersichtsschaltplan',
      wires: 'Leitungsliste',
      shopping: 'Einkaufsliste',
      label: 'Akkuschild',
      'charge-card': 'Ladekarte',
      commissioning: 'Inbetriebnahme',
      monthly: 'Monatliche Prüfung',
      handover: 'Übergabe',
      log: 'Messblatt',
      question: 'Frageblock',
    },
    all: 'Alle',
    none: 'Keine',
    paper: 'Papier',
    papers: { a4: 'A4', letter: 'US Letter' },
    language: 'Sprache des Blatts',
    languages: { en: 'English', de: 'Deutsch' },
    print: 'Drucken …',
    pdf: 'Als PDF sichern …',
    save: 'Sichern als …',
    saveHtml: 'Webseite (HTML) …',
    saveText: 'Text …',
    saveCalendar: 'Ladekalender (iCalendar) …',
    saveJson: 'Daten (JSON) …',
    saveTable: 'Tabelle als CSV',
    copyQuestion: 'Frageblock kopieren',
    questionCopied: 'Frageblock kopiert',
    browserPdf: 'Für ein PDF drucken und „Als PDF speichern“ wählen.',
    noCalendar:
      'Kein Kalender: er braucht ein passendes Ladegerät und eine Woche mit Nutzung und Ladezeiten.',
    care: 'Die Vorsichtshinweise stehen auf jeder Seite. Sie lassen sich nicht abschalten.',
    making: 'Das Blatt wird erstellt …',
    spreading: 'Niedrig und hoch werden gerechnet …',
    ready: (parts) => (parts === 1 ? '1 Art Seiten, aktuell' : `${parts} Arten Seiten, aktuell`),
    failed: 'Das Blatt ließ sich nicht erstellen:',
    nothing: 'Keine Seite gewählt',
    nothingLead: 'Die gewünschten Seiten einschalten; jede kommt auf eigenes Papier.',
    preview: 'Vorschau',
  },
};
