import { cpus } from 'node:os';
import { benchCompare } from './compare.ts';
import { benchDrive } from './drive.ts';
import { benchEngine } from './engine.ts';
import { printLeaveOut } from './leave-out.ts';
import { benchLog } from './log.ts';
import type { BenchRow } from './row.ts';

const rows: BenchRow[] = [...benchEngine(), ...benchDrive(), ...benchCompare(), ...benchLog()];
const widest = Math.max(...rows.map((row) => row.what.length));
console.log(
  `On ${cpus()[0]?.model ?? 'this machine'}, Node ${process.versions.node}, one core, median times\n`,
);
for (const { what, ms, note } of rows) {
  console.log(`${what.padEnd(widest)}  ${ms.toFixed(ms < 10 ? 3 : 1).padStart(9)} ms  ${note}`);
}
printLeaveOut();
