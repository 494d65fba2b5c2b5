import type { Language } from '#core/plan/language.ts';
import type { SeasonResult } from '#core/week/season-result.ts';
import type { Working } from '../controls/working.ts';
import { seasonWorkingTexts } from '../text/season-workings.ts';
import { figureWriter } from './figure-writer.ts';

/** Figures of a season that can be opened. */
export type SeasonFigure =
  | 'lost'
  | 'lowest'
  | 'depth'
  | 'cycles'
  | 'seasons'
  | 'full'
  | 'unattended'
  | 'energy'
  | 'cost';

/**
 * How a figure of a season under a routine came about.
 *
 * @param label of its column
 * @param value as it stands in the table, with its unit
 */
export function seasonWorking(
  figure: SeasonFigure,
  season: SeasonResult,
  label: string,
  value: string,
  language: Language,
): Working {
  const text = seasonWorkingTexts[language];
  const write = figureWriter(language);
  return {
    formula: [text.formulas[figure]],
    inputs: [
      { label: text.weeks, value: String(season.weeks), field: 'week.season.weeks' },
      { label: text.outings, value: String(season.outings), field: 'week.usage' },
    ],
    steps: [
      { label: text.deepest, value: write.as(season.deepestPercent, '%') },
      { label: text.fullCharges, value: String(season.fullCharges) },
      { label: text.chargingHours, value: write.as(season.chargingHours, 'h') },
    ],
    result: { label, value },
    validity: text.validity,
    source: figure === 'seasons' ? text.wearSource : text.source,
  };
}
