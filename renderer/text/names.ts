import type { Plan } from '#core/plan/schema/plan.ts';
import type { Language } from '#core/plan/language.ts';
import { wordsOf } from './spoken.ts';

/** Name of a generic part or of something in a sample plan. Names of one's own stay as they are. */
export function nameIn(name: string, language: Language): string {
  const words = wordsOf(language);
  if (words === null) return name;
  const known = words.nameWords[name];
  if (known !== undefined) return known;
  const pattern = words.namePatterns.find(([from]) => from.test(name));
  return pattern === undefined ? name : name.replace(pattern[0], pattern[1]);
}

/** A copy of something whose names and notes, at any depth, are in a language. */
export function namedIn<T>(value: T, language: Language): T {
  if (language === 'en' || typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((entry) => namedIn<unknown>(entry, language)) as T;
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]: [string, unknown]) => [
      key,
      typeof entry === 'string' && (key === 'name' || key === 'note')
        ? nameIn(entry, language)
        : namedIn(entry, language),
    ]),
  ) as T;
}

/** A sample plan as it opens for a person of that language. */
export const sampleIn = (plan: Plan, language: Language): Plan => namedIn(plan, language);
