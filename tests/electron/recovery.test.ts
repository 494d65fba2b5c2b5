import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { planText } from '../support/plan-text.ts';
import { freshFolder, startShell, type RunningShell } from '../support/shell-driver.ts';

const copiesOf = async (shell: RunningShell) => {
  const copies = await shell.call('recoveryCopies', {});
  if (!copies.ok) throw new Error(copies.code);
  return copies.value;
};

describe('recovery', () => {
  test('a copy of a killed program is offered with its name and time, and gives the text back', async () => {
    const folder = freshFolder();
    const first = await startShell({ folder });
    const before = new Date().toISOString();
    await first.call('writeRecoveryCopy', { name: 'Cart', text: planText('lost') });
    await first.kill();

    const second = await startShell({ folder });
    const [copy] = await copiesOf(second);
    expect(copy).toMatchObject({ name: 'Cart', state: 'whole' });
    expect((copy?.savedAt ?? '') >= before).toBe(true);
    const taken = await second.call('takeRecoveryCopy', { id: copy?.id ?? '' });
    expect(taken).toMatchObject({ ok: true, value: { text: planText('lost'), handle: null } });
  });

  test('a copy taken over survives a kill right after', async () => {
    const folder = freshFolder();
    const first = await startShell({ folder });
    await first.call('writeRecoveryCopy', { name: 'Cart', text: planText('lost') });
    await first.kill();
    const second = await startShell({ folder });
    const [copy] = await copiesOf(second);
    await second.call('takeRecoveryCopy', { id: copy?.id ?? '' });
    expect(await copiesOf(second)).toEqual([]);
    await second.kill();
    const third = await startShell({ folder });
    expect((await copiesOf(third)).map(({ name }) => name)).toEqual(['Cart']);
  });

  test('a restored plan can be saved to its own file, which was not touched by then', async () => {
    const folder = freshFolder();
    const path = join(folder, 'cart.wain');
    const first = await startShell({ folder });
    writeFileSync(path, planText('saved'));
    await first.answer('open', path);
    await first.call('openPlan', {});
    await first.call('writeRecoveryCopy', { name: 'cart.wain', text: planText('edited') });
    await first.kill();

    const second = await startShell({ folder });
    const [copy] = await copiesOf(second);
    const taken = await second.call('takeRecoveryCopy', { id: copy?.id ?? '' });
    if (!taken.ok) throw new Error(taken.code);
    expect(readFileSync(path, 'utf8')).toBe(planText('saved'));
    const { handle, text } = taken.value;
    const request = { handle, text, suggestedName: '', revision: 1, replaceChanged: false };
    expect(await second.call('savePlan', request)).toMatchObject({ ok: true });
    expect(readFileSync(path, 'utf8')).toBe(planText('edited'));
  });

  test('a damaged copy is shown as damaged, gives nothing, and can be discarded', async () => {
    const folder = freshFolder();
    const first = await startShell({ folder });
    await first.call('writeRecoveryCopy', { name: 'Cart', text: planText() });
    await first.kill();
    const store = join(folder, 'user-data', 'recovery');
    const [file = ''] = readdirSync(store);
    const bytes = readFileSync(join(store, file));
    bytes[500] = (bytes[500] ?? 0) ^ 1;
    writeFileSync(join(store, file), bytes);

    const second = await startShell({ folder });
    const [copy] = await copiesOf(second);
    expect(copy).toMatchObject({ state: 'damaged' });
    const id = copy?.id ?? '';
    expect(await second.call('takeRecoveryCopy', { id })).toEqual({ ok: false, code: 'damaged' });
    await second.call('discardRecoveryCopy', { id });
    expect(await copiesOf(second)).toEqual([]);
  });

  test('a copy of a window that is open is offered to no other', async () => {
    const shell = await startShell();
    await shell.call('writeRecoveryCopy', { name: 'Cart', text: planText() });
    expect(await copiesOf(shell)).toEqual([]);
    const [file = ''] = readdirSync(join(shell.folder, 'user-data', 'recovery'));
    const id = file.replace('.copy', '');
    expect((await shell.call('takeRecoveryCopy', { id })).ok).toBe(false);
    expect((await shell.call('discardRecoveryCopy', { id })).ok).toBe(false);
  });

  test('discarding the own copy leaves nothing to offer', async () => {
    const folder = freshFolder();
    const first = await startShell({ folder });
    await first.call('writeRecoveryCopy', { name: 'Cart', text: planText() });
    await first.call('discardOwnRecoveryCopy', {});
    await first.kill();
    const second = await startShell({ folder });
    expect(await copiesOf(second)).toEqual([]);
  });
});
