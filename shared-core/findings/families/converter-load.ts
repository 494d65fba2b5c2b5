import type { Accessory } from '../../plan/schema/accessory.ts';
import type { Machine } from '../../plan/schema/machine.ts';

/** Current an accessory draws at `voltageV` while it draws [A]. */
export function accessoryCurrentA(accessory: Accessory, voltageV: number): number {
  const { load } = accessory;
  switch (load.kind) {
    case 'current':
      return load.currentA;
    case 'power':
      return load.powerW / voltageV;
    default:
      return voltageV / load.resistanceOhm;
  }
}

/** Accessories that hang on the converter and are switched on. */
export function onConverter(machine: Machine): readonly Accessory[] {
  return machine.accessories.filter(
    (accessory) => accessory.on && accessory.supply === 'converter',
  );
}

/** Output current of the converter with everything drawing at once that draws for longer than moments [A]. */
export function converterOutputA(machine: Machine): number {
  const { converter } = machine;
  if (converter === null) return 0;
  return onConverter(machine)
    .filter((accessory) => accessory.dutyPercent >= momentaryPercent)
    .reduce((sum, accessory) => sum + accessoryCurrentA(accessory, converter.outputVoltageV), 0);
}

/** A load that draws less of the time than this counts as a moment (horn, tipping motor), not as lasting load. */
const momentaryPercent = 5;

/**
 * Highest output current of the converter for a moment [A]: everything lasting on, and of all start-ups and momentary
 * loads the one that adds most.
 */
export function converterPeakA(machine: Machine): number {
  const { converter } = machine;
  if (converter === null) return 0;
  const lasting = converterOutputA(machine);
  const extra = onConverter(machine).map((accessory) => {
    const running = accessoryCurrentA(accessory, converter.outputVoltageV);
    const counted = accessory.dutyPercent >= momentaryPercent ? running : 0;
    return Math.max(running, accessory.startupCurrentA ?? running) - counted;
  });
  return lasting + Math.max(0, ...extra);
}
