import { chmodSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { planText } from '../support/plan-text.ts';
import {
  eventually,
  freshFolder,
  startShell,
  type RunningShell,
  type TestPage,
} from '../support/shell-driver.ts';

/** A number field of the sample that the page opens with. */
const field = 'Rated capacity, Two 12 V 18';

/** The shell with the page users get, once the sample stands. */
const startReal = async (folder = freshFolder()): Promise<RunningShell> => {
  const shell = await startShell({ folder, shell: inject('realShellFolder') });
  await shell.text('heading', 'Orchard cart');
  return shell;
};

const capacity = (shell: RunningShell): Promise<string> => shell.value('spinbutton', field);
const title = async (shell: RunningShell): Promise<string> =>
  (await shell.windows())[0]?.title ?? '';
const titled = (shell: RunningShell, wanted: RegExp) =>
  eventually(
    () => title(shell),
    (text) => wanted.test(text),
  );

const editCapacity = async (shell: RunningShell, value = '26'): Promise<void> => {
  await shell.command('clickMenu', { id: 'place.packs' });
  await shell.fill('spinbutton', field, value);
  await shell.stroke('Enter');
  await titled(shell, /^• /);
};

/** Exit code after an answer that closes the last window; the press itself may not outlive it. */
const endedBy = async (shell: RunningShell, button: string): Promise<number | null> => {
  await shell.press('button', button).catch(() => {});
  return shell.ended;
};

const recoveryFiles = (shell: RunningShell): readonly string[] => {
  try {
    return readdirSync(join(shell.folder, 'user-data', 'recovery'));
  } catch {
    return [];
  }
};
const recoveryKept = (shell: RunningShell) =>
  eventually(
    async () => recoveryFiles(shell),
    // Under its own name: a file still being written goes with the program that is killed.
    (names) => names.length === 1 && names[0]!.endsWith('.copy'),
  );

/** Opens a file by the menu, as a user does. */
const openFile = async (shell: RunningShell, path: string, name: string): Promise<void> => {
  await shell.answer('open', path);
  await shell.command('clickMenu', { id: 'plan.open' });
  await titled(shell, new RegExp(`^${name}`));
};

describe('closing a window with edits', () => {
  test('asks, and stays when told so', async () => {
    const shell = await startReal();
    await editCapacity(shell);
    await shell.command('closeWindow', { index: 0 });
    expect(await shell.text('alertdialog', 'Save the changes')).toContain('Orchard cart');
    await shell.press('button', 'Back to the plan');
    expect(await shell.windows()).toHaveLength(1);
    expect(await capacity(shell)).toBe('26');
  });

  test('without saving closes it, and no recovery copy is left', async () => {
    const shell = await startReal();
    await editCapacity(shell);
    await recoveryKept(shell);
    await shell.command('closeWindow', { index: 0 });
    expect(await endedBy(shell, 'Do not save')).toBe(0);
    expect(recoveryFiles(shell)).toEqual([]);
  });

  test('saves first when told so, under the name the dialog gives', async () => {
    const shell = await startReal();
    await editCapacity(shell, '31');
    const path = join(shell.folder, 'kept.wain');
    await shell.answer('save', path);
    await shell.command('closeWindow', { index: 0 });
    expect(await endedBy(shell, 'Save')).toBe(0);
    expect(readFileSync(path, 'utf8')).toContain('"capacityAh": 31');
  });

  test('stays open when the save that was asked for does not happen', async () => {
    const shell = await startReal();
    await editCapacity(shell);
    await shell.command('closeWindow', { index: 0 });
    await shell.press('button', 'Save');
    await eventually(
      () => shell.seen(),
      ({ dialogs }) => dialogs.length === 1,
    );
    await eventually(
      () => shell.count('alertdialog', 'Save the changes'),
      (count) => count === 0,
    );
    expect(await shell.windows()).toHaveLength(1);
    expect(await title(shell)).toMatch(/^• /);
  });
});

describe('recovery', () => {
  test('after a kill unsaved work is offered with its time and comes back only when asked for', async () => {
    const folder = freshFolder();
    const first = await startReal(folder);
    await editCapacity(first, '33');
    await recoveryKept(first);
    await first.kill();

    const second = await startReal(folder);
    const offer = await second.text('dialog', 'Unsaved work was found');
    expect(offer).toContain('Orchard cart');
    expect(offer).toMatch(/kept .*\d:\d\d/);
    expect(await title(second)).toBe('Orchard cart – Cellwain');
    await second.press('button', 'Open this copy');
    await titled(second, /^• Orchard cart/);
    await second.command('clickMenu', { id: 'place.packs' });
    expect(await capacity(second)).toBe('33');
  });

  test('work put off until later is found again by the command', async () => {
    const folder = freshFolder();
    const first = await startReal(folder);
    await editCapacity(first);
    await recoveryKept(first);
    await first.kill();
    const second = await startReal(folder);
    await second.press('button', 'Decide later');
    await second.command('clickMenu', { id: 'plan.recover' });
    await second.press('button', 'Throw away');
    await eventually(
      async () => recoveryFiles(second),
      (names) => names.length === 0,
    );
  });

  test('a page that crashes comes back once and offers what was edited', async () => {
    const shell = await startReal();
    await editCapacity(shell, '35');
    await recoveryKept(shell);
    await shell.command('crash', { index: 0 });
    await eventually(
      () => shell.count('dialog', 'Unsaved work was found').catch(() => 0),
      (count) => count === 1,
    );
    await shell.press('button', 'Open this copy');
    await shell.command('clickMenu', { id: 'place.packs' });
    await eventually(
      () => capacity(shell),
      (value) => value === '35',
    );
  });

  test('edits that never pause are on disk all the same', async () => {
    const shell = await startReal();
    await editCapacity(shell, '19');
    const begun = Date.now();
    while (recoveryFiles(shell).length === 0 && Date.now() - begun < 20_000) {
      await shell.stroke('ArrowUp');
    }
    expect(recoveryFiles(shell)).toHaveLength(1);
  });
});

describe('a file changed by another program', () => {
  const changed = async () => {
    const shell = await startReal();
    const path = join(shell.folder, 'cart.wain');
    writeFileSync(path, planText('mine'));
    await openFile(shell, path, 'cart.wain');
    writeFileSync(path, planText('theirs'));
    await shell.command('focus', { index: 0 });
    await shell.text('alertdialog', 'The file has changed outside');
    return { shell, path };
  };

  test('is read again when told so, and that can be taken back', async () => {
    const { shell, path } = await changed();
    await shell.press('button', 'Read it again, drop my changes');
    await shell.press('button', 'Undo', '.toast');
    await titled(shell, /^• cart.wain/);
    expect(readFileSync(path, 'utf8')).toBe(planText('theirs'));
  });

  test('is replaced when told so', async () => {
    const { shell, path } = await changed();
    await shell.press('button', 'Replace it with this plan');
    await eventually(
      async () => readFileSync(path, 'utf8'),
      (text) => text !== planText('theirs'),
    );
    expect(JSON.parse(readFileSync(path, 'utf8'))).toMatchObject({ name: 'mine' });
  });

  test('does not swallow the question of a window that is to close', async () => {
    const { shell } = await changed();
    await shell.press('button', 'Back to the plan');
    await editCapacityOfOwn(shell);
    await shell.command('closeWindow', { index: 0 });
    await shell.text('alertdialog', 'Save the changes');
    writeFileSync(join(shell.folder, 'cart.wain'), planText('theirs again'));
    await shell.command('focus', { index: 0 });
    expect(await endedBy(shell, 'Do not save')).toBe(0);
  });

  /** Any edit will do: the plan of the file is not the sample. */
  const editCapacityOfOwn = async (shell: RunningShell): Promise<void> => {
    await shell.command('clickMenu', { id: 'option.duplicate' });
    await titled(shell, /^• /);
  };
});

describe('menu and file', () => {
  test('undo has the name of its step, and undo to the saved state clears the mark', async () => {
    const shell = await startReal();
    await editCapacity(shell);
    const label = async (id: string) =>
      (await shell.command<{ label: string; enabled: boolean }>('menuItem', { id })).label;
    await eventually(
      () => label('edit.undo'),
      (text) => text.startsWith('Undo: Rated capacity'),
    );
    await shell.command('clickMenu', { id: 'edit.undo' });
    await titled(shell, /^Orchard cart/);
    expect(await capacity(shell)).toBe('18');
    await eventually(
      () => label('edit.redo'),
      (text) => text.startsWith('Redo: Rated capacity'),
    );
  });

  test('a save by the menu takes along what is typed and not yet left', async () => {
    const shell = await startReal();
    await shell.command('clickMenu', { id: 'place.packs' });
    await shell.fill('spinbutton', field, '27');
    const path = join(shell.folder, 'typed.wain');
    await shell.answer('save', path);
    await shell.command('clickMenu', { id: 'plan.save' });
    await titled(shell, /^typed.wain/);
    expect(readFileSync(path, 'utf8')).toContain('"capacityAh": 27');
  });

  test('a step can be undone after a save, and the mark comes back', async () => {
    const shell = await startReal();
    await editCapacity(shell, '27');
    await shell.answer('save', join(shell.folder, 'a.wain'));
    await shell.command('clickMenu', { id: 'plan.save' });
    await titled(shell, /^a.wain/);
    await shell.command('clickMenu', { id: 'edit.undo' });
    await titled(shell, /^• a.wain/);
    expect(await capacity(shell)).toBe('18');
    await shell.command('clickMenu', { id: 'edit.redo' });
    await titled(shell, /^a.wain/);
  });

  test('a read-only file says so, and saving it asks for another name', async () => {
    const shell = await startReal();
    const path = join(shell.folder, 'fixed.wain');
    writeFileSync(path, planText('fixed'));
    chmodSync(path, 0o444);
    await openFile(shell, path, 'fixed.wain');
    await shell.command('clickMenu', { id: 'option.duplicate' });
    await titled(shell, /^• /);
    const copy = join(shell.folder, 'copy.wain');
    await shell.answer('save', copy);
    await shell.command('clickMenu', { id: 'plan.save' });
    await titled(shell, /^copy.wain/);
    expect(readFileSync(path, 'utf8')).toBe(planText('fixed'));
  });

  test('a file of a newer version is refused in words and the open plan stays', async () => {
    const shell = await startReal();
    const path = join(shell.folder, 'new.wain');
    writeFileSync(path, planText().replace('"version": 1', '"version": 99'));
    await shell.answer('open', path);
    await shell.command('clickMenu', { id: 'plan.open' });
    expect(await shell.text('dialog', 'The plan was not opened')).toMatch(/newer|99/);
    expect(await title(shell)).toMatch(/^Orchard cart/);
  });

  test('the page has no menu of its own beside the native one, but the settings', async () => {
    const shell = await startReal();
    expect(await shell.count('button', 'Settings')).toBe(1);
    expect(await shell.count('button', 'Commands and settings')).toBe(0);
  });

  test('the plan is exported as JSON that opens as the same plan', async () => {
    const shell = await startReal();
    const path = join(shell.folder, 'plan.json');
    await shell.answer('save', path);
    await shell.command('clickMenu', { id: 'export.plan' });
    await eventually(
      async () => readdirSync(shell.folder),
      (names) => names.includes('plan.json'),
    );
    const opened = await shell.call('openDropped', {
      name: 'plan.json',
      text: readFileSync(path, 'utf8'),
    });
    expect(opened.ok).toBe(true);
  });

  test('the about box has the versions and the licence of every package in the page', async () => {
    const shell = await startReal();
    await shell.command('clickMenu', { id: 'help.about' });
    await eventually(
      () => shell.text('dialog', 'Cellwain'),
      (text) => text.includes('0.1.0') && text.includes('Node.js'),
    );
    const list = JSON.parse(
      readFileSync(join(inject('realShellFolder'), 'dist', 'renderer', 'licences.json'), 'utf8'),
    ) as { name: string; version: string; licence: string }[];
    expect(list.map(({ name }) => name)).toContain('react');
    const page = await shell.inPage(() => document.querySelector('.dialog')?.textContent ?? '');
    for (const { name, version, licence } of list) {
      expect(page).toContain(`${name} ${version}, ${licence}`);
    }
  });

  test('the page turns dark with the system', async () => {
    const shell = await startReal();
    const theme = () => shell.inPage(() => document.documentElement.dataset['theme']);
    expect(await theme()).toBe('light');
    await shell.command('setDark', { dark: true });
    await eventually(theme, (now) => now === 'dark');
  });

  test('every place is shown without a violation of the content policy', async () => {
    const shell = await startReal();
    for (const place of ['machine', 'packs', 'run', 'charging', 'wiring', 'bench', 'sheet']) {
      await shell.command('clickMenu', { id: `place.${place}` });
      await eventually(
        () =>
          shell.inPage((id) => {
            const main = document.querySelector('main');
            const isThere = document
              .querySelector(`nav [data-place="${id}"]`)
              ?.hasAttribute('aria-current');
            // The sheet stands behind a wall of its own.
            const sheet = [...(main?.querySelectorAll('*') ?? [])].find(
              (each) => each.shadowRoot !== null,
            );
            const words = sheet?.shadowRoot?.textContent ?? main?.textContent ?? '';
            return (
              isThere === true && (id !== 'sheet' || sheet !== undefined) && words.length > 300
            );
          }, place),
        (isShown) => isShown,
      );
    }
    const found = await shell.inPage(() => (globalThis as unknown as TestPage).standinViolations);
    expect(found).toEqual([]);
  });

  test('dialogs, drawer and search are shown without a violation of the content policy', async () => {
    const shell = await startReal();
    const dialogs = () => shell.inPage(() => document.querySelectorAll('[role=dialog]').length);
    const opened = async (): Promise<void> => {
      await eventually(dialogs, (count) => count === 1);
      // A key pressed before the dialog has taken the focus does not reach it.
      await eventually(
        async () => {
          await shell.stroke('Escape');
          return dialogs();
        },
        (count) => count === 0,
      );
    };
    const commands = ['view.palette', 'plan.openSample', 'plan.new', 'help.shortcuts'];
    for (const id of [...commands, 'help.working', 'help.about']) {
      await shell.command('clickMenu', { id });
      await opened();
    }
    await shell.command('clickMenu', { id: 'place.packs' });
    await shell.press('button', 'Add option');
    await shell.press('menuitem', 'Find packs that fit…');
    await opened();
    await shell.inPage(() => document.querySelector<HTMLElement>('.strip-findings')?.click());
    await opened();
    const found = await shell.inPage(() => (globalThis as unknown as TestPage).standinViolations);
    expect(found).toEqual([]);
  });
});
