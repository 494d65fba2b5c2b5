import { defineConfig } from 'vitest/config';

/** One vitest project per kind of check, so that a run can say which kind failed or was skipped. */
const project = (name: string, testTimeout = 30_000) => ({
  extends: true as const,
  test: { name, include: [`tests/${name}/**/*.test.ts`, `tests/${name}/**/*.test.tsx`], testTimeout },
});

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    projects: [project('unit'), project('properties', 60_000), project('reference', 120_000), project('faults', 120_000)],
  },
});
