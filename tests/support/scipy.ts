import { spawnSync } from 'node:child_process';

const candidates = ['python3', '/usr/bin/python3'];
let found: string | null | undefined;

/** A Python that can import SciPy, or null. Looked for once. */
export function pythonWithScipy(): string | null {
  if (found === undefined) {
    found =
      candidates.find(
        (python) =>
          spawnSync(python, ['-c', 'import scipy.integrate, scipy.optimize']).status === 0,
      ) ?? null;
  }
  return found;
}

/**
 * Runs a script that reads one JSON document from standard input and prints one, on an independent implementation.
 *
 * @returns null where no Python with SciPy is installed; a script that fails throws, since that is a fault of the test
 */
export function runScipy(script: string, input: unknown): unknown {
  const python = pythonWithScipy();
  if (python === null) return null;
  const run = spawnSync(
    python,
    ['-c', `import json, sys\ngiven = json.load(sys.stdin)\n${script}`],
    {
      input: JSON.stringify(input),
      encoding: 'utf8',
      timeout: 60_000,
    },
  );
  if (run.status !== 0) throw new Error(`the SciPy reference failed: ${run.stderr}`);
  return JSON.parse(run.stdout) as unknown;
}

/**
 * Whether the checks against SciPy are to be skipped. Prints the reason; with REQUIRE_REFERENCES=1 an absent SciPy is a
 * failure instead.
 */
export function skipWithoutScipy(): boolean {
  if (pythonWithScipy() !== null) return false;
  if (process.env['REQUIRE_REFERENCES'] === '1') {
    throw new Error('REQUIRE_REFERENCES=1, but no Python with SciPy was found');
  }
  console.warn('skipped: checks against SciPy, because no Python with SciPy was found');
  return true;
}
