import type { Language } from '#core/plan/language.ts';
import type { German } from './german/german.ts';

let german: German | null = null;

/** The words of a language other than English, which is always there; null until they have been fetched. */
export const wordsOf = (language: Language): German | null => (language === 'de' ? german : null);

/** Fetches the words of a language. Screens that are asked for them before stay English. */
export async function learn(language: Language): Promise<void> {
  if (language === 'de') german ??= (await import('./german/german.ts')).german;
}

/** Words of one screen in every language; all languages have the same entries. */
export type Texts<T> = Readonly<Record<Language, T>>;

/** The English words of a screen, and the way to those of the other languages, which are fetched when chosen. */
export const texts = <K extends keyof German>(screen: K, en: German[K]): Texts<German[K]> => ({
  en,
  get de() {
    return wordsOf('de')?.[screen] ?? en;
  },
});
