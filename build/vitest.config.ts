import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** One vitest project per kind of check, so that a run can say which kind failed or was skipped. */
const project = (name: string, testTimeout = 30_000) => ({
  extends: true as const,
  test: {
    name,
    include: [`tests/${name}/**/*.test.ts`, `tests/${name}/**/*.test.tsx`],
    testTimeout,
  },
});

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    // Left to itself it keeps one processor free, which on a machine of two is half of it.
    maxWorkers: '100%',
    projects: [
      project('unit'),
      project('properties', 60_000),
      project('reference', 120_000),
      project('faults', 120_000),
      {
        extends: true,
        test: {
          name: 'shell',
          include: ['tests/electron/**/*.test.ts'],
          globalSetup: ['tests/support/shell-setup.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
