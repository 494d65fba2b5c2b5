import type { Charger } from '../plan/schema/charger.ts';
import type { Option } from '../plan/schema/option.ts';
import type { StartPercent } from './charge-pack.ts';
import { chargeOption } from './charge-option.ts';

/** Steps of 1 % of the charge: within about 1 % of the fine simulation, in a fraction of a millisecond. */
const coarse = { shareStep: 0.01, longestHours: 100 };

/**
 * Hours on the charger, from the simulated charge: until the charger ends it, or until the pack is full where the charger
 * never ends.
 *
 * @param temperatureC of blocks and charger [°C], -30 to 60
 * @param startPercent charge at the start [%], 0 to 100: of all blocks, or of each
 * @returns hours [h]; null where the charger neither ends nor fills the pack
 */
export function estimateChargeHours(
  option: Pick<Option, 'pack'>,
  charger: Charger,
  temperatureC: number,
  startPercent: number | StartPercent,
): number | null {
  if (typeof startPercent === 'number' && startPercent >= 100) return 0;
  const result = chargeOption({ pack: option.pack, startPercent: 100 }, charger, {
    temperatureC,
    startPercent,
    wishes: coarse,
  });
  if (result.endedBy === 'no-current') return null;
  return result.endedBy === 'unplugged' ? result.hoursToFull : result.hours;
}
