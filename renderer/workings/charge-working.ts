import { formatFigure, thinSpace } from '../text/format.ts';
import { stripTexts } from '../text/strip.ts';
import { workingTexts } from '../text/workings.ts';
import type { Working } from '../controls/working.ts';
import type { Language } from '#core/plan/language.ts';
import type { ChargerMatch } from '#core/charge/match-result.ts';
import type { OptionStudy } from '#core/study/study.ts';

/** Whether the charger fits and how long it takes, aspect by aspect. */
export const chargeWorking = (study: OptionStudy, language: Language): Working =>
  matchWorking(study.chargerMatch, study.run.remainingPercent, language);

/** The same for any charger held against a pack with so much charge left [%]. */
export function matchWorking(
  match: ChargerMatch | null,
  remainingPercent: number,
  language: Language,
): Working {
  const text = workingTexts[language];
  const volts = (value: number | null | undefined): string =>
    value == null ? text.notKnown : `${formatFigure(value, language, 4)}${thinSpace}V`;
  return {
    formula: [
      ...(match?.aspects.filter(({ verdict }) => verdict !== 'fits').map(({ reason }) => reason) ??
        []),
      text.chargeFormula,
    ],
    inputs: [
      { label: text.wantedEnd, value: volts(match?.wantedEndVoltageV) },
      { label: text.givenEnd, value: volts(match?.givenEndVoltageV) },
      {
        label: text.remaining,
        value: `${formatFigure(remainingPercent, language)}${thinSpace}%`,
      },
    ],
    steps: [
      {
        label: text.hours,
        value:
          match?.hoursToFull == null
            ? text.notKnown
            : `${formatFigure(match.hoursToFull, language, 2)}${thinSpace}h`,
      },
    ],
    result: {
      label: text.verdict,
      value: stripTexts[language].fits[match?.verdict ?? 'unknown'],
    },
    source: text.chargeSource,
  };
}
