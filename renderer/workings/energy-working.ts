import { formatFigure, formatFixed, thinSpace } from '../text/format.ts';
import { workingTexts } from '../text/workings.ts';
import type { Working } from '../controls/working.ts';
import type { Language } from '#core/plan/language.ts';
import type { OptionStudy } from '#core/study/study.ts';

/** Energy at the pack terminals against what the blocks gave up. */
export function energyWorking(study: OptionStudy, language: Language): Working {
  const text = workingTexts[language];
  const { ledger, deliveredWh, deliveredAh } = study.run;
  const wattHours = (value: number): string => `${formatFigure(value, language)}${thinSpace}W·h`;
  const inside = ledger.resistanceLossWh + ledger.polarisationLossWh + ledger.rateLossWh;
  return {
    formula: [text.energyFormula],
    inputs: [
      { label: text.givenUp, value: wattHours(ledger.givenUpWh) },
      { label: text.losses, value: wattHours(inside) },
    ],
    steps: [
      { label: text.delivered, value: `${formatFigure(deliveredAh, language)}${thinSpace}A·h` },
      {
        label: text.ledgerClosure,
        value: `${formatFixed(Math.abs(ledger.closurePercent), language, 3)}${thinSpace}%`,
      },
    ],
    exact: { value: deliveredWh, unit: 'W·h' },
    result: { label: text.delivered, value: wattHours(deliveredWh) },
    source: text.energySource,
  };
}
