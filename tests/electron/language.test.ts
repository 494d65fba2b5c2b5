import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { shellTexts } from '#electron/text/shell-texts.ts';
import type { MenuState } from '#core/shell/menu-state.ts';
import { eventually, startShell, type RunningShell } from '../support/shell-driver.ts';

const menuState: MenuState = {
  language: 'de',
  disabled: [],
  labels: {},
  menus: { file: 'Datei', edit: 'Bearbeiten', view: 'Ansicht', places: 'Orte', help: 'Hilfe' },
  recent: 'Zuletzt geöffnet',
  forgetRecent: 'Diese Dateien vergessen',
};

/** The last dialog the shell has shown, once there are so many. */
const dialogs = async (shell: RunningShell, count: number) => {
  const seen = await eventually(
    () => shell.seen(),
    (now) => now.dialogs.length >= count,
  );
  return seen.dialogs.map(({ options }) => options);
};

describe('language of the shell', () => {
  test('asks in the language of the page before it replaces a file, and names kinds of files in it', async () => {
    const shell = await startShell();
    writeFileSync(join(shell.folder, 'a.svg'), 'mine');
    await shell.call('setMenuState', menuState);
    await shell.answer('save', join(shell.folder, 'a'));
    await shell.call('exportFile', { kind: 'svg', suggestedName: 'a', content: 'x' });
    await shell.call('openPlan', {});
    const [save, replace, open] = await dialogs(shell, 3);
    expect(save).toMatchObject({ filters: [{ name: 'SVG-Zeichnung' }] });
    expect(replace).toMatchObject({
      message: 'a.svg gibt es schon.',
      buttons: ['Ersetzen', 'Abbrechen'],
      cancelId: 1,
    });
    expect(open).toMatchObject({ filters: [{ name: 'Cellwain-Plan' }, { name: 'Alle Dateien' }] });
    expect(readFileSync(join(shell.folder, 'a.svg'), 'utf8')).toBe('mine');
  });

  test('says in the language of the page that it has failed twice', async () => {
    const shell = await startShell();
    const isBack = () => shell.inPage(() => 'heard' in globalThis).catch(() => false);
    await shell.call('setMenuState', menuState);
    await shell.command('crash', { index: 0 });
    await eventually(isBack, (back) => !back).catch(() => {});
    await eventually(isBack, (back) => back);
    await shell.command('crash', { index: 0 });
    const [told] = await dialogs(shell, 1);
    expect(told).toMatchObject({ message: 'Das Fenster ist zweimal abgestürzt.' });
  });

  test('has every sentence in both languages, with the same buttons in the same order', () => {
    const { en, de } = shellTexts;
    const questions = [
      [en.replace('a.svg'), de.replace('a.svg')],
      [en.hung, de.hung],
      [en.crashed, de.crashed],
      [en.update('2.0.0'), de.update('2.0.0')],
    ] as const;
    for (const [english, german] of questions) {
      expect(german.message).not.toBe(english.message);
      expect(german.detail).not.toBe(english.detail);
      expect(german.buttons).toHaveLength(english.buttons.length);
    }
    expect(de.replace('a.svg').message).toContain('a.svg');
    expect(de.update('2.0.0').message).toContain('2.0.0');
    expect(de.hung.buttons).toEqual(['Trotzdem schließen', 'Offen lassen']);
  });
});
