import { fieldsDe } from './fields-de.ts';
import { fieldDocs } from '#core/plan/field-docs.ts';
import type { FieldDocs } from '#core/plan/schema/field.ts';
import { useSettings } from '../state/settings-store.ts';
import type { Language } from '#core/plan/language.ts';

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
  const made: FieldDocs =
    language === 'en'
      ? docs
      : {
          ...docs,
          title: fieldsDe[docs.title] ?? docs.title,
          ...(docs.help === undefined ? {} : { help: fieldsDe[docs.help] ?? docs.help }),
        };
  cache.set(key, made);
  return made;
}

export const useFieldWords = (path: string): FieldDocs =>
  fieldWords(
    path,
    useSettings((state) => state.language),
  );
