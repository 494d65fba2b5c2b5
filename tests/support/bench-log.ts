import { createLogReader, guessMapping, type LoggedRun } from '#core/bench/index.ts';

/** Runs of a log read with the guessed mapping, in pieces cut anywhere. */
export function readRuns(text: string, pieceLength = 4096): readonly LoggedRun[] {
  const guess = guessMapping(text.slice(0, 65_536), { nominalVoltageV: null });
  if (!guess.ok) throw new Error(`${guess.problem.field}: ${guess.problem.problem}`);
  const reader = createLogReader(guess.value.mapping);
  for (let from = 0; from < text.length; from += pieceLength)
    reader.push(text.slice(from, from + pieceLength));
  return reader.finish().runs;
}
