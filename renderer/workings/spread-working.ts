import { compareTexts } from '../text/compare.ts';
import { formatFixed, formatMinutes, thinSpace } from '../text/format.ts';
import { formatMinuteRange } from '../text/format-range.ts';
import type { Working } from '../controls/working.ts';
import type { EstimatedPercentile } from '#core/compare/spread/percentile-error.ts';
import type { OptionSpread, PlanSpread } from '#core/compare/spread/spread.ts';
import type { Language } from '#core/plan/language.ts';

/** How low and high of an option came about. */
export function spreadWorking(
  option: OptionSpread,
  { caseCount, seed }: PlanSpread,
  language: Language,
): Working {
  const text = compareTexts[language];
  const as = ({ value, error }: EstimatedPercentile): string =>
    `${formatMinutes(value, language)} ${text.error(formatFixed(error, language, 1))}${thinSpace}min`;
  return {
    formula: text.spreadFormula,
    inputs: [
      { label: text.spreadCases, value: formatFixed(caseCount, language, 0) },
      { label: text.spreadSeed, value: String(seed) },
      { label: text.planned, value: formatMinutes(option.plannedMin, language) },
    ],
    steps: [
      { label: text.lowExact, value: as(option.low) },
      { label: text.likelyExact, value: as(option.likely) },
      { label: text.highExact, value: as(option.high) },
    ],
    result: {
      label: text.spreadColumn,
      value: formatMinuteRange(option.low.value, option.high.value, language),
    },
    validity: text.spreadValidity,
    source: `${text.spreadSource} ${text.spreadInputs}`,
  };
}
