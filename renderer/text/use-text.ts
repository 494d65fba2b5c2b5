import { useSettings } from '../state/settings-store.ts';
import type { Language } from '#core/plan/language.ts';

/** Words of one screen in every language; all languages have the same entries. */
export type Texts<T> = Readonly<Record<Language, T>>;

/** The words of a screen in the language chosen. */
export const useText = <T>(texts: Texts<T>): T => texts[useSettings((state) => state.language)];

/** The same outside of components. */
export const textNow = <T>(texts: Texts<T>): T => texts[useSettings.getState().language];
