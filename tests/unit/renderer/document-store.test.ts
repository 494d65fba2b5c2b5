import { beforeEach, expect, test } from 'vitest';
import { closeDialog, openDialog, useDocument } from '#renderer/state/document-store.ts';

const front = () => useDocument.getState().dialog?.kind ?? null;
const answer = (): void => {};

beforeEach(() => useDocument.setState({ dialog: null, waiting: [] }));

test('a question is not displaced by another, which waits for its turn', () => {
  openDialog({ kind: 'unsaved', answer });
  openDialog({ kind: 'changed-outside', answer });
  expect(front()).toBe('unsaved');
  closeDialog();
  expect(front()).toBe('changed-outside');
  closeDialog();
  expect(front()).toBeNull();
});

test('the offer of unsaved work is not lost to a message that comes after it', () => {
  openDialog({ kind: 'recovery', copies: [] });
  openDialog({ kind: 'failure', failure: { ok: false, code: 'missing' }, during: 'open' });
  expect(front()).toBe('recovery');
  closeDialog();
  expect(front()).toBe('failure');
});

test('a question takes the place of a dialog that nobody waits for', () => {
  openDialog({ kind: 'palette' });
  openDialog({ kind: 'unsaved', answer });
  expect(front()).toBe('unsaved');
  closeDialog();
  expect(front()).toBeNull();
});
