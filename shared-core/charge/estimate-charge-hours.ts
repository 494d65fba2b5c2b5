import type { Charger } from '../plan/schema/charger.ts';
import type { Option } from '../plan/schema/option.ts';
import type { StartPercent } from './charge-pack.ts';
import { chargeOption } from './charge-option.ts';

/**
 * Hours to full of one charger on one option, from the same simulated charge the charging place draws, so that both show
 * one figure. Which moment counts as full is for `hoursOnCharger` to say.
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
  return chargeOption({ pack: option.pack, startPercent: 100 }, charger, {
    temperatureC,
    startPercent,
  }).hoursToFull;
}
