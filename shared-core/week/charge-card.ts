import { chemistryTraits } from '../battery/chemistry.ts';
import { packGroups, wantedVoltages } from '../charge/charge-wishes.ts';
import { ventilationNeed } from '../charge/ventilation-need.ts';
import type { ChargeResult } from '../charge/charge-result.ts';
import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { formatDuration, formatSignificant } from '../units/index.ts';
import { cardWords } from './card-words.ts';

/** The card that hangs beside the charger: facts, what to do, cautions. */
export interface ChargeCard {
  readonly title: string;
  readonly lines: readonly { readonly label: string; readonly value: string }[];
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * What the card says of an option and its charger.
 *
 * @param charge the charge after the outing; null where it was not simulated
 * @param temperatureC for the wanted voltages [°C]
 */
export function chargeCard(
  plan: Plan,
  option: Option,
  charge: ChargeResult | null,
  temperatureC: number,
  language: Language = 'en',
): ChargeCard {
  const words = cardWords[language];
  const { pack, charger } = option;
  const { family } = chemistryTraits[pack.block.chemistry];
  const number = (value: number, unit: string, digits = 3) =>
    `${formatSignificant(value, digits, language)} ${unit}`;
  const wanted = wantedVoltages(pack, temperatureC, plan.thresholds);
  const lines = [
    { label: words.pack, value: option.name },
    {
      label: words.chemistry,
      value: `${words.chemistryNames[pack.block.chemistry]}, ${packGroups(pack)} ${words.groups}`,
    },
    { label: words.endVoltage(number(temperatureC, '°C')), value: number(wanted.endV, 'V', 4) },
    {
      label: words.float,
      value:
        wanted.float === null
          ? words.noFloat
          : `${number(wanted.float.lowV, 'V', 4)} – ${number(wanted.float.highV, 'V', 4)}`,
    },
    { label: words.charger, value: charger === null ? words.none : charger.name },
  ];
  if (charge !== null) {
    lines.push({ label: words.hours, value: formatDuration(charge.hours * 60, language) });
    lines.push({ label: words.atGreen, value: number(charge.endPercent, '%') });
  }
  const need = ventilationNeed(pack);
  if (need !== null) {
    lines.push({
      label: words.air,
      value: words.airValue(number(need.flowM3PerH, 'm³/h', 2), number(need.openingCm2, 'cm²', 2)),
    });
  }
  return {
    title: `${plan.machine.name}: ${words.title}`,
    lines,
    steps: family === 'lead' ? words.leadSteps : words.lithiumSteps,
    cautions: [
      ...(family === 'lead' ? words.leadCautions : words.lithiumCautions),
      ...words.cautions,
    ],
  };
}
