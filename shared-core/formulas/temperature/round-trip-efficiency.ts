import { defineFormula } from '../define-formula.ts';
import { number } from '../input-spec.ts';

export const roundTripEfficiencyFormula = defineFormula({
  id: 'round-trip-efficiency',
  title: 'Charge and energy efficiency of a cycle',
  equation: 'eta_Ah = Ah_out/Ah_in, eta_Wh = Wh_out/Wh_in',
  inputs: {
    dischargeAh: number('A·h', 1e-3, 1e5, 'charge delivered'),
    chargeAh: number('A·h', 1e-3, 1e5, 'charge put back until full again'),
    dischargeWh: number('W·h', 1e-3, 1e7, 'energy delivered'),
    chargeWh: number('W·h', 1e-3, 1e7, 'energy put back until full again'),
  },
  outputs: {
    chargeEfficiency: ['1', 'charge delivered against charge put back'],
    energyEfficiency: ['1', 'energy delivered against energy put back'],
    chargeFactor: ['1', 'charge put back against charge delivered'],
  },
  assumptions: 'Same state of charge at the start and at the end.',
  validity:
    'Any block; lead usually 0.85 to 0.965 in charge and 0.70 to 0.875 in energy, lithium 0.99 and 0.95.',
  source: { class: 'derived', citation: 'definition' },
  compute: ({ dischargeAh, chargeAh, dischargeWh, chargeWh }) => ({
    values: {
      chargeEfficiency: dischargeAh / chargeAh,
      energyEfficiency: dischargeWh / chargeWh,
      chargeFactor: chargeAh / dischargeAh,
    },
  }),
});
