import { appTexts } from '../text/app.ts';
import { formatFigure, formatFixed, formatMinutes, thinSpace } from '../text/format.ts';
import { workingTexts } from '../text/workings.ts';
import type { Working } from '../controls/working.ts';
import type { Language } from '#core/plan/language.ts';
import type { OptionStudy } from '#core/study/study.ts';

/** How the minutes of an option came about. */
export function runTimeWorking(study: OptionStudy, index: number, language: Language): Working {
  const text = workingTexts[language];
  const { run } = study;
  const as = (value: number, unit: string): string =>
    `${formatFigure(value, language)}${thinSpace}${unit}`;
  const pack = `options.${index}.pack`;
  return {
    formula: [text.stepwise, text.simulated],
    inputs: [
      {
        label: text.fullCharge,
        value: as(study.capacityAh, 'A·h'),
        field: `${pack}.block.capacityAh`,
      },
      { label: text.averageCurrent, value: as(run.averageCurrentA, 'A') },
    ],
    steps: [
      { label: text.delivered, value: as(run.deliveredAh, 'A·h') },
      { label: text.remaining, value: as(run.remainingPercent, '%') },
      { label: text.endVoltage, value: as(run.minimumBusVoltageV, 'V') },
      { label: text.endCause, value: appTexts[language].ended[run.endedBy] },
      { label: text.exact, value: `${formatFixed(run.runTimeMin, language, 3)}${thinSpace}min` },
    ],
    exact: { value: run.runTimeMin, unit: 'min' },
    result: { label: text.runTime, value: formatMinutes(run.runTimeMin, language) },
    validity: text.runValidity,
    source: text.runSource,
  };
}
