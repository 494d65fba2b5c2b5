import { describe, expect, it } from 'vitest';
import { trialRange } from '#renderer/controls/trial-range.ts';

// Class: derived by hand from the rule in the doc block: a quarter to two and a half times the value, on steps of half a
// unit of the second digit.
describe('the stretch of a trial', () => {
  const open = { min: 0, max: 2000, aboveMin: true };

  it('reaches from a quarter to two and a half times the value', () => {
    expect(trialRange(18, open, 'A·h', 'A·h', false)).toEqual({ low: 4.5, high: 45, step: 0.5 });
  });

  it('takes whole steps where only whole numbers count', () => {
    const { low, high, step } = trialRange(2, { min: 1, max: 40, aboveMin: false }, '', '', true);
    expect([low, high, step]).toEqual([1, 5, 1]);
  });

  it('covers every share of a hundred', () => {
    const { low, high } = trialRange(90, { min: 0, max: 100, aboveMin: false }, '%', '%', false);
    expect([low, high]).toEqual([0, 100]);
  });

  it('goes below zero for temperatures and stays inside of what the field holds', () => {
    const { low, high } = trialRange(5, { min: -20, max: 60, aboveMin: false }, '°C', '°C', false);
    expect([low, high]).toEqual([-20, 35]);
  });

  it('offers something above zero where the value is zero', () => {
    const { low, high } = trialRange(0, { min: 0, max: 1, aboveMin: false }, 'V', 'V', false);
    expect(low).toBe(0);
    expect(high).toBeGreaterThan(0);
  });

  it('reads the bounds in the unit shown', () => {
    const { high } = trialRange(900, { min: 0, max: 1, aboveMin: false }, 'Ω', 'mΩ', false);
    expect(high).toBe(1000);
  });
});
