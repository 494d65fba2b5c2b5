import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { startShell, type TestPage } from '../support/shell-driver.ts';

describe('export', () => {
  test('a text is written byte for byte with the ending of its kind', async () => {
    const shell = await startShell();
    await shell.answer('save', join(shell.folder, 'series'));
    const content = 'time [min];Spannung [V]\r\n0;25,4\r\n';
    const done = await shell.call('exportFile', { kind: 'csv', suggestedName: 'series', content });
    expect(done).toEqual({ ok: true, value: { name: 'series.csv' } });
    expect(readFileSync(join(shell.folder, 'series.csv'), 'utf8')).toBe(content);
  });

  test('bytes are written byte for byte', async () => {
    const shell = await startShell();
    await shell.answer('save', join(shell.folder, 'chart.png'));
    const done = await shell.inPage(() =>
      (globalThis as unknown as TestPage).cellwainShell.call.exportFile({
        kind: 'png',
        suggestedName: 'chart',
        content: Uint8Array.from({ length: 256 }, (_, index) => index),
      }),
    );
    expect(done).toEqual({ ok: true, value: { name: 'chart.png' } });
    expect([...readFileSync(join(shell.folder, 'chart.png'))]).toEqual(
      Array.from({ length: 256 }, (_, index) => index),
    );
  });

  test('a refused replacement leaves the other file alone', async () => {
    const shell = await startShell();
    writeFileSync(join(shell.folder, 'a.svg'), 'mine');
    await shell.answer('save', join(shell.folder, 'a'));
    await shell.answer('message', 1);
    const done = await shell.call('exportFile', { kind: 'svg', suggestedName: 'a', content: 'x' });
    expect(done).toEqual({ ok: false, code: 'cancelled' });
    expect(readFileSync(join(shell.folder, 'a.svg'), 'utf8')).toBe('mine');
  });

  test('the sheet becomes a PDF', async () => {
    const shell = await startShell();
    await shell.answer('save', join(shell.folder, 'sheet.pdf'));
    const request = { suggestedName: 'sheet', paper: 'A4', landscape: false } as const;
    expect(await shell.call('exportPdf', request)).toEqual({
      ok: true,
      value: { name: 'sheet.pdf' },
    });
    expect(readFileSync(join(shell.folder, 'sheet.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('an export into a folder that is gone fails with a code and leaves nothing', async () => {
    const shell = await startShell();
    const path = join(shell.folder, 'gone', 'a.txt');
    await shell.answer('save', path);
    const done = await shell.call('exportFile', { kind: 'txt', suggestedName: 'a', content: 'x' });
    expect(done).toEqual({ ok: false, code: 'missing', name: 'a.txt' });
    expect(existsSync(path)).toBe(false);
  });

  test('printing and copying reach the system', async () => {
    const shell = await startShell();
    expect(await shell.call('print', {})).toEqual({ ok: true, value: null });
    expect(await shell.call('copyText', { text: 'report' })).toEqual({ ok: true, value: null });
    const { printed, copied } = await shell.seen();
    expect(printed).toHaveLength(1);
    expect(copied).toEqual(['report']);
  });
});
