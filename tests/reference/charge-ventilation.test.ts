import { expect, test } from 'vitest';
import { ventilationNeed } from '#core/charge/ventilation-need.ts';
import { newBlock, newPack } from '#core/plan/defaults.ts';

test('one 12 Ah AGM block at boost charge needs 0.0288 m³/h and 0.806 cm² (IEC 62485-2, recomputed) [P, R]', () => {
  const need = ventilationNeed(newPack({ ...newBlock(), capacityAh: 12 }, 1))!;
  expect(need.flowM3PerH).toBeCloseTo(0.0288, 9);
  expect(need.openingCm2).toBeCloseTo(0.8064, 9);
});

test('a flooded pack needs two and a half times the air of a sealed one, four blocks four times that of one', () => {
  const agm = ventilationNeed(newPack(newBlock(), 1))!;
  const flooded = ventilationNeed(newPack({ ...newBlock(), chemistry: 'flooded' }, 1))!;
  expect(flooded.flowM3PerH / agm.flowM3PerH).toBeCloseTo(20 / 8, 9);
  const four = ventilationNeed({ ...newPack(newBlock(), 2), parallelCount: 2 })!;
  expect(four.flowM3PerH / agm.flowM3PerH).toBeCloseTo(4, 9);
  expect(ventilationNeed(newPack({ ...newBlock(), chemistry: 'lfp' }, 1))).toBeNull();
});
