import type { SeasonFigure } from '../workings/season-working.ts';
import { texts } from './spoken.ts';

export interface SeasonWorkingTexts {
  readonly formulas: Readonly<Record<SeasonFigure, string>>;
  readonly weeks: string;
  readonly outings: string;
  readonly start: string;
  readonly deepest: string;
  readonly fullCharges: string;
  readonly chargingHours: string;
  readonly source: string;
  readonly wearSource: string;
  readonly validity: string;
}

export const seasonWorkingTexts = texts('seasonWorkings', {
  formulas: {
    lost: 'outings that ended before their time, counted over the season',
    lowest: 'lowest charge of the season, after any outing',
    depth: 'mean over the outings of the charge they took from full',
    cycles: 'Σ charge taken / capacity, of the pack that did most',
    seasons:
      'seasons until a fifth of the capacity is gone: cycle wear at these depths and the passing of time',
    full: 'longest time between two full charges while in use',
    unattended: 'hours in which it charged and no one was awake and near',
    energy: 'E(mains) = Σ charges ∫ V · I dt / η(charger)',
    cost: 'Σ price at the hour · energy from the mains',
  },
  weeks: 'Weeks of the season',
  outings: 'Outings',
  start: 'Least charge wanted',
  deepest: 'Deepest outing',
  fullCharges: 'Full charges',
  chargingHours: 'Hours on the charger',
  source: 'Read off the simulated season (derived): every outing and every charge, day by day.',
  wearSource:
    'Cycle life of the chemistry over depth and temperature (common practice), added up over the season (derived).',
  validity:
    'the chances of the outings are drawn with the seed under Place, season, tariff: another seed moves the counts a little.',
});
