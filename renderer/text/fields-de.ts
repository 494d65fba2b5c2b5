import { fieldHelpsDe } from './field-helps-de.ts';
import { fieldTitlesDe } from './field-titles-de.ts';
import { limitsDe } from './fields-limits-de.ts';

/** German words for the titles and helps of the plan's fields, by their English sentence. */
export const fieldsDe: Readonly<Record<string, string>> = {
  ...fieldTitlesDe,
  ...fieldHelpsDe,
  ...limitsDe,
};
