import { places } from './places.ts';

/** Place in which the plan field of that path stands. */
export const placeOfField = (path: string): string =>
  places.find((place) => place.fields.some((pattern) => pattern.test(path)))?.id ?? 'packs';
