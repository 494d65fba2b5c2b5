import { readFileSync } from 'node:fs';
import { createFileQueue } from '#electron/files/file-queue.ts';
import { markOf } from '#electron/files/file-mark.ts';
import { realFileSystem } from '#electron/files/file-system.ts';
import { writePlanFile } from '#electron/files/plan-file.ts';
import { createRecoveryStore } from '#electron/files/recovery-store.ts';
import { faultyFileSystem } from '../../support/faulty-file-system.ts';

/*
 * The process that gets killed. `save PATH NEXT CALL` saves the text of NEXT to PATH and dies right
 * before the given file system call. `edit FOLDER ID` writes recovery copies as fast as it can and
 * prints the number of each once it is on disk.
 */
const [mode, ...given] = process.argv.slice(2);

const dieNow = (): void => {
  process.kill(process.pid, 'SIGKILL');
};

if (mode === 'save') {
  const [path = '', next = '', call = '0'] = given;
  const { fs, calls } = faultyFileSystem(({ number }) => {
    if (number === Number(call)) dieNow();
  });
  const text = readFileSync(next, 'utf8');
  const expected = markOf(readFileSync(path));
  await writePlanFile(fs, createFileQueue(), { path, text, expected, migratedFrom: null });
  process.stdout.write(`${calls()}\n`);
} else {
  const [folder = '', id = '', text = ''] = given;
  const store = createRecoveryStore(realFileSystem, createFileQueue(), folder);
  const body = readFileSync(text, 'utf8');
  const savedAt = new Date().toISOString();
  for (let edit = 1; ; edit += 1) {
    await store.write(id, { name: `edit ${edit}`, savedAt, path: null, text: body });
    process.stdout.write(`${edit}\n`);
  }
}
