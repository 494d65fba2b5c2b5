import type { MenuTexts } from '../menu.ts';

export const menu: MenuTexts = {
  theme: 'Darstellung',
  themes: { system: 'Wie das System', light: 'Hell', dark: 'Dunkel' },
  language: 'Sprache',
  units: 'Einheiten',
  unitNames: { metric: 'Metrisch', us: 'US-Maße' },
  settings: 'Einstellungen',
  recent: 'Zuletzt geöffnet',
  forgetRecent: 'Diese Dateien vergessen',
  palettePlaceholder: 'Befehl, Ort oder Variante eingeben',
  paletteNone: 'Nichts mit diesem Namen',
  shortcutsTitle: 'Tastenkürzel',
  inFields: 'In Zahlenfeldern und Diagrammen',
  inFieldsRows: [
    ['↑ ↓', 'ein Schritt auf oder ab'],
    ['Bild ↑ ↓', 'zehn Schritte'],
    ['Enter', 'Eingabe übernehmen'],
    ['Esc', 'zurück zum Wert davor'],
    ['Alt Enter', 'andere Werte mit einem Schieber ausprobieren'],
    ['← →', 'Ablesung im Diagramm verschieben'],
    ['+ − 0', 'Diagramm vergrößern, verkleinern, ganz zeigen'],
    ['Umschalt ← →', 'Ausschnitt verschieben'],
  ],
  aboutLead:
    'Den Akku einer kleinen elektrischen Maschine wählen, fahren, laden, verkabeln und prüfen, bevor er gekauft wird.',
  aboutCare:
    'Die Zahlen sind Schätzungen. Arbeit an Akkus kann brennen und verletzen: Örtliche Vorschriften, Herstellerangaben und Fachleute gehen vor.',
  version: 'Version',
  licences: 'Enthaltene Pakete und ihre Lizenzen',
  formulasLead: 'Jede veröffentlichte Formel hinter den Zahlen, mit Quelle und Bereich.',
  formulasFilter: 'Formel suchen',
};
