import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

/** Loss of a step-down converter: idle power, voltage and resistance terms. */
export interface ConverterLoss {
  /** P0 [W]. */
  readonly idleW: number;
  /** k [V]: loss in proportion to the output current. */
  readonly dropV: number;
  /** R [Ω]: loss with the square of the output current. */
  readonly resistanceOhm: number;
}

/**
 * Power lost in a step-down converter [W]: `P0 + k I + R I²`.
 *
 * Source: form used for converters by Rampinelli et al. and by Notton et al., 2010 (published); figures are the part's.
 *
 * @param outputA I [A], not negative
 */
export function converterLossW(loss: ConverterLoss, outputA: number): number {
  return loss.idleW + outputA * (loss.dropV + loss.resistanceOhm * outputA);
}

export const converterLossFormula = defineFormula({
  id: 'converter-loss',
  title: 'Loss, efficiency and input current of a step-down converter',
  equation: 'P_loss = P0 + k I + R I²; eta = P/(P + P_loss); I_in = (P + P_loss)/V_in',
  inputs: {
    outputV: number('V', 0.5, 100, 'output voltage'),
    outputA: number('A', 0, 1000, 'output current'),
    inputV: number('V', 0.5, 500, 'input voltage'),
    idleW: number('W', 0, 100, 'power without load, P0', 0.05),
    dropV: number('V', 0, 10, 'loss per ampere, k', 0.1),
    resistanceOhm: number('Ω', 0, 10, 'resistance, R', 0.04),
  },
  outputs: {
    lossW: ['W', 'power lost'],
    efficiency: ['1', 'output against input power'],
    inputA: ['A', 'input current'],
    inputW: ['W', 'input power'],
  },
  assumptions: 'Input above the dropout voltage; loss independent of the input voltage.',
  validity: 'Step-down converters; cheap ones reach 0.85 to 0.95 and idle at 5 to 30 mA.',
  source: {
    class: 'published',
    citation: 'Rampinelli et al. 2010; Notton et al. 2010 (form of the loss)',
  },
  compute: ({ outputV, outputA, inputV, ...loss }) => {
    const outputW = outputV * outputA;
    const lossW = converterLossW(loss, outputA);
    const inputW = outputW + lossW;
    return {
      values: {
        lossW,
        efficiency: inputW > 0 ? outputW / inputW : 0,
        inputA: inputW / inputV,
        inputW,
      },
      steps: [
        step('Output power', outputW, 'W'),
        step('k I', loss.dropV * outputA, 'W'),
        step('R I²', loss.resistanceOhm * outputA ** 2, 'W'),
      ],
    };
  },
});
