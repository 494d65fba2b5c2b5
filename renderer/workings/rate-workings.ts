import { peukertTimeFormula } from '#core/formulas/rate/peukert-time.ts';
import type { Language } from '#core/plan/language.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { OptionStudy } from '#core/study/study.ts';
import { formatFigure, formatMinutes, thinSpace } from '../text/format.ts';
import { runTexts } from '../text/run.ts';
import { workingTexts } from '../text/workings.ts';
import type { Working } from '../controls/working.ts';

const as = (value: number, unit: string, language: Language): string =>
  `${formatFigure(value, language)}${unit === '' ? '' : thinSpace + unit}`;

/** Capacity over current: what the label seems to promise. */
export function plainWorking(
  study: OptionStudy,
  plainMin: number,
  index: number,
  language: Language,
): Working {
  const text = workingTexts[language];
  const words = runTexts[language];
  return {
    formula: ['t = C / I'],
    inputs: [
      {
        label: text.fullCharge,
        value: as(study.capacityAh, 'A·h', language),
        field: `options.${index}.pack.block.capacityAh`,
      },
      { label: text.averageCurrent, value: as(study.run.averageCurrentA, 'A', language) },
    ],
    exact: { value: plainMin, unit: 'min' },
    result: { label: words.plain, value: formatMinutes(plainMin, language) },
    validity: words.plainValidity,
    source: words.plainSource,
  };
}

/** Peukert's law at the average current, from the catalogue. */
export function peukertWorking(
  study: OptionStudy,
  peukertMin: number,
  option: Option,
  index: number,
  language: Language,
): Working {
  const text = workingTexts[language];
  const words = runTexts[language];
  const { block, parallelCount } = option.pack;
  const exponent = study.peukertExponent;
  const currentA = study.run.averageCurrentA / parallelCount;
  const path = `options.${index}.pack.block`;
  const evaluated = peukertTimeFormula.evaluate({
    capacityAh: block.capacityAh,
    ratedHours: block.ratedHours,
    currentA,
    exponent,
  });
  return {
    formula: [peukertTimeFormula.equation],
    inputs: [
      { label: 'C', value: as(block.capacityAh, 'A·h', language), field: `${path}.capacityAh` },
      { label: 'H', value: as(block.ratedHours, 'h', language), field: `${path}.ratedHours` },
      { label: 'I', value: as(currentA, 'A', language) },
      { label: 'k', value: as(exponent, '', language), field: `${path}.rating` },
      { label: text.startCharge, value: as(option.startPercent, '%', language) },
    ],
    ...(evaluated.ok
      ? {
          steps: evaluated.steps.map(({ label, value, unit }) => ({
            label,
            value: as(value, unit === '1' ? '' : unit, language),
          })),
        }
      : {}),
    exact: { value: peukertMin, unit: 'min' },
    result: { label: words.peukert, value: formatMinutes(peukertMin, language) },
    validity: peukertTimeFormula.validity,
    source: peukertTimeFormula.source.citation,
  };
}
