import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type InlineConfig } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createFileQueue } from '#electron/files/file-queue.ts';
import { realFileSystem } from '#electron/files/file-system.ts';
import { readPlanFile, writePlanFile } from '#electron/files/plan-file.ts';
import { createRecoveryStore } from '#electron/files/recovery-store.ts';
// @ts-expect-error -- a plain script without types
import { singleFile } from '../../../build/bundles/shared.mjs';
import { freshFolder } from '../../support/fresh-folder.ts';
import { planText } from '../../support/plan-text.ts';

let folder = '';
let child = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'killed-'));
  child = join(folder, 'child', 'child.mjs');
  const config = (singleFile as (options: object) => InlineConfig)({
    entry: 'tests/faults/files/kill-child.ts',
    outDir: join(folder, 'child'),
    file: 'child.mjs',
    format: 'es',
  });
  await build(config);
}, 60_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a program killed while it saves', () => {
  test('right before any of its file system calls leaves the old or the new file, whole', async () => {
    const seen = { old: 0, fresh: 0 };
    for (let call = 1; ; call += 1) {
      const place = freshFolder();
      const path = join(place, 'plan.wain');
      const next = join(place, 'next');
      writeFileSync(path, planText('before'));
      writeFileSync(next, planText('after'));
      const ended = spawnSync(process.execPath, [child, 'save', path, next, String(call)]);
      const opened = await readPlanFile(realFileSystem, path);
      if (!opened.ok) throw new Error(`killed at call ${call}: ${opened.code}`);
      const isOld = opened.value.text === planText('before');
      if (!isOld) expect(opened.value.text).toBe(planText('after'));
      seen[isOld ? 'old' : 'fresh'] += 1;
      // What was left behind is in nobody's way.
      const { mark } = opened.value;
      const again = { path, text: planText('again'), expected: mark, migratedFrom: null };
      expect((await writePlanFile(realFileSystem, createFileQueue(), again)).ok).toBe(true);
      if (ended.signal === null) {
        expect(call).toBeGreaterThan(Number(ended.stdout.toString()));
        break;
      }
    }
    expect(seen.old).toBeGreaterThan(5);
    expect(seen.fresh).toBeGreaterThan(1);
  }, 120_000);
});

describe('a program killed while edits are written to recovery copies', () => {
  const rounds = Number(process.env['FAULT_ROUNDS'] ?? 25);

  test(`loses nothing that was acknowledged, over ${rounds} kills and restarts`, async () => {
    const place = freshFolder();
    const store = join(place, 'recovery');
    mkdirSync(store);
    const text = join(place, 'text');
    writeFileSync(text, planText());
    const id = '00000000-0000-4000-8000-000000000000';
    for (let round = 0; round < rounds; round += 1) {
      const acknowledged = await new Promise<number>((resolve) => {
        let output = '';
        const killed = spawn(process.execPath, [child, 'edit', store, id, text]);
        killed.stdout.setEncoding('utf8').on('data', (part: string) => {
          // The moment of the kill moves through a write as the rounds go on.
          if (output === '') setTimeout(() => killed.kill('SIGKILL'), 2 + (round % 13));
          output += part;
        });
        killed.once('close', () => resolve(Number(output.trimEnd().split('\n').at(-1))));
      });
      const recovery = createRecoveryStore(realFileSystem, createFileQueue(), store);
      await recovery.sweep();
      const [copy] = await recovery.list(new Set());
      expect(copy?.state, `round ${round}`).toBe('whole');
      const found = Number(copy?.name.replace('edit ', ''));
      expect(found, `round ${round}`).toBeGreaterThanOrEqual(acknowledged);
      expect(readdirSync(store)).toEqual([`${id}.copy`]);
      expect((await recovery.read(id))?.text).toBe(readFileSync(text, 'utf8'));
    }
  }, 600_000);
});
