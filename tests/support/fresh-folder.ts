import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder of its own for one test, gone when the test ends. */
export const freshFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'files-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true, maxRetries: 3 }));
  return folder;
};
