import { describe, test } from 'vitest';
import { sampleUniform } from '#core/battery/uniform-table.ts';
import { legSource } from '#core/run/leg-source.ts';
import { simulate } from '#core/run/simulate.ts';
import { checkAgainst } from '../support/check-against.ts';
import { testModel, testPack, testSetup, testString, testUnit } from '../support/engine.ts';

// Cell with c = 0.166 and k' = 0.122 per minute under constant and under switched currents: Jongerden, Haverkort,
// Bohnenkamp & Katoen, "Maximizing system lifetime by battery scheduling", DSN 2009 (the print from memory, the figures
// recomputed from the closed form of Manwell & McGowan, Solar Energy 50 (1993) 399).
const source =
  "Jongerden et al., DSN 2009 (print from memory), recomputed from Manwell & McGowan's closed form";

const cell = (ampereMinutes: number) =>
  testModel({
    capacityAh: ampereMinutes / 60,
    availableShare: 0.166,
    levellingPerS: 0.122 / 60,
    resistanceOhm: 1e-6,
    kneeOhm: 0,
    polarisationOhm: 0,
    openCircuit: sampleUniform(() => 12, 1001),
  });

const lifetimeMin = (ampereMinutes: number, currentA: number, idleMin: number) => {
  const load = { kind: 'current', currentA } as const;
  const on = { id: 'on', name: 'on', durationMin: idleMin === 0 ? 1440 : 1, load };
  const legs =
    idleMin === 0 ? [on] : [on, { id: 'off', name: 'off', durationMin: idleMin, load: null }];
  return simulate(
    testSetup(testPack(testString([testUnit(cell(ampereMinutes))])), legSource(legs), {
      endWhenEmpty: true,
      stepping: { kind: 'adaptive', toleranceV: 1 },
    }),
  ).runTimeMin;
};

describe('published lifetimes of the two-well model through the general engine', () => {
  test.each([
    [5.5, 0.25, 0, 4.5262],
    [5.5, 0.5, 0, 2.017],
    [5.5, 0.25, 1, 10.8026],
    [5.5, 0.5, 1, 4.3044],
    [5.5, 0.25, 2, 21.8581],
    [11, 0.5, 0, 4.5262],
    [11, 0.25, 0, 12.1601],
  ])(
    '%d A·min at %d A with %d min idle between minutes of load lasts %d min',
    (ampereMinutes, currentA, idleMin, reference) => {
      checkAgainst({
        chapter: 'Rate law',
        quantity: `Two-well lifetime, ${ampereMinutes} A·min, ${currentA} A, ${idleMin === 0 ? 'steady' : `1 min on, ${idleMin} min off`}`,
        unit: 'min',
        source,
        class: 'recomputed',
        reference,
        ours: lifetimeMin(ampereMinutes, currentA, idleMin),
        within: { absolute: 0.01 },
      });
    },
  );
});
