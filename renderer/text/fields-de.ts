import { fieldsWeekDe } from './fields-week-de.ts';

/** German words for the titles and helps of the plan's fields, by their English sentence. */
export const fieldsDe: Readonly<Record<string, string>> = { ...fieldsWeekDe };
