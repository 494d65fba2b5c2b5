import type { Language } from '#core/plan/language.ts';
import { thinSpace } from './format.ts';

const clock = (minutes: number): string => {
  const whole = Math.round(minutes);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
};

/** Two run times in one short figure: `65–98 min`, from 100 minutes on `1:05–1:48 h`. */
export function formatMinuteRange(low: number, high: number, language: Language): string {
  if (high >= 100) return `${clock(low)}–${clock(high)}${thinSpace}h`;
  const digits = high < 10 ? 1 : 0;
  const as = (minutes: number): string =>
    minutes.toFixed(digits).replace('.', language === 'de' ? ',' : '.');
  return `${as(low)}–${as(high)}${thinSpace}min`;
}
