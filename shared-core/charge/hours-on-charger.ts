import type { ChargeEnd } from './charge-result.ts';

/** Half a minute: what is done sooner was full before [h]. */
const shortestH = 0.5 / 60;

/**
 * The hours to full as every place shows them: until the charger ends its charge, that is what its lamp shows; for a
 * charger that never ends it, until the pack holds 98 %.
 *
 * @param hours until the charge ended or the plug was pulled [h]
 * @param hoursTo98 until the pack held 98 % [h]; null where it never did
 * @returns hours [h], 0 for a pack that is done within half a minute; null where the charger neither ends nor fills the
 *   pack, cannot push current into it, or pushes so much that the BMS opens at once
 */
export function hoursOnCharger(
  endedBy: ChargeEnd,
  hours: number,
  hoursTo98: number | null,
): number | null {
  switch (endedBy) {
    case 'no-current':
    case 'bms-over-current':
      return null;
    case 'unplugged':
    case 'target':
      return hoursTo98;
    default:
      return hours < shortestH ? 0 : hours;
  }
}
