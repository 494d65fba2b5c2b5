import { expect, test } from 'vitest';
import { newPlan } from '#core/plan/defaults.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { buffersOf } from '#renderer/workers/buffers-of.ts';

test('a study can be handed over again and again: no two share a buffer that is given away', () => {
  const plan = newPlan('Cart');
  const give = (): unknown => {
    const study = studyPlan(plan, plan.headlineOuting, 'en');
    return structuredClone(study, { transfer: buffersOf(study) });
  };
  expect(give()).toEqual(give());
});

test('each buffer is given away once, however many arrays look into it', () => {
  const shared = new ArrayBuffer(16);
  const root = { one: new Float64Array(shared), other: [new Uint8Array(shared)] };
  expect(buffersOf(root)).toEqual([shared]);
});
