import { texts } from './spoken.ts';

export type OwnPartKind = 'blocks' | 'chargers' | 'converters' | 'accessories';

export interface OwnPartTexts {
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

export const ownPartTexts = texts('ownParts', {
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
});
