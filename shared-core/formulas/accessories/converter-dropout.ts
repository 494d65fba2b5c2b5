import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/**
 * Highest output voltage a step-down converter holds [V]: `Dmax V_in - I R_drop`.
 *
 * Source: mean voltage of a step-down chopper at its largest duty (derived).
 *
 * @param inputV V_in [V]
 * @param outputA I [A]
 * @param largestDuty Dmax [1], above 0 to 1
 * @param dropOhm R_drop [Ω]
 */
export function dropoutOutputV(
  inputV: number,
  outputA: number,
  largestDuty: number,
  dropOhm: number,
): number {
  return largestDuty * inputV - outputA * dropOhm;
}

export const converterDropoutFormula = defineFormula({
  id: 'converter-dropout',
  title: 'Dropout of a step-down converter',
  equation: 'V_out <= Dmax V_in - I R_drop',
  inputs: {
    setV: number('V', 0.5, 100, 'output voltage asked for'),
    inputV: number('V', 0.5, 500, 'input voltage'),
    outputA: number('A', 0, 1000, 'output current'),
    largestDuty: number('1', 0.1, 1, 'largest duty', 0.95),
    dropOhm: number('Ω', 0, 10, 'resistance at full duty', 0.1),
  },
  outputs: {
    outputV: ['V', 'output voltage held'],
    leastInputV: ['V', 'input voltage below which the output falls'],
    brownOut: ['', 'yes or no'],
  },
  assumptions: 'Steady state.',
  validity: 'Step-down converters without step-up stage.',
  source: { class: 'derived', citation: 'mean voltage of a chopper at its largest duty' },
  compute: ({ setV, inputV, outputA, largestDuty, dropOhm }) => {
    const reachableV = dropoutOutputV(inputV, outputA, largestDuty, dropOhm);
    return {
      values: {
        outputV: Math.max(0, Math.min(setV, reachableV)),
        leastInputV: (setV + outputA * dropOhm) / largestDuty,
        brownOut: reachableV < setV ? 'yes' : 'no',
      },
      steps: [step('Highest output at this input', reachableV, 'V')],
    };
  },
});
