import type { Texts } from './use-text.ts';

export type OwnPartKind = 'blocks' | 'chargers' | 'converters' | 'accessories';

interface OwnPartTexts {
  readonly open: string;
  readonly title: string;
  readonly lead: string;
  readonly none: string;
  readonly kinds: Readonly<Record<OwnPartKind, string>>;
  readonly changed: string;
  readonly remove: (name: string) => string;
  readonly removed: (name: string) => string;
  readonly bringBack: string;
  readonly keepCharger: string;
  readonly keepConverter: string;
  readonly kept: (name: string) => string;
  readonly done: string;
}

export const ownPartTexts: Texts<OwnPartTexts> = {
  en: {
    open: 'Own parts',
    title: 'Own parts',
    lead: 'Parts you keep with the plan; the pickers offer them first. Taking one copies its figures, so a change here never changes an option.',
    none: 'None yet. The menu of an option keeps its block or its charger here; the converter has a button for it.',
    kinds: {
      blocks: 'Blocks',
      chargers: 'Chargers',
      converters: 'Converters',
      accessories: 'Accessories',
    },
    changed: 'Own parts',
    remove: (name) => `Remove ${name} from the own parts`,
    removed: (name) => `${name} is no longer among the own parts`,
    bringBack: 'Bring back',
    keepCharger: 'Keep charger as own part',
    keepConverter: 'Keep as own part',
    kept: (name) => `${name} is kept among the own parts`,
    done: 'Done',
  },
  de: {
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
  },
};
