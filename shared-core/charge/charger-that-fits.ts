import { chargerParts } from '../library/index.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { Option } from '../plan/schema/option.ts';
import { judgeCharger, type MatchConditions } from './match-charger.ts';

/**
 * A generic charger of the library that fits a pack in every respect: among those the one whose current is nearest to
 * the wished.
 *
 * @param wishedA charge current [A]
 * @returns null where the library has none
 */
export function chargerThatFits(
  option: Pick<Option, 'pack' | 'portLimitA'>,
  wishedA: number,
  conditions: MatchConditions,
): Charger | null {
  const fitting = chargerParts
    .map(({ value }) => value)
    .filter(
      (charger) =>
        charger.chemistries.includes(option.pack.block.chemistry) &&
        judgeCharger(option, charger, conditions).verdict === 'fits',
    );
  const apart = ({ currentA }: Charger): number => Math.abs(Math.log(currentA / wishedA));
  return fitting.toSorted((one, other) => apart(one) - apart(other))[0] ?? null;
}
