export const labelWords = {
  title: { en: 'Battery label', de: 'Akkuschild' },
  lead: {
    en: 'Cut out, laminate, fix to the lid of the battery bay and beside the charge port.',
    de: 'Ausschneiden, laminieren, am Deckel des Akkufachs und neben der Ladebuchse anbringen.',
  },
  packTitle: { en: '{machine}: battery', de: '{machine}: Akku' },
  big: { en: '{volts} {chemistry}', de: '{volts} {chemistry}' },
  blocks: { en: 'Blocks', de: 'Blöcke' },
  capacity: { en: 'Capacity, energy', de: 'Kapazität, Energie' },
  range: { en: 'Empty under load / full at rest', de: 'Leer unter Last / voll in Ruhe' },
  mainFuse: { en: 'Main fuse', de: 'Hauptsicherung' },
  noFuse: { en: 'none in the plan', de: 'keine im Plan' },
  short: { en: 'Short-circuit current', de: 'Kurzschlussstrom' },
  made: { en: 'Plan, date', de: 'Plan, Datum' },
  installed: { en: 'Built in on', de: 'Eingebaut am' },
  line: { en: '__________', de: '__________' },
  chargeTitle: { en: 'Charge port', de: 'Ladebuchse' },
  chargeOnly: { en: 'Charge only with {volts}', de: 'Nur laden mit {volts}' },
  noCharger: { en: 'No charger chosen: do not charge', de: 'Kein Ladegerät gewählt: nicht laden' },
  misfit: {
    en: 'The charger does not fit this pack: do not charge',
    de: 'Das Ladegerät passt nicht zu diesem Akku: nicht laden',
  },
  charger: { en: 'Charger', de: 'Ladegerät' },
  current: { en: 'Current at most', de: 'Strom höchstens' },
  hours: { en: 'Hours after the outing', de: 'Stunden nach der Fahrt' },
  isolate: {
    en: 'Open the isolator before working here and when stored.',
    de: 'Vor Arbeiten hier und beim Einlagern den Trennschalter öffnen.',
  },
  shortWarning: {
    en: 'Short circuit burns: no metal on the terminals, rings off.',
    de: 'Kurzschluss verbrennt: kein Metall an die Pole, Ringe ab.',
  },
  lead1: {
    en: 'Hydrogen while charging: fresh air, no flame.',
    de: 'Wasserstoff beim Laden: Frischluft, keine Flamme.',
  },
  lithium1: {
    en: 'Never charge below 0 °C, nor when swollen, hot or damaged.',
    de: 'Nie unter 0 °C laden, nie gebläht, heiß oder beschädigt.',
  },
  other: {
    en: 'Another charger, even with the same plug, can set it on fire.',
    de: 'Ein anderes Ladegerät, auch mit gleichem Stecker, kann es in Brand setzen.',
  },
  code: {
    en: "Local codes, makers' instructions and licensed practice come first.",
    de: 'Örtliche Vorschriften, Herstellerangaben und Fachleute gehen vor.',
  },
} as const;
