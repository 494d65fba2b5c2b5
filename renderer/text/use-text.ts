import { useSettings } from '../state/settings-store.ts';
import type { Texts } from './spoken.ts';

/** The words of a screen in the language chosen. */
export const useText = <T>(words: Texts<T>): T => words[useSettings((state) => state.language)];

/** The same outside of components. */
export const textNow = <T>(words: Texts<T>): T => words[useSettings.getState().language];
