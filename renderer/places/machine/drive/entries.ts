import type { ChoiceEntry } from '../../../controls/ChoiceField.tsx';
import { surfaces } from '#core/drive/surfaces.ts';
import type { Language } from '#core/plan/language.ts';

/** Choices from a table of words. */
export const entriesOf = (words: Readonly<Record<string, string>>): ChoiceEntry[] =>
  Object.entries(words).map(([value, label]) => ({ value, label }));

export const surfaceEntries = (language: Language): ChoiceEntry[] =>
  surfaces.map(({ id, name }) => ({ value: id, label: name[language] }));
