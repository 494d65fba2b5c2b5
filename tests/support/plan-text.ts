import { samplePlan } from '#core/plan/samples/index.ts';

/** Text of a valid plan with the given name, for tests of files. */
export const planText = (name = 'Test plan'): string =>
  `${JSON.stringify({ ...samplePlan('orchard-cart'), name }, null, 2)}\n`;
