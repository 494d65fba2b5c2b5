import type { Texts } from './use-text.ts';

interface OptionTexts {
  readonly newName: string;
  readonly added: string;
  readonly duplicated: string;
  readonly copyOf: (name: string) => string;
  readonly removed: (name: string) => string;
  readonly broughtBack: (name: string) => string;
  readonly bringBack: string;
  readonly moved: string;
}

export const optionTexts: Texts<OptionTexts> = {
  en: {
    newName: 'New option',
    added: 'Add option',
    duplicated: 'Duplicate option',
    copyOf: (name) => `${name} (copy)`,
    removed: (name) => `Removed ${name}`,
    broughtBack: (name) => `Bring back ${name}`,
    bringBack: 'Undo',
    moved: 'Move option',
  },
  de: {
    newName: 'Neue Variante',
    added: 'Variante hinzufügen',
    duplicated: 'Variante verdoppeln',
    copyOf: (name) => `${name} (Kopie)`,
    removed: (name) => `${name} entfernt`,
    broughtBack: (name) => `${name} zurückholen`,
    bringBack: 'Rückgängig',
    moved: 'Variante verschieben',
  },
};
