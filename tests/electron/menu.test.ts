import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandTable } from '#core/commands/command-table.ts';
import type { Command } from '#core/commands/command.ts';
import type { MenuState } from '#core/shell/menu-state.ts';
import { planText } from '../support/plan-text.ts';
import { eventually, startShell } from '../support/shell-driver.ts';

type Item = {
  label?: string;
  enabled?: boolean;
  accelerator?: string;
  role?: string;
  items?: string[];
};

const menuState = {
  language: 'de',
  disabled: [],
  labels: { 'edit.undo': 'Rückgängig: Länge & Breite' },
  menus: { file: 'Datei', edit: 'Bearbeiten', view: 'Ansicht', places: 'Orte', help: 'Hilfe' },
  recent: 'Zuletzt geöffnet',
  forgetRecent: 'Diese Dateien vergessen',
} as const satisfies MenuState;

describe('menu', () => {
  test('every command of the table stands in the menu with its label and keys', async () => {
    const shell = await startShell();
    for (const command of commandTable as readonly Command[]) {
      const item = await shell.command<Item | null>('menuItem', { id: command.id });
      expect(item?.label, command.id).toBe(command.label);
      expect(item?.accelerator, command.id).toBe(command.keys?.replace('Mod', 'CommandOrControl'));
      expect(item?.role, command.id).toBe(command.role);
    }
  });

  test('a page command reaches the page of the window in front', async () => {
    const shell = await startShell();
    await shell.command('clickMenu', { id: 'plan.save' });
    await shell.command('clickMenu', { id: 'place.packs' });
    const heard = await eventually(
      () => shell.heard(),
      (all) => all.length === 2,
    );
    expect(heard.map(({ message }) => message['id'])).toEqual(['plan.save', 'place.packs']);
  });

  test('a command that cannot act is greyed, not hidden', async () => {
    const shell = await startShell();
    await shell.call('setMenuState', { ...menuState, disabled: ['edit.undo'] });
    expect(await shell.command('menuItem', { id: 'edit.undo' })).toMatchObject({ enabled: false });
    await expect(shell.command('clickMenu', { id: 'edit.undo' })).rejects.toThrow(/disabled/);
    await shell.call('setMenuState', menuState);
    expect(await shell.command('menuItem', { id: 'edit.undo' })).toMatchObject({ enabled: true });
  });

  test('the menu reads as the page says, with the name of the step that undo takes back', async () => {
    const shell = await startShell();
    await shell.call('setMenuState', menuState);
    const labelOf = async (id: string) =>
      (await shell.command<Item | null>('menuItem', { id }))?.label;
    expect(await labelOf('edit.undo')).toBe('Rückgängig: Länge && Breite');
    expect(await labelOf('edit')).toBe('&Bearbeiten');
    expect(await labelOf('recent')).toBe('Zuletzt geöffnet');
    expect(await labelOf('plan.save')).toBe('Save');
  });

  test('the recent menu lists the files opened and opens them', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'a & b.wain');
    writeFileSync(path, planText());
    await shell.answer('open', path);
    const opened = await shell.call('openPlan', {});
    if (!opened.ok) throw new Error(opened.code);
    const { handle } = opened.value;
    await shell.call('setDocumentState', { name: '', handle, unsaved: false });
    const menu = await shell.command<Item>('menuItem', { id: 'recent' });
    expect(menu.items?.[0]).toBe('a && b.wain');
    const recent = await shell.call('recentFiles', {});
    const id = recent.ok ? recent.value[0]?.id : '';
    await shell.call('setDocumentState', { name: '', handle: null, unsaved: false });
    await shell.command('clickMenu', { id: `recent.${id}` });
    await eventually(
      () => shell.heard(),
      (all) => all.some(({ name }) => name === 'openRequest'),
    );
  });

  test('new window opens a second window, a step beside the first', async () => {
    const shell = await startShell();
    await shell.command('clickMenu', { id: 'window.new' });
    const [one, two] = await eventually(
      () => shell.windows(),
      (all) => all.length === 2,
    );
    expect((two?.bounds.x ?? 0) - (one?.bounds.x ?? 0)).toBe(32);
  });
});
