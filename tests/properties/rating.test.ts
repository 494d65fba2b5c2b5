import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chemistryTraits } from '#core/battery/chemistry.ts';
import { defaultResistanceOhm } from '#core/battery/default-resistance.ts';
import { ratedPoints } from '#core/battery/rating-points.ts';
import { fitCurves } from '#core/battery/rating/fit-curves.ts';
import { newBlock, newOption, newPack } from '#core/plan/defaults.ts';
import type { Block, DischargeCurve } from '#core/plan/schema/block.ts';
import { plainDischarge } from '#core/run/plain-discharge.ts';
import type { RunResult } from '#core/run/result.ts';

const options = { numRuns: 40, seed: 20261125, endOnFailure: true };
console.log(`seed of the random ratings: ${options.seed}`);

/** Blocks known by capacity and exponent, from barely any rate loss to a lot of it. */
const block = fc
  .record({
    chemistry: fc.constantFrom('agm', 'gel', 'flooded', 'lfp', 'nmc'),
    capacityAh: fc.double({ min: 4, max: 120, noNaN: true }),
    loss: fc.double({ min: 0, max: 1, noNaN: true }),
    resistance: fc.double({ min: 0.6, max: 1.5, noNaN: true }),
  })
  .map(({ chemistry, capacityAh, loss, resistance }): Block => {
    const { exponent, family } = chemistryTraits[chemistry];
    const cellGroups = family === 'lead' ? 6 : 8;
    const label = { ...newBlock(), chemistry, cellGroups, capacityAh, ratedHours: 20 };
    return {
      ...label,
      resistanceOhm: resistance * defaultResistanceOhm(label),
      rating: { kind: 'exponent', exponent: 1 + loss * (exponent.high - 1) },
    };
  });

function discharge(of: Block, currentA: number, toVoltageV: number): RunResult {
  const pack = { ...newPack(of, 1), linkResistanceOhm: 0 };
  return plainDischarge(newOption([], pack, 'bench'), {
    load: { kind: 'current', currentA },
    toVoltageV,
    temperatureC: chemistryTraits[of.chemistry].ratedC,
    longestH: 60,
  });
}

/** Largest misfit of the rated point itself, and of the others [%]. */
function misfits(of: Block): { rated: number; others: number } {
  let rated = 0;
  let others = 0;
  for (const { hours, capacityAh, endVoltageV } of ratedPoints(of)) {
    const { deliveredAh } = discharge(of, capacityAh / hours, endVoltageV);
    const misfit = 100 * Math.abs(deliveredAh / capacityAh - 1);
    if (hours === of.ratedHours) rated = misfit;
    else others = Math.max(others, misfit);
  }
  return { rated, others };
}

/** The curve a block of known behaviour shows, as a maker would print it. */
function curveOf(truth: Block, currentA: number, endVoltageV: number): DischargeCurve {
  const { timeS, packVoltageV } = discharge(truth, currentA, endVoltageV).series;
  const points: { timeMin: number; voltageV: number }[] = [];
  for (let place = 1; place <= 30; place += 1) {
    const row = Math.round((place * (timeS.length - 1)) / 30);
    const timeMin = timeS[row]! / 60;
    if (timeMin > (points.at(-1)?.timeMin ?? 0))
      points.push({ timeMin, voltageV: Math.round(1000 * packVoltageV[row]!) / 1000 });
  }
  return { currentA, points };
}

describe('ratings in, behaviour out', () => {
  test('a block rated by an exponent gives its rated charge within 1 % and the other rated points within 3 %', () => {
    fc.assert(
      fc.property(block, (of) => {
        const { rated, others } = misfits(of);
        expect(rated).toBeLessThan(1);
        expect(others).toBeLessThan(3);
      }),
      options,
    );
  });

  test('a block rated by points gives each of them within 3 %, and the one of the label within 1 %', () => {
    const noise = fc.array(fc.double({ min: -0.004, max: 0.004, noNaN: true }), {
      minLength: 4,
      maxLength: 4,
    });
    fc.assert(
      fc.property(block, noise, (label, errors) => {
        const points = ratedPoints(label).map(({ hours, capacityAh }, index) => ({
          hours,
          capacityAh: capacityAh * (1 + errors[index]!),
          endVoltageV: null,
        }));
        const { rated, others } = misfits({ ...label, rating: { kind: 'points', points } });
        expect(rated).toBeLessThan(1);
        expect(others).toBeLessThan(3);
      }),
      options,
    );
  });

  test('a block rated by discharge curves runs each of them again within 3 %, the one of the label within 1 %, and a current between within 3 %', () => {
    fc.assert(
      fc.property(block, (truth) => {
        const { capacityAh, cellGroups, chemistry } = truth;
        const endV = cellGroups * (chemistryTraits[chemistry].family === 'lead' ? 1.75 : 2.6);
        const currents = [capacityAh / 20, capacityAh / 5, capacityAh / 1.5];
        const curves = currents.map((currentA) => curveOf(truth, currentA, endV));
        const rated: Block = { ...truth, resistanceOhm: null, rating: { kind: 'curves', curves } };
        currents.forEach((currentA, index) => {
          const last = curves[index]!.points.at(-1)!;
          const again = discharge(rated, currentA, last.voltageV).runTimeMin;
          expect(Math.abs(again / last.timeMin - 1)).toBeLessThan(index === 0 ? 0.01 : 0.03);
        });
        const between = capacityAh / 2.7;
        const ours = discharge(rated, between, endV).runTimeMin;
        expect(Math.abs(ours / discharge(truth, between, endV).runTimeMin - 1)).toBeLessThan(0.03);
      }),
      { ...options, numRuns: 15 },
    );
  });

  test('curves tell the inner resistance of a block within a fifth, whatever is usual for its size', () => {
    fc.assert(
      fc.property(block, (truth) => {
        const { capacityAh, cellGroups, chemistry } = truth;
        const endV = cellGroups * (chemistryTraits[chemistry].family === 'lead' ? 1.75 : 2.6);
        const curves = [20, 3, 1].map((hours) => curveOf(truth, capacityAh / hours, endV));
        const { fitted } = fitCurves(
          { ...truth, resistanceOhm: null, rating: { kind: 'curves', curves } },
          curves,
        );
        const traits = chemistryTraits[chemistry];
        const cold = Math.exp(traits.resistanceColdRatePerK * (25 - traits.ratedC));
        const whole = truth.resistanceOhm! * cold * (1 + traits.polarisation.share);
        const found = fitted.resistanceOhm + fitted.polarisationOhm;
        expect(Math.abs(found / whole - 1)).toBeLessThan(0.2);
      }),
      { ...options, numRuns: 15 },
    );
  });
});
