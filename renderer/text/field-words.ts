import { fieldDocs } from '#core/plan/field-docs.ts';
import type { FieldDocs } from '#core/plan/schema/field.ts';
import { useSettings } from '../state/settings-store.ts';
import type { Language } from '#core/plan/language.ts';
import { wordsOf } from './spoken.ts';

const cache = new Map<string, FieldDocs>();

/**
 * Title, unit and help of a plan field in a language. English stands in the schema; the other languages are looked up
 * by the English sentence, so that a field keeps its words wherever it stands.
 */
export function fieldWords(path: string, language: Language): FieldDocs {
  const key = `${language}:${path}`;
  const known = cache.get(key);
  if (known !== undefined) return known;
  const docs = fieldDocs(path);
  const words = wordsOf(language)?.fields;
  const made: FieldDocs =
    words === undefined
      ? docs
      : {
          ...docs,
          title: words[docs.title] ?? docs.title,
          ...(docs.help === undefined ? {} : { help: words[docs.help] ?? docs.help }),
        };
  // Words that have not been fetched yet are not taken for good.
  if (language === 'en' || words !== undefined) cache.set(key, made);
  return made;
}

export const useFieldWords = (path: string): FieldDocs =>
  fieldWords(
    path,
    useSettings((state) => state.language),
  );
