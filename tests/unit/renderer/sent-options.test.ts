import { expect, test } from 'vitest';
import { samplePlan } from '#core/plan/samples/index.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { createOptionReceiver, createOptionSender } from '#renderer/workers/sent-options.ts';

const [first, second, third] = studyPlan(samplePlan('orchard-cart')).options;

test('a study the page has is sent by its number only, and the page puts it back in', () => {
  const send = createOptionSender();
  const receive = createOptionReceiver();
  const before = receive(structuredClone(send([first!, second!])));
  const sent = send([second!, third!, first!]);
  expect(sent.map(({ study }) => study)).toEqual([null, third, null]);
  const after = receive(structuredClone(sent));
  expect(after.map(({ id }) => id)).toEqual([second!.id, third!.id, first!.id]);
  expect(after[0]).toBe(before[1]);
  expect(after[2]).toBe(before[0]);
});

test('a study that was left out once is sent again in full', () => {
  const send = createOptionSender();
  send([first!, second!]);
  send([second!]);
  expect(send([first!, second!]).map(({ study }) => study)).toEqual([first, null]);
});

test('a number that never came is an error and no hole in the figures', () => {
  expect(() => createOptionReceiver()([{ number: 1, study: null }])).toThrow('never came');
});
