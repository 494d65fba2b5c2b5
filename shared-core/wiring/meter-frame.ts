import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { expectedPackVoltage } from './commissioning.ts';
import type { MeterFrame } from './deduce-wires.ts';

/** Voltages the meter may meet in the machine with an option in it. */
export function meterFrame(plan: Plan, option: Option): MeterFrame {
  const { min, max } = expectedPackVoltage(option);
  return {
    packLowV: min,
    packHighV: max,
    converterV: plan.machine.converter?.outputVoltageV ?? null,
  };
}
