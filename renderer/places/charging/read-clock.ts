/** `8:05` of minutes after midnight. */
export const clockOf = (minutes: number): string =>
  `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;

/** Minutes after midnight of `8`, `8:30`, `8.30`, `0830`, `8:30 pm`; null where it is no time of the day. */
export function readClock(text: string): number | null {
  const match = /^\s*(\d{1,2})(?:\s*[:.h]?\s*(\d{2}))?\s*(am|pm|uhr)?\s*$/i.exec(text);
  if (match === null) return null;
  const half = match[3]?.toLowerCase();
  const typed = Number(match[1]);
  const isHalf = half === 'am' || half === 'pm';
  if (isHalf && (typed < 1 || typed > 12)) return null;
  const hour = isHalf ? (typed % 12) + (half === 'pm' ? 12 : 0) : typed;
  const minute = Number(match[2] ?? 0);
  return hour > 23 || minute > 59 ? null : hour * 60 + minute;
}
