import { chemistryTraits } from '#core/battery/chemistry.ts';
import { defaultResistanceOhm } from '#core/battery/default-resistance.ts';
import { blockInputs } from '#core/compare/inputs/block-inputs.ts';
import type { Language } from '#core/plan/language.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { controlTexts } from '../../text/controls.ts';
import { formatFigure } from '../../text/format.ts';

/** What the core takes for a field the user does not know, with its unit; undefined where it takes nothing. */
export function assumedFor(field: string, option: Option, language: Language): string | undefined {
  const { block } = option.pack;
  const traits = chemistryTraits[block.chemistry];
  switch (field) {
    case 'resistanceOhm':
      return `${formatFigure(1000 * defaultResistanceOhm(block), language)} mΩ`;
    case 'exponent':
      return formatFigure(traits.exponent.likely, language);
    case 'chargeEndVoltageV':
      return `${formatFigure(block.cellGroups * traits.chargeEndV, language)} V`;
    default:
      return undefined;
  }
}

/** From low to high, how far the assumed figure may be from the real one; null where nothing is said about it. */
export function assumedSpread(field: string, option: Option, language: Language): string | null {
  const id = { resistanceOhm: 'resistance', exponent: 'exponent' }[field];
  if (id === undefined) return null;
  const range = blockInputs(option, undefined).find((input) => input.id === id);
  if (range === undefined) return null;
  const factor = field === 'resistanceOhm' ? 1000 : 1;
  const write = (value: number): string => formatFigure(factor * value, language);
  const unit = field === 'resistanceOhm' ? ' mΩ' : '';
  return controlTexts[language].inPractice(write(range.low), `${write(range.high)}${unit}`);
}
