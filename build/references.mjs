import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, projectFolder } from './setup.mjs';

/** Runs the reference checks and remakes tests/reference/REPORT.md from what they wrote down; `--collect` only remakes the page. */
ensureInstalled();
const records = join(projectFolder, 'dist', 'references');
const collectOnly = process.argv.includes('--collect');
if (!collectOnly) rmSync(records, { recursive: true, force: true });
const vitest = join(projectFolder, 'node_modules', 'vitest', 'vitest.mjs');
const run = collectOnly
  ? { status: 0 }
  : spawnSync(
      process.execPath,
      [vitest, 'run', '--config', 'build/vitest.config.ts', '--project', 'reference'],
      { cwd: projectFolder, stdio: 'inherit' },
    );

const written = (existsSync(records) ? readdirSync(records) : []).flatMap((file) =>
  readFileSync(join(records, file), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line)),
);
// A check written down twice (a test run again between) counts once, the last time.
const checks = [
  ...new Map(written.map((check) => [`${check.chapter} ${check.quantity}`, check])).values(),
];
const figure = (value) => (value === 0 ? '0' : String(Number(value.toPrecision(5))));
const chapters = [...new Set(checks.map((check) => check.chapter))].toSorted((a, b) =>
  a.localeCompare(b),
);
const lines = [
  '# What the models are held against',
  '',
  'Remade by `npm run references`. A check in a test without this record (most formulas, drive, bench) names its source beside it.',
];
for (const chapter of chapters) {
  lines.push(
    '',
    `## ${chapter}`,
    '',
    '| quantity | source | class | reference | ours | difference | unit |',
    '| --- | --- | --- | ---: | ---: | ---: | --- |',
  );
  const rows = checks
    .filter((check) => check.chapter === chapter)
    .toSorted((a, b) => a.quantity.localeCompare(b.quantity));
  for (const { quantity, source, class: kind, reference, ours, unit } of rows) {
    lines.push(
      `| ${quantity} | ${source} | ${kind} | ${figure(reference)} | ${figure(ours)} | ${figure(ours - reference)} | ${unit} |`,
    );
  }
}
const report = join(projectFolder, 'tests', 'reference', 'REPORT.md');
writeFileSync(report, `${lines.join('\n')}\n`);
spawnSync(
  process.execPath,
  [join(projectFolder, 'node_modules', 'oxfmt', 'bin', 'oxfmt'), report],
  { cwd: projectFolder },
);
console.log(`Wrote ${checks.length} checks to tests/reference/REPORT.md`);
process.exit(run.status ?? 1);
