import type { OwnPartTexts } from '../own-parts.ts';

export const ownParts: OwnPartTexts = {
  open: 'Eigene Teile',
  title: 'Eigene Teile',
  lead: 'Teile, die beim Plan bleiben; die Auswahl bietet sie zuerst an. Nehmen kopiert die Zahlen: Eine Änderung hier ändert nie eine Variante.',
  none: 'Noch keine. Das Menü einer Variante behält ihren Block oder ihr Ladegerät hier; beim Wandler gibt es einen Knopf dafür.',
  kinds: {
    blocks: 'Blöcke',
    chargers: 'Ladegeräte',
    converters: 'Wandler',
    accessories: 'Verbraucher',
  },
  changed: 'Eigene Teile',
  remove: (name) => `${name} aus den eigenen Teilen entfernen`,
  removed: (name) => `${name} ist kein eigenes Teil mehr`,
  bringBack: 'Zurückholen',
  keepCharger: 'Ladegerät als eigenes Teil behalten',
  keepConverter: 'Als eigenes Teil behalten',
  kept: (name) => `${name} steht bei den eigenen Teilen`,
  done: 'Fertig',
};
