import { beforeEach, expect, test, vi } from 'vitest';
import { newPlan } from '#core/plan/defaults.ts';
import { editField, setField } from '#renderer/state/plan-path.ts';
import {
  dropStep,
  edit,
  isUnsaved,
  markSaved,
  planStore,
  redo,
  replacePlan,
  stateId,
  trialKey,
  undo,
} from '#renderer/state/plan-store.ts';

const state = () => planStore.getState();
const capacityPath = 'options.0.pack.block.capacityAh';
const capacity = () => state().plan.options[0]?.pack.block.capacityAh;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['performance'] });
  replacePlan(newPlan('Cart'));
});

test('undo of an edit gives back the very plan that was there', () => {
  const before = structuredClone(state().plan);
  editField('Rated capacity', capacityPath, 26);
  expect(capacity()).toBe(26);
  undo();
  expect(state().plan).toEqual(before);
});

test('redo of an undone edit gives back the edited plan', () => {
  editField('Rated capacity', capacityPath, 26);
  const after = structuredClone(state().plan);
  undo();
  redo();
  expect(state().plan).toEqual(after);
});

test('edits of one field that follow quickly are one step', () => {
  for (const value of [19, 20, 21]) {
    vi.advanceTimersByTime(200);
    editField('Rated capacity', capacityPath, value);
  }
  expect(state().past).toHaveLength(1);
  undo();
  expect(capacity()).toBe(18);
});

test('edits of one field with a pause between them are two steps', () => {
  editField('Rated capacity', capacityPath, 19);
  vi.advanceTimersByTime(5000);
  editField('Rated capacity', capacityPath, 20);
  expect(state().past).toHaveLength(2);
});

test('edits of two fields are two steps however quick they are', () => {
  editField('Rated capacity', capacityPath, 19);
  editField('Rated at', 'options.0.pack.block.ratedHours', 10);
  expect(state().past.map(({ name }) => name)).toEqual(['Rated capacity', 'Rated at']);
});

test('an edit that changes nothing leaves no step', () => {
  editField('Rated capacity', capacityPath, 18);
  expect(state().past).toEqual([]);
});

test('a new edit after an undo drops what could be redone', () => {
  editField('Rated capacity', capacityPath, 19);
  undo();
  editField('Rated at', 'options.0.pack.block.ratedHours', 10);
  expect(state().future).toEqual([]);
});

test('the unsaved mark goes when undo reaches the saved state, and comes back with redo', () => {
  editField('Rated capacity', capacityPath, 26);
  expect(isUnsaved(state())).toBe(true);
  markSaved(stateId(state()));
  expect(isUnsaved(state())).toBe(false);
  editField('Rated capacity', capacityPath, 27);
  expect(isUnsaved(state())).toBe(true);
  undo();
  expect(isUnsaved(state())).toBe(false);
  expect(capacity()).toBe(26);
  undo();
  expect(isUnsaved(state())).toBe(true);
});

test('a save that finishes after a further edit does not clear the unsaved mark', () => {
  editField('Rated capacity', capacityPath, 26);
  const written = stateId(state());
  vi.advanceTimersByTime(5000);
  editField('Rated capacity', capacityPath, 27);
  markSaved(written);
  expect(isUnsaved(state())).toBe(true);
});

test('steps are not limited in number', () => {
  for (let index = 0; index < 500; index += 1) {
    edit(`Step ${index}`, (plan) => {
      plan.note = String(index);
    });
  }
  for (let index = 0; index < 500; index += 1) undo();
  expect(state().plan.note).toBe('');
});

test('a trial of a figure is one step however long it takes, and leaves nothing when dropped', () => {
  const before = structuredClone(state().plan);
  const key = trialKey(capacityPath);
  for (const value of [20, 24, 30]) {
    edit('Rated capacity', (plan) => setField(plan, capacityPath, value), key);
    vi.advanceTimersByTime(5000);
  }
  expect(state().past).toHaveLength(1);
  expect(capacity()).toBe(30);
  dropStep(key);
  expect(state().plan).toEqual(before);
  expect(state().past).toHaveLength(0);
  expect(state().future).toHaveLength(0);
});

test('two trials of the same figure are two steps', () => {
  editField('Rated capacity', capacityPath, 20);
  edit('Rated capacity', (plan) => setField(plan, capacityPath, 24), trialKey(capacityPath));
  edit('Rated capacity', (plan) => setField(plan, capacityPath, 30), trialKey(capacityPath));
  expect(state().past).toHaveLength(3);
});
