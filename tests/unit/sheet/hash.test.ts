import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { newPlan } from '#core/plan/defaults.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { planHash, shortHash } from '#core/sheet/plan-hash.ts';

describe('the mark of a plan', () => {
  test('is the SHA-256 of its file text, by another implementation', () => {
    for (const plan of [newPlan('Ä·Ω 𝛼'), samplePlan('orchard-cart')]) {
      const text = writePlan(plan);
      // [R] Node's OpenSSL.
      expect(planHash(plan)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
    }
  });
  test('changes with any figure and is the same for an equal plan', () => {
    const plan = samplePlan('orchard-cart');
    expect(planHash(structuredClone(plan))).toBe(planHash(plan));
    expect(planHash({ ...plan, currency: 'CHF' })).not.toBe(planHash(plan));
  });
  test('is shortened to groups that can be read aloud', () => {
    expect(shortHash('0123456789abcdef')).toBe('0123 4567 89ab');
  });
});
