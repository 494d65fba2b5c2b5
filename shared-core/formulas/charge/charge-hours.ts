import { defineFormula, step } from '../define-formula.ts';
import { number } from '../input-spec.ts';

export const chargeHoursFormula = defineFormula({
  id: 'charge-hours',
  title: 'Rough charge time',
  equation: 't = f Q/I + t_end',
  inputs: {
    drawnAh: number('A·h', 0, 10_000, 'charge drawn since full'),
    currentA: number('A', 1e-3, 10_000, 'charge current'),
    chargeFactor: number('1', 1, 1.5, 'charge to put back against charge drawn', 1.1),
    endStageH: number('h', 0, 24, 'extra time of the last stage', 2),
  },
  outputs: { chargeH: ['h', 'time until full'] },
  assumptions: 'The charger holds its current until shortly before the end.',
  validity: 'A rule of thumb; the charge simulation gives the figure.',
  source: { class: 'common-practice', citation: 'common practice, no source' },
  compute: ({ drawnAh, currentA, chargeFactor, endStageH }) => {
    const bulkH = (chargeFactor * drawnAh) / currentA;
    return {
      values: { chargeH: drawnAh === 0 ? 0 : bulkH + endStageH },
      steps: [step('Charge to put back', chargeFactor * drawnAh, 'A·h')],
    };
  },
});
