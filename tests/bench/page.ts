import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { limitRow, skippedRow, timeRow, type BenchRow } from './row.ts';

/** The browser tests that measure print what they measured; these are their words. */
const edit = /edit to figures: p50 ([\d.]+) ms, p95 ([\d.]+) ms/;
const chart =
  /first chart ([\d.]+) ms after load; scripts by then, gzip: page ([\d.]+) kB, workers ([\d.]+) kB/;
const pan = /([\d.]+) frames\/s, ([\d.]+) ms \(lower quartile\)/;
const memory = /largest worker ([\d.]+) MB/;
const cancel = /cancelled after ([\d.]+) ms/;
const shown = /Window ready after ([\d.]+) ms/;

const tool = (root: string, name: string, args: readonly string[]): string => {
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'node_modules', ...name.split('/')), ...args],
    { cwd: root, encoding: 'utf8', env: { ...process.env, FORCE_COLOR: '0' } },
  );
  return `${stdout}${stderr}`;
};

/** Rows of what a text says, or one row with the reason where it says nothing of it. */
function read(
  text: string,
  pattern: RegExp,
  what: string,
  rows: (figures: readonly number[]) => readonly BenchRow[],
): readonly BenchRow[] {
  const found = pattern.exec(text);
  if (found !== null) return rows(found.slice(1).map(Number));
  const reason = /No Chromium was found/.test(text) ? 'no Chromium' : 'its test did not get so far';
  return [skippedRow(what, reason)];
}

/** The built page in a browser, measured by its own tests one after another. */
export function benchPage(root: string): BenchRow[] {
  const text = tool(root, '@playwright/test/cli.js', [
    'test',
    '--config',
    'tests/e2e/playwright.config.ts',
    '--workers=1',
    '--retries=0',
    '--reporter=list',
    '--grep',
    'tenth of a second of an edit|first chart is there|pans runs of|stay small|broken off at once',
  ]);
  return [
    ...read(text, edit, 'edit to figures', ([p50 = 0, p95 = 0]) => [
      timeRow('edit to figures in the strip, p50', p50),
      timeRow('edit to figures in the strip, p95', p95, 100),
    ]),
    ...read(text, chart, 'first chart', ([ms = 0, page = 0, workers = 0]) => [
      timeRow('page loaded to first chart drawn', ms, 700),
      limitRow('scripts of the page before the first chart, gzip', page, 'kB', 500),
      limitRow('scripts of the workers by then, gzip', workers, 'kB'),
    ]),
    ...read(text, pan, 'pan of 30,000 points', ([rate = 0, ms = 0]) => [
      timeRow('pan of 30,000 points, work a frame', ms, 20, `${rate} frames/s shown`),
    ]),
    ...read(text, cancel, 'cancel of a spread', ([ms = 0]) => [
      timeRow('cancel of a running spread', ms, 100),
    ]),
    ...read(text, memory, 'memory of the workers', ([worker = 0]) => [
      limitRow('memory of the largest worker, log of 10 MB read', worker, 'MB', 200),
    ]),
  ];
}

/** From the start of a program to its answer. */
export function benchStarts(root: string): BenchRow[] {
  const begun = performance.now();
  const { status } = spawnSync(
    process.execPath,
    [join(root, 'dist', 'headless', 'headless.mjs'), 'demo'],
    { cwd: root },
  );
  const headlessMs = performance.now() - begun;
  const text = tool(root, 'vitest/vitest.mjs', [
    'run',
    '--config=build/vitest.config.ts',
    '--project=shell',
    'tests/electron/windows.test.ts',
    '--testNamePattern=first window is ready',
  ]);
  return [
    status === 0
      ? timeRow('headless command: start, sample run, table', headlessMs)
      : skippedRow('headless command', `it ended with code ${status}`),
    ...read(text, shown, 'first window (stand-in for Electron)', ([ms = 0]) => [
      timeRow('first window ready, stand-in for Electron', ms, 1500),
    ]),
  ];
}
