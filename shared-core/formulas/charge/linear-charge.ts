import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { fail } from '../read-input.ts';

/** Charge of a block whose rest voltage rises in a straight line with charge. */
export interface LinearCharge {
  readonly bulkH: number;
  readonly absorptionH: number;
  readonly bulkAh: number;
  readonly absorptionAh: number;
}

/**
 * Time and charge of a constant-current, constant-voltage charge from empty, in closed form.
 *
 * Rest voltage `V0 + (V1 - V0) q/C`. Bulk ends when it reaches `Vend - I R`; then the current dies off with
 * `tau = R C/(V1 - V0)` until the tail current.
 * Source: solution of the linear circuit (derived).
 *
 * @param capacityAh C [A·h]
 * @param emptyV @param fullV V0 and V1 [V], V1 above V0
 * @param resistanceOhm R [Ω], above 0
 * @param currentA I [A], above 0
 * @param endV voltage held [V]
 * @param tailA current at which the charge ends [A], above 0
 * @returns null where the rest voltage passes `Vend - tail R` only after full charge, or starts above it
 */
export function linearCharge(
  capacityAh: number,
  emptyV: number,
  fullV: number,
  resistanceOhm: number,
  currentA: number,
  endV: number,
  tailA: number,
): LinearCharge | null {
  const voltPerAh = (fullV - emptyV) / capacityAh;
  const bulkAh = Math.max(0, (endV - currentA * resistanceOhm - emptyV) / voltPerAh);
  const firstA = Math.min(currentA, (endV - emptyV) / resistanceOhm);
  if (firstA <= 0) return null;
  const tauH = resistanceOhm / voltPerAh;
  const absorptionH = firstA > tailA ? tauH * Math.log(firstA / tailA) : 0;
  const absorptionAh = tauH * Math.max(0, firstA - tailA);
  if (bulkAh + absorptionAh > capacityAh * (1 + 1e-12)) return null;
  return { bulkH: bulkAh / currentA, absorptionH, bulkAh, absorptionAh };
}

export const linearChargeFormula = defineFormula({
  id: 'linear-charge',
  title: 'Charge time with a straight rest voltage',
  equation:
    't_bulk = C (Vend - I R - V0)/((V1 - V0) I); t_abs = tau ln(I/I_tail), tau = R C/(V1 - V0)',
  inputs: {
    capacityAh: number('A·h', 0.01, 10_000, 'charge from empty to full'),
    emptyV: number('V', 0.1, 500, 'rest voltage when empty'),
    fullV: number('V', 0.1, 500, 'rest voltage when full'),
    resistanceOhm: number('Ω', 1e-5, 100, 'resistance'),
    currentA: number('A', 1e-3, 10_000, 'charge current'),
    endV: number('V', 0.1, 500, 'voltage held at the end'),
    tailA: number('A', 1e-4, 10_000, 'current at which the charge ends'),
  },
  outputs: {
    bulkH: ['h', 'time at constant current'],
    absorptionH: ['h', 'time at constant voltage'],
    totalH: ['h', 'both'],
    chargedAh: ['A·h', 'charge put in'],
  },
  assumptions: 'Straight rest voltage, constant resistance, no side reactions.',
  validity: 'A check for the simulation; real blocks charge more slowly near full.',
  source: { class: 'derived', citation: 'closed form of the linear circuit' },
  compute: ({ capacityAh, emptyV, fullV, resistanceOhm, currentA, endV, tailA }) => {
    if (fullV <= emptyV) {
      return fail('fullV', 'is not above emptyV', 'Give a full rest voltage above the empty one.');
    }
    if (tailA > currentA) {
      return fail('tailA', 'is above currentA', 'Give a tail current below the charge current.');
    }
    const charge = linearCharge(capacityAh, emptyV, fullV, resistanceOhm, currentA, endV, tailA);
    if (charge === null) {
      return fail(
        'endV',
        'does not end the charge between empty and full',
        `Give endV above ${emptyV} and up to ${(fullV + tailA * resistanceOhm).toPrecision(5)}.`,
      );
    }
    return {
      values: {
        bulkH: charge.bulkH,
        absorptionH: charge.absorptionH,
        totalH: charge.bulkH + charge.absorptionH,
        chargedAh: charge.bulkAh + charge.absorptionAh,
      },
      steps: [
        step('Charge at constant current', charge.bulkAh, 'A·h'),
        step('tau', (resistanceOhm * capacityAh) / (fullV - emptyV), 'h'),
      ],
    };
  },
});
