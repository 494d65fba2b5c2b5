import type { ChargeEnd } from './charge-result.ts';

/**
 * The hours to full as every place shows them: until the charger ends its charge, that is what its lamp shows; for a
 * charger that never ends it, until the pack holds 98 %.
 *
 * @param hours until the charge ended or the plug was pulled [h]
 * @param hoursTo98 until the pack held 98 % [h]; null where it never did
 * @returns hours [h]; null where the charger neither ends nor fills the pack, or cannot push current into it
 */
export function hoursOnCharger(
  endedBy: ChargeEnd,
  hours: number,
  hoursTo98: number | null,
): number | null {
  switch (endedBy) {
    case 'no-current':
      return null;
    case 'unplugged':
    case 'target':
      return hoursTo98;
    default:
      return hours;
  }
}
