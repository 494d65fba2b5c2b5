import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { createFileQueue } from '#electron/files/file-queue.ts';
import { markOf } from '#electron/files/file-mark.ts';
import { writePlanFile } from '#electron/files/plan-file.ts';
import { createRecoveryStore } from '#electron/files/recovery-store.ts';
import { realFileSystem } from '#electron/files/file-system.ts';
import { faultyFileSystem, systemError, type Interfere } from '../../support/faulty-file-system.ts';
import { freshFolder } from '../../support/fresh-folder.ts';
import { planText } from '../../support/plan-text.ts';

const before = planText('before');
const after = planText('after');

/** Saves over an older file with interference; tells the answer and what is on disk then. */
const save = async (interfere: Interfere, migratedFrom: number | null = null) => {
  const folder = freshFolder();
  const path = join(folder, 'plan.wain');
  writeFileSync(path, before);
  const { fs, calls } = faultyFileSystem(interfere);
  const result = await writePlanFile(fs, createFileQueue(), {
    path,
    text: after,
    expected: markOf(Buffer.from(before)),
    migratedFrom,
  });
  return {
    result,
    calls: calls(),
    content: readFileSync(path, 'utf8'),
    names: readdirSync(folder),
  };
};

const callsOfASave = (await new Promise<{ count: number; names: string[] }>((resolve) => {
  // Counted once outside the tests, so that there is one test for each call.
  const names: string[] = [];
  const { fs } = faultyFileSystem(({ name }) => void names.push(name));
  const folder = new URL('../../../dist', import.meta.url).pathname;
  const path = join(folder, `count-${process.pid}.wain`);
  void realFileSystem
    .mkdir(folder, { recursive: true })
    .then(() => writeFileSync(path, before))
    .then(() =>
      writePlanFile(fs, createFileQueue(), {
        path,
        text: after,
        expected: markOf(Buffer.from(before)),
        migratedFrom: null,
      }),
    )
    .then(() => realFileSystem.rm(path))
    .then(() => resolve({ count: names.length, names }));
})) satisfies { count: number };

/** Calls after the rename only make the new file last; their failure undoes nothing. */
const renameAt = callsOfASave.names.indexOf('rename') + 1;

describe('a save in which one call fails', () => {
  test('makes at least the calls a durable save needs', () => {
    const wanted = [
      'open',
      'handle.writeFile',
      'handle.sync',
      'handle.close',
      'rename',
      'open',
      'handle.sync',
    ];
    let at = -1;
    for (const name of wanted) {
      at = callsOfASave.names.indexOf(name, at + 1);
      expect(at, name).toBeGreaterThan(-1);
    }
  });

  test.each(Array.from({ length: callsOfASave.count }, (_, index) => [index + 1] as const))(
    'at call %i with a lasting fault leaves the old or the new file, whole, and nothing else',
    async (failing) => {
      const { result, content, names } = await save(({ number }) => {
        if (number === failing) throw systemError('EIO');
      });
      expect(content).toBe(result.ok ? after : before);
      // The very first look decides nothing when the file mode cannot be read.
      if (failing <= renameAt && !result.ok) expect(result.code).toMatch(/failed|unreadable/);
      if (failing > renameAt) expect(result.ok).toBe(true);
      expect(names).toEqual(['plan.wain']);
    },
  );

  test.each(['EBUSY', 'EPERM', 'EACCES'])(
    'the rename held up by %s for a moment is tried again and succeeds',
    async (code) => {
      let held = 0;
      const { result, content } = await save(({ name }) => {
        if (name === 'rename' && held < 3) {
          held += 1;
          throw systemError(code);
        }
      });
      expect(result.ok).toBe(true);
      expect(content).toBe(after);
      expect(held).toBe(3);
    },
  );

  test('a lock that never goes is reported and the old file stands', async () => {
    const { result, content, names } = await save(({ name }) => {
      if (name === 'rename') throw systemError('EBUSY');
    });
    expect(result).toMatchObject({ ok: false, code: 'busy' });
    expect(content).toBe(before);
    expect(names).toEqual(['plan.wain']);
  });

  test.each(['handle.writeFile', 'handle.sync', 'handle.close'])(
    'a disk that is full at %s is reported as full and the old file stands',
    async (step) => {
      let opened = false;
      const { result, content, names } = await save(({ name }) => {
        if (name === 'handle.writeFile') opened = true;
        if (name === step && opened) throw systemError('ENOSPC');
      });
      expect(result).toMatchObject({ ok: false, code: 'disk-full' });
      expect(content).toBe(before);
      expect(names).toEqual(['plan.wain']);
    },
  );

  test('the original of an older format is kept beside, and without that nothing is written', async () => {
    const kept = await save(() => {}, 0);
    expect(kept.names.toSorted()).toEqual(['plan (format 0).wain', 'plan.wain']);
    const failed = await save(({ name }) => {
      if (name === 'copyFile') throw systemError('ENOSPC');
    }, 0);
    expect(failed.result).toMatchObject({ ok: false, code: 'disk-full' });
    expect(failed.content).toBe(before);
  });
});

describe('saves at the same time', () => {
  test('land in the order they were asked for', async () => {
    const folder = freshFolder();
    const path = join(folder, 'plan.wain');
    const queue = createFileQueue();
    const texts = Array.from({ length: 20 }, (_, index) => planText(`edit ${index}`));
    const results = await Promise.all(
      texts.map((text) =>
        writePlanFile(realFileSystem, queue, { path, text, expected: null, migratedFrom: null }),
      ),
    );
    expect(results.every(({ ok }) => ok)).toBe(true);
    expect(readFileSync(path, 'utf8')).toBe(texts.at(-1));
  });

  test('a save that fails does not hold up the next', async () => {
    const queue = createFileQueue();
    const failed = queue('a', () => Promise.reject(new Error('no')));
    const next = queue('a', () => Promise.resolve('done'));
    await expect(failed).rejects.toThrow('no');
    expect(await next).toBe('done');
  });
});

describe('a recovery copy whose writing fails', () => {
  test('leaves the copy before it, whole, at every call', async () => {
    const id = '00000000-0000-4000-8000-000000000000';
    const content = { name: 'Cart', savedAt: '2026-01-01T00:00:00.000Z', path: null, text: before };
    for (let failing = 1; ; failing += 1) {
      const folder = freshFolder();
      const whole = createRecoveryStore(realFileSystem, createFileQueue(), folder);
      await whole.write(id, content);
      const { fs, calls } = faultyFileSystem(({ number }) => {
        if (number === failing) throw systemError('EIO');
      });
      const faulty = createRecoveryStore(fs, createFileQueue(), folder);
      const written = await faulty.write(id, { ...content, text: after }).then(
        () => true,
        () => false,
      );
      expect((await whole.read(id))?.text, `call ${failing}`).toBe(written ? after : before);
      expect(readdirSync(folder)).toEqual([`${id}.copy`]);
      if (calls() < failing) break;
    }
  });
});
