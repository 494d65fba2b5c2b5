import type { BenchRow } from './row.ts';

/** Rows under their head, in columns. */
export function printRows(head: string, rows: readonly BenchRow[]): void {
  const cells = rows.map(({ what, result, asked, note }) => [
    what,
    result,
    asked?.words ?? '',
    asked === undefined ? '' : asked.isMet ? 'met' : 'NOT MET',
    note ?? '',
  ]);
  const widths = [58, 12, 16, 7];
  console.log(`\n${head}`);
  for (const [what = '', result = '', ...rest] of cells) {
    const [asked = '', verdict = '', note = ''] = rest;
    console.log(
      `  ${what.padEnd(widths[0]!)} ${result.padStart(widths[1]!)}  ${asked.padEnd(widths[2]!)} ${verdict.padEnd(widths[3]!)} ${note}`.trimEnd(),
    );
  }
}

/** How many of the figures asked for are met. */
export function countMet(rows: readonly BenchRow[]): string {
  const asked = rows.flatMap((row) => row.asked ?? []);
  const met = asked.filter(({ isMet }) => isMet).length;
  const skipped = rows.filter(({ note }) => note?.startsWith('skipped') ?? false).length;
  return `${met} of ${asked.length} figures asked for are met${skipped === 0 ? '' : `; ${skipped} skipped`}.`;
}
