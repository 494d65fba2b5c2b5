/** A day without clock or zone. */
export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Days since 1970-01-01 in the Gregorian calendar. Source: derived (era of 400 years, year beginning in March). */
export function dayNumber({ year, month, day }: CivilDate): number {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return (
    era * 146097 +
    yearOfEra * 365 +
    Math.floor(yearOfEra / 4) -
    Math.floor(yearOfEra / 100) +
    dayOfYear -
    719468
  );
}

/** Inverse of `dayNumber`. */
export function civilDate(number: number): CivilDate {
  const shifted = number + 719468;
  const era = Math.floor(shifted / 146097);
  const dayOfEra = shifted - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36524) -
      Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1,
  };
}

/** Reads `YYYY-MM-DD`; null where it is no day of the calendar. */
export function parseCivilDate(text: string): CivilDate | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return null;
  const date = { year: Number(match[1]), month: Number(match[2]), day: Number(match[3]) };
  const back = civilDate(dayNumber(date));
  return back.month === date.month && back.day === date.day && date.month >= 1 ? date : null;
}

/** Monday of the week a day lies in, as a day number. */
export function mondayOf(number: number): number {
  return number - ((((number + 3) % 7) + 7) % 7);
}

const two = (value: number) => String(value).padStart(2, '0');

/** `YYYY-MM-DDThh:mm:00Z` of a day and a minute; the Z only keeps the host's zone out of it. */
export function isoMinute(number: number, minute: number): string {
  const { year, month, day } = civilDate(number + Math.floor(minute / 1440));
  const ofDay = ((minute % 1440) + 1440) % 1440;
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}T${two(Math.floor(ofDay / 60))}:${two(Math.floor(ofDay % 60))}:00Z`;
}
