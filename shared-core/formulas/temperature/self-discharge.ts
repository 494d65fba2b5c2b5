import { defineFormula, step } from '../define-formula.ts';
import { number, word } from '../input-spec.ts';

/** Charge lost per month at 20 °C [%]. Published in makers' handbooks for lead; flooded as a range. */
export const selfDischargePercentPerMonth = {
  agm: { low: 3, likely: 3, high: 3 },
  gel: { low: 2, likely: 2, high: 2 },
  flooded: { low: 6, likely: 9, high: 12 },
} as const;

/** Mean length of a month [d]. */
export const monthDays = 365.25 / 12;

/**
 * Self-discharge at a temperature [% per month]: halved with each 10 K less, `m = m20 2^((theta - 20)/10)`.
 *
 * Source: makers' handbooks: half at 10 °C (published); the same factor above 20 °C (derived).
 */
export function selfDischargeAtTemperature(percentPerMonth: number, temperatureC: number): number {
  return percentPerMonth * 2 ** ((temperatureC - 20) / 10);
}

/**
 * Share of the charge left after standing [1]: `(1 - m)^(days/month)`.
 *
 * @param percentPerMonth m, loss per month at the storage temperature [%], 0 to below 100
 * @param days time of standing [d]
 */
export function chargeShareAfterStanding(percentPerMonth: number, days: number): number {
  return (1 - percentPerMonth / 100) ** (days / monthDays);
}

export const selfDischargeFormula = defineFormula({
  id: 'self-discharge',
  title: 'Charge left after standing',
  equation: 's = (1 - m)^(t/month), m = m20 2^((theta - 20)/10)',
  inputs: {
    chemistry: word(['agm', 'gel', 'flooded'], 'kind of lead block'),
    days: number('d', 0, 3650, 'time of standing'),
    temperatureC: number('°C', -20, 40, 'storage temperature', 20),
  },
  outputs: {
    chargeLeftPercent: ['%', 'charge left, likely'],
    leastChargeLeftPercent: ['%', 'charge left at the high end of the loss'],
    mostChargeLeftPercent: ['%', 'charge left at the low end of the loss'],
  },
  assumptions: 'Full at the start, nothing connected.',
  validity: 'Healthy lead blocks; worn ones lose more.',
  source: {
    class: 'published',
    citation:
      'makers’ handbooks: AGM 3, gel 2, flooded 6 to 12 % per month at 20 °C, half at 10 °C',
  },
  compute: ({ chemistry, days, temperatureC }) => {
    const rate = selfDischargePercentPerMonth[chemistry];
    const left = (percent: number) =>
      100 * chargeShareAfterStanding(selfDischargeAtTemperature(percent, temperatureC), days);
    return {
      values: {
        chargeLeftPercent: left(rate.likely),
        leastChargeLeftPercent: left(rate.high),
        mostChargeLeftPercent: left(rate.low),
      },
      steps: [
        step('Loss per month', selfDischargeAtTemperature(rate.likely, temperatureC), '%'),
        step('Months', days / monthDays, '1'),
      ],
    };
  },
});
