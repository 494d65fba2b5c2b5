import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';
import { monthDays } from '../temperature/self-discharge.ts';

/**
 * Days until idle current and self-discharge have drawn a share of the charge.
 *
 * Solution of `q' = -I - lambda q` from full to `(1 - share) C`:
 * `t = ln((C + I/lambda)/((1 - share) C + I/lambda))/lambda`; without self-discharge `share C/I`.
 * Source: balance of charge (derived).
 *
 * @param capacityAh C [A·h], above 0
 * @param idleA I [A], not negative
 * @param lossPercentPerMonth self-discharge [% per month], 0 to below 100
 * @param share part of the charge that may go, above 0 to 1 [1]
 * @returns days; null where nothing draws, or where self-discharge alone would have to take the last charge
 */
export function standbyDays(
  capacityAh: number,
  idleA: number,
  lossPercentPerMonth: number,
  share: number,
): number | null {
  const drainPerDay = idleA * 24;
  const lambda = -Math.log1p(-lossPercentPerMonth / 100) / monthDays;
  if (lambda === 0) return drainPerDay === 0 ? null : (share * capacityAh) / drainPerDay;
  const settled = drainPerDay / lambda;
  const end = (1 - share) * capacityAh + settled;
  if (end <= 0) return null;
  // log1p keeps the digits when self-discharge is tiny against the idle current.
  return Math.log1p((share * capacityAh) / end) / lambda;
}

export const standbyDaysFormula = defineFormula({
  id: 'standby-days',
  title: 'Days a pack stands with something idling',
  equation: 't = ln((C + I/lambda)/((1 - s) C + I/lambda))/lambda',
  inputs: {
    capacityAh: number('A·h', 0.01, 10_000, 'capacity'),
    idleMa: number('mA', 0, 100_000, 'current of everything that stays on'),
    lossPercentPerMonth: number('%', 0, 99, 'self-discharge per month', 0),
    usablePercent: number('%', 0.1, 100, 'part of the charge that may go', 100),
  },
  outputs: { days: ['d', 'days until then; none where nothing draws'] },
  assumptions: 'Full at the start, constant temperature.',
  validity: 'Small currents, hence full capacity.',
  source: { class: 'derived', citation: 'balance of charge' },
  compute: ({ capacityAh, idleMa, lossPercentPerMonth, usablePercent }) => ({
    values: {
      days: standbyDays(capacityAh, idleMa / 1000, lossPercentPerMonth, usablePercent / 100),
    },
    steps: [
      step('Idle draw per day', (idleMa / 1000) * 24, 'A·h'),
      step('Charge that may go', (capacityAh * usablePercent) / 100, 'A·h'),
    ],
  }),
});
