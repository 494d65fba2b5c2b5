// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { newPlan } from '#core/plan/defaults.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import {
  edit,
  markSaved,
  planStore,
  replacePlan,
  stateId,
  undo,
} from '#renderer/state/plan-store.ts';
import { keepRecoveryCopy } from '#renderer/state/recovery-keeper.ts';
import { useToasts } from '#renderer/state/toast-store.ts';

const host = {
  answer: success({ savedAt: '' }) as HostResult<{ readonly savedAt: string }>,
  writeRecoveryCopy: vi.fn((_name: string, _text: string) => Promise.resolve(host.answer)),
  discardOwnRecoveryCopy: vi.fn(() => Promise.resolve()),
};
let stop = (): void => {};

const note = (text: string): void =>
  edit('Note', (plan) => {
    plan.note = text;
  });

beforeEach(() => {
  vi.useFakeTimers();
  vi.clearAllMocks();
  host.answer = success({ savedAt: '' });
  useToasts.setState({ toasts: [] });
  replacePlan(newPlan('Cart'));
  stop = keepRecoveryCopy(host);
});
afterEach(() => {
  stop();
  vi.useRealTimers();
});

test('an edit is in a copy within two seconds', async () => {
  note('one');
  await vi.advanceTimersByTimeAsync(2000);
  expect(host.writeRecoveryCopy).toHaveBeenCalledOnce();
  expect(host.writeRecoveryCopy.mock.calls[0]?.[1]).toContain('"note": "one"');
});

test('edits without a pause are in copies that are never more than two seconds behind', async () => {
  for (let step = 1; step <= 100; step += 1) {
    note(String(step));
    await vi.advanceTimersByTimeAsync(100);
    if (step < 20) continue;
    const newest = host.writeRecoveryCopy.mock.calls.at(-1)?.[1] ?? '';
    const written = Number(/"note": "(\d+)"/.exec(newest)?.[1]);
    expect(step - written).toBeLessThanOrEqual(20);
  }
});

test('a plan back at its saved state keeps no copy', async () => {
  note('one');
  undo();
  await vi.advanceTimersByTimeAsync(2000);
  expect(host.writeRecoveryCopy).not.toHaveBeenCalled();
  expect(host.discardOwnRecoveryCopy).toHaveBeenCalledOnce();
});

test('a save makes the copy go', async () => {
  note('one');
  await vi.advanceTimersByTimeAsync(2000);
  markSaved(stateId(planStore.getState()));
  await vi.advanceTimersByTimeAsync(2000);
  expect(host.discardOwnRecoveryCopy).toHaveBeenCalled();
});

test('a copy that cannot be written is told once, and again only after one that could', async () => {
  const edited = async (text: string): Promise<void> => {
    note(text);
    await vi.advanceTimersByTimeAsync(2000);
  };
  host.answer = failure('disk-full');
  await edited('one');
  await edited('two');
  expect(useToasts.getState().toasts).toHaveLength(1);
  host.answer = success({ savedAt: '' });
  await edited('three');
  host.answer = failure('disk-full');
  await edited('four');
  expect(useToasts.getState().toasts).toHaveLength(2);
});
