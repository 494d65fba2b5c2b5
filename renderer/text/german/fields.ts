import { fieldHelps } from './field-helps.ts';
import { fieldLimits } from './field-limits.ts';
import { fieldTitles } from './field-titles.ts';

/** German words for the titles and helps of the plan's fields, by their English sentence. */
export const fields: Readonly<Record<string, string>> = {
  ...fieldTitles,
  ...fieldHelps,
  ...fieldLimits,
};
