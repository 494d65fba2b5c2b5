import { createLogReader, guessMapping } from '#core/bench/index.ts';
import { timeRow, type BenchRow } from './row.ts';
import { timed } from './timed.ts';

/** Reading a generated log of 20 MB in pieces, as the worker and the command line do. */
export function benchLog(): BenchRow[] {
  const head = 'time_s,voltage_V,current_A,temperature_C\n';
  const rows = Array.from(
    { length: 20_000 },
    (_, row) =>
      `${(row * 0.1).toFixed(4)},${(12.8 - row * 5e-5).toFixed(6)},${(3 + (row % 7) * 0.01).toFixed(6)},22.500\n`,
  );
  const piece = rows.join('');
  const pieces = Math.ceil(20e6 / piece.length);
  const guess = guessMapping(head + piece.slice(0, 65_536), { nominalVoltageV: 12 });
  if (!guess.ok) return [];
  const ms = timed(() => {
    const reader = createLogReader(guess.value.mapping);
    reader.push(head);
    for (let count = 0; count < pieces; count += 1) reader.push(piece);
    reader.rowsRead();
  }, 3);
  return [timeRow('read a log of 20 MB', ms, undefined, `${pieces * rows.length} rows`)];
}
