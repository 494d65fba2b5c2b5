import { chmodSync, existsSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { planText } from '../support/plan-text.ts';
import { eventually, freshFolder, startShell, type RunningShell } from '../support/shell-driver.ts';

const request = (text: string, handle: string | null = null) => ({
  handle,
  text,
  suggestedName: 'Cart',
  revision: 7,
  replaceChanged: false,
});

const openFile = async (shell: RunningShell, path: string) => {
  await shell.answer('open', path);
  const opened = await shell.call('openPlan', {});
  if (!opened.ok) throw new Error(JSON.stringify(opened));
  return opened.value;
};

describe('documents', () => {
  test('a first save asks where, adds the ending, and the file holds exactly the text', async () => {
    const shell = await startShell();
    await shell.answer('save', join(shell.folder, 'cart'));
    const saved = await shell.call('savePlan', request(planText()));
    expect(saved).toMatchObject({ ok: true, value: { name: 'cart.wain', revision: 7 } });
    expect(readFileSync(join(shell.folder, 'cart.wain'), 'utf8')).toBe(planText());
  });

  test('an opened plan is saved again without a question', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'a.wain');
    writeFileSync(path, planText('one'));
    const { handle, text, name, access } = await openFile(shell, path);
    expect({ text, name, access }).toEqual({
      text: planText('one'),
      name: 'a.wain',
      access: 'writable',
    });
    expect(await shell.call('savePlan', request(planText('two'), handle))).toMatchObject({
      ok: true,
    });
    expect(readFileSync(path, 'utf8')).toBe(planText('two'));
    expect((await shell.seen()).dialogs).toHaveLength(1);
  });

  test('backing out of the dialogs is answered with cancelled', async () => {
    const shell = await startShell();
    expect(await shell.call('openPlan', {})).toEqual({ ok: false, code: 'cancelled' });
    const saved = await shell.call('savePlanAs', request(planText()));
    expect(saved).toEqual({ ok: false, code: 'cancelled' });
  });

  test('an ending added after the dialog asks again before it replaces a file', async () => {
    const shell = await startShell();
    writeFileSync(join(shell.folder, 'cart.wain'), planText('old'));
    await shell.answer('save', join(shell.folder, 'cart'));
    await shell.answer('message', 1);
    const saved = await shell.call('savePlanAs', request(planText('new')));
    expect(saved).toEqual({ ok: false, code: 'cancelled' });
    expect(readFileSync(join(shell.folder, 'cart.wain'), 'utf8')).toBe(planText('old'));
  });

  test('a file changed by another program is not overwritten before the user agrees', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'a.wain');
    writeFileSync(path, planText('mine'));
    const { handle } = await openFile(shell, path);
    writeFileSync(path, planText('theirs'));
    const refused = await shell.call('savePlan', request(planText('edit'), handle));
    expect(refused).toEqual({ ok: false, code: 'changed-outside', name: 'a.wain' });
    expect(readFileSync(path, 'utf8')).toBe(planText('theirs'));
    const agreed = { ...request(planText('edit'), handle), replaceChanged: true };
    expect(await shell.call('savePlan', agreed)).toMatchObject({ ok: true });
    expect(readFileSync(path, 'utf8')).toBe(planText('edit'));
  });

  test('on return to the window a change outside is told once', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'a.wain');
    writeFileSync(path, planText('mine'));
    await openFile(shell, path);
    writeFileSync(path, planText('theirs'));
    await shell.command('focus', { index: 0 });
    const told = () =>
      shell.heard().then((all) => all.filter((entry) => entry.name === 'changedOutside'));
    await eventually(told, (list) => list.length === 1);
    await shell.command('focus', { index: 0 });
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(await told()).toHaveLength(1);
  });

  test('a file that was only touched is saved without a question', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'a.wain');
    writeFileSync(path, planText('mine'));
    const { handle } = await openFile(shell, path);
    writeFileSync(path, planText('mine'));
    expect(await shell.call('savePlan', request(planText('edit'), handle))).toMatchObject({
      ok: true,
    });
  });

  test('a text that is no plan is never written', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'a.wain');
    writeFileSync(path, planText('whole'));
    const { handle } = await openFile(shell, path);
    for (const text of ['', '{', '[]', '{"format":"cellwain-plan","version":999}']) {
      expect((await shell.call('savePlan', request(text, handle))).ok, text).toBe(false);
    }
    expect(readFileSync(path, 'utf8')).toBe(planText('whole'));
  });

  test.each([
    ['empty', '', 'not-a-plan'],
    ['cut short', planText().slice(0, 400), 'not-a-plan'],
    ['other JSON', '{"a":1}', 'not-a-plan'],
    ['too new', planText().replace('"version": 1', '"version": 99'), 'too-new'],
    ['no text', Buffer.from([0xff, 0xfe, 0x00, 0xc3, 0x28]), 'not-a-plan'],
    ['too large', Buffer.alloc(8 * 1024 * 1024 + 1, 0x20), 'too-large'],
  ])('a file that is %s is refused with a code and left alone', async (_what, content, code) => {
    const shell = await startShell();
    const path = join(shell.folder, 'bad.wain');
    writeFileSync(path, content);
    await shell.answer('open', path);
    const opened = await shell.call('openPlan', {});
    expect(opened).toMatchObject({ ok: false, code, name: 'bad.wain' });
    expect(readFileSync(path).equals(Buffer.from(content))).toBe(true);
  });

  test('a bad field is named with the way to mend it', async () => {
    const shell = await startShell();
    const plan = JSON.parse(planText()) as { headlineOuting: string };
    plan.headlineOuting = 'nowhere';
    const refused = await shell.call('openDropped', { name: 'x.wain', text: JSON.stringify(plan) });
    expect(refused).toMatchObject({ ok: false, code: 'bad-plan', field: 'headlineOuting' });
    expect(!refused.ok && refused.remedy).toMatch(/\w/);
  });

  test('a read-only file opens as such and is not replaced', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'fixed.wain');
    writeFileSync(path, planText('fixed'));
    chmodSync(path, 0o444);
    const { handle, access } = await openFile(shell, path);
    expect(access).toBe('read-only');
    const refused = await shell.call('savePlan', request(planText('edit'), handle));
    expect(refused).toMatchObject({ ok: false, code: 'read-only' });
    expect(readFileSync(path, 'utf8')).toBe(planText('fixed'));
  });

  test('saving through a link replaces the file and keeps the link', async () => {
    const shell = await startShell();
    const target = join(shell.folder, 'target.wain');
    const link = join(shell.folder, 'link.wain');
    writeFileSync(target, planText('one'));
    symlinkSync(target, link);
    const { handle } = await openFile(shell, link);
    await shell.call('savePlan', request(planText('two'), handle));
    expect(readFileSync(target, 'utf8')).toBe(planText('two'));
    expect(readFileSync(link, 'utf8')).toBe(planText('two'));
  });

  test('a deleted file is written anew by the next save', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'a.wain');
    writeFileSync(path, planText('one'));
    const { handle } = await openFile(shell, path);
    const { rmSync } = await import('node:fs');
    rmSync(path);
    expect(await shell.call('savePlan', request(planText('two'), handle))).toMatchObject({
      ok: true,
    });
    expect(existsSync(path)).toBe(true);
  });

  test('recent files come back after a restart, newest first, and say when one is gone', async () => {
    const folder = freshFolder();
    const first = await startShell({ folder });
    for (const name of ['a', 'b']) {
      writeFileSync(join(folder, `${name}.wain`), planText(name));
      await openFile(first, join(folder, `${name}.wain`));
    }
    await first.command('quit');
    await first.ended;
    const { rmSync } = await import('node:fs');
    rmSync(join(folder, 'a.wain'));
    const second = await startShell({ folder });
    const recent = await second.call('recentFiles', {});
    if (!recent.ok) throw new Error(recent.code);
    expect(recent.value.map(({ name, available }) => [name, available])).toEqual([
      ['b.wain', true],
      ['a.wain', false],
    ]);
    const [newest] = recent.value;
    expect(await second.call('openRecent', { id: newest?.id ?? '' })).toMatchObject({ ok: true });
    await second.call('forgetRecentFiles', {});
    expect(await second.call('recentFiles', {})).toEqual({ ok: true, value: [] });
  });

  test('no answer and no message to the page ever holds a folder', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'a.wain');
    writeFileSync(path, planText());
    const opened = await openFile(shell, path);
    const answers = [
      { ...opened, text: '' },
      await shell.call('recentFiles', {}),
      await shell.call('savePlan', request('{', opened.handle)),
      await shell.call('savePlan', request(planText(), opened.handle)),
      await shell.call('report', {}),
      await shell.heard(),
    ];
    expect(JSON.stringify(answers)).not.toContain(shell.folder);
    expect(JSON.stringify(answers)).not.toMatch(/\/(tmp|home|root)\//);
  });
});
