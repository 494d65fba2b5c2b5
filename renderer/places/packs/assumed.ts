import { chemistryTraits } from '#core/battery/chemistry.ts';
import { defaultResistanceOhm } from '#core/battery/default-resistance.ts';
import type { Language } from '#core/plan/language.ts';
import type { Option } from '#core/plan/schema/option.ts';
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
