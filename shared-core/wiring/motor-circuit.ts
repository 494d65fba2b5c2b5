import { fitMotor } from '../drive/motor-constants.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Wiring } from '../plan/schema/wiring.ts';

/**
 * Resistance of the motors as the controller sees them [Ω], at 20 °C, in the gear that joins them to the lowest value;
 * null where nothing says it. The wiring's own figure goes before the drive's.
 *
 * `R = R1 s^2 / n` for n motors, s of them in series. Source: derived.
 */
export function motorCircuitOhm(machine: Machine, wiring: Pick<Wiring, 'devices'>): number | null {
  const stated = wiring.devices
    .filter((device) => device.kind === 'motor' && device.resistanceOhm !== null)
    .map((device) => device.resistanceOhm!);
  if (stated.length > 0) return 1 / stated.reduce((sum, ohm) => sum + 1 / ohm, 0);
  if (machine.drive === null) return null;
  const fit = fitMotor(machine.drive.motor);
  if (!fit.ok) return null;
  const { motorCount, gears } = machine.drive;
  const series = Math.min(...gears.map((gear) => gear.motorsInSeries));
  return (fit.constants.resistanceOhm * series ** 2) / motorCount;
}
