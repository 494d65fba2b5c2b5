import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/** Precharge of a controller's capacitors. */
export interface Precharge {
  readonly resistanceOhm: number;
  /** Time until over 99 % of the voltage stands on the capacitors [s]. */
  readonly timeS: number;
  /** Energy that the resistor takes, as much as the capacitors hold [J]. */
  readonly energyJ: number;
  readonly peakW: number;
}

/**
 * Precharge resistor from the inrush allowed: `R = V/I`, `t = 5 R C`, energy `C V²/2`.
 *
 * Source: charging of a capacitor through a resistor (derived).
 *
 * @param busVoltageV V [V]
 * @param capacitanceF C [F]
 * @param inrushA I allowed [A], above 0
 */
export function precharge(busVoltageV: number, capacitanceF: number, inrushA: number): Precharge {
  const resistanceOhm = busVoltageV / inrushA;
  return {
    resistanceOhm,
    timeS: 5 * resistanceOhm * capacitanceF,
    energyJ: (capacitanceF * busVoltageV ** 2) / 2,
    peakW: busVoltageV * inrushA,
  };
}

export const prechargeFormula = defineFormula({
  id: 'precharge',
  title: 'Precharge resistor',
  equation: 'R = V/I; t = 5 R C; E = C V²/2',
  inputs: {
    busVoltageV: number('V', 1, 500, 'pack voltage'),
    capacitanceUf: number('µF', 0.1, 1e6, 'capacitors of the controller'),
    inrushA: number('A', 0.01, 10_000, 'inrush allowed'),
  },
  outputs: {
    resistanceOhm: ['Ω', 'resistor'],
    timeS: ['s', 'time to over 99 % of the voltage'],
    energyJ: ['J', 'energy that the resistor takes each time'],
    peakW: ['W', 'first power in the resistor'],
  },
  assumptions: 'Capacitors empty, nothing else draws.',
  validity:
    'The resistor must bear the pulse by its sheet; a load that stays on prevents the charge.',
  source: { class: 'derived', citation: 'charging of a capacitor through a resistor' },
  compute: ({ busVoltageV, capacitanceUf, inrushA }) => {
    const result = precharge(busVoltageV, capacitanceUf / 1e6, inrushA);
    return {
      values: { ...result },
      steps: [step('R C', (result.resistanceOhm * capacitanceUf) / 1e6, 's')],
    };
  },
});
