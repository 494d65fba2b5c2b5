import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Battery current of a chopping controller: `I_b = d I_m + (R_on I_m² + P0)/V`.
 *
 * Source: power balance (derived).
 *
 * @param busVoltageV V [V], above 0
 * @param duty d, 0 to 1 [1]
 * @param motorA I_m [A]
 * @param switchOhm R_on [Ω]
 * @param idleW P0 [W]
 */
export function controllerBatteryCurrentA(
  busVoltageV: number,
  duty: number,
  motorA: number,
  switchOhm: number,
  idleW: number,
): number {
  return duty * motorA + (switchOhm * motorA ** 2 + idleW) / busVoltageV;
}

export const controllerCurrentFormula = defineFormula({
  id: 'controller-current',
  title: 'Battery current behind a controller at part duty',
  equation: 'U = d V; I_b = d I_m + (R_on I_m² + P0)/V',
  inputs: {
    busVoltageV: number('V', 0.1, 500, 'voltage at the controller'),
    duty: number('1', 0, 1, 'share of the voltage passed on'),
    motorA: number('A', 0, 10_000, 'motor current'),
    switchOhm: number('Ω', 0, 1, 'resistance of the switches that are on', 0),
    idleW: number('W', 0, 1000, 'power of the controller itself', 0),
  },
  outputs: {
    motorV: ['V', 'mean voltage at the motor'],
    batteryA: ['A', 'battery current'],
    lossW: ['W', 'power lost in the controller'],
  },
  assumptions: 'Continuous motor current, switching loss within the idle power.',
  validity: 'Duty above some 5 %; below it the current gaps.',
  source: { class: 'derived', citation: 'power balance of a step-down chopper' },
  compute: ({ busVoltageV, duty, motorA, switchOhm, idleW }) => ({
    values: {
      motorV: duty * busVoltageV,
      batteryA: controllerBatteryCurrentA(busVoltageV, duty, motorA, switchOhm, idleW),
      lossW: switchOhm * motorA ** 2 + idleW,
    },
    steps: [step('d I_m', duty * motorA, 'A')],
  }),
});
