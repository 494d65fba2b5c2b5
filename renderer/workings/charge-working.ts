import { formatFigure, thinSpace } from '../text/format.ts';
import { stripTexts } from '../text/strip.ts';
import { workingTexts } from '../text/workings.ts';
import type { Working } from '../controls/working.ts';
import type { Language } from '#core/plan/language.ts';
import type { OptionStudy } from '#core/study/study.ts';

/** Whether the charger fits and how long it takes, aspect by aspect. */
export function chargeWorking(study: OptionStudy, language: Language): Working {
  const text = workingTexts[language];
  const match = study.chargerMatch;
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
        value: `${formatFigure(study.run.remainingPercent, language)}${thinSpace}%`,
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
