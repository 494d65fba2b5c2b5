import type { OptionTexts } from '../options.ts';

export const options: OptionTexts = {
  newName: 'Neue Variante',
  added: 'Variante hinzufügen',
  duplicated: 'Variante verdoppeln',
  copyOf: (name) => `${name} (Kopie)`,
  removed: (name) => `${name} entfernt`,
  broughtBack: (name) => `${name} zurückholen`,
  bringBack: 'Rückgängig',
  moved: 'Variante verschieben',
};
