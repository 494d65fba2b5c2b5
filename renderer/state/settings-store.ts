import { persist } from 'zustand/middleware';
import { create } from 'zustand';
import { learn } from '../text/spoken.ts';
import type { Language } from '#core/plan/language.ts';
import type { UnitSystem } from '#core/units/display.ts';

export type ThemeChoice = 'system' | 'light' | 'dark';

interface Settings {
  readonly language: Language;
  readonly theme: ThemeChoice;
  readonly units: UnitSystem;
  /** The three questions of the first start were answered or put away. */
  readonly doorsClosed: boolean;
}

const systemLanguage = (): Language => (navigator.language.startsWith('de') ? 'de' : 'en');

/** Choices of the person at this machine; they stay on this machine and are no part of a plan. */
export const useSettings = create<Settings>()(
  persist(
    (): Settings => ({
      language: systemLanguage(),
      theme: 'system',
      units: 'metric',
      doorsClosed: false,
    }),
    { name: 'cellwain-settings' },
  ),
);

export const setSetting = <K extends keyof Settings>(name: K, value: Settings[K]): void => {
  useSettings.setState({ [name]: value } as Pick<Settings, K>);
};

let wished: Language | null = null;

/** Changes the language as soon as its words are there; the last wish counts. Fails when they cannot be fetched. */
export async function chooseLanguage(language: Language): Promise<void> {
  wished = language;
  await learn(language);
  if (wished === language) setSetting('language', language);
}
