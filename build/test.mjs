import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { ensureInstalled, projectFolder } from './setup.mjs';

const logFolder = join(projectFolder, 'dist', 'logs');
const tool = (name) =>
  join(projectFolder, 'node_modules', '.bin', process.platform === 'win32' ? `${name}.cmd` : name);

/** Runs a command with its output kept; resolves with exit code and output. */
const run = (command, args, env = {}) =>
  new Promise((resolve) => {
    let output = '';
    const child = spawn(command, args, {
      cwd: projectFolder,
      env: { ...process.env, FORCE_COLOR: '0', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
    });
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (text) => {
        output += text;
      });
    }
    child.once('error', (error) => resolve({ code: 1, output: String(error) }));
    child.once('close', (code) => resolve({ code: code ?? 1, output }));
  });

const single = async (command, args) => {
  const { code, output } = await run(command, args);
  return { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, skipped: [], output };
};

const walls = async () => {
  const { checkLayerWalls } = await import('./verifiers/layer-walls.mjs');
  const results = checkLayerWalls();
  const broken = results.filter((result) => result.crossings.length > 0);
  return {
    passed: results.length - broken.length,
    failed: broken.length,
    skipped: [],
    output: broken.flatMap((result) => result.crossings).join('\n'),
  };
};

const build = async () => {
  const { buildBundles } = await import('./build.mjs');
  try {
    const built = await buildBundles();
    return {
      passed: 1,
      failed: 0,
      skipped: [],
      output: '',
      note: built.join(', ') || 'up to date',
    };
  } catch (error) {
    return { passed: 0, failed: 1, skipped: [], output: error.stack };
  }
};

const vitest = (project) => async () => {
  const counts = join(logFolder, `${project}.json`);
  rmSync(counts, { force: true });
  const { code, output } = await run(
    tool('vitest'),
    [
      'run',
      '--config=build/vitest.config.ts',
      `--project=${project}`,
      '--reporter=default',
      '--reporter=./build/verifiers/count-reporter.mjs',
      '--passWithNoTests',
    ],
    { COUNTS_FILE: counts },
  );
  const none = { passed: 0, failed: 0, skipped: [] };
  const result = existsSync(counts) ? JSON.parse(readFileSync(counts, 'utf8')) : { projects: {} };
  const found = result.projects[project] ?? none;
  // A run that fails outside its tests (setup, a stray rejection) must not pass as green.
  const failed = code !== 0 && found.failed === 0 ? 1 : found.failed;
  const note = /^(?:Shell tests ran on .*)$/m.exec(output)?.[0];
  return { ...found, failed, output, note };
};

const playwright = async () => {
  const report = join(logFolder, 'e2e.json');
  rmSync(report, { force: true });
  const { code, output } = await run(
    tool('playwright'),
    ['test', '--config', 'tests/e2e/playwright.config.ts', '--pass-with-no-tests'],
    { PLAYWRIGHT_JSON_OUTPUT_NAME: report },
  );
  const none = { stats: { expected: 0, unexpected: 0, flaky: 0 }, suites: [] };
  const { stats, suites } = existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : none;
  const specs = (suite) => [...(suite.specs ?? []), ...(suite.suites ?? []).flatMap(specs)];
  const skipped = suites.flatMap(specs).flatMap((spec) =>
    spec.tests
      .filter((test) => test.status === 'skipped')
      .map((test) => ({
        title: `${spec.file} > ${spec.title}`,
        reason: test.annotations.find((mark) => mark.type === 'skip')?.description ?? null,
      })),
  );
  const failed = code !== 0 && stats.unexpected === 0 ? 1 : stats.unexpected;
  return { passed: stats.expected + stats.flaky, failed, skipped, output };
};

/** Stages in order. Those in one row run at the same time. */
const rows = [
  {
    types: () => single(tool('tsc'), ['-b']),
    lint: () =>
      single(tool('oxlint'), [
        '--type-aware',
        '--deny-warnings',
        '-D',
        'typescript/no-floating-promises',
      ]),
    format: () => single(tool('oxfmt'), ['--check']),
    walls,
  },
  { build },
  { unit: vitest('unit') },
  { properties: vitest('properties') },
  { reference: vitest('reference') },
  { faults: vitest('faults') },
  { shell: vitest('shell') },
  { e2e: playwright },
];
const stageNames = rows.flatMap((row) => Object.keys(row));

const readArguments = () => {
  try {
    const { values } = parseArgs({
      options: {
        ready: { type: 'boolean', default: false },
        only: { type: 'string' },
        verbose: { type: 'boolean', default: false },
      },
    });
    const only = values.only?.split(',') ?? stageNames;
    const unknown = only.filter((name) => !stageNames.includes(name));
    if (unknown.length > 0) {
      throw new Error(`No stage ${unknown.join(', ')}. There are: ${stageNames.join(', ')}.`);
    }
    return { ...values, only };
  } catch (error) {
    process.stderr.write(`${error.message}\n`);
    return process.exit(2);
  }
};

const options = readArguments();
ensureInstalled();
mkdirSync(logFolder, { recursive: true });
if (options.ready) {
  process.env.REQUIRE_REFERENCES = '1';
  process.env.CI = 'true';
}

/** @type {{passed: number, failed: number, skipped: {title: string, reason: string | null}[]}} */
const totals = { passed: 0, failed: 0, skipped: [] };

const runStage = async (name, stage) => {
  const begun = performance.now();
  const result = await stage();
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  const { passed, failed, skipped, output, note } = result;
  writeFileSync(join(logFolder, `${name}.txt`), output);
  if (failed > 0 || options.verbose) console.log(output.trimEnd());
  const counts = `${passed} passed, ${failed} failed, ${skipped.length} skipped`;
  console.log(`${name.padEnd(10)} ${seconds.padStart(6)} s  ${counts}${note ? `  (${note})` : ''}`);
  totals.passed += passed;
  totals.failed += failed;
  totals.skipped.push(...skipped);
};

const begun = performance.now();
for (const row of rows) {
  const chosen = Object.entries(row).filter(([name]) => options.only.includes(name));
  await Promise.all(chosen.map(([name, stage]) => runStage(name, stage)));
}

if (totals.skipped.length > 0) {
  console.log('\nSkipped, and why:');
  for (const { title, reason } of totals.skipped)
    console.log(`  ${title}: ${reason ?? 'no reason given'}`);
}
console.log(`\nThe whole run took ${((performance.now() - begun) / 1000).toFixed(0)} s.`);
console.log(`${totals.passed} passed, ${totals.failed} failed, ${totals.skipped.length} skipped`);
process.exitCode = totals.failed > 0 ? 1 : 0;
