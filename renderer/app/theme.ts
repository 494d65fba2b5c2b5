import { useSyncExternalStore } from 'react';
import { useSettings, type ThemeChoice } from '../state/settings-store.ts';

export type Theme = 'light' | 'dark';

const darkSystem = matchMedia('(prefers-color-scheme: dark)');
const resolve = (choice: ThemeChoice): Theme =>
  choice === 'system' ? (darkSystem.matches ? 'dark' : 'light') : choice;

const apply = (): void => {
  document.documentElement.dataset['theme'] = resolve(useSettings.getState().theme);
};

/** Keeps the page's theme in step with the choice and the system. */
export function followTheme(): void {
  apply();
  darkSystem.addEventListener('change', apply);
  useSettings.subscribe(apply);
}

const subscribe = (listener: () => void): (() => void) => {
  darkSystem.addEventListener('change', listener);
  const stop = useSettings.subscribe(listener);
  return () => {
    darkSystem.removeEventListener('change', listener);
    stop();
  };
};

/** The theme shown, for canvases, which know no style sheets. */
export const useTheme = (): Theme =>
  useSyncExternalStore(subscribe, () => resolve(useSettings.getState().theme));
