import type { ControlTexts } from '../controls.ts';

export const controls: ControlTexts = {
  notKnown: 'nicht bekannt',
  assumed: (value) => `nicht bekannt · ${value} angenommen`,
  assumedShort: (value) => `${value} angenommen`,
  inPractice: (low, high) => `in der Praxis ${low} bis ${high}`,
  setNotKnown: 'Auf „nicht bekannt“ setzen',
  emptyWhenUnknown: 'Nicht bekannt? Das Feld leeren, dann gilt ein üblicher Wert.',
  mistake: (_problem, _remedy, unit) =>
    unit === ''
      ? 'Das ist keine Zahl. Ziffern eingeben.'
      : `Das ist kein Wert in ${unit}. Eine Zahl eingeben, wahlweise mit passender Einheit.`,
  needed: (range) => `Hier fehlt ein Wert: ${range}.`,
  outOfRange: (range) => `Außerhalb des Möglichen. Einen Wert ${range} eingeben.`,
  whole: (range) => `Hier zählen nur ganze Zahlen, ${range}.`,
  fromTo: (low, high, above) => `${above ? 'über' : 'von'} ${low} bis ${high}`,
  ambiguous: (text) => `„${text}“ lässt sich auf zwei Arten lesen. Was ist gemeint?`,
  about: (title) => `Hilfe: ${title}`,
  close: 'Schließen',
  working: 'Rechenweg',
  openWorking: (label) => `${label}: Rechenweg zeigen`,
  inputs: 'Mit',
  steps: 'Schritt für Schritt',
  source: 'Quelle',
  validity: 'Gilt für',
  copyFull: 'Ganze Zahl kopieren',
  copied: 'Kopiert',
  likely: 'wahrscheinlich',
  none: 'Keiner',
  goToField: 'Zum Feld',
};
