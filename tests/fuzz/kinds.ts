import { checkPlan } from '#core/plan/read-plan.ts';
import { samplePlan, sampleNames } from '#core/plan/samples/index.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { mutateText } from './mutate-text.ts';
import { randomPlan } from './random-plan.ts';
import { seeded, type Seeded } from './seeded.ts';
import { tryLog } from './try-log.ts';
import { tryPlan, tryPlanText, type Outcome } from './try-plan.ts';

const kinds = {
  /** Plans with random values in random fields, every one of them valid. */
  plans: (random: Seeded) => tryPlan(randomPlan(random, (plan) => checkPlan(plan).ok)),
  /** Plans with random values in random fields, valid or not. */
  values: (random: Seeded) => tryPlan(randomPlan(random)),
  /** Files spoilt as text. */
  files: (random: Seeded) =>
    tryPlanText(mutateText(writePlan(samplePlan(random.pick(sampleNames))), random)),
  /** Meter logs spoilt as text. */
  logs: tryLog,
} as const satisfies Record<string, (random: Seeded) => Outcome>;

export type FuzzKind = keyof typeof kinds;
export const fuzzKinds = Object.keys(kinds) as readonly FuzzKind[];

/** One case; the same seed makes the same case. Throws what the program throws. */
export const fuzzCase = (kind: FuzzKind, seed: number): Outcome => kinds[kind](seeded(seed));
