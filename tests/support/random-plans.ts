import fc from 'fast-check';
import { checkPlan } from '#core/plan/read-plan.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { randomPlan } from '../fuzz/random-plan.ts';
import { seeded } from '../fuzz/seeded.ts';

/** A sample with random values in random fields, every one of them valid. */
export const planOfSeed = (seed: number): Plan => {
  const read = checkPlan(randomPlan(seeded(seed), (plan) => checkPlan(plan).ok));
  if (!read.ok) throw new Error(`seed ${seed}: ${read.problem.path}`);
  return read.plan;
};

const seed = 20261126;

/**
 * Holds a property of plans against random ones for a few seconds. The seed of a plan that fails is what fast-check
 * prints as counterexample; the order of plans is the same in every run.
 */
export function forRandomPlans(milliseconds: number, holds: (plan: Plan) => void): void {
  let count = 0;
  fc.assert(
    fc.property(fc.nat(), (seedOfPlan) => {
      holds(planOfSeed(seedOfPlan));
      count += 1;
    }),
    { seed, numRuns: 500, interruptAfterTimeLimit: milliseconds, endOnFailure: true },
  );
  console.log(`${count} random plans, fast-check seed ${seed}`);
}
