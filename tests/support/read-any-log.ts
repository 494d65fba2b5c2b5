import { createLogReader, guessMapping, plainMapping, type ReadLog } from '#core/bench/index.ts';

/**
 * Reads a text with whatever mapping can be had, in pieces as from a file; null where it is refused. Throws when rows
 * go missing: each is kept or counted with a reason.
 */
export function readAnyLog(text: string, pieceLength: number): ReadLog | null {
  const guess = guessMapping(text, { nominalVoltageV: 12 });
  const mapping = guess.ok ? guess.value.mapping : plainMapping(text);
  if (mapping === null) return null;
  const reader = createLogReader(mapping);
  for (let from = 0; from < text.length; from += pieceLength)
    reader.push(text.slice(from, from + pieceLength));
  const log = reader.finish();
  const left = [...log.dropped.values()].reduce((sum, count) => sum + count, 0);
  if (log.rowsKept + left !== log.rowsRead)
    throw new Error(`${log.rowsRead} rows read, ${log.rowsKept} kept and ${left} dropped`);
  return log;
}
