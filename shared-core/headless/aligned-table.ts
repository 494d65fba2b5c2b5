/** A table for a terminal: columns padded to the widest cell, numbers flush right, two spaces between. */
export function alignedTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
): string {
  const widths = head.map((title, column) =>
    Math.max(width(title), ...rows.map((row) => width(row[column] ?? ''))),
  );
  const right = head.map(
    (_, column) =>
      rows.length > 0 && rows.every((row) => /^[–-]?$|^[−-]?[\d.,]+( |$)/.test(row[column] ?? '')),
  );
  const lineOf = (cells: readonly string[]): string =>
    head
      .map((_, column) => {
        const cell = cells[column] ?? '';
        const gap = ' '.repeat(widths[column]! - width(cell));
        return right[column] === true ? gap + cell : cell + gap;
      })
      .join('  ')
      .trimEnd();
  const rule = widths.map((count) => '-'.repeat(count)).join('  ');
  return `${[lineOf(head), rule, ...rows.map(lineOf)].join('\n')}\n`;
}

/** Characters as a terminal counts them; combining marks take no room. */
function width(text: string): number {
  return Array.from(text.replaceAll(/\p{M}/gu, '')).length;
}
