import fc from 'fast-check';
import { test } from 'vitest';
import { chargeOption } from '#core/charge/charge-option.ts';
import { libraryBlock, libraryCharger, chargerParts } from '#core/library/index.ts';
import { newOption, newPack } from '#core/plan/defaults.ts';

const blockIds = ['agm-12v-18ah', 'agm-12v-12ah', 'lfp-24v-20ah'] as const;
const option = fc.record({
  block: fc.constantFrom(...blockIds),
  series: fc.integer({ min: 1, max: 2 }),
  startPercent: fc.double({ min: 0, max: 100, noNaN: true }),
  temperatureC: fc.double({ min: -20, max: 50, noNaN: true }),
  charger: fc.constantFrom(...chargerParts.map(({ id }) => id)),
});

test('any charger on any pack ends, puts in what it stores, gasses and burns, and reports finite figures', () => {
  fc.assert(
    fc.property(option, ({ block, series, startPercent, temperatureC, charger }) => {
      const pack = newPack(libraryBlock(block), series);
      const result = chargeOption(newOption([], pack), libraryCharger(charger), {
        temperatureC,
        startPercent,
        wishes: { longestHours: 48, shareStep: 0.01 },
      });
      const { units } = result;
      for (const value of [
        result.hours,
        result.inAh,
        result.inWh,
        result.mainsWh,
        result.endPercent,
        result.highestPackV,
      ]) {
        if (!Number.isFinite(value)) return false;
      }
      const stored = (result.inAh * (result.chargeEfficiencyPercent ?? 0)) / 100;
      const lost = units[0]!.gassedAh + units[0]!.bledAh;
      const closes =
        stored === 0 || Math.abs(result.inAh - stored - lost) < 0.02 * Math.max(1, result.inAh);
      return (
        closes &&
        result.hours <= 48 &&
        result.mainsWh >= result.inWh &&
        (result.inAh === 0 || result.endPercent >= result.startPercent - 1)
      );
    }),
    { numRuns: 150 },
  );
});
