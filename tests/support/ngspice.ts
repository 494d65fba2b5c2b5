import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Where the circuit simulator is, or null with the reason said once. */
export function findNgspice(): string | null {
  try {
    execFileSync('ngspice', ['--version'], { stdio: 'ignore' });
    return 'ngspice';
  } catch {
    if (process.env['REQUIRE_REFERENCES'] === '1')
      throw new Error('ngspice is required and not installed');
    console.log('skipped: ngspice is not installed, so circuits are not compared with it');
    return null;
  }
}

/**
 * Runs a transient deck and returns its saved vectors. `elements` is everything between title and control block.
 *
 * @param transient arguments of `tran`, e.g. `10 36000 0 10 uic`
 * @param vectors expressions to write, e.g. `v(n)`; the first column returned is time
 */
export function runTransient(
  elements: string,
  transient: string,
  vectors: readonly string[],
): number[][] {
  const folder = mkdtempSync(join(tmpdir(), 'deck-'));
  try {
    const out = join(folder, 'out.txt');
    const deck = `* deck
${elements}
.control
set wr_singlescale
tran ${transient}
wrdata ${out} ${vectors.join(' ')}
quit 0
.endc
.end
`;
    writeFileSync(join(folder, 'deck.cir'), deck);
    execFileSync('ngspice', ['-b', join(folder, 'deck.cir')], { stdio: 'pipe' });
    return readFileSync(out, 'utf8')
      .trim()
      .split('\n')
      .map((row) => row.trim().split(/\s+/).map(Number));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Value of column `column` at time `at`, linear between rows. */
export function columnAt(rows: readonly (readonly number[])[], column: number, at: number): number {
  let low = 0;
  let high = rows.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (rows[middle]![0]! <= at) low = middle;
    else high = middle;
  }
  const [before, after] = [rows[low]!, rows[high]!];
  const span = after[0]! - before[0]!;
  const share = span > 0 ? Math.min(1, Math.max(0, (at - before[0]!) / span)) : 0;
  return before[column]! + (after[column]! - before[column]!) * share;
}
