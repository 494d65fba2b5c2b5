import { texts } from './spoken.ts';

export interface OptionTexts {
  readonly newName: string;
  readonly added: string;
  readonly duplicated: string;
  readonly copyOf: (name: string) => string;
  readonly removed: (name: string) => string;
  readonly broughtBack: (name: string) => string;
  readonly bringBack: string;
  readonly moved: string;
}

export const optionTexts = texts('options', {
  newName: 'New option',
  added: 'Add option',
  duplicated: 'Duplicate option',
  copyOf: (name) => `${name} (copy)`,
  removed: (name) => `Removed ${name}`,
  broughtBack: (name) => `Bring back ${name}`,
  bringBack: 'Undo',
  moved: 'Move option',
});
