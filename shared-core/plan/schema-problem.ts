import type { z } from 'zod';
import { fieldDocs, fieldRange } from './field-docs.ts';
import type { Language } from './language.ts';
import type { PlanProblem } from './problem.ts';
import { quoted, valueAt } from './value-at.ts';

/** Turns what the schema objects to into words that name the field, the value and the way out. */
export function schemaProblem(
  issue: z.core.$ZodIssue,
  raw: unknown,
  language: Language,
): PlanProblem {
  const path = issue.path.map(String).join('.');
  const { title, unit } = fieldDocs(path);
  const value = valueAt(raw, issue.path);
  const german = language === 'de';
  const shown = `${quoted(value)}${typeof value === 'number' && unit !== undefined ? ` ${unit}` : ''}`;
  const make = (problem: string, remedy: string): PlanProblem => ({
    code: value === undefined ? 'missing' : 'invalid',
    path,
    title,
    problem,
    remedy,
  });
  if (value === undefined) {
    return german
      ? make(`${title} fehlt.`, needed(path, issue, language))
      : make(`${title} is missing.`, needed(path, issue, language));
  }
  return german
    ? make(`${title} ist ${shown}.`, needed(path, issue, language))
    : make(`${title} is ${shown}.`, needed(path, issue, language));
}

/** What the field would take, as an order to the reader. */
function needed(path: string, issue: z.core.$ZodIssue, language: Language): string {
  const german = language === 'de';
  const range = fieldRange(path);
  if (range !== null) return rangeWords(path, range, issue, language);
  switch (issue.code) {
    case 'invalid_value': {
      const values = issue.values.map(String).join(', ');
      return german ? `Möglich: ${values}.` : `Use one of: ${values}.`;
    }
    case 'invalid_union': {
      const values =
        'options' in issue && Array.isArray(issue.options)
          ? issue.options.map(String).join(', ')
          : '';
      return german ? `Möglich: ${values}.` : `Use one of: ${values}.`;
    }
    case 'too_small':
      return german ? `Mindestens ${issue.minimum} eintragen.` : `Give at least ${issue.minimum}.`;
    case 'too_big': {
      const what =
        issue.origin === 'string'
          ? german
            ? 'Zeichen'
            : 'characters'
          : german
            ? 'Einträge'
            : 'entries';
      return german
        ? `Höchstens ${issue.maximum} ${what}.`
        : `Give at most ${issue.maximum} ${what}.`;
    }
    case 'invalid_format':
      return german
        ? 'Kleinbuchstaben, Ziffern und Bindestriche verwenden.'
        : 'Use lower-case letters, digits and hyphens.';
    case 'invalid_type':
      return german
        ? `Hier gehört ${typeWords[issue.expected]?.de ?? issue.expected} hin.`
        : `Put ${typeWords[issue.expected]?.en ?? issue.expected} here.`;
    default:
      return german ? 'Steuerzeichen entfernen.' : 'Remove control characters.';
  }
}

function rangeWords(
  path: string,
  range: NonNullable<ReturnType<typeof fieldRange>>,
  issue: z.core.$ZodIssue,
  language: Language,
): string {
  const german = language === 'de';
  const unit = fieldDocs(path).unit;
  const suffix = unit === undefined ? '' : ` ${unit}`;
  const whole = issue.code === 'invalid_type' && issue.expected === 'int';
  const kind = german
    ? whole
      ? 'eine ganze Zahl'
      : 'eine Zahl'
    : whole
      ? 'a whole number'
      : 'a number';
  const low = range.aboveMin
    ? german
      ? `über ${range.min}`
      : `above ${range.min}`
    : german
      ? `ab ${range.min}`
      : `from ${range.min}`;
  return german
    ? `Hier gehört ${kind} ${low} bis ${range.max}${suffix} hin.`
    : `Put ${kind} ${low} up to ${range.max}${suffix} here.`;
}

const typeWords: Readonly<Record<string, Record<Language, string>>> = {
  string: { en: 'a text', de: 'ein Text' },
  boolean: { en: 'true or false', de: 'true oder false' },
  array: { en: 'a list', de: 'eine Liste' },
  object: { en: 'an object with fields', de: 'ein Objekt mit Feldern' },
  number: { en: 'a number', de: 'eine Zahl' },
};
