import { formatDifference, formatFigure, formatMinutes, thinSpace } from '../text/format.ts';
import { workingTexts } from '../text/workings.ts';
import type { Working } from '../controls/working.ts';
import type { Language } from '#core/plan/language.ts';
import type { OptionStudy } from '#core/study/study.ts';

/** What lights, sound and their converter take from the run time. */
export function accessoryWorking(study: OptionStudy, language: Language): Working {
  const text = workingTexts[language];
  const efficiency = study.run.converterEfficiencyPercent;
  return {
    formula: [text.costFormula],
    inputs: [
      {
        label: text.without,
        value: formatMinutes(study.withoutAccessories.runTimeMin, language),
        field: 'machine.accessories',
      },
      { label: text.with, value: formatMinutes(study.run.runTimeMin, language) },
    ],
    steps: [
      {
        label: text.share,
        value: `${formatFigure(study.accessoryCostPercent, language)}${thinSpace}%`,
      },
      ...(efficiency === null
        ? []
        : [
            { label: text.efficiency, value: `${formatFigure(efficiency, language)}${thinSpace}%` },
          ]),
    ],
    exact: { value: study.accessoryCostMin, unit: 'min' },
    result: {
      label: text.cost,
      value: `${formatDifference(-study.accessoryCostMin, language, 3)}${thinSpace}min`,
    },
    source: text.costSource,
  };
}
