import { formatSignificant } from './format-number.ts';

/**
 * A duration in the two largest units that matter: `1 h 12 min`, `45 min`, `3 min 20 s`, `12 s`, `2 d 3 h`.
 *
 * @param minutes duration [min], not negative; anything that is not finite gives an en dash
 * @param locale BCP 47 tag for the figures
 */
export function formatDuration(minutes: number, locale: string): string {
  if (!Number.isFinite(minutes)) return '–';
  if (minutes < 0) return `−${formatDuration(-minutes, locale)}`;
  const seconds = minutes * 60;
  if (seconds < 9.95) return `${formatSignificant(seconds, 2, locale)} s`;
  if (seconds < 600) return pair(Math.round(seconds), 60, 'min', 's', locale);
  if (minutes < 48 * 60) return pair(Math.round(minutes), 60, 'h', 'min', locale);
  return pair(Math.round(minutes / 60), 24, 'd', 'h', locale);
}

function pair(total: number, size: number, large: string, small: string, locale: string): string {
  const whole = Math.floor(total / size);
  const rest = total % size;
  const parts = [
    whole > 0 ? `${formatSignificant(whole, 15, locale)} ${large}` : '',
    rest > 0 ? `${rest} ${small}` : '',
  ];
  return parts.filter((part) => part !== '').join(' ');
}
