import { expect, test } from 'vitest';
import { simulateCharge, usualWishes } from '#core/charge/simulate-charge.ts';
import { packOf, plainProgram, plainUnit } from '../support/charge-unit.ts';

test('a linear block follows the closed form of constant current then constant voltage [R]', () => {
  // 12 Ah, 11.8 to 12.8 V, 0.08 Ω, 1.2 A, 12.6 V, tail 0.12 A: bulk (12.6 - 1.2*0.08 - 11.8)*12/1.2 h, absorption
  // R C ln(I0/It), Ah = bulk + R C (I0 - It). Recomputed by hand.
  const result = simulateCharge(packOf(plainUnit()), plainProgram());
  expect(result.endedBy).toBe('tail-current');
  expect(result.bulkHours).toBeCloseTo(7.04, 3);
  expect(result.hours - result.bulkHours).toBeCloseTo(2.2105, 2);
  expect(result.inAh).toBeCloseTo(9.4848, 3);
});

test('halving the step moves the closed-form figures by less than a thousandth', () => {
  const coarse = simulateCharge(packOf(plainUnit()), plainProgram(), {
    ...usualWishes,
    shareStep: 0.008,
  });
  const fine = simulateCharge(packOf(plainUnit()), plainProgram(), {
    ...usualWishes,
    shareStep: 0.002,
  });
  expect(Math.abs(coarse.inAh / fine.inAh - 1)).toBeLessThan(1e-3);
  expect(Math.abs(coarse.hours / fine.hours - 1)).toBeLessThan(2e-3);
});
