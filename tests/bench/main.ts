import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { benchBundles } from './bundles.ts';
import { benchCharge } from './charge.ts';
import { benchCompare } from './compare.ts';
import { benchDrive } from './drive.ts';
import { benchEngine } from './engine.ts';
import { printLeaveOut } from './leave-out.ts';
import { benchLog } from './log.ts';
import { benchPage, benchStarts } from './page.ts';
import type { BenchRow } from './row.ts';
import { countMet, printRows } from './table.ts';

/** Built, this file lies two folders below the project. */
const root = fileURLToPath(new URL('../..', import.meta.url));
const parts: readonly (readonly [head: string, measure: () => readonly BenchRow[]])[] = [
  ['Engine, one core', benchEngine],
  ['Outings with starts, one core', benchDrive],
  ['Charge and weeks, one core', benchCharge],
  ['Many runs, one core', benchCompare],
  ['Logs, one core', benchLog],
  ['In the browser', () => benchPage(root)],
  ['Starts', () => benchStarts(root)],
  ['Bundles', () => benchBundles(`${root}/dist`)],
];
console.log(
  `On ${cpus().length} x ${cpus()[0]?.model ?? 'a processor without a name'}, Node ${process.versions.node}; median times. Figures hold on a machine that does nothing else.`,
);
const rows = parts.flatMap(([head, measure]) => {
  const measured = measure();
  printRows(head, measured);
  return measured;
});
console.log(`\n${countMet(rows)}`);
printLeaveOut();
